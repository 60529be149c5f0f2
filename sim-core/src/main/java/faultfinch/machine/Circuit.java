package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.part.Part;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A board with its faults as flat arrays, made by {@link Wiring} and never changed.
 *
 * <p>Pins are numbered through the whole board: pin {@code pinBase[p] + bit}. A net here is what
 * current can reach without resistance: bridges and closed switches join, cuts and opens part.
 */
final class Circuit {
  /** What holds a net at a fixed voltage. */
  static final byte NO_SOURCE = 0;

  static final byte GROUND = 1;
  static final byte RAIL = 2;
  static final byte RAW = 3;

  Board board;
  HarmNotes harm;

  /** Delays that matter; none on most boards. */
  Optional<Delays> delays = Optional.empty();

  String[] refs;
  private final Map<String, Integer> indices = new HashMap<>();
  Part[] parts;
  boolean[] alive;
  boolean[] powered;
  boolean[] groundOpen;
  long[] readMask;
  long[] readBits;
  long[] forceMask;
  long[] forceBits;
  long[] risePins;

  /** Bus devices have their own way with a falling clock and no bits here. */
  long[] fallPins;

  int[] wordBase;
  int[] cellBase;

  /** Which bits of its bytes a part's cells are: all, or one bit of a byte shared by eight. */
  int[] cellMask;

  int[] cellShift;

  /** Temperature of each case in tenths of a degree, for as long as a run lasts. */
  int[] caseTenths;

  int wordCount;
  int cellCount;
  int cpu = -1;

  int[] pinBase;
  int[] partOf;
  int[] bitOf;
  int[] netOf;
  int[] padNetOf;
  int[] lowMv;
  int[] lowOhm;
  int[] highMv;
  int[] highOhm;
  boolean[] collector;
  int[] threshold;
  byte[] technology;

  /** Pins that take the millivolts of their net and not a bit. */
  boolean[] level;

  int netCount;

  /**
   * Nets whose level in all phases is another than between two halves, see {@link BetweenHalves}.
   */
  boolean[] betweenHalves;

  /** Farads from each net to the supply nets; 0 until somebody asks, see {@link Ramp}. */
  double[] farads;

  String[] netNames;
  byte[] source;

  /** Millivolts of each net that has a source. */
  int[] sourceMv;

  int[][] drivers;
  int[][] receivers;
  int[][] loadMv;
  int[][] loadOhm;

  /** For each load the switch it needs closed, as an index into {@link #railSwitches}, or -1. */
  int[][] loadSwitch;

  /** Switches with one end on a supply net; they need no compiling when they move. */
  String[] railSwitches;

  int[] lsInputs;
  int[] deadLs;
  int[] groupOf;
  Coupling[] groups;

  /** Control pins of analogue switches, each with the group its switch is in. */
  int[][] controls;

  /** Output nodes in the order they are settled; the nodes of an island stand side by side. */
  int[] nodePart;

  long[] nodePins;
  long[] nodeFollows;
  long[] nodeEnables;

  /** Pins that each silence the node while they read high, and those that do while low. */
  long[] silentHigh;

  long[] silentLow;

  /** Group that a node solves anew because it is the control of an analogue switch, or -1. */
  int[] nodeGroup;

  /** First node and one past the last of the island a node is in; equal to n and n+1 outside. */
  int[] islandFrom;

  int[] islandTo;
  boolean[] looped;

  /** For the first node of an island one past the last of the islands swept with it. */
  int[] sweepTo;

  /** One past the last of the nodes behind this one that one settle of their part serves. */
  int[] batchTo;

  /** Nodes of a part. */
  int[][] nodesOf;

  /** Whether the rail is up; if not, no part is powered. */
  boolean railUp;

  /** Nodes that follow a pin. */
  int[][] followers;

  /** Names the parts, in their order. */
  void name(String[] all) {
    refs = all;
    for (int p = all.length - 1; p >= 0; p--) {
      indices.put(all[p], p);
    }
  }

  /** The same parts and pins, to be wired anew. What wiring writes to is not shared. */
  Circuit unwired() {
    Circuit other = new Circuit();
    other.board = board;
    other.harm = harm;
    other.railUp = railUp;
    other.refs = refs;
    other.indices.putAll(indices);
    other.parts = parts;
    other.alive = alive.clone();
    other.powered = powered.clone();
    other.groundOpen = groundOpen.clone();
    other.readMask = readMask;
    other.readBits = readBits;
    other.forceMask = forceMask;
    other.forceBits = forceBits;
    other.risePins = risePins;
    other.fallPins = fallPins;
    other.wordBase = wordBase;
    other.cellBase = cellBase;
    other.cellMask = cellMask;
    other.cellShift = cellShift;
    other.caseTenths = caseTenths.clone();
    other.wordCount = wordCount;
    other.cellCount = cellCount;
    other.cpu = cpu;
    other.pinBase = pinBase;
    other.partOf = partOf;
    other.bitOf = bitOf;
    other.lowMv = lowMv.clone();
    other.lowOhm = lowOhm.clone();
    other.highMv = highMv;
    other.highOhm = highOhm;
    other.collector = collector;
    other.threshold = threshold;
    other.technology = technology;
    other.level = level;
    return other;
  }

  int index(String ref) {
    return indices.getOrDefault(ref, -1);
  }

  /** Index of a switch that only loads a net from a supply net, or -1. */
  int railSwitch(String ref) {
    for (int i = 0; i < railSwitches.length; i++) {
      if (railSwitches[i].equals(ref)) {
        return i;
      }
    }
    return -1;
  }

  int pin(String ref, String name) {
    int p = index(ref);
    return p < 0 ? -1 : parts[p].pinout().find(name).map(pin -> pinBase[p] + pin.bit()).orElse(-1);
  }

  /** The pins of a part on whose edges it commits. */
  long edgePins(int part) {
    return risePins[part] | fallPins[part];
  }
}
