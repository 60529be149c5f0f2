package faultfinch.machine;

import java.util.Arrays;

/** Changes of one point over time, oldest first. */
public final class Trace {
  private long[] at = new long[64];
  private boolean[] high = new boolean[64];
  private int size;

  void add(long nanoseconds, boolean level) {
    if (size == at.length) {
      at = Arrays.copyOf(at, size * 2);
      high = Arrays.copyOf(high, size * 2);
    }
    at[size] = nanoseconds;
    high[size++] = level;
  }

  public int size() {
    return size;
  }

  /** Nanoseconds since power-on of change i. */
  public long nanoseconds(int i) {
    return at[i];
  }

  /** Level from change i on. */
  public boolean high(int i) {
    return high[i];
  }
}
