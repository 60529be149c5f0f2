package faultfinch.board;

import java.util.ArrayList;
import java.util.List;

/** A tape: what the tone output did, and the same again as an input, from any time on. */
final class TamariskTape {
  private static final int STEP = 16;
  private final List<long[]> tones = new ArrayList<>();
  private long playedFrom = Long.MAX_VALUE;

  /** The tone register was written. */
  void record(long cycle, int tone) {
    tones.add(new long[] {cycle, tone});
  }

  void play(long fromCycle) {
    playedFrom = fromCycle;
  }

  /** The level now, a tone of n turning over every 16 n cycles; high without a tape. */
  boolean high(long cycle) {
    if (cycle < playedFrom || tones.isEmpty()) {
      return true;
    }
    long at = cycle - playedFrom + tones.get(0)[0];
    long[] tone = tones.get(0);
    for (long[] next : tones) {
      if (next[0] > at) {
        break;
      }
      tone = next;
    }
    return tone[1] != 0 && (at - tone[0]) / (STEP * tone[1]) % 2 == 1;
  }
}
