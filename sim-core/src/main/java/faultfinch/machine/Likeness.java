package faultfinch.machine;

import faultfinch.board.Pad;
import faultfinch.part.Dram4164;
import faultfinch.part.Element;
import faultfinch.part.Monitor;
import faultfinch.part.Timer555;
import faultfinch.signal.Technology;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Whether a board wired a little otherwise does the same as the one that a {@link Witness}
 * followed.
 *
 * <p>How: both stand alike when they are switched on. From then on a part can only act otherwise if
 * one of its pins reads another bit. For every pin the net it is on is held against the net it was
 * on: either both are the same in all that makes their volts, or for every set of outputs that was
 * ever active there the pin reads from the one what it read from the other. Where that is not plain
 * (coupled nets, millivolts that somebody takes, levels between thresholds, levels only held) the
 * answer is no. Cells that are stuck or programmed otherwise must never have been found otherwise.
 */
final class Likeness {
  private final Witness witness;
  private final Machine machine;

  /** Pads whose millivolts somebody takes who is no part of the board. */
  private final List<Pad> eyed;

  private Optional<Set<Integer>> stillPins = Optional.empty();

  Likeness(Witness witness, Machine machine, List<Pad> eyed) {
    this.witness = witness;
    this.machine = machine;
    this.eyed = eyed;
  }

  /** Pins of nets, cut off as they are, that nothing can drive in any wiring. */
  int[] still() {
    return stillPins.orElse(Set.of()).stream().mapToInt(Integer::intValue).toArray();
  }

  boolean holds() {
    Machine birth = witness.birth();
    if (!machine.doublesFor(birth) || !machine.suppliedAs(birth) || !bornAlike(birth)) {
      return false;
    }
    HarmNotes harm = machine.plain().circuit.harm;
    if (!harm.defects.isEmpty() || !cellsAlike(harm)) {
      return false;
    }
    for (Map.Entry<Set<String>, DriveNotes> wiring : witness.wirings().entrySet()) {
      if (wiring.getValue().oscillated()) {
        return false;
      }
      Circuit other =
          wiring.getKey().isEmpty() ? machine.plain().circuit : machine.wiredFor(wiring.getKey());
      if (!new Pair(wiring.getValue(), other).alike()) {
        return false;
      }
    }
    return true;
  }

  private boolean bornAlike(Machine birth) {
    Circuit c = birth.plain().circuit;
    Levels one = birth.plain().levels;
    Levels other = machine.plain().levels;
    for (int p = 0; p < c.parts.length; p++) {
      PartPins a = one.pins[p];
      PartPins b = other.pins[p];
      // Parts act on edges of their clocks only, the set at the end of the lead on its syncs.
      long edges = c.parts[p] instanceof Monitor ? -1 : c.edgePins(p);
      boolean edged = ((a.rose ^ b.rose | a.fell ^ b.fell) & edges) != 0;
      if (c.alive[p] && (a.in != b.in || a.before != b.before || edged)) {
        return false;
      }
    }
    long[] core = new long[machine.core().words()];
    long[] born = new long[core.length];
    machine.core().save(core, 0);
    birth.core().save(born, 0);
    Store expected = birth.store().copy();
    machine.program(expected);
    return Arrays.equals(core, born)
        && Arrays.equals(expected.words(), machine.store().words())
        && Arrays.equals(expected.cells(), machine.store().cells());
  }

  private boolean cellsAlike(HarmNotes harm) {
    Circuit c = machine.plain().circuit;
    boolean alike = true;
    for (HarmNotes.Cell cell : harm.cells) {
      int p = c.index(cell.ref());
      alike &= witness.looked().always(p, cell.index(), cell.clear(), cell.set());
    }
    for (HarmNotes.Programmed cell : harm.programmed) {
      alike &= witness.looked().never(c.index(cell.ref()), cell.index());
    }
    for (HarmNotes.CellDefect cell : harm.cellDefects) {
      alike &= undisturbed(cell);
    }
    return alike;
  }

  /** Whether a cell that takes what is written beside it never had such a neighbour. */
  private boolean undisturbed(HarmNotes.CellDefect cell) {
    int p = machine.plain().circuit.index(cell.ref());
    return cell.way().equals(Dram4164.DISTURBED)
        && machine.plain().circuit.parts[p] instanceof Dram4164 memory
        && !witness.looked().written(p, memory.beside(cell.index()));
  }

  /** One wiring of the board that was followed and the same of the other. */
  private final class Pair {
    private final DriveNotes notes;
    private final Circuit was;
    private final Circuit is;
    private final NetSolver solvedWas;
    private final NetSolver solvedIs;

    private final SameWiring wiring;

    Pair(DriveNotes notes, Circuit is) {
      this.notes = notes;
      was = notes.circuit;
      this.is = is;
      solvedWas = new NetSolver(was);
      solvedIs = new NetSolver(is);
      wiring = new SameWiring(was, is);
    }

    boolean alike() {
      return wiring.partsAlike()
          && wiring.orderAlike()
          && forcedAlike()
          && pinsAlike()
          && heldAlike();
    }

    /** Outputs that are held drove so all the time. */
    private boolean forcedAlike() {
      for (int p = 0; p < is.parts.length; p++) {
        if ((was.forceMask[p] & ~is.forceMask[p]) != 0) {
          return false;
        }
        for (long left = is.forceMask[p] & ~was.forceMask[p]; left != 0; left &= left - 1) {
          int bit = Long.numberOfTrailingZeros(left);
          int pin = is.pinBase[p] + bit;
          boolean high = (is.forceBits[p] >>> bit & 1) != 0;
          int state = high ? is.collector[pin] ? 0 : 3 : 2;
          int net = was.netOf[pin];
          int at = indexOf(was.drivers[net], pin);
          if (at < 0 || was.drivers[net].length > NetVolts.KEYED) {
            return false;
          }
          for (long key : notes.keys(net)) {
            if ((key >>> 2 * at & 3) != state) {
              return false;
            }
          }
        }
      }
      return true;
    }

    private boolean pinsAlike() {
      for (int net = 0; net < is.netCount; net++) {
        for (int pin : is.receivers[net]) {
          int p = is.partOf[pin];
          if (is.alive[p] && !(is.parts[p] instanceof Element) && !pinAlike(pin, net)) {
            return false;
          }
        }
      }
      return eyed.stream().allMatch(this::eyedAlike);
    }

    /**
     * What a net only holds is what it carried before. One that nothing ever drives carries
     * nothing, whatever the net carried of which it was cut off.
     */
    private boolean heldAlike() {
      Set<Integer> still = new TreeSet<>();
      for (int pin = 0; pin < is.netOf.length; pin++) {
        int net = is.netOf[pin];
        if (!wiring.same(net) && is.source[net] == Circuit.NO_SOURCE) {
          if (is.groupOf[net] < 0 && is.drivers[net].length == 0 && !pulled(is, net)) {
            still.add(pin);
          } else if (!heldAlike(net)) {
            return false;
          }
        }
      }
      boolean first = stillPins.isEmpty();
      stillPins = Optional.of(stillPins.orElse(still));
      return first || stillPins.get().equals(still);
    }

    private static boolean pulled(Circuit c, int net) {
      return c.loadMv[net].length > 0 || c.lsInputs[net] > 0;
    }

    private boolean heldAlike(int net) {
      int before = wiring.netWas(net);
      if (is.groupOf[net] >= 0 || Arrays.stream(is.loadSwitch[net]).anyMatch(gate -> gate >= 0)) {
        return false;
      }
      if (pulled(is, net)) {
        return true;
      }
      if (before < 0 || coupledOrFixed(was, before) || drivers(before, net).isEmpty()) {
        return false;
      }
      int[] at = drivers(before, net).get();
      long[] keys = notes.keys(before);
      Reading reading = new Reading(-1, before, net, keys, at);
      for (long key : keys) {
        int had = reading.before(key);
        int has = reading.now(key);
        boolean floats = has == NetSolver.FLOATING;
        if (floats && (had != NetSolver.FLOATING || was.lsInputs[before] > 0)) {
          return false;
        }
        if (!floats && had != NetSolver.FLOATING && reading.holdsBefore) {
          if (Levels.held(had) != Levels.held(has)) {
            return false;
          }
        }
      }
      return true;
    }

    /** Where the drivers of a net stand among those of the net it was on; empty if some do not. */
    private Optional<int[]> drivers(int before, int net) {
      int[] at = new int[is.drivers[net].length];
      for (int i = 0; i < at.length; i++) {
        at[i] = indexOf(was.drivers[before], is.drivers[net][i]);
        if (at[i] < 0) {
          return Optional.empty();
        }
      }
      return Optional.of(at);
    }

    private boolean eyedAlike(Pad pad) {
      boolean open = was.harm.elementsOpen.contains(pad.ref());
      return open == is.harm.elementsOpen.contains(pad.ref())
          && wiring.same(is.netOf[is.pin(pad.ref(), pad.pin())]);
    }

    private boolean pinAlike(int pin, int net) {
      int p = is.partOf[pin];
      long bit = 1L << is.bitOf[pin];
      boolean told = (is.readMask[p] & bit) != 0;
      boolean wasTold = (was.readMask[p] & bit) != 0;
      if (wasTold) {
        return told && ((is.readBits[p] ^ was.readBits[p]) & bit) == 0;
      }
      if (!told && wiring.same(net)) {
        return true;
      }
      // A timer takes how long its net charges, not only what it reads there.
      boolean exact = is.level[pin] || is.parts[p] instanceof Timer555;
      return !exact && readsAlike(pin, net, told, (is.readBits[p] & bit) != 0);
    }

    /** Whether a pin reads from a net, or is told, what it read from the net it was on. */
    private boolean readsAlike(int pin, int net, boolean told, boolean high) {
      int before = was.netOf[pin];
      if (wiring.netWas(net) < 0 || coupledOrFixed(was, before) || coupledOrFixed(is, net)) {
        return false;
      }
      Optional<int[]> at = drivers(before, net);
      if (at.isEmpty()) {
        return false;
      }
      long[] keys = notes.keys(before);
      Reading reading = new Reading(pin, before, net, keys, at.get());
      for (long key : keys) {
        if (!reading.alike(key, told, high)) {
          return false;
        }
      }
      return true;
    }

    private static boolean coupledOrFixed(Circuit c, int net) {
      return c.groupOf[net] >= 0
          || c.source[net] != Circuit.NO_SOURCE
          || c.drivers[net].length > NetVolts.KEYED
          || Arrays.stream(c.loadSwitch[net]).anyMatch(gate -> gate >= 0);
    }

    /** One pin that reads a net and read another. */
    private final class Reading {
      private final int pin;
      private final int before;
      private final int net;
      private final int[] at;
      private final boolean holdsBefore;
      private final boolean neverBefore;
      private final boolean neverNow;

      Reading(int pin, int before, int net, long[] keys, int[] at) {
        this.pin = pin;
        this.before = before;
        this.net = net;
        this.at = at;
        boolean floats = false;
        boolean never = true;
        boolean neverHere = true;
        for (long key : keys) {
          boolean floating = before(key) == NetSolver.FLOATING;
          floats |= floating;
          never &= floating;
          neverHere &= now(key) == NetSolver.FLOATING;
        }
        holdsBefore = floats && was.lsInputs[before] == 0;
        neverBefore = never && was.lsInputs[before] == 0;
        neverNow = neverHere && is.lsInputs[net] == 0;
      }

      private int before(long key) {
        double[] sums = loads(was, before);
        for (int i = 0; i < was.drivers[before].length; i++) {
          drive(sums, was.drivers[before][i], (int) (key >>> 2 * i) & 3);
        }
        return solvedWas.single(before, sums[0], sums[1]);
      }

      private int now(long key) {
        double[] sums = loads(is, net);
        for (int i = 0; i < at.length; i++) {
          drive(sums, is.drivers[net][i], (int) (key >>> 2 * at[i]) & 3);
        }
        return solvedIs.single(net, sums[0], sums[1]);
      }

      private void drive(double[] sums, int driver, int state) {
        if (state != 0) {
          boolean high = state == 3;
          double each = 1.0 / (high ? is.highOhm[driver] : is.lowOhm[driver]);
          sums[0] += each;
          sums[1] += each * (high ? is.highMv[driver] : is.lowMv[driver]);
        }
      }

      private double[] loads(Circuit c, int of) {
        double g = 0;
        double gv = 0;
        for (int i = 0; i < c.loadMv[of].length; i++) {
          g += 1.0 / c.loadOhm[of][i];
          gv += (double) c.loadMv[of][i] / c.loadOhm[of][i];
        }
        return new double[] {g, gv};
      }

      boolean alike(long key, boolean told, boolean high) {
        int had = before(key);
        if (had == NetSolver.FLOATING && was.lsInputs[before] == 0 && !neverBefore) {
          // It holds what drove it last, or lost it: known only where the other does just so.
          return told
              ? !high && neverHigh()
              : now(key) == NetSolver.FLOATING && is.lsInputs[net] == 0;
        }
        if (between(had)) {
          return false;
        }
        boolean read = had == NetSolver.FLOATING ? floating(was, before) : had > was.threshold[pin];
        if (told) {
          return read == high;
        }
        int has = now(key);
        if (has == NetSolver.FLOATING) {
          boolean known = is.lsInputs[net] > 0 || neverNow;
          return known && read == floating(is, net);
        }
        boolean held =
            !holdsBefore || had != NetSolver.FLOATING && Levels.held(had) == Levels.held(has);
        return held && !between(has) && read == has > is.threshold[pin];
      }

      private boolean neverHigh() {
        for (long key : notes.keys(before)) {
          int had = before(key);
          if (had != NetSolver.FLOATING && Levels.held(had) >= Levels.lowBelow()) {
            return false;
          }
        }
        return true;
      }

      /** What a pin reads of a net that nothing ever drove, or that LS inputs pull. */
      private boolean floating(Circuit c, int of) {
        boolean pulled = c.lsInputs[of] > 0;
        return pulled && c.technology[pin] != Technology.CMOS.ordinal();
      }

      /** Whether what a pin reads at this level depends on what it read before. */
      private boolean between(int millivolts) {
        return was.technology[pin] == Technology.SCHMITT.ordinal()
            && millivolts != NetSolver.FLOATING
            && millivolts <= was.threshold[pin]
            && millivolts >= Levels.schmittFalling();
      }
    }

    private static int indexOf(int[] among, int pin) {
      for (int i = 0; i < among.length; i++) {
        if (among[i] == pin) {
          return i;
        }
      }
      return -1;
    }
  }
}
