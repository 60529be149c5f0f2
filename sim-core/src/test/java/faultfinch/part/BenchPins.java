package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * One part alone on the bench, its pins set by hand. It refuses what the part's verbs may not do:
 * storing or asking for edges while it settles, driving while it commits.
 */
final class BenchPins implements Pins {
  private static final int CYCLE_NANOSECONDS = 1_000;
  private static final long CHARGES = 55_000_000;
  private static final int LOW_MILLIVOLTS = 50;
  private static final int HIGH_MILLIVOLTS = 3_400;

  private enum Verb {
    NONE,
    SETTLE,
    COMMIT
  }

  private final Part part;
  private final long[] words;
  private final byte[] cells;
  private final Set<String> defects = new LinkedHashSet<>();
  private final Map<String, Integer> cellDefects = new HashMap<>();
  private final Map<Long, Integer> millivolts = new HashMap<>();
  private final Map<String, Bus> buses = new HashMap<>();
  private final List<Integer> looked = new ArrayList<>();
  private final List<Integer> stored = new ArrayList<>();
  private Verb verb = Verb.NONE;
  private Phase phase = Phase.V_ROW;
  private long in;
  private long before;
  private long rose;
  private long fell;
  private long driven;
  private long levels;
  private long now;

  BenchPins(Part part) {
    this.part = part;
    this.words = new long[part.pinout().words().size()];
    this.cells = new byte[part.pinout().cellCount()];
  }

  Part part() {
    return part;
  }

  /** The same part with the same pins, state, defects and time, sharing nothing. */
  BenchPins copy() {
    BenchPins copy = new BenchPins(part);
    System.arraycopy(words, 0, copy.words, 0, words.length);
    System.arraycopy(cells, 0, copy.cells, 0, cells.length);
    copy.defects.addAll(defects);
    copy.cellDefects.putAll(cellDefects);
    copy.phase = phase;
    copy.in = in;
    copy.before = before;
    copy.rose = rose;
    copy.fell = fell;
    copy.now = now;
    return copy;
  }

  BenchPins with(Defect defect) {
    defects.add(defect.name());
    return this;
  }

  /** Sets all inputs at once, in the order of the pin word. */
  void set(long word) {
    rose |= word & ~in;
    fell |= in & ~word;
    in = word;
  }

  BenchPins set(String pin, boolean high) {
    long mask = part.pinout().pin(pin);
    set(high ? in | mask : in & ~mask);
    return this;
  }

  BenchPins high(String... pins) {
    Arrays.stream(pins).forEach(p -> set(p, true));
    return this;
  }

  BenchPins low(String... pins) {
    Arrays.stream(pins).forEach(p -> set(p, false));
    return this;
  }

  BenchPins bus(String name, int value) {
    Bus bus = buses.computeIfAbsent(name, part.pinout()::bus);
    set((in & ~bus.mask()) | bus.at(value));
    return this;
  }

  /** Puts a level on a pin that takes levels; until then such a pin sees a clean low or high. */
  BenchPins millivolts(String pin, int level) {
    millivolts.put(part.pinout().pin(pin), level);
    return this;
  }

  void before(long word) {
    before = word;
  }

  void phase(Phase phase) {
    this.phase = phase;
  }

  void passMicroseconds(long microseconds) {
    now += microseconds;
  }

  void settle() {
    driven = 0;
    levels = 0;
    looked.clear();
    verb = Verb.SETTLE;
    part.settle(this);
    verb = Verb.NONE;
  }

  void commit(Phase phase) {
    this.phase = phase;
    looked.clear();
    stored.clear();
    verb = Verb.COMMIT;
    part.commit(this, phase);
    verb = Verb.NONE;
    rose = 0;
    fell = 0;
  }

  void elapse() {
    verb = Verb.COMMIT;
    part.elapse(this);
    verb = Verb.NONE;
  }

  /** Many steps of a part that counts. */
  long advance(long steps, long watched) {
    verb = Verb.COMMIT;
    long taken = ((Counting) part).advance(this, steps, watched);
    verb = Verb.NONE;
    return taken;
  }

  /** What it stores of that on which it depends what a part that counts shows. */
  long[] picturing() {
    verb = Verb.COMMIT;
    long[] picturing = ((Counting) part).picturing(this);
    verb = Verb.NONE;
    return picturing;
  }

  /** Of its registers what the addresses depend on that a part that counts shows. */
  long[] steering() {
    verb = Verb.COMMIT;
    long[] steering = ((Counting) part).steering(this);
    verb = Verb.NONE;
    return steering;
  }

  /** Levels after the last settling; a pin that lets go shows high. */
  long shown() {
    return levels | ~driven;
  }

  void powerOn(PowerOn chance) {
    verb = Verb.COMMIT;
    part.powerOn(this, chance);
    verb = Verb.NONE;
  }

  /** Fills words and cells with seeded bits of their declared widths. */
  void scramble(SplittableRandom random) {
    for (State word : part.pinout().words()) {
      words[word.offset()] = random.nextLong() & (-1L >>> (64 - word.width()));
    }
    for (State array : part.pinout().cellArrays()) {
      for (int i = 0; i < array.count(); i++) {
        cells[array.offset() + i] = (byte) (random.nextInt() & ((1 << array.width()) - 1));
      }
    }
  }

  /** Stores something else in one word or one cell. */
  void scrambleOne(SplittableRandom random) {
    int at = random.nextInt(words.length + cells.length);
    if (at < words.length) {
      State word = part.pinout().words().get(at);
      words[word.offset()] = random.nextLong() & (-1L >>> (64 - word.width()));
    } else {
      cells[at - words.length] = (byte) random.nextInt();
    }
  }

  long driven() {
    return driven;
  }

  /** Levels of the pins driven after the last settling; zero where nothing drives. */
  long levels() {
    return levels;
  }

  List<Integer> looked() {
    return List.copyOf(looked);
  }

  List<Integer> stored() {
    return List.copyOf(stored);
  }

  /** The part settled: {@code H}, {@code L}, or {@code Z} where the pin lets go. */
  char out(String name) {
    settle();
    Pin pin = part.pinout().find(name).orElseThrow();
    boolean high = (levels & pin.mask()) != 0;
    if ((driven & pin.mask()) == 0 || (pin.openCollector() && high)) {
      return 'Z';
    }
    return high ? 'H' : 'L';
  }

  /** The part settled: the value it drives on a bus it drives as a whole. */
  int outBus(String name) {
    settle();
    Bus bus = buses.computeIfAbsent(name, part.pinout()::bus);
    if ((driven & bus.mask()) != bus.mask()) {
      throw new AssertionError("bus " + name + " is not driven as a whole");
    }
    return bus.of(levels);
  }

  boolean sameState(BenchPins other) {
    return Arrays.equals(words, other.words) && Arrays.equals(cells, other.cells);
  }

  @Override
  public long in() {
    return in;
  }

  @Override
  public long before() {
    return before;
  }

  @Override
  public int millivolts(long pin) {
    if ((part.pinout().role(Pin.Role.LEVEL) & pin) == 0) {
      throw new AssertionError("the part measures a pin that takes no level");
    }
    return millivolts.getOrDefault(pin, (in & pin) != 0 ? HIGH_MILLIVOLTS : LOW_MILLIVOLTS);
  }

  @Override
  public long rose() {
    only(Verb.COMMIT, "asks for edges");
    return rose;
  }

  @Override
  public long fell() {
    only(Verb.COMMIT, "asks for edges");
    return fell;
  }

  @Override
  public void drive(long pins, long high) {
    only(Verb.SETTLE, "drives");
    driven |= pins;
    levels = (levels & ~pins) | (high & pins);
  }

  @Override
  public long state(State word) {
    return words[word.offset()];
  }

  @Override
  public void hold(State word, long value) {
    only(Verb.COMMIT, "stores " + word.name());
    if (word.width() < 64 && value >>> word.width() != 0) {
      throw new AssertionError(word.name() + " does not hold " + value);
    }
    words[word.offset()] = value;
  }

  @Override
  public int cell(State array, int index) {
    looked.add(array.offset() + index);
    return cells[array.offset() + index] & 0xFF;
  }

  @Override
  public void hold(State array, int index, int value) {
    only(Verb.COMMIT, "stores " + array.name());
    if (value >>> array.width() != 0) {
      throw new AssertionError(array.name() + " does not hold " + value);
    }
    stored.add(array.offset() + index);
    cells[array.offset() + index] = (byte) value;
  }

  /** The same part with a cell that has a defect. */
  BenchPins with(String defect, int cell) {
    cellDefects.put(defect, cell);
    return this;
  }

  @Override
  public int[] cellsWith(String defect) {
    Integer cell = cellDefects.get(defect);
    return cell == null ? new int[0] : new int[] {cell};
  }

  @Override
  public boolean defect(String name) {
    return defects.contains(name);
  }

  @Override
  public Phase phase() {
    return phase;
  }

  @Override
  public int caseTenths() {
    return 250;
  }

  @Override
  public long charges(long pin) {
    return CHARGES;
  }

  @Override
  public long now() {
    return now;
  }

  @Override
  public long nanoseconds() {
    return now * CYCLE_NANOSECONDS;
  }

  @Override
  public long cycleAfter(long nanoseconds) {
    return (nanoseconds + CYCLE_NANOSECONDS - 1) / CYCLE_NANOSECONDS;
  }

  private void only(Verb allowed, String does) {
    if (verb != allowed) {
      throw new AssertionError("the part " + does + " in " + verb);
    }
  }
}
