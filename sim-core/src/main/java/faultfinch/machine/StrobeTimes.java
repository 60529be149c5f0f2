package faultfinch.machine;

import faultfinch.part.RowMemory;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** When rows of forgetting memories are strobed by what goes round and round in so many cycles. */
final class StrobeTimes {
  private final Circuit c;
  private final int length;

  /** Per memory and row the cycles of a round in which it is strobed, ascending; or null. */
  private final int[][][] times;

  /**
   * Times as they were seen in one round.
   *
   * @param strobed for each cycle the row that each part strobes in it, or -1
   */
  StrobeTimes(Circuit c, List<int[]> strobed) {
    this.c = c;
    this.length = strobed.size();
    this.times = new int[c.parts.length][][];
    for (int p = 0; p < times.length; p++) {
      if (c.parts[p] instanceof RowMemory memory) {
        times[p] = cycles(strobed, p, 1 << memory.address().width());
      }
    }
  }

  private static int[][] cycles(List<int[]> strobed, int p, int rows) {
    IntStream.Builder[] found = new IntStream.Builder[rows];
    for (int i = 0; i < strobed.size(); i++) {
      int row = strobed.get(i)[p];
      if (row >= 0) {
        found[row] = found[row] == null ? IntStream.builder() : found[row];
        found[row].add(i);
      }
    }
    return Arrays.stream(found)
        .map(of -> of == null ? null : of.build().toArray())
        .toArray(int[][]::new);
  }

  int length() {
    return length;
  }

  /** How many rows a part has, 0 if it is no such memory. */
  int rows(int part) {
    return times[part] == null ? 0 : times[part].length;
  }

  /** Whether a row of a part is strobed at all. */
  boolean strobes(int part, int row) {
    return times[part] != null && times[part][row] != null;
  }

  /** The first cycle of a round in which a row is strobed that is. */
  int first(int part, int row) {
    return times[part][row][0];
  }

  /** The most cycles between two strobes of a row that is strobed. */
  int widest(int part, int row) {
    int[] cycles = times[part][row];
    int widest = cycles[0] + length - cycles[cycles.length - 1];
    for (int i = 1; i < cycles.length; i++) {
      widest = Math.max(widest, cycles[i] - cycles[i - 1]);
    }
    return widest;
  }

  /**
   * Notes in the memories when their rows were last strobed.
   *
   * @param start a cycle in which a round began
   * @param from since this cycle it has gone round: what would have been before is not noted
   * @param before the cycle about to begin
   */
  void note(PlainCycle plain, long start, long from, long before) {
    for (int p = 0; p < times.length; p++) {
      for (int row = 0; row < rows(p); row++) {
        long last = times[p][row] == null ? -1 : last(times[p][row], start, before);
        if (last >= from) {
          long nanoseconds = plain.levels.nanosecondsAt(last);
          ((RowMemory) c.parts[p]).strobed(plain.levels.pins[p], row, nanoseconds);
        }
      }
    }
  }

  /** The last of these cycles of a round before a cycle. */
  private long last(int[] cycles, long start, long before) {
    long since = before - start;
    long rounds = since / length;
    int in = (int) (since - rounds * length);
    int found = Arrays.binarySearch(cycles, in);
    int earlier = (found >= 0 ? found : -found - 1) - 1;
    return earlier >= 0
        ? start + rounds * length + cycles[earlier]
        : start + (rounds - 1) * length + cycles[cycles.length - 1];
  }
}
