package faultfinch.machine;

import faultfinch.signal.Phase;
import java.util.Arrays;

/** A line of the picture that is being played, so that it need not be played again. */
final class LineUnderWay {
  private static final int PHASES = Phase.values().length;

  /** A set follows no longer line, and shorter ones fill up first. */
  private static final int MOST_CYCLES = 512;

  private final long from;
  private final PictureLines.Start start;
  private final byte[] lead = new byte[MOST_CYCLES * PHASES];
  private int read;
  private int[] fetched = new int[256];
  private byte[] found = new byte[128];
  private int fetches;
  private boolean unfit;

  /**
   * A line.
   *
   * @param from the cycle in which it begins
   */
  LineUnderWay(long from, PictureLines.Start start) {
    this.from = from;
    this.start = start;
  }

  /** The set reads this in the next phase. */
  void reads(byte what) {
    if (read == lead.length) {
      unfit = true;
    } else {
      lead[read++] = what;
    }
  }

  /** A cell is fetched. */
  void fetches(int part, int cell, int value) {
    if (fetches == found.length) {
      fetched = Arrays.copyOf(fetched, 2 * fetched.length);
      found = Arrays.copyOf(found, 2 * found.length);
    }
    fetched[2 * fetches] = part;
    fetched[2 * fetches + 1] = cell;
    found[fetches++] = (byte) value;
  }

  /** Something happened for which the line is not to be remembered. */
  void unfit() {
    unfit = true;
  }

  /** It ends before this cycle, and so begins the next. */
  void ends(long cycle, PictureLines lines, PictureLines.Start next) {
    if (!unfit && read == (cycle - from) * PHASES) {
      lines.keep(
          start,
          Arrays.copyOf(fetched, 2 * fetches),
          Arrays.copyOf(found, fetches),
          Arrays.copyOf(lead, read),
          next);
    }
  }
}
