package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.M6502;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Bus;
import faultfinch.signal.Electrical;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Which address lines, and whether the clockwork, could sway the levels of a settled phase: so that
 * what one access showed may be said of others.
 *
 * <p>How: a set of address lines stands on every net, and a mark for the clockwork. An output gets
 * the sets of those inputs that can change it, found by trying every combination of the swayed
 * inputs with the others as they are; so a gate held by its other input lets nothing through. Then
 * every part that stores is looked at: what tells it whether to store must not be swayed, and where
 * it stores or drives, each address pin may follow one line. A line that breaks this is struck off
 * and the phase is gone through again; the clockwork breaking it refuses the access. What the data
 * lines carry is left out: two trials tell that.
 */
final class Influence {
  static final int CLOCKWORK = 1 << 16;
  private static final int LINES = 16;
  private static final int MOST_TRIED = 8;
  private static final int SCHMITT_FALLING = Electrical.figure("threshold.schmitt.falling");
  private static final Pinout CPU = new M6502().pinout();
  private static final Bus ADDRESS = CPU.bus("A");

  /** What the processor drives, but for its clocks. */
  private static final long SHOWN =
      CPU.pins().stream()
          .filter(pin -> pin.drives() && !pin.name().startsWith("PHI"))
          .mapToLong(Pin::mask)
          .sum();

  private final Circuit c;
  private final Levels levels;
  private final Clockwork clockwork;
  private final byte[] lineOf;
  private final long[] lineDrivers;
  private final int[] onNet;

  /** Per part the pins that read a swayed net. */
  private final long[] swayed;

  private final long[] control;
  private final long[] selectHigh;
  private final long[] selectLow;
  private final long[] writeLow;
  private final long[] writeHigh;
  private final long[] registers;
  private final long[] receives;
  private final boolean[] carries;
  private final boolean[] stores;
  private final boolean[] aside;
  private final long[] triedDriven = new long[1 << MOST_TRIED];
  private final long[] triedBits = new long[1 << MOST_TRIED];

  /** Per part the sets on its pins in the row phase and at the end of the processor's half. */
  private final int[][] rows;

  private final int[][] ends;

  /** Outputs that are looked at; all unless only some pins matter. */
  private int[] nodes;

  /** Outputs of which something that they follow has become swayed since they were looked at. */
  private final boolean[] due;

  /** Outputs that put something on their nets though nothing that they follow is swayed. */
  private final boolean[] roots;

  private int lines;
  private boolean again;
  private boolean refused;
  private boolean driverSwayed;
  private boolean alone;

  private Influence(PlainCycle plain, Influence like) {
    c = plain.circuit;
    levels = plain.levels;
    clockwork = like.clockwork;
    lineOf = like.lineOf;
    lineDrivers = like.lineDrivers;
    onNet = new int[c.netCount];
    swayed = new long[c.parts.length];
    control = like.control;
    selectHigh = like.selectHigh;
    selectLow = like.selectLow;
    writeLow = like.writeLow;
    writeHigh = like.writeHigh;
    registers = like.registers;
    receives = like.receives;
    carries = like.carries;
    stores = like.stores;
    aside = like.aside;
    rows = new int[c.parts.length][0];
    ends = rows;
    nodes = like.nodes;
    due = new boolean[c.nodePart.length];
    roots = like.roots;
  }

  Influence(PlainCycle plain, Reach reach, long[] lineDrivers) {
    this.c = plain.circuit;
    this.levels = plain.levels;
    this.clockwork = reach.clockwork;
    this.lineOf = reach.lineOf;
    this.lineDrivers = lineDrivers;
    this.onNet = new int[c.netCount];
    this.swayed = new long[c.parts.length];
    int n = c.parts.length;
    control = new long[n];
    selectHigh = new long[n];
    selectLow = new long[n];
    writeLow = new long[n];
    writeHigh = new long[n];
    registers = new long[n];
    receives = new long[n];
    carries = new boolean[c.partOf.length];
    for (int g = 0; g < carries.length; g++) {
      carries[g] = carries(g);
    }
    stores = new boolean[n];
    aside = new boolean[n];
    rows = new int[n][];
    ends = new int[n][];
    nodes = IntStream.range(0, c.nodePart.length).toArray();
    due = new boolean[nodes.length];
    roots = new boolean[nodes.length];
    for (int node : nodes) {
      int p = c.nodePart[node];
      roots[node] = clockwork.parts[p] || (c.nodePins[node] & lineDrivers[p]) != 0;
    }
    for (int p = 0; p < n; p++) {
      stores[p] = c.alive[p] && Clockwork.stores(c, p) && !clockwork.parts[p];
      aside[p] = aside(p);
      rows[p] = new int[c.parts[p].pinout().pins().size()];
      ends[p] = new int[rows[p].length];
      for (Pin pin : c.parts[p].pinout().pins()) {
        if (pin.receives()) {
          roles(p, pin);
        }
      }
    }
  }

  private void roles(int p, Pin pin) {
    receives[p] |= pin.mask();
    switch (pin.role()) {
      case SELECT -> {
        selectHigh[p] |= pin.activeLow() ? 0 : pin.mask();
        selectLow[p] |= pin.activeLow() ? pin.mask() : 0;
        control[p] |= pin.mask();
      }
      case WRITE -> {
        writeHigh[p] |= pin.activeLow() ? 0 : pin.mask();
        writeLow[p] |= pin.activeLow() ? pin.mask() : 0;
        control[p] |= pin.mask();
      }
      case REGISTER -> registers[p] |= pin.mask();
      case DATA -> {
        // What is on the data lines is told by the trials.
      }
      default -> control[p] |= pin.mask();
    }
  }

  /** Whether a pin that drives its net alone makes every receiver read what it drives. */
  private boolean carries(int g) {
    int net = c.netOf[g];
    if (c.groupOf[net] >= 0 || c.collector[g] || c.lowOhm[g] == 0 || c.highOhm[g] == 0) {
      return false;
    }
    double load = 0;
    double pulled = 0;
    for (int i = 0; i < c.loadMv[net].length; i++) {
      if (c.loadSwitch[net][i] >= 0) {
        return false;
      }
      load += 1.0 / c.loadOhm[net][i];
      pulled += (double) c.loadMv[net][i] / c.loadOhm[net][i];
    }
    double low = 1.0 / c.lowOhm[g];
    double high = 1.0 / c.highOhm[g];
    int lowMv = levels.solver.single(net, load + low, pulled + low * c.lowMv[g]);
    int highMv = levels.solver.single(net, load + high, pulled + high * c.highMv[g]);
    boolean carries = lowMv < SCHMITT_FALLING;
    for (int r : c.receivers[net]) {
      carries &= lowMv <= c.threshold[r] && highMv > c.threshold[r];
    }
    return carries;
  }

  /** A memory whose outputs only the clockwork's side reads has no say in an access. */
  private boolean aside(int p) {
    boolean aside = c.parts[p] instanceof Memory && !c.parts[p].commitsEveryPhase();
    for (Pin pin : c.parts[p].pinout().pins()) {
      aside &= !pin.drives() || clockwork.nets[c.netOf[c.pinBase[p] + pin.bit()]];
    }
    return aside;
  }

  /** Begins a trial in which these address lines might be otherwise. */
  void begin(int lines) {
    this.lines = lines;
    refused = false;
    driverSwayed = false;
  }

  /** The same eyes on another machine of the same circuit. */
  Influence on(PlainCycle other) {
    return new Influence(other, this);
  }

  /** From now on only these pins of each part are asked about: what leads to no other is left. */
  void only(long[] pins) {
    boolean[] wanted = new boolean[c.netCount];
    for (int g = 0; g < c.netOf.length; g++) {
      wanted[c.netOf[g]] |= (pins[c.partOf[g]] >>> c.bitOf[g] & 1) != 0;
    }
    boolean[] leads = new boolean[c.nodePart.length];
    boolean more = true;
    while (more) {
      more = false;
      for (int node = 0; node < leads.length; node++) {
        if (!leads[node] && (c.nodeGroup[node] >= 0 || anyWanted(node, wanted))) {
          leads[node] = true;
          more = true;
          long from = c.nodeFollows[node] | c.nodeEnables[node];
          for (; from != 0; from &= from - 1) {
            int bit = Long.numberOfTrailingZeros(from);
            wanted[c.netOf[c.pinBase[c.nodePart[node]] + bit]] = true;
          }
        }
      }
    }
    nodes = IntStream.range(0, leads.length).filter(node -> leads[node]).toArray();
  }

  private boolean anyWanted(int node, boolean[] wanted) {
    boolean any = false;
    for (long left = c.nodePins[node]; left != 0; left &= left - 1) {
      int net = c.netOf[c.pinBase[c.nodePart[node]] + Long.numberOfTrailingZeros(left)];
      any |= wanted[net] || c.groupOf[net] >= 0;
    }
    return any;
  }

  /**
   * Looks at a settled phase for what an access sways, be it by any of its lines, and what memories
   * hold and counting parts and takers show.
   */
  void alone() {
    Recorder noted = levels.recorder;
    levels.recorder = Recorder.NONE;
    alone = true;
    lines = 0;
    spread();
    alone = false;
    levels.recorder = noted;
  }

  /** Whether any of these pins was swayed as {@link #alone} looked. */
  boolean swayed(int p, long pins) {
    return sets(p, pins) != 0;
  }

  /** Address lines that may be otherwise without anything but addresses of memories being so. */
  int lines() {
    return lines;
  }

  /** Whether the clockwork has a say in what the access does. */
  boolean refused() {
    return refused;
  }

  /** Whether what drives the data lines, no memory, reads the clockwork. */
  boolean driverSwayed() {
    return driverSwayed;
  }

  /** The lines that a pin followed at the end of the access. */
  int atEnd(int part, int bit) {
    return ends[part][bit] & (lines | CLOCKWORK);
  }

  /** The lines that a pin followed as the row was strobed. */
  int atRow(int part, int bit) {
    return rows[part][bit] & (lines | CLOCKWORK);
  }

  /** Looks at a settled phase, before anything commits. */
  void phase(Phase phase) {
    Recorder noted = levels.recorder;
    levels.recorder = Recorder.NONE;
    do {
      again = false;
      spread();
      checkNets();
      for (int p = 0; p < stores.length && !refused; p++) {
        check(p, phase);
      }
      if (phase == Phase.C_END) {
        checkLines();
      }
    } while (again && !refused);
    levels.recorder = noted;
    if (phase == Phase.C_ROW) {
      keep(rows);
    } else if (phase == Phase.C_END) {
      keep(ends);
    }
  }

  private void keep(int[][] sets) {
    for (int p = 0; p < sets.length; p++) {
      Arrays.fill(sets[p], 0);
      for (long left = receives[p] & swayed[p]; left != 0; left &= left - 1) {
        int bit = Long.numberOfTrailingZeros(left);
        sets[p][bit] = set(p, bit);
      }
    }
  }

  /** A line on a net must be what its receivers read there, or it says nothing of cells. */
  private void checkNets() {
    for (int net = 0; net < onNet.length; net++) {
      int set = onNet[net] & lines;
      if (set != 0 && !clockwork.nets[net] && !carried(net)) {
        strike(set);
      }
    }
  }

  private boolean carried(int net) {
    int driving = -1;
    for (int g : c.drivers[net]) {
      if ((levels.driven[c.partOf[g]] >>> c.bitOf[g] & 1) != 0) {
        if (driving >= 0) {
          return false;
        }
        driving = g;
      }
    }
    return driving >= 0 && carries[driving];
  }

  private void strike(int set) {
    if (alone) {
      return;
    }
    if ((set & CLOCKWORK) != 0) {
      refused = true;
    } else if ((set & lines) != 0) {
      lines &= ~Integer.highestOneBit(set & lines);
      again = true;
    }
  }

  private int set(int p, int bit) {
    return (swayed[p] >>> bit & 1) == 0 ? 0 : onNet[c.netOf[c.pinBase[p] + bit]];
  }

  private int sets(int p, long pins) {
    int all = 0;
    for (long left = pins & swayed[p]; left != 0; left &= left - 1) {
      all |= set(p, Long.numberOfTrailingZeros(left));
    }
    return all;
  }

  private void spread() {
    Arrays.fill(onNet, 0);
    Arrays.fill(swayed, 0);
    System.arraycopy(roots, 0, due, 0, due.length);
    for (int i = 0; i < LINES; i++) {
      int bit = ADDRESS.shift() + i;
      if ((lines >>> i & 1) != 0 && (c.forceMask[c.cpu] >>> bit & 1) == 0) {
        add(c.netOf[c.pinBase[c.cpu] + bit], 1 << i);
      }
    }
    for (long left = alone ? SHOWN : 0; left != 0; left &= left - 1) {
      add(c.netOf[c.pinBase[c.cpu] + Long.numberOfTrailingZeros(left)], CLOCKWORK);
    }
    boolean more = true;
    while (more) {
      more = false;
      for (int node : nodes) {
        if (due[node]) {
          due[node] = false;
          more |= node(node);
        }
      }
    }
  }

  private boolean add(int net, int set) {
    boolean more = false;
    int group = c.groupOf[net];
    if (group < 0) {
      more = addOne(net, set);
    } else {
      for (int other : c.groups[group].nets()) {
        more |= addOne(other, set);
      }
    }
    return more;
  }

  private boolean addOne(int net, int set) {
    int after = onNet[net] | set;
    boolean shown = clockwork.visible[net] && !alone;
    boolean fixed = c.source[net] != Circuit.NO_SOURCE || shown;
    if (fixed || after == onNet[net]) {
      return false;
    }
    onNet[net] = after;
    for (int g : c.receivers[net]) {
      swayed[c.partOf[g]] |= 1L << c.bitOf[g] & ~c.readMask[c.partOf[g]];
      for (int node : c.followers[g]) {
        due[node] = true;
      }
    }
    return true;
  }

  /** Puts on the nets of an output what can change it; true if that is more than before. */
  private boolean node(int node) {
    int p = c.nodePart[node];
    int group = c.nodeGroup[node];
    if (group >= 0) {
      return add(c.groups[group].nets()[0], sets(p, c.nodeFollows[node]));
    }
    long pins = c.nodePins[node];
    boolean ofData = (pins & ~lineDrivers[p]) == 0;
    long follows = ofData ? c.nodeEnables[node] : c.nodeFollows[node];
    long tried = 0;
    int all = 0;
    for (long left = follows & swayed[p]; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      int set = set(p, bit);
      if (set != 0) {
        tried |= 1L << bit;
        all |= set;
      }
    }
    int out = 0;
    boolean letsGo = false;
    if (tried != 0 && Long.bitCount(tried) <= MOST_TRIED) {
      int[] found = tried(p, tried, pins, ofData);
      out = found[0];
      letsGo = found[1] != 0;
      if (letsGo) {
        lettingGo(p, pins, found[1]);
      }
    } else if (tried != 0) {
      out = all;
      int enabling = sets(p, c.nodeEnables[node]);
      letsGo = enabling != 0;
      if (letsGo) {
        lettingGo(p, pins, enabling);
      }
    }
    if (clockwork.parts[p]) {
      long own = pins & ~c.forceMask[p];
      boolean silent = c.nodeEnables[node] != 0 && !letsGo && (levels.driven[p] & own) == 0;
      boolean known = alone && !clockwork.takers[p] && !clockwork.counting[p];
      out |= silent || known ? 0 : CLOCKWORK;
    } else if (alone && (pins & lineDrivers[p] & levels.driven[p]) != 0) {
      out |= CLOCKWORK;
    }
    return out != 0 && spreadOut(p, pins, out);
  }

  private boolean spreadOut(int p, long pins, int set) {
    boolean more = false;
    for (long left = pins & ~c.forceMask[p]; left != 0; left &= left - 1) {
      more |= add(c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)], set);
    }
    return more;
  }

  /** An output that drives or not by what sways it: only beside the clockwork's own nets. */
  private void lettingGo(int p, long pins, int set) {
    for (long left = pins & ~c.forceMask[p]; left != 0; left &= left - 1) {
      int net = c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)];
      if (!clockwork.nets[net]) {
        // Whose picture or refresh address is on the lines in the video half is its own affair.
        strike(levels.phase.processorHalf() ? set : set & ~CLOCKWORK);
        return;
      }
    }
  }

  /** Tries all combinations; the sets that change a level, and those that change who drives. */
  private int[] tried(int p, long swayed, long pins, boolean ofData) {
    PartPins view = levels.pins[p];
    long in = view.in;
    long driven = view.driven;
    long bits = view.bits;
    int[] at = new int[Long.bitCount(swayed)];
    int k = 0;
    for (long left = swayed; left != 0; left &= left - 1) {
      at[k++] = Long.numberOfTrailingZeros(left);
    }
    long collectors = collectors(p, pins);
    for (int combination = 0; combination < 1 << k; combination++) {
      long now = in;
      for (int i = 0; i < k; i++) {
        long pin = 1L << at[i];
        now = (combination >>> i & 1) != 0 ? now | pin : now & ~pin;
      }
      view.in = now;
      view.driven = 0;
      view.bits = 0;
      c.parts[p].settle(view);
      long on = view.driven & pins & ~(collectors & view.bits);
      triedDriven[combination] = on;
      triedBits[combination] = ofData ? 0 : view.bits & on;
    }
    view.in = in;
    view.driven = driven;
    view.bits = bits;
    int changes = 0;
    int letsGo = 0;
    for (int i = 0; i < k; i++) {
      for (int combination = 0; combination < 1 << k; combination++) {
        int other = combination ^ 1 << i;
        boolean drives = triedDriven[combination] != triedDriven[other];
        if (drives || triedBits[combination] != triedBits[other]) {
          changes |= set(p, at[i]);
          letsGo |= drives ? set(p, at[i]) : 0;
        }
      }
    }
    return new int[] {changes, letsGo};
  }

  private long collectors(int p, long pins) {
    long collectors = 0;
    for (long left = pins; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      collectors |= c.collector[c.pinBase[p] + bit] ? 1L << bit : 0;
    }
    return collectors;
  }

  private void check(int p, Phase phase) {
    if (swayed[p] == 0) {
      return;
    }
    if (p == c.cpu) {
      strike(sets(p, ProcessorPins.CONTROL));
    } else if (clockwork.dualPort[p]) {
      checkDualPort(p, phase);
    } else if (stores[p] && !aside[p]) {
      boolean edges = !c.parts[p].commitsEveryPhase();
      if (edges) {
        checkEdges(p);
      } else if (c.parts[p] instanceof Memory || c.parts[p] instanceof RowMemory) {
        checkMemory(p, phase);
      } else {
        checkOther(p, phase);
      }
    }
  }

  /** The processor's side of a memory that the clockwork reads. */
  private void checkDualPort(int p, Phase phase) {
    Pinout pinout = c.parts[p].pinout();
    if (phase == Phase.C_END) {
      strike(sets(p, pinout.role(Pin.Role.CLOCK_FALLS) | pinout.role(Pin.Role.DIRECTION)));
      strike(sets(p, pinout.role(Pin.Role.SELECT)));
      if (armed(p)) {
        strikeMixed(p);
      }
    }
  }

  /** Each register pin may follow one address line. */
  private void strikeMixed(int p) {
    for (long left = registers[p]; left != 0; left &= left - 1) {
      int set = set(p, Long.numberOfTrailingZeros(left));
      if ((set & CLOCKWORK) != 0 || Integer.bitCount(set & lines) > 1) {
        strike(set);
      }
    }
  }

  private void checkEdges(int p) {
    long edges = c.edgePins(p);
    strike(sets(p, edges));
    long fell = levels.pins[p].fell & c.fallPins[p];
    if ((levels.pins[p].rose & c.risePins[p] | fell) != 0) {
      strike(sets(p, control[p] | registers[p]));
    }
  }

  private void checkOther(int p, Phase phase) {
    strike(sets(p, control[p]));
    boolean device = c.parts[p] instanceof BusDevice;
    if (armed(p) && (!device || phase == Phase.C_END)) {
      strike(sets(p, registers[p]));
    }
  }

  private void checkMemory(int p, Phase phase) {
    int swayed = sets(p, control[p]);
    boolean harmless = !phase.processorHalf() && sets(p, writeLow[p] | writeHigh[p]) == 0;
    if ((swayed & CLOCKWORK) != 0 && !(harmless && !stores(p))) {
      refused = true;
    }
    strike(swayed & ~CLOCKWORK);
    if (!phase.processorHalf()) {
      return;
    }
    boolean row = c.parts[p] instanceof RowMemory;
    boolean looks =
        row && phase == Phase.C_ROW
            ? ((RowMemory) c.parts[p]).strobes(levels.pins[p].in)
            : phase != Phase.C_ROW && (levels.driven[p] != 0 || stores(p));
    if (looks) {
      strikeMixed(p);
    }
  }

  /** Whether some memory stores what its data pins read, or would if it were selected. */
  boolean memoryStores() {
    for (int p = 0; p < c.parts.length; p++) {
      boolean memory = c.parts[p] instanceof Memory && !aside[p] || c.parts[p] instanceof RowMemory;
      if (c.alive[p] && (memory && stores(p) || clockwork.dualPort[p] && armed(p))) {
        return true;
      }
    }
    return false;
  }

  private boolean stores(int p) {
    return (writeHigh[p] | writeLow[p]) != 0 && writes(p);
  }

  private boolean writes(int p) {
    long in = levels.pins[p].in;
    return (in & writeHigh[p]) == writeHigh[p] && (in & writeLow[p]) == 0;
  }

  /** Whether everything that selects a part, or tells it to store, is at its active level. */
  private boolean armed(int p) {
    long in = levels.pins[p].in;
    boolean selected = (in & selectHigh[p]) == selectHigh[p] && (in & selectLow[p]) == 0;
    return selected && writes(p);
  }

  /** The data lines follow no address line; who drives them, but for memories, no clockwork. */
  private void checkLines() {
    for (int net = 0; net < lineOf.length; net++) {
      if (lineOf[net] != 0) {
        strike(onNet[net]);
      }
    }
    for (int p = 0; p < lineDrivers.length; p++) {
      boolean memory = c.parts[p] instanceof Memory || c.parts[p] instanceof RowMemory;
      if (!memory && (levels.driven[p] & lineDrivers[p]) != 0) {
        long receives = control[p] | registers[p];
        driverSwayed |= (sets(p, receives) & CLOCKWORK) != 0;
      }
    }
  }
}
