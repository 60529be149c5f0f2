package faultfinch.machine;

import faultfinch.board.Pad;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Follows a board through a plain run and notes what its nets were driven by and which cells were
 * looked up, so that it can be told of other wirings of the board that they would have done the
 * same: see {@link Likeness}.
 */
public final class Witness {
  private final Machine birth;
  private final Map<Set<String>, DriveNotes> wirings = new LinkedHashMap<>();
  private final Looked looked;

  private Witness(Machine machine) {
    birth = machine.moment();
    looked = new Looked(machine.plain().circuit, machine.store());
  }

  /** Switches a board on that is followed from here on. */
  public static Witness of(Machine machine) {
    Witness witness = new Witness(machine);
    machine.followedBy(witness);
    return witness;
  }

  /** Notes from now on what levels of a wiring, made for these closed switches, do. */
  void follow(Set<String> joins, Levels levels) {
    levels.note(wirings.computeIfAbsent(joins, k -> new DriveNotes(levels.circuit)));
    levels.recorder = looked;
  }

  /**
   * Whether a board would have done, pin by pin and bit by bit, what this one did. It can then be
   * stood where this one stood.
   *
   * @param machine of it, just switched on
   * @param eyed pads whose millivolts somebody takes who is no part of the board
   */
  public boolean same(Machine machine, List<Pad> eyed) {
    Likeness likeness = new Likeness(this, machine, eyed);
    boolean holds = likeness.holds();
    if (holds) {
      machine.keepStill(likeness.still());
    }
    return holds;
  }

  Machine birth() {
    return birth;
  }

  Map<Set<String>, DriveNotes> wirings() {
    return wirings;
  }

  Looked looked() {
    return looked;
  }

  /** Per cell the bits that were found 0 and those found 1 when it was looked up. */
  static final class Looked implements Recorder {
    private final Circuit circuit;
    private final Store store;
    private final byte[][] zeros;
    private final byte[][] ones;
    private final BitSet[] written;

    private Looked(Circuit circuit, Store store) {
      this.circuit = circuit;
      this.store = store;
      int n = circuit.parts.length;
      zeros = new byte[n][];
      ones = new byte[n][];
      written = new BitSet[n];
      for (int p = 0; p < n; p++) {
        zeros[p] = new byte[circuit.parts[p].pinout().cellCount()];
        ones[p] = new byte[zeros[p].length];
        written[p] = new BitSet();
      }
    }

    @Override
    public void held(int part, boolean changed) {
      // Words belong to no fault.
    }

    @Override
    public void looked(int part, int cell) {
      int stored = store.cells()[circuit.cellBase[part] + cell];
      int value = (stored & circuit.cellMask[part]) >>> circuit.cellShift[part];
      zeros[part][cell] |= (byte) ~value;
      ones[part][cell] |= (byte) value;
    }

    @Override
    public void stored(int part, int cell) {
      written[part].set(cell);
    }

    /** Whether a cell was never looked up. */
    boolean never(int part, int cell) {
      return (zeros[part][cell] | ones[part][cell]) == 0;
    }

    /** Whether anything was ever stored in a cell. */
    boolean written(int part, int cell) {
      return written[part].get(cell);
    }

    /** Whether these bits of a cell were never found but cleared and set so. */
    boolean always(int part, int cell, int clear, int set) {
      return (ones[part][cell] & clear & ~set) == 0 && (zeros[part][cell] & set) == 0;
    }
  }
}
