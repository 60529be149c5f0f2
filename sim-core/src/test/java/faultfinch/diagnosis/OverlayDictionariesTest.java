package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.BenchRom;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The dictionaries of the boards that overlays make: what they hold is what a fresh run shows. */
class OverlayDictionariesTest {
  private static final String SHARING = "tamarisk+soldered";
  private static final int MOST_BYTES = 8 << 20;
  private static final int SAMPLE = 2;
  private static final int DRAWN_FOR_ONE = 60;
  private static final long SAMPLE_SEED = 5;
  private static final long BOARD_SEED = DictionaryBuild.BOARD_SEEDS.get(0);

  /** A third of what goes wrong stands in the likeliest 25 of 5,700 groups. */
  private static final double LEAST_WEIGHT = 0.15;

  /** With fewer boards of their own runs an answer would be that of the board beneath. */
  private static final int LEAST_BOARDS = 4;

  static Stream<String> overlaid() {
    return BoardReader.shippedVariants().stream().filter(n -> n.startsWith("tamarisk+"));
  }

  /** Those of which a dictionary comes with the program; of the others one is built when asked. */
  static Stream<String> known() {
    return overlaid().filter(n -> ShippedDictionaries.of(BoardReader.shipped(n)).isPresent());
  }

  @Test
  void known_areTheSolderedAndMostOfThoseThatRunOtherwise() {
    List<String> all = known().toList();
    assertTrue(all.contains(SHARING));
    assertTrue(all.size() > LEAST_BOARDS, all::toString);
  }

  private static FaultDictionary shipped(Board board) {
    return ShippedDictionaries.of(board)
        .orElseThrow(() -> new AssertionError("no dictionary of just " + board.name()));
  }

  @ParameterizedTest
  @MethodSource("known")
  void shippedDictionary_isOfJustThisBoardAndHoldsTheLikeliest(String name) throws IOException {
    Board board = BoardReader.shipped(name);
    Suspects all = Suspects.of(FaultUniverse.of(board));
    double share = all.knownTo(shipped(board)).weight() / all.weight();
    assertTrue(share > LEAST_WEIGHT, name + " " + share);
    Optional<InputStream> file = BoardReader.beside(name, ShippedDictionaries.fileName(board));
    assertEquals(!name.equals(SHARING), file.isPresent());
    if (file.isPresent()) {
      try (InputStream in = file.get()) {
        assertTrue(in.readAllBytes().length <= MOST_BYTES);
      }
    }
  }

  /** Contacts, seats and hands are no more where there are no sockets; the rest is as it was. */
  @Test
  void dictionaryOfTheSoldered_isThatOfTheBoardBeneathWithoutWhatSocketsAdd() {
    FaultDictionary beneath = shipped(BoardReader.shipped("tamarisk"));
    Board soldered = BoardReader.shipped(SHARING);
    FaultDictionary shared = shipped(soldered);
    assertTrue(beneath.knows("U1.D0: open contact"));
    assertFalse(shared.knows("U1.D0: open contact"));
    assertEquals(Origin.of(soldered, ShippedDictionaries.MODELS), shared.origin());
    for (String fault : shared.faults()) {
      assertEquals(beneath.row(fault), shared.row(fault));
    }
  }

  @Test
  void aBoardThatRunsOtherwise_sharesNoRows() {
    Board tamarisk = BoardReader.shipped("tamarisk");
    overlaid()
        .filter(n -> !n.equals(SHARING))
        .forEach(n -> assertFalse(BoardReader.shipped(n).runsAs(tamarisk), n));
  }

  @ParameterizedTest
  @MethodSource("known")
  @Timeout(value = 10, unit = TimeUnit.MINUTES)
  void sampleOfRows_runAfreshEachAlone_isAsShipped(String name) {
    Board board = BoardReader.shipped(name);
    FaultDictionary dictionary = shipped(board);
    FaultUniverse universe = FaultUniverse.of(board);
    RowSource rows =
        new DictionaryRows(
            board, look -> BenchRom.named(look).isEmpty() && dictionary.look(look).isPresent());
    Row healthy = rows.row(List.of(), BOARD_SEED);
    List<Fault> drawn =
        new Draw(universe, SAMPLE_SEED)
            .overKinds(DRAWN_FOR_ONE * SAMPLE).stream()
                .filter(f -> dictionary.knows(f.text()))
                .toList();
    List<String> wrong = new ArrayList<>();
    assertTrue(drawn.size() >= SAMPLE);
    for (Fault fault : drawn.subList(0, SAMPLE)) {
      Row run = rows.row(List.of(fault), BOARD_SEED);
      boolean excited = dictionary.excited().orElseThrow().contains(fault.text());
      if (excited != (run.trail() != healthy.trail())) {
        wrong.add(fault.text() + " is " + (excited ? "not excited now" : "excited now"));
      }
      dictionary
          .shows(dictionary.row(fault.text()))
          .forEach(
              (look, outcome) -> {
                String now = run.shows().get(look);
                int at = dictionary.look(look).orElseThrow();
                boolean same = now != null && outcome.equals(dictionary.named(at, now));
                if (BenchRom.named(look).isEmpty() && !same) {
                  wrong.add(fault.text() + ", " + look + ": " + outcome + ", now " + now);
                }
              });
    }
    assertEquals(List.of(), wrong);
  }

  /**
   * Goes on with the journals in a folder for so many minutes a board and writes dictionaries of
   * what is noted.
   */
  @ParameterizedTest
  @MethodSource("overlaid")
  @Tag("sweep")
  @Timeout(value = 12, unit = TimeUnit.HOURS)
  void dictionary_builtOn_isWritten(String name) throws IOException {
    Assumptions.assumeTrue(System.getProperty("overlay.journals") != null);
    Assumptions.assumeFalse(name.equals(SHARING));
    long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(Long.getLong("overlay.minutes", 60));
    Board board = BoardReader.shipped(name);
    int groups = Integer.getInteger("overlay.groups", Integer.MAX_VALUE);
    Path journal = Path.of(System.getProperty("overlay.journals")).resolve(name + ".journal");
    DictionaryBuild all =
        DictionaryBuild.of(
                Origin.of(board, ShippedDictionaries.MODELS),
                FaultUniverse.of(board),
                Stages.of(board).subList(0, 1))
            .noting(journal);
    all.first(groups).run(1, (done, of) -> System.nanoTime() < end);
    DictionaryFile.write(
        all.soFar(),
        Path.of("src/main/resources/faultfinch/boards/tamarisk/overlays")
            .resolve(ShippedDictionaries.fileName(board)));
  }
}
