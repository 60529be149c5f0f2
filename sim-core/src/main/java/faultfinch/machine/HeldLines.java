package faultfinch.machine;

import faultfinch.part.M6502;
import faultfinch.signal.Bus;
import java.util.Arrays;

/**
 * What the data lines keep while nobody drives them, for the fast machine: a level and the cycle in
 * which each line was last driven. Levels here are clean or nothing; a line left at a mid level is
 * a case for the plain machine.
 */
final class HeldLines {
  private static final Bus DATA = new M6502().pinout().bus("D");

  private final int[] nets = new int[DATA.width()];
  private final int[] millivolts = new int[DATA.width()];
  private final long[] driven = new long[DATA.width()];

  /** The cycle at whose end the lines stand so. */
  private long at = -1;

  HeldLines(Circuit c) {
    for (int i = 0; i < nets.length; i++) {
      nets[i] = c.netOf[c.pinBase[c.cpu] + DATA.shift() + i];
    }
  }

  boolean standsAt(long cycle) {
    return at == cycle;
  }

  /** All lines were driven in a cycle, to these bits. */
  void allDriven(int value, long cycle) {
    for (int i = 0; i < nets.length; i++) {
      millivolts[i] = Levels.clean((value >>> i & 1) != 0);
      driven[i] = cycle;
    }
    at = cycle;
  }

  /**
   * Takes the lines from the levels at the end of a cycle; false if one is neither high nor low.
   */
  boolean take(Levels levels, long cycle) {
    for (int i = 0; i < nets.length; i++) {
      int net = nets[i];
      boolean floats = levels.kind[net] == Levels.FLOATS;
      if (!floats && levels.kind[net] != Levels.DRIVEN) {
        return false;
      }
      millivolts[i] = Levels.held(levels.mv[net]);
      driven[i] = floats ? levels.releasedAt(net) - 1 : cycle;
      if (Levels.mid(millivolts[i])) {
        return false;
      }
    }
    at = cycle;
    return true;
  }

  /** A read in which some lines float and the others carry these bits; what the processor reads. */
  int read(Levels levels, int floats, int value, long cycle) {
    int read = value & ~floats;
    for (int i = 0; i < nets.length; i++) {
      if ((floats >>> i & 1) == 0) {
        millivolts[i] = Levels.clean((value >>> i & 1) != 0);
        driven[i] = cycle;
      } else {
        boolean high = Levels.high(millivolts[i]);
        if (high && levels.expired(driven[i] + 1)) {
          millivolts[i] = 0;
        } else if (high) {
          read |= 1 << i;
        }
      }
    }
    at = cycle;
    return read;
  }

  /** Puts the floating lines into levels that were brought up without knowing what they held. */
  void restore(Levels levels) {
    for (int i = 0; i < nets.length; i++) {
      if (levels.kind[nets[i]] == Levels.FLOATS) {
        levels.held(nets[i], millivolts[i], driven[i] + 1);
      }
    }
  }

  /** Bits of the lines that float. */
  static int floats(byte[] kind, int[] nets) {
    int floats = 0;
    for (int i = 0; i < nets.length; i++) {
      floats |= kind[nets[i]] == Levels.FLOATS ? 1 << i : 0;
    }
    return floats;
  }

  int[] nets() {
    return Arrays.copyOf(nets, nets.length);
  }
}
