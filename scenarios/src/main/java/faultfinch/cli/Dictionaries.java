package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.DictionaryBuild;
import faultfinch.diagnosis.DictionaryFile;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Origin;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.diagnosis.ShippedPrices;
import faultfinch.diagnosis.Stages;
import faultfinch.diagnosis.Suspects;
import faultfinch.diagnosis.SuspectsFile;
import faultfinch.fault.FaultUniverse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the dictionary of a board comes from: with the program, else from an earlier build, else it
 * is built now and kept. One of another origin does not count.
 */
final class Dictionaries {
  private static final String SUFFIX = ".dictionary";

  /** What is done of one that is being built. */
  private static final String JOURNAL = ".journal";

  private static final int THREADS = 2;

  private final Terminal terminal;
  private final Path cache;

  /**
   * @param cache folder for what is built; made at need
   */
  Dictionaries(Terminal terminal, Path cache) {
    this.terminal = terminal;
    this.cache = cache;
  }

  /** The folder for things that can be built again. */
  static Path usersCache() {
    String base = System.getenv("XDG_CACHE_HOME");
    Path folder =
        base == null || base.isEmpty()
            ? Path.of(System.getProperty("user.home"), ".cache")
            : Path.of(base);
    return folder.resolve("faultfinch");
  }

  /** What is known of a board. */
  Known of(Board board) {
    Origin origin = Origin.of(board, ShippedDictionaries.MODELS);
    return ready(board, origin)
        .orElseGet(
            () -> known(board, built(board, FaultUniverse.of(board), origin, Optional.empty())));
  }

  /** The same of a board of which it is known without a build. */
  Optional<Known> ready(Board board) {
    return ready(board, Origin.of(board, ShippedDictionaries.MODELS));
  }

  private Optional<Known> ready(Board board, Origin origin) {
    return kept(origin)
        .or(() -> ShippedDictionaries.of(board, origin))
        .map(dictionary -> known(board, dictionary));
  }

  /** The same after every fault that the dictionary lacks was run. */
  Known whole(Board board) {
    Known known = of(board);
    if (known.whole()) {
      return known;
    }
    Origin origin = known.dictionary().origin();
    FaultUniverse universe = FaultUniverse.of(board);
    return known(board, built(board, universe, origin, Optional.of(known.dictionary())));
  }

  private Known known(Board board, FaultDictionary dictionary) {
    Suspects all =
        SuspectsFile.shipped(board, dictionary.origin())
            .orElseGet(() -> Suspects.of(FaultUniverse.of(board)));
    Suspects run = all.knownTo(dictionary);
    Diagnosis diagnosis = Diagnosis.atTheDesk(dictionary, run, new ShippedPrices());
    Known known = new Known(board, dictionary, diagnosis, all);
    if (!known.whole()) {
      terminal
          .err()
          .println(
              terminal
                  .words()
                  .say(
                      "dictionary.partly",
                      run.all().size(),
                      all.all().size(),
                      Figures.perCent(known.weightRun(), terminal.words())));
    }
    return known;
  }

  private Path file(Origin origin) {
    return cache.resolve(origin.board() + "-" + origin.digest() + SUFFIX);
  }

  private Optional<FaultDictionary> kept(Origin origin) {
    Path file = file(origin);
    try {
      return Files.exists(file) ? Optional.of(DictionaryFile.read(file)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private FaultDictionary built(
      Board board, FaultUniverse universe, Origin origin, Optional<FaultDictionary> part) {
    terminal
        .err()
        .println(
            terminal
                .words()
                .say(
                    "dictionary.begins", board.title(), universe.size(), universe.collapsedSize()));
    Path journal = cache.resolve(origin.board() + "-" + origin.digest() + JOURNAL);
    DictionaryBuild build = DictionaryBuild.of(origin, universe, Stages.of(board)).noting(journal);
    FaultDictionary dictionary;
    try {
      dictionary =
          part.map(build::having)
              .orElse(build)
              .run(THREADS, new ToldProgress(terminal, System::nanoTime))
              .orElseThrow();
    } catch (UncheckedIOException e) {
      throw new Misuse(e.getMessage());
    }
    try {
      Files.createDirectories(cache);
      OutFile.at(file(origin).toString(), terminal.words()).write(DictionaryFile.bytes(dictionary));
      Files.deleteIfExists(journal);
    } catch (IOException | Misuse e) {
      terminal.err().println(terminal.words().say("dictionary.not-kept", e.getMessage()));
    }
    return dictionary;
  }
}
