package faultfinch.cli;

import faultfinch.bench.Legs;
import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import faultfinch.board.Milestone;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Fault;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.part.CharDisplay;
import faultfinch.part.PartCatalog;
import faultfinch.symptom.BenchReport;
import faultfinch.symptom.Dots;
import faultfinch.symptom.Glass;
import faultfinch.symptom.Picture;
import faultfinch.symptom.Screen;
import faultfinch.symptom.Sound;
import faultfinch.symptom.Symptoms;
import faultfinch.symptom.Watching;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** One run of a board, and all that showed in it: in sentences, for machines, as files. */
final class Showing {
  private static final long MILLISECOND = 1_000_000;

  /**
   * What to run.
   *
   * @param keys whether the exercise of the keys is played
   * @param benchRom whether the bench ROM speaks for the board
   * @param until nanoseconds since power-on; empty for as long as the watch takes
   */
  record Wanted(
      Machine.Kind kind,
      boolean keys,
      boolean benchRom,
      Optional<Long> until,
      Optional<RunCommand.Probing> probing) {}

  /** What the machine itself told when it was switched off. */
  private record End(
      long nanoseconds,
      boolean works,
      double hertz,
      boolean locked,
      Map<String, Long> milestones,
      Glass glass) {}

  /** What was seen as the board was switched off. */
  private record Seen(End end, Optional<Screen> screen) {}

  private static final int SIZE_ON_THE_SET = 2;

  private final Setup setup;
  private final Words words;
  private final Watching watching;
  private final Dots font = Dots.shipped();
  private final End end;
  private final Optional<Screen> screen;
  private final Optional<TraceFile> trace;
  private final Optional<BenchReport> report;

  private Showing(
      Setup setup,
      Words words,
      Watching watching,
      Seen seen,
      Optional<TraceFile> trace,
      boolean benchRom) {
    report = benchRom ? Optional.of(BenchReport.of(watching)) : Optional.empty();
    this.setup = setup;
    this.words = words;
    this.watching = watching;
    this.end = seen.end();
    this.screen = seen.screen();
    this.trace = trace;
  }

  /**
   * Runs a board.
   *
   * @throws Misuse if it is to be switched off before all is watched, or before the trace begins
   */
  static Showing of(Setup asked, Wanted wanted, Words words) {
    Setup setup = wanted.keys() ? asked : unpressed(asked);
    long watched = Watching.endMilliseconds(setup.board()) * MILLISECOND;
    long until = wanted.until().orElse(watched);
    if (until < watched) {
      throw words.misuse("run.too-short", seconds(until), seconds(watched));
    }
    List<TraceFile> traces = new ArrayList<>();
    List<End> ends = new ArrayList<>();
    // Ends and traces may come at the same nanosecond; the end is told first, the trace plays on.
    TreeMap<Long, List<Consumer<Machine>>> stops = new TreeMap<>();
    stops.computeIfAbsent(until, t -> new ArrayList<>()).add(m -> ends.add(end(m)));
    wanted
        .probing()
        .ifPresent(
            p -> {
              long at = p.at().orElse(until);
              if (at > until) {
                throw words.misuse("run.trace-too-late", seconds(at), seconds(until));
              }
              stops
                  .computeIfAbsent(at, t -> new ArrayList<>())
                  .add(
                      m -> {
                        TraceFile file = new TraceFile(m, Legs.of(setup), p.pads());
                        m.play(p.cycles(), file);
                        traces.add(file);
                      });
            });
    // Looking at a set plays on too: last of all.
    List<Screen> screens = new ArrayList<>();
    if (Screen.of(setup.board()).isPresent()) {
      stops.get(until).add(m -> screens.add(Screen.look(m)));
    }
    Map<Long, Consumer<Machine>> plan = new TreeMap<>();
    stops.forEach((at, all) -> plan.put(at, m -> all.forEach(what -> what.accept(m))));
    Watching watching = Watching.ofEveryKey(setup, wanted.kind(), plan);
    Seen seen = new Seen(ends.get(0), screens.stream().findFirst());
    return new Showing(
        setup, words, watching, seen, traces.stream().findFirst(), wanted.benchRom());
  }

  /** The same board with nobody at its keys. */
  private static Setup unpressed(Setup s) {
    Board board = s.board().exercised(List.of());
    return new Setup(board, s.faults(), s.out(), s.seed(), s.powerOn());
  }

  private static End end(Machine m) {
    Optional<String> display = m.board().firstOf(PartCatalog.CHAR_DISPLAY).map(PlacedPart::ref);
    return new End(
        m.nanoseconds(),
        m.board().firstOf(PartCatalog.M6502).map(PlacedPart::ref).filter(m::works).isPresent(),
        m.processorHertz(),
        m.locked(),
        m.milestones(),
        display.map(ref -> glass(m, ref)).orElse(Glass.DARK));
  }

  private String clock() {
    if (end.hertz() > 0) {
      return words.say("run.clock", hertz());
    }
    return words.say(end.works() ? "run.no-clock" : "run.no-processor");
  }

  private static Glass glass(Machine m, String ref) {
    boolean lit = m.word(ref, CharDisplay.LIT).orElse(0L) != 0;
    return new Glass(
        lit,
        lit
            ? IntStream.range(0, CharDisplay.CELLS.count())
                .mapToObj(i -> m.cell(ref, CharDisplay.CELLS, i))
                .toList()
            : List.of());
  }

  /** The display as it was when the board was switched off. */
  Picture picture(int sizeOfADot) {
    if (screen.isPresent()) {
      return Picture.of(screen.get(), SIZE_ON_THE_SET);
    }
    if (!watching.hasDisplay()) {
      throw words.misuse("run.no-display", setup.board().title());
    }
    return Picture.of(end.glass(), sizeOfADot);
  }

  /** All that sounded, silence included. */
  Sound sound(int rate) {
    if (!watching.hearable()) {
      return new Sound(rate, new short[(int) (end.nanoseconds() / 1000 * rate / 1_000_000)]);
    }
    return watching.sound(0, end.nanoseconds(), rate);
  }

  /** The file of the trace; only if one was wanted. */
  byte[] trace() {
    return trace.orElseThrow().bytes();
  }

  /** For people. */
  List<String> sentences() {
    List<String> lines = new ArrayList<>();
    lines.add(headline());
    lines.add("");
    if (report.isPresent()) {
      report.get().sentences().forEach(lines::add);
      lines.add(words.say("run.bench.lamp", report.get().lamp()));
      lines.add(words.say("run.bench.sound", report.get().sound()));
      return lines;
    }
    Symptoms symptoms = watching.symptoms();
    for (String name : List.of(Symptoms.DISPLAY, Symptoms.SOUND, Symptoms.LAMP)) {
      if (!symptoms.feature(name).isEmpty()) {
        lines.add(words.say("run.shows." + name, symptoms.feature(name)));
      }
    }
    setup.board().exercise().stream()
        .map(KeyPress::ref)
        .distinct()
        .filter(ref -> !symptoms.feature(Symptoms.KEY + ref).isEmpty())
        .forEach(ref -> lines.add(pressed(symptoms, ref)));
    if (watching.hasDisplay()) {
      lines.add(words.say("run.display-at-end", end.glass().says(font)));
    }
    screen.ifPresent(s -> lines.add(words.say("run.set-at-end", s.says())));
    lines.add(clock());
    if (end.locked()) {
      lines.add(words.say("run.locked"));
    }
    List<Milestone> all = setup.board().milestones();
    if (!all.isEmpty()) {
      lines.add("");
      lines.add(words.say("run.steps"));
      all.forEach(m -> lines.add(step(m)));
    }
    return lines;
  }

  /** What a key brought about; on a board with a set also in its picture. */
  private String pressed(Symptoms symptoms, String ref) {
    String feature = symptoms.feature(Symptoms.KEY + ref);
    String picture = symptoms.feature(Symptoms.PICTURE + ref);
    if (picture.isEmpty()) {
      return words.say("run.key", ref, feature);
    }
    String role = setup.board().part(ref).map(PlacedPart::role).orElse("");
    return words.say("run.key-on-the-set", ref, role, picture, feature);
  }

  private String headline() {
    List<String> wrong = new ArrayList<>(setup.faults().stream().map(Fault::text).toList());
    setup.out().stream().sorted().forEach(ref -> wrong.add(words.say("run.out-of-it", ref)));
    String with = wrong.isEmpty() ? words.say("run.healthy") : String.join(", ", wrong);
    Board board = setup.board();
    return words.say(
        "run.headline", board.title(), board.maker(), with, seconds(end.nanoseconds()));
  }

  private String step(Milestone milestone) {
    Long at = end.milestones().get(milestone.label());
    return at == null
        ? words.say("run.step-missing", milestone.name(), milestone.says())
        : words.say("run.step", seconds(at), milestone.name(), milestone.says());
  }

  /** For machines. */
  Map<String, Object> json() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("board", setup.board().name());
    json.put("faults", setup.faults().stream().map(Fault::text).toList());
    json.put("out", setup.out().stream().sorted().toList());
    json.put("seed", setup.seed());
    json.put("powerOn", setup.powerOn());
    json.put("nanoseconds", end.nanoseconds());
    json.put("shows", new LinkedHashMap<>(watching.symptoms().features()));
    String glass = watching.hasDisplay() ? end.glass().says(font) : "";
    json.put("displayAtEnd", screen.map(Screen::says).orElse(glass));
    report.ifPresent(
        r -> {
          json.put("benchRom", r.sentences());
          json.put("lampPulses", r.pulses());
        });
    json.put("clockHertz", end.hertz());
    json.put("locked", end.locked());
    List<Object> steps = new ArrayList<>();
    for (Milestone m : setup.board().milestones()) {
      Map<String, Object> step = new LinkedHashMap<>();
      step.put("label", m.label());
      step.put("name", m.name());
      Long at = end.milestones().get(m.label());
      step.put("reached", at != null);
      if (at != null) {
        step.put("nanoseconds", at);
      }
      steps.add(step);
    }
    json.put("milestones", steps);
    return json;
  }

  private String hertz() {
    return BigDecimal.valueOf(end.hertz())
        .movePointLeft(6)
        .setScale(4, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** Seconds with three digits behind the point. */
  private static String seconds(long nanoseconds) {
    return BigDecimal.valueOf(nanoseconds, 9).setScale(3, RoundingMode.HALF_UP).toPlainString();
  }
}
