package faultfinch.machine;

import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** One part's view of the machine's arrays. */
final class PartPins implements Pins {
  private static final int[] NONE = {};
  final int part;
  private final Levels levels;
  private final Store store;
  private final int wordBase;
  private final int cellBase;
  private final int cellShift;
  private final int cellMask;
  private final Set<String> defects;
  private final long dataPins;

  /** Stuck cells by ascending index: bits cleared, bits set; empty on most parts. */
  private final int[] stuckAt;

  private final int[] stuckClear;
  private final int[] stuckSet;

  /** Cells by what is wrong with them other than being stuck. */
  private final Map<String, int[]> cellDefects;

  /** All cells that behave otherwise than the rest. */
  private final int[] odd;

  long in;
  long before;
  long rose;
  long fell;
  long driven;
  long bits;

  /** Set when something of what the part stores may have moved. */
  boolean stored = true;

  /** Count of the levels' rests at which its outputs were last marked for settling. */
  long touched;

  PartPins(int part, Levels levels, Store store) {
    Circuit c = levels.circuit;
    this.part = part;
    this.levels = levels;
    this.store = store;
    this.wordBase = c.wordBase[part];
    this.cellBase = c.cellBase[part];
    this.cellShift = c.cellShift[part];
    this.cellMask = c.cellMask[part];
    this.defects = Set.copyOf(c.harm.defects.getOrDefault(c.refs[part], Set.of()));
    this.dataPins = c.parts[part].pinout().role(Pin.Role.DATA);
    SortedMap<Integer, int[]> stuck = new TreeMap<>();
    for (HarmNotes.Cell cell : c.harm.cells) {
      if (cell.ref().equals(c.refs[part])) {
        int[] bits = stuck.computeIfAbsent(cell.index(), k -> new int[2]);
        bits[0] |= cell.clear();
        bits[1] = bits[1] & ~cell.clear() | cell.set();
      }
    }
    this.stuckAt = stuck.keySet().stream().mapToInt(Integer::intValue).toArray();
    this.stuckClear = stuck.values().stream().mapToInt(bits -> bits[0]).toArray();
    this.stuckSet = stuck.values().stream().mapToInt(bits -> bits[1]).toArray();
    this.cellDefects = new HashMap<>();
    IntStream.Builder unlike = IntStream.builder();
    Arrays.stream(stuckAt).forEach(unlike::add);
    for (HarmNotes.CellDefect d : c.harm.cellDefects) {
      if (d.ref().equals(c.refs[part]) && c.parts[part] instanceof RowMemory memory) {
        cellDefects.merge(
            d.way(),
            new int[] {d.index()},
            (a, b) -> IntStream.concat(Arrays.stream(a), Arrays.stream(b)).toArray());
        unlike.add(d.index()).add(memory.beside(d.index()));
      }
    }
    this.odd = unlike.build().sorted().toArray();
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
    Circuit c = levels.circuit;
    if ((c.readMask[part] & pin) != 0) {
      return (c.readBits[part] & pin) != 0 ? Wiring.RAIL_MILLIVOLTS : 0;
    }
    return levels.mv[c.netOf[c.pinBase[part] + Long.numberOfTrailingZeros(pin)]];
  }

  @Override
  public int caseTenths() {
    return levels.circuit.caseTenths[part];
  }

  @Override
  public long charges(long pin) {
    Circuit c = levels.circuit;
    return Ramp.nanoseconds(c, levels, c.netOf[c.pinBase[part] + Long.numberOfTrailingZeros(pin)]);
  }

  @Override
  public long rose() {
    return rose;
  }

  @Override
  public long fell() {
    return fell;
  }

  @Override
  public void drive(long pins, long value) {
    driven |= pins;
    bits = (bits & ~pins) | (value & pins);
  }

  @Override
  public long state(State word) {
    return store.words()[wordBase + word.offset()];
  }

  @Override
  public void hold(State word, long value) {
    int at = wordBase + word.offset();
    levels.recorder.held(part, store.words()[at] != value);
    if (store.words()[at] != value) {
      store.words()[at] = value;
      levels.stateMoved(part);
    }
  }

  @Override
  public int cell(State cells, int index) {
    int at = cells.offset() + index;
    levels.recorder.looked(part, at);
    return found(at);
  }

  /** What is found in a cell of all that the part has. */
  int found(int at) {
    int value = (store.cells()[cellBase + at] & cellMask) >>> cellShift;
    int i = stuckAt.length == 0 ? -1 : Arrays.binarySearch(stuckAt, at);
    return i < 0 ? value : (value & ~stuckClear[i]) | stuckSet[i];
  }

  /** Whether any cell does not just keep what is written to it. */
  boolean anyStuck() {
    return odd.length > 0;
  }

  /** Whether a cell does not just keep what is written to it, or writing to it does more. */
  boolean stuck(int cell) {
    return Arrays.binarySearch(odd, cell) >= 0;
  }

  @Override
  public void hold(State cells, int index, int value) {
    int at = cells.offset() + index;
    levels.recorder.stored(part, at);
    int was = store.cells()[cellBase + at];
    byte now = (byte) (was & ~cellMask | value << cellShift & cellMask);
    if (was != now) {
      store.put(cellBase + at, now);
      levels.touch(part);
    }
  }

  @Override
  public void holdBits(State cells, int from, long bits) {
    int at = cellBase + cells.offset() + from;
    for (int i = 0; i < Long.SIZE; i++) {
      int bit = (int) (bits >>> i) & 1;
      store.put(at + i, (byte) (store.cells()[at + i] & ~cellMask | bit << cellShift & cellMask));
    }
    levels.touch(part);
  }

  @Override
  public boolean defect(String name) {
    return defects.contains(name);
  }

  @Override
  public int[] cellsWith(String defect) {
    return cellDefects.isEmpty() ? NONE : cellDefects.getOrDefault(defect, NONE);
  }

  @Override
  public boolean refreshed(int row) {
    return levels.refreshed != null
        && levels.refreshed[part] != null
        && levels.refreshed[part][row];
  }

  @Override
  public Phase phase() {
    return levels.phase;
  }

  @Override
  public long now() {
    return levels.now;
  }

  @Override
  public long nanoseconds() {
    return levels.nanosecondsAt(levels.now);
  }

  @Override
  public long cycleAfter(long nanoseconds) {
    return levels.cycleAfter(nanoseconds);
  }

  long dataPins() {
    return dataPins;
  }
}
