package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.CellStuck;
import faultfinch.fault.Fault;
import faultfinch.fault.ReadsStuck;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.signal.Electrical;
import faultfinch.signal.Pin;
import faultfinch.signal.State;
import faultfinch.signal.Technology;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A digest of all that a run did where it was watched. A fault whose run leaves the trail of the
 * healthy board was never excited there: no pin, stored bit or level was another.
 *
 * <p>An input that misjudges and a cell that is stuck change nothing that another could see until
 * they are asked: such a fault counts from the moment at which what stands there is not what it
 * makes of it. An input is believed to misjudge only where its threshold leaves no doubt.
 */
final class Trail {
  /** What thresholds refer to. */
  private static final int RAIL_MILLIVOLTS = 5000;

  private static final int LS_FLOAT_MV = Electrical.figure("ls-input.mv");
  private static final int SCHMITT_FALLING_MV = Electrical.figure("threshold.schmitt.falling");
  private static final long FACTOR = 0x9E3779B97F4A7C15L;
  private static final int NOTHING = -1;

  private record Input(Pad pad, Technology technology, boolean stuckHigh) {}

  private record Cell(String ref, State cells, int index, int mask, int stuck) {}

  private final List<Pad> pads = new ArrayList<>();
  private final List<Input> inputs = new ArrayList<>();
  private final List<Cell> cells = new ArrayList<>();
  private final int[] inputPoints;

  /** The nets on which pins and pads stand, and what weight those give each. */
  private int[] nets = {};

  private long[] weights = {};
  private long sum;
  private boolean misjudged;

  Trail(Setup setup) {
    Board board = setup.board();
    for (PlacedPart part : board.parts()) {
      for (Pin pin : part.type().part().pinout().pins()) {
        pads.add(new Pad(part.ref(), pin.name()));
      }
    }
    for (Fault fault : setup.faults()) {
      if (fault.base() instanceof ReadsStuck input) {
        board
            .part(input.pin().ref())
            .flatMap(p -> p.type().part().pinout().find(input.pin().pin()))
            .ifPresent(pin -> inputs.add(new Input(input.pin(), pin.technology(), input.high())));
      } else if (fault.base() instanceof CellStuck cell) {
        board.part(cell.ref()).ifPresent(part -> cells.add(cell(part, cell)));
      }
    }
    inputPoints = new int[inputs.size()];
  }

  private static Cell cell(PlacedPart part, CellStuck fault) {
    int at = fault.index();
    int mask = 1 << fault.bit();
    for (State array : part.type().part().pinout().cellArrays()) {
      if (at < array.offset() + array.count()) {
        return new Cell(part.ref(), array, at - array.offset(), mask, fault.high() ? mask : 0);
      }
    }
    throw new IllegalArgumentException("no cell " + at + " in " + part.ref());
  }

  /** A window begins; until it ends no switch moves. */
  void begin(Machine machine) {
    // Each pin and pad has a weight of its own, so that a net counts once for all that are on it.
    long[] onNet = new long[machine.points()];
    long weight = FACTOR;
    for (Pad pad : pads) {
      weight = scattered(weight);
      onNet[machine.point(pad, false)] += weight;
      weight = scattered(weight);
      onNet[machine.point(pad, true)] += weight;
    }
    nets = IntStream.range(0, onNet.length).filter(net -> onNet[net] != 0).toArray();
    weights = IntStream.of(nets).mapToLong(net -> onNet[net]).toArray();
    for (int i = 0; i < inputPoints.length; i++) {
      inputPoints[i] = machine.point(inputs.get(i).pad, false);
    }
  }

  /** A phase of a window has settled. */
  void phase(Machine machine) {
    long all = 0;
    for (int i = 0; i < nets.length; i++) {
      all += weights[i] * machine.carries(nets[i]);
    }
    add(all);
    for (int i = 0; i < inputPoints.length; i++) {
      Input input = inputs.get(i);
      int sound = reads(machine, inputPoints[i], input.technology);
      misjudged |= sound != NOTHING && (sound == 1) != input.stuckHigh;
    }
  }

  /** A window has ended. */
  void end(Machine machine) {
    add(machine.digest());
    for (Cell c : cells) {
      misjudged |= (machine.cell(c.ref, c.cells, c.index) & c.mask) != c.stuck;
    }
  }

  /** Supplies and clocks; they stand still while the board is on. */
  void still(Machine machine) {
    for (Pad pad : pads) {
      for (boolean atPad : new boolean[] {false, true}) {
        OptionalInt supply = machine.power().millivolts(pad, atPad);
        add(supply.orElse(NOTHING));
        add(Double.doubleToLongBits(machine.clockHertz(pad, atPad)));
        add(Double.doubleToLongBits(machine.clockDuty(pad, atPad)));
      }
    }
  }

  /** Something seen or heard between the windows. */
  void seen(String feature) {
    add(feature.hashCode());
  }

  private static long scattered(long value) {
    long next = (value ^ value >>> 30) * FACTOR + FACTOR;
    return next ^ next >>> 27;
  }

  private void add(long value) {
    sum = (sum ^ value) * FACTOR;
    sum ^= sum >>> 29;
  }

  /** What a sound input would read: 1, 0, or {@link #NOTHING} if that cannot be told from here. */
  private static int reads(Machine machine, int point, Technology technology) {
    int millivolts = machine.millivolts(point);
    if (machine.oscillating(point)) {
      return 0;
    }
    if (machine.floating(point) && millivolts == LS_FLOAT_MV) {
      return technology == Technology.CMOS ? 0 : 1;
    }
    int threshold = technology.threshold(RAIL_MILLIVOLTS);
    int falling = technology == Technology.SCHMITT ? SCHMITT_FALLING_MV : threshold;
    if (millivolts > threshold + technology.spread()) {
      return 1;
    }
    return millivolts < falling - technology.spread() ? 0 : NOTHING;
  }

  /** The digest so far. */
  long sum() {
    return misjudged ? ~sum : sum;
  }
}
