package faultfinch.fault;

/**
 * Counter-based chance: a number is a hash of what it is for, never the next of a stream. The
 * mixing constants are those of the public-domain splitmix64 finaliser.
 */
public final class Lot {
  private static final long STEP = 0x9E3779B97F4A7C15L;

  private Lot() {}

  static long draw(long seed, long... what) {
    long h = mix(seed + STEP);
    for (long w : what) {
      h = mix(h ^ (w + STEP));
    }
    return h;
  }

  /** A number in 0..bound-1. */
  public static int below(int bound, long seed, long... what) {
    return (int) Long.remainderUnsigned(draw(seed, what), bound);
  }

  /** A number in 0 (with it) to 1 (without it). */
  public static double share(long seed, long... what) {
    return (draw(seed, what) >>> 11) * 0x1p-53;
  }

  /** A number that stands for a text. */
  public static long of(String text) {
    long h = text.length();
    for (int i = 0; i < text.length(); i++) {
      h = mix(h ^ (text.charAt(i) + STEP));
    }
    return h;
  }

  private static long mix(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return b ^ (b >>> 31);
  }
}
