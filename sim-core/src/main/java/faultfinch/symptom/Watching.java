package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.machine.SoundNet;
import faultfinch.machine.Trace;
import faultfinch.part.CharDisplay;
import faultfinch.part.PartCatalog;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Watches a board from power-on through the exercise of its keys, as its owner would: the display
 * and the lamp every 20 ms, the sounder at every change.
 */
public final class Watching {
  /** Which machine plays; they agree, one is faster. */
  public static final Machine.Kind KIND = Machine.Kind.FAST;

  /** Between two looks at display and lamp, in milliseconds. */
  public static final int SAMPLE_MS = 20;

  private static final long MILLISECOND = 1_000_000;
  private static final int AFTER_THE_LAST_KEY_MS = 400;

  /** A diode drops 0.7 V and 10 ohms; below 2 mA a lamp cannot be seen, above 30 none is left. */
  private static final int LIT_FROM_MV = 720;

  private static final int LIT_TO_MV = 1000;

  /** Half of what a gate swings. */
  private static final int SOUNDER_MV = 1300;

  /** When somebody looks at the set: before the keys always. */
  private enum Looks {
    BEFORE,
    AFTER_ALL_KEYS,
    AFTER_EVERY_KEY
  }

  private final Board board;
  private final Machine machine;
  private final Optional<String> display;
  private final Optional<String> lamp;
  private final Optional<String> sounder;
  private final Trace sound;
  private final Optional<Speaker> speaker;
  private Optional<List<Heard>> heard = Optional.empty();
  private Optional<Screen> screen = Optional.empty();
  private Optional<Screen> typed = Optional.empty();
  private final Looks looks;
  private final Frames frames;
  private final List<Screen> afterKeys = new ArrayList<>();
  private final List<Glass> glasses = new ArrayList<>();
  private final List<Boolean> lit = new ArrayList<>();

  private Watching(Machine machine, Looks looks) {
    this(machine, looks, Frames.NONE);
  }

  private Watching(Machine machine, Looks looks, Frames frames) {
    this.machine = machine;
    this.looks = looks;
    this.frames = frames;
    board = machine.board();
    display = board.firstOf(PartCatalog.CHAR_DISPLAY).map(PlacedPart::ref);
    lamp = board.firstOf(PartCatalog.LED).map(PlacedPart::ref);
    sounder = board.firstOf(PartCatalog.BEEPER).map(PlacedPart::ref);
    sound = sounder.map(s -> machine.watch(new Pad(s, "1"), SOUNDER_MV)).orElseGet(Trace::new);
    speaker = Speaker.of(board);
  }

  /** What another sees and hears of a board whose run was the same. */
  private Watching(Watching seen, Machine machine) {
    this.machine = machine;
    looks = seen.looks;
    frames = seen.frames;
    board = machine.board();
    display = seen.display;
    lamp = seen.lamp;
    sounder = seen.sounder;
    sound = seen.sound;
    speaker = seen.speaker;
    screen = seen.screen;
    typed = seen.typed;
    glasses.addAll(seen.glasses);
    lit.addAll(seen.lit);
    afterKeys.addAll(seen.afterKeys);
    boolean alike = speaker.isPresent() && SoundNet.of(machine).equals(SoundNet.of(seen.machine));
    heard = alike ? seen.heard : Optional.empty();
  }

  /**
   * What would have been seen and heard of a board that did the same on every pin: the path of its
   * sound may be another.
   *
   * @param machine a double that stands at the end of the watch
   */
  public Watching on(Machine machine) {
    return new Watching(this, machine);
  }

  /** Watches a board. */
  public static Watching of(Setup setup) {
    return of(setup, Map.of());
  }

  /**
   * Watches a board and stops now and then for something else.
   *
   * @param stops what to do with the machine, by nanoseconds since power-on; it may play cycles
   */
  public static Watching of(Setup setup, Map<Long, Consumer<Machine>> stops) {
    return of(setup, KIND, stops);
  }

  /** The same on a machine of one's choice. */
  public static Watching of(Setup setup, Machine.Kind kind, Map<Long, Consumer<Machine>> stops) {
    Watching watching = new Watching(new Machine(setup, kind), Looks.BEFORE);
    watching.run(stops);
    return watching;
  }

  /**
   * The same of a machine that somebody else follows too.
   *
   * @param machine just switched on
   */
  public static Watching of(Machine machine, Map<Long, Consumer<Machine>> stops) {
    Watching watching = new Watching(machine, Looks.BEFORE);
    watching.run(stops);
    return watching;
  }

  /** The same of such a machine, with a look at the set after every key. */
  public static Watching ofEveryKey(Machine machine, Map<Long, Consumer<Machine>> stops) {
    Watching watching = new Watching(machine, Looks.AFTER_EVERY_KEY);
    watching.run(stops);
    return watching;
  }

  /**
   * The same with one more look at the set when all keys were pressed.
   *
   * @param frames pictures shared with other runs
   */
  public static Watching ofAllKeys(
      Machine machine, Frames frames, Map<Long, Consumer<Machine>> stops) {
    Watching watching = new Watching(machine, Looks.AFTER_ALL_KEYS, frames);
    watching.run(stops);
    return watching;
  }

  /** Pads of a board whose millivolts its owner sees or hears: lamp, sounder, the set's sync. */
  public static List<Pad> eyed(Board board) {
    List<Pad> eyed = new ArrayList<>();
    board.firstOf(PartCatalog.LED).map(PlacedPart::ref).ifPresent(ref -> ends(eyed, ref, "A", "K"));
    board
        .firstOf(PartCatalog.BEEPER)
        .map(PlacedPart::ref)
        .ifPresent(ref -> ends(eyed, ref, "1", "2"));
    Screen.of(board).ifPresent(ref -> eyed.add(new Pad(ref, Screen.SYNC)));
    return List.copyOf(eyed);
  }

  private static void ends(List<Pad> eyed, String ref, String one, String other) {
    eyed.add(new Pad(ref, one));
    eyed.add(new Pad(ref, other));
  }

  /** The same with a look at the set after every key, each of which plays two frames. */
  public static Watching ofEveryKey(
      Setup setup, Machine.Kind kind, Map<Long, Consumer<Machine>> stops) {
    Watching watching = new Watching(new Machine(setup, kind), Looks.AFTER_EVERY_KEY);
    watching.run(stops);
    return watching;
  }

  /**
   * End of a watch over a board, in milliseconds since power-on; a multiple of the sample time. The
   * pace of a lamp takes as long again to see as the board took to be ready.
   */
  public static int endMilliseconds(Board board) {
    int last =
        board.exercise().stream()
            .mapToInt(k -> k.atMilliseconds() + k.forMilliseconds() + AFTER_THE_LAST_KEY_MS)
            .max()
            .orElse(2 * board.readyMilliseconds());
    return (last + SAMPLE_MS - 1) / SAMPLE_MS * SAMPLE_MS;
  }

  /** When a healthy board is ready and no key was pressed yet, in milliseconds since power-on. */
  public static int readyMilliseconds(Board board) {
    int first =
        board.exercise().stream()
            .mapToInt(KeyPress::atMilliseconds)
            .min()
            .orElse(board.readyMilliseconds());
    return first / SAMPLE_MS * SAMPLE_MS;
  }

  private void run(Map<Long, Consumer<Machine>> stops) {
    TreeMap<Long, List<Consumer<Machine>>> plan = new TreeMap<>();
    for (int ms = SAMPLE_MS; ms <= endMilliseconds(board); ms += SAMPLE_MS) {
      add(plan, ms * MILLISECOND, m -> sample());
    }
    Set<Long> listens = new TreeSet<>();
    for (int ms = 0; ms <= endMilliseconds(board) && speaker.isPresent(); ms += Speaker.SAMPLE_MS) {
      listens.add(ms * MILLISECOND);
      add(plan, ms * MILLISECOND, speaker.get()::look);
    }
    if (hasScreen()) {
      long at = (readyMilliseconds(board) - Screen.LOOK_MS) * MILLISECOND;
      add(plan, at, m -> screen = Optional.of(Screen.look(m, frames)));
    }
    for (KeyPress k : board.exercise()) {
      long at = k.atMilliseconds() * MILLISECOND;
      add(plan, at, m -> m.hold(k.ref(), true));
      add(plan, at + k.forMilliseconds() * MILLISECOND, m -> m.hold(k.ref(), false));
    }
    // After the keys: a look that is due when a key is let go comes after it was.
    boolean every = looks == Looks.AFTER_EVERY_KEY;
    List<KeyPress> presses = every && hasScreen() ? board.exercise() : List.of();
    for (int i = 0; i < presses.size(); i++) {
      boolean last = i + 1 == presses.size();
      int to = last ? endMilliseconds(board) : presses.get(i + 1).atMilliseconds();
      add(plan, (to - Screen.LOOK_MS) * MILLISECOND, m -> afterKeys.add(Screen.look(m, frames)));
    }
    if (looks == Looks.AFTER_ALL_KEYS && hasScreen() && !board.exercise().isEmpty()) {
      long at = (endMilliseconds(board) - Screen.LOOK_MS) * MILLISECOND;
      add(plan, at, m -> typed = Optional.of(Screen.look(m, frames)));
    }
    stops.forEach((at, what) -> add(plan, at, what));
    plan.forEach(
        (at, all) -> {
          if (all.size() == 1 && listens.contains(at)) {
            machine.passTo(at);
          } else {
            machine.runTo(at);
          }
          all.forEach(what -> what.accept(machine));
        });
  }

  private boolean hasScreen() {
    return Screen.of(board).isPresent();
  }

  private static void add(
      TreeMap<Long, List<Consumer<Machine>>> plan, long at, Consumer<Machine> what) {
    plan.computeIfAbsent(at, k -> new ArrayList<>()).add(what);
  }

  private void sample() {
    glasses.add(display.map(this::glass).orElse(Glass.DARK));
    lamp.ifPresent(ref -> lit.add(lit(ref)));
  }

  private Glass glass(String ref) {
    if (machine.word(ref, CharDisplay.LIT).orElse(0L) == 0) {
      return Glass.DARK;
    }
    return new Glass(
        true,
        IntStream.range(0, CharDisplay.CELLS.count())
            .mapToObj(i -> machine.cell(ref, CharDisplay.CELLS, i))
            .toList());
  }

  private boolean lit(String ref) {
    machine.rest();
    int drop =
        machine.millivolts(new Pad(ref, "A"), false) - machine.millivolts(new Pad(ref, "K"), false);
    return machine.works(ref) && drop >= LIT_FROM_MV && drop <= LIT_TO_MV;
  }

  /** The board watched. */
  public Board board() {
    return board;
  }

  /** The display at a time, in milliseconds since power-on: the last sample not after it. */
  public Glass glassAt(int milliseconds) {
    int sample = milliseconds / SAMPLE_MS - 1;
    return sample < 0 ? Glass.DARK : glasses.get(Math.min(sample, glasses.size() - 1));
  }

  /** The display at every sample, the first 20 ms after power-on. */
  public List<Glass> glasses() {
    return List.copyOf(glasses);
  }

  /** Whether the lamp was lit at every sample; empty if the board has none. */
  public List<Boolean> lamp() {
    return List.copyOf(lit);
  }

  /** What the set showed before the first key; empty if the board has none. */
  public Optional<Screen> screen() {
    return screen;
  }

  /** What the set showed when all keys were pressed; empty if nobody looked. */
  public Optional<Screen> typed() {
    return typed;
  }

  /** What the set showed after each press of the exercise; empty if nobody looked. */
  List<Screen> afterKeys() {
    return List.copyOf(afterKeys);
  }

  /** Whether the board has a character display. */
  public boolean hasDisplay() {
    return display.isPresent();
  }

  /** Whether what drives the sounder can be heard. */
  public boolean hearable() {
    return sounder
        .map(s -> machine.works(s) && !machine.floating(new Pad(s, "2"), false))
        .orElse(speaker.isPresent());
  }

  /**
   * What sounded.
   *
   * @param from nanoseconds since power-on
   * @param to after from, not after the end of the watch
   * @param rate samples a second, 8000 or more
   */
  public Sound sound(long from, long to, int rate) {
    return speaker
        .map(s -> s.sound(SoundNet.of(machine), from, to, rate))
        .orElseGet(() -> Sound.of(sound, from, to, rate));
  }

  /** Tones that begin in a span of milliseconds since power-on. */
  public List<Tone> tones(int from, int to) {
    if (speaker.isPresent()) {
      return heard(from, to).stream().flatMap(h -> h.tones().stream()).toList();
    }
    return hearable() ? Tones.heard(sound, from * MILLISECOND, to * MILLISECOND) : List.of();
  }

  /** Who listens, if the board sounds through an analogue path. */
  Optional<Speaker> speaker() {
    return speaker;
  }

  /** What an ear says of the sound that begins in a span of milliseconds since power-on. */
  List<String> says(int from, int to) {
    return speaker.isPresent()
        ? heard(from, to).stream().map(Heard::says).toList()
        : tones(from, to).stream().map(Tone::says).toList();
  }

  private List<Heard> heard(int from, int to) {
    if (heard.isEmpty()) {
      long end = endMilliseconds(board) * MILLISECOND;
      heard = Optional.of(Ear.hears(sound(0, end, Ear.RATE), 0));
    }
    return heard.get().stream()
        .filter(h -> h.fromMilliseconds() >= from && h.fromMilliseconds() < to)
        .toList();
  }

  /**
   * Milestones of the firmware reached, with nanoseconds since power-on. For people and tests: no
   * owner and no instrument sees them.
   */
  public Map<String, Long> milestones() {
    return new TreeMap<>(machine.milestones());
  }

  /** What shows, as features. */
  public Symptoms symptoms() {
    return Symptoms.of(this);
  }
}
