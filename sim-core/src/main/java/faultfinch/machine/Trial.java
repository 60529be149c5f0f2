package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One trial of a cycle on a copy: what parts stored, looked up and drove, and where levels stood.
 */
final class Trial implements Recorder {
  private static final int PHASES = Phase.values().length;

  /** What parts stored, in order: part and phase in one number, the cell or -1, and their pins. */
  final List<Integer> steps = new ArrayList<>();

  final List<Integer> stepCells = new ArrayList<>();
  final List<Long> stepIn = new ArrayList<>();
  final List<Long> stepBefore = new ArrayList<>();

  /** The cell that each part looked up last, or -1. */
  final int[] looked;

  /** At the end of the cycle. */
  long[] in;

  long[] driven;
  byte[] kind;
  int[] mv;
  int read;

  /** The row that each memory with rows strobed in the processor's half, or -1. */
  final int[] row;

  /** Whether some line of a row only keeps then what was left on it. */
  final boolean[] rowKept;

  final long[] everDriven;

  /** The same in the processor's half. */
  final long[] drivenLate;

  /** Nets driven before the column of the processor's half. */
  final boolean[] drivenEarly;

  /** Whether a slow net moved, or a clock was not where it rests. */
  boolean stirs;

  private final Circuit c;
  private final Levels levels;
  private final boolean[] onlySlow;
  private final boolean[] clockwork;
  private final boolean[] dualPort;

  Trial(PlainCycle plain, boolean[] onlySlow, Clockwork clockwork) {
    this.c = plain.circuit;
    this.levels = plain.levels;
    this.onlySlow = onlySlow;
    this.clockwork = clockwork.parts;
    this.dualPort = clockwork.dualPort;
    this.looked = new int[c.parts.length];
    this.everDriven = new long[c.parts.length];
    this.drivenLate = new long[c.parts.length];
    this.drivenEarly = new boolean[c.netCount];
    this.row = new int[c.parts.length];
    this.rowKept = new boolean[c.parts.length];
    Arrays.fill(looked, -1);
    Arrays.fill(row, -1);
  }

  int part(int step) {
    return steps.get(step) / PHASES;
  }

  Phase phase(int step) {
    return Phase.values()[steps.get(step) % PHASES];
  }

  /** A phase has settled. */
  void settled(Phase phase) {
    for (int p = 0; p < everDriven.length; p++) {
      everDriven[p] |= levels.driven[p];
      drivenLate[p] |= phase.processorHalf() ? levels.driven[p] : 0;
    }
    if (phase.ordinal() <= Phase.C_ROW.ordinal()) {
      for (int net = 0; net < drivenEarly.length; net++) {
        drivenEarly[net] |= levels.kind[net] == Levels.DRIVEN;
      }
    }
    if (phase == Phase.C_ROW) {
      for (int p = 0; p < row.length; p++) {
        if (c.alive[p] && c.parts[p] instanceof RowMemory m && m.strobes(levels.pins[p].in)) {
          row[p] = m.address().of(levels.pins[p].in);
          for (long left = m.address().mask(); left != 0; left &= left - 1) {
            rowKept[p] |= levels.keeps(p, Long.lowestOneBit(left));
          }
        }
      }
    }
    if (phase == Phase.C_END) {
      in = Arrays.stream(levels.pins).mapToLong(p -> p.in).toArray();
      driven = levels.driven.clone();
      kind = levels.kind.clone();
      mv = levels.mv.clone();
      for (int p = 0; p < in.length; p++) {
        // What a register takes may depend on what the part stores now.
        if (c.alive[p] && !clockwork[p] && c.parts[p] instanceof BusDevice && written(p)) {
          note(p, -1);
        }
      }
    }
  }

  /** Whether a part with registers is selected and told to take what the data lines carry. */
  private boolean written(int p) {
    boolean written = true;
    for (Pin pin : c.parts[p].pinout().pins()) {
      boolean high = (in[p] & pin.mask()) != 0;
      written &= pin.role() != Pin.Role.SELECT || high != pin.activeLow();
      written &= pin.role() != Pin.Role.DIRECTION || !high;
    }
    return written;
  }

  @Override
  public void held(int part, boolean changed) {
    // The clockwork goes its own way, and a row is strobed anew in every cycle.
    if (clockwork[part] || c.parts[part] instanceof RowMemory) {
      return;
    }
    // What only slow levels tell a part to store, it has stored long since, or it is not at rest.
    if (changed || !onlySlow[part]) {
      note(part, -1);
      stirs |= onlySlow[part];
    }
  }

  @Override
  public void looked(int part, int cell) {
    looked[part] = cell;
  }

  @Override
  public void stored(int part, int cell) {
    if (!clockwork[part] || dualPort[part]) {
      note(part, cell);
    }
  }

  private void note(int part, int cell) {
    if (part != c.cpu) {
      int step = part * PHASES + levels.phase.ordinal();
      int at = steps.indexOf(step);
      if (at < 0) {
        steps.add(step);
        stepCells.add(cell);
        stepIn.add(levels.pins[part].in);
        stepBefore.add(levels.pins[part].before);
      } else if (stepIn.get(at) != levels.pins[part].in) {
        stirs = true;
      } else if (stepCells.get(at) != cell) {
        stepCells.set(at, -1);
      }
    }
  }
}
