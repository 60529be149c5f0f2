package faultfinch.symptom;

import faultfinch.machine.Trace;

/**
 * What a sounder gave, as samples.
 *
 * @param rate samples a second
 * @param samples 16 bits, signed
 */
public record Sound(int rate, short[] samples) {
  private static final double LOUD = 9000;

  /** Share of the last sample's rest that stays, so that a level that stands still is silent. */
  private static final double KEEPS = 0.995;

  private static final long SECOND = 1_000_000_000;

  public Sound {
    samples = samples.clone();
  }

  @Override
  public short[] samples() {
    return samples.clone();
  }

  /**
   * Samples a trace: each is the share of its time in which the level was high.
   *
   * @param from nanoseconds since power-on
   * @param to after from
   * @param rate samples a second, 8000 or more
   */
  public static Sound of(Trace trace, long from, long to, int rate) {
    int count = (int) ((to - from) * rate / SECOND);
    short[] samples = new short[count];
    int at = 0;
    double was = high(trace, from) ? 1 : 0;
    double out = 0;
    for (int i = 0; i < count; i++) {
      long start = from + i * SECOND / rate;
      long end = from + (i + 1) * SECOND / rate;
      while (at + 1 < trace.size() && trace.nanoseconds(at + 1) <= start) {
        at++;
      }
      double share = share(trace, at, start, end);
      out = KEEPS * (out + share - was);
      was = share;
      samples[i] = (short) StrictMath.round(out * LOUD);
    }
    return new Sound(rate, samples);
  }

  private static boolean high(Trace trace, long at) {
    boolean high = false;
    for (int i = 0; i < trace.size() && trace.nanoseconds(i) <= at; i++) {
      high = trace.high(i);
    }
    return high;
  }

  private static double share(Trace trace, int first, long start, long end) {
    long high = 0;
    for (int i = first; i < trace.size() && trace.nanoseconds(i) < end; i++) {
      long until = i + 1 < trace.size() ? Math.min(trace.nanoseconds(i + 1), end) : end;
      long since = Math.max(trace.nanoseconds(i), start);
      high += trace.high(i) && until > since ? until - since : 0;
    }
    return (double) high / (end - start);
  }
}
