package faultfinch.machine;

/**
 * Counter-based chance: a number is a hash of what it is for, never the next of a stream, so that
 * asking in another order changes nothing. The mixing steps are those of the public-domain
 * splitmix64 finaliser.
 */
public final class Chance {
  private Chance() {}

  /** A 64-bit number for a seed and what it is for. */
  public static long draw(long seed, long... what) {
    long h = mix(seed + 0x9E3779B97F4A7C15L);
    for (long w : what) {
      h = mix(h ^ (w + 0x9E3779B97F4A7C15L + (h << 6)));
    }
    return h;
  }

  /** A number in 0..bound-1. */
  public static int below(int bound, long seed, long... what) {
    return (int) Long.remainderUnsigned(draw(seed, what), bound);
  }

  /** A stable 64-bit number for a text. */
  public static long of(String text) {
    long h = 0xCBF29CE484222325L;
    for (int i = 0; i < text.length(); i++) {
      h = mix(h ^ text.charAt(i));
    }
    return h;
  }

  private static long mix(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return b ^ (b >>> 31);
  }
}
