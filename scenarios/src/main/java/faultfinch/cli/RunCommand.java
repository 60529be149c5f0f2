package faultfinch.cli;

import faultfinch.board.BenchRom;
import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.board.Plug;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.cli.Options;

/** Powers a board with given faults and tells what shows; pictures, sound and traces as files. */
final class RunCommand implements Command {
  private static final String SECONDS = "seconds";
  private static final String KEYS = "keys";
  private static final String PICTURE = "picture";
  private static final String SOUND = "sound";
  private static final String TRACE = "trace";
  private static final String PINS = "pins";
  private static final String TRACE_AT = "trace-at";
  private static final String TRACE_CYCLES = "trace-cycles";
  private static final String BENCH_ROM = "bench-rom";
  private static final String RETURN_LEADS = "return-leads";
  private static final String MACHINE = "machine";
  private static final String JSON = "json";
  private static final String LONGEST_SECONDS = "600";
  private static final int MOST_PINS = 64;
  private static final int MOST_CYCLES = 1_000_000;
  private static final int USUAL_CYCLES = 2_000;
  private static final int SIZE_OF_A_DOT = 6;

  @Override
  public Options options() {
    Options options = new Options();
    SetupChoice.addTo(options);
    return options
        .addOption(Given.flag(KEYS))
        .addOption(Given.flag(BENCH_ROM))
        .addOption(Given.flag(RETURN_LEADS))
        .addOption(Given.value(SECONDS, "S"))
        .addOption(Given.value(PICTURE, "FILE"))
        .addOption(Given.value(SOUND, "FILE"))
        .addOption(Given.value(TRACE, "FILE"))
        .addOption(Given.values(PINS, "PINS"))
        .addOption(Given.value(TRACE_AT, "S"))
        .addOption(Given.value(TRACE_CYCLES, "N"))
        .addOption(Given.value(MACHINE, "KIND"))
        .addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    Words words = terminal.words();
    given.nothingElse();
    Setup setup = plugged(new SetupChoice(words).setup(given), given, words);
    Map<String, OutFile> files = files(given, words);
    Optional<Probing> probing = probing(given, setup, words);
    Showing.Wanted wanted =
        new Showing.Wanted(
            kind(given, words), given.has(KEYS), given.has(BENCH_ROM), seconds(given), probing);
    Showing showing = Showing.of(setup, wanted, words);
    if (files.containsKey(PICTURE)) {
      files.get(PICTURE).write(PictureFile.bytes(showing.picture(SIZE_OF_A_DOT)));
    }
    if (files.containsKey(SOUND)) {
      files.get(SOUND).write(SoundFile.bytes(showing.sound(SoundFile.RATE)));
    }
    if (files.containsKey(TRACE)) {
      files.get(TRACE).write(showing.trace());
    }
    if (given.has(JSON)) {
      JsonPage.print(showing.json(), terminal.out());
    } else {
      showing.sentences().forEach(terminal.out()::println);
      files.values().forEach(f -> terminal.say("run.wrote", f.given()));
    }
    return DONE;
  }

  /** The same with what is to be plugged in. */
  private static Setup plugged(Setup setup, Given given, Words words) {
    if (!given.has(BENCH_ROM)) {
      if (given.has(RETURN_LEADS)) {
        throw words.misuse("run.leads-alone");
      }
      return setup;
    }
    Board own = setup.board();
    BenchRom rom = own.benchRom().orElseThrow(() -> words.misuse("run.no-bench-rom", own.title()));
    if (given.has(KEYS)) {
      throw words.misuse("run.bench-rom-keys");
    }
    Board board = own.withBenchRom();
    if (given.has(RETURN_LEADS)) {
      board = board.with(Plug.leads(rom.returnLeads()));
    }
    return new Setup(board, setup.faults(), setup.out(), setup.seed(), setup.powerOn());
  }

  private static Optional<Long> seconds(Given given) {
    return given.text(SECONDS).map(s -> nanoseconds(given, SECONDS));
  }

  private static long nanoseconds(Given given, String option) {
    return given.number(option, "", "0", LONGEST_SECONDS).movePointRight(9).longValue();
  }

  private static Machine.Kind kind(Given given, Words words) {
    String word = given.text(MACHINE).orElse("fast");
    for (Machine.Kind kind : Machine.Kind.values()) {
      if (kind.name().toLowerCase(Locale.ROOT).equals(word)) {
        return kind;
      }
    }
    throw words.misuse("run.unknown-machine", word);
  }

  private static Map<String, OutFile> files(Given given, Words words) {
    Map<String, OutFile> files = new LinkedHashMap<>();
    for (String option : List.of(PICTURE, SOUND, TRACE)) {
      given
          .text(option)
          .ifPresent(
              name -> {
                OutFile file = OutFile.at(name, words);
                if (files.values().stream().anyMatch(f -> f.path().equals(file.path()))) {
                  throw words.misuse("run.same-file", name);
                }
                files.put(option, file);
              });
    }
    return files;
  }

  private static Optional<Probing> probing(Given given, Setup setup, Words words) {
    if (!given.has(TRACE)) {
      for (String option : List.of(PINS, TRACE_AT, TRACE_CYCLES)) {
        if (given.has(option)) {
          throw words.misuse("run.no-trace", option);
        }
      }
      return Optional.empty();
    }
    List<Pad> pads = new ArrayList<>();
    for (String name : given.names(PINS)) {
      Pad pad = new BoardChoice(words).pad(setup.board(), name);
      if (pads.contains(pad)) {
        throw words.misuse("run.pin-twice", name);
      }
      pads.add(pad);
    }
    if (pads.isEmpty() || pads.size() > MOST_PINS) {
      throw words.misuse("run.wrong-pins", pads.size(), MOST_PINS);
    }
    return Optional.of(
        new Probing(
            pads,
            given.text(TRACE_AT).map(s -> nanoseconds(given, TRACE_AT)),
            given.whole(TRACE_CYCLES, USUAL_CYCLES, 1, MOST_CYCLES)));
  }

  /**
   * Pins to be followed.
   *
   * @param at nanoseconds since power-on; empty for the end of the run
   * @param cycles of the processor to follow them for
   */
  record Probing(List<Pad> pads, Optional<Long> at, long cycles) {
    Probing {
      pads = List.copyOf(pads);
    }
  }
}
