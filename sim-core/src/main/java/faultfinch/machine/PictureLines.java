package faultfinch.machine;

import java.nio.ByteBuffer;
import java.nio.LongBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Lines of a picture as they came over the lead, remembered by all that they depend on: what the
 * parts of the picture half stored as the line began, and what was found in each cell that was
 * fetched.
 */
final class PictureLines {
  /** A line takes some kilobytes; what comes after so many is not remembered. */
  private static final int MOST = 24_000;

  private final Map<LongBuffer, Start> starts = new HashMap<>();

  /** Lines that look alike are kept once. */
  private final Map<ByteBuffer, byte[]> leads = new HashMap<>();

  private int count;

  /** The picture half as a line begins. */
  static final class Start {
    /** Part and cell of each fetch of a line that begins so, in their order; not known at first. */
    private Optional<int[]> fetched = Optional.empty();

    private boolean unsteady;
    private final Map<ByteBuffer, Line> lines = new HashMap<>();
  }

  /**
   * A line.
   *
   * @param lead what the set read in each phase of each cycle
   * @param fetched part and cell of each fetch, in their order
   * @param found what was found there
   * @param next the start of the line after it
   */
  record Line(byte[] lead, int[] fetched, byte[] found, Start next) {}

  /** The picture half standing so as a line begins. */
  synchronized Start start(long[] state) {
    Start known = starts.get(LongBuffer.wrap(state));
    if (known == null) {
      known = new Start();
      if (count < MOST) {
        starts.put(LongBuffer.wrap(state), known);
      }
    }
    return known;
  }

  /** The line that begins so on a machine, if it is known. */
  synchronized Optional<Line> find(Start start, Levels levels) {
    if (start.unsteady || start.fetched.isEmpty()) {
      return Optional.empty();
    }
    byte[] found = found(start.fetched.get(), levels);
    return Optional.ofNullable(start.lines.get(ByteBuffer.wrap(found)));
  }

  /** What stands in cells now. */
  static byte[] found(int[] fetched, Levels levels) {
    byte[] found = new byte[fetched.length / 2];
    for (int i = 0; i < found.length; i++) {
      found[i] = (byte) levels.pins[fetched[2 * i]].found(fetched[2 * i + 1]);
    }
    return found;
  }

  /** Remembers a line that began so. */
  synchronized void keep(Start start, int[] fetched, byte[] found, byte[] lead, Start next) {
    if (start.fetched.isEmpty()) {
      start.fetched = Optional.of(fetched);
    }
    if (!Arrays.equals(start.fetched.get(), fetched)) {
      // Where it is fetched from depends on more than what it began with.
      start.unsteady = true;
      start.lines.clear();
    } else if (!start.unsteady && count < MOST) {
      count++;
      byte[] once = leads.computeIfAbsent(ByteBuffer.wrap(lead), k -> lead);
      start.lines.put(ByteBuffer.wrap(found), new Line(once, start.fetched.get(), found, next));
    }
  }
}
