package faultfinch.part;

import faultfinch.signal.Electrical;

/**
 * How long a cell of a dynamic memory keeps its charge; every chip has its own grain. What is said
 * holds at 25 degrees, and is halved for each 10 kelvin above.
 *
 * <p>Shares of the cells stand against times: none below the shortest, one in a hundred below the
 * weak figure, half below the median. Between two of these points time grows by equal factors.
 */
final class Retention {
  private static final double WEAK_SHARE = 0.01;
  private static final double MEDIAN_SHARE = 0.5;
  private static final double SHORTEST = nanoseconds("retention.shortest.ms");
  private static final double WEAK = nanoseconds("retention.weak.ms");
  private static final double MEDIAN = nanoseconds("retention.median.ms");
  private static final double LONGEST = nanoseconds("retention.longest.ms");
  private static final double DEFECT_FROM = nanoseconds("retention.defect.from.us") / 1000;
  private static final double DEFECT_TO = nanoseconds("retention.defect.to.us") / 1000;
  private static final int AT_TENTHS = 250;
  private static final double HALVED_BY_TENTHS = 100;

  private Retention() {}

  /** What is left of a time at so many tenths of a degree. */
  static long warm(long nanoseconds, int tenths) {
    return tenths == AT_TENTHS
        ? nanoseconds
        : (long) (nanoseconds * StrictMath.pow(2, (AT_TENTHS - tenths) / HALVED_BY_TENTHS));
  }

  /** No sound cell forgets sooner, in nanoseconds. */
  static long shortest() {
    return (long) SHORTEST;
  }

  /** Nanoseconds a sound cell keeps its charge; the same for the same grain and cell. */
  static long sound(long grain, int cell) {
    double share = share(grain, cell);
    if (share < WEAK_SHARE) {
      return between(SHORTEST, WEAK, share / WEAK_SHARE);
    }
    if (share < MEDIAN_SHARE) {
      return between(WEAK, MEDIAN, (share - WEAK_SHARE) / (MEDIAN_SHARE - WEAK_SHARE));
    }
    return between(MEDIAN, LONGEST, (share - MEDIAN_SHARE) / (1 - MEDIAN_SHARE));
  }

  /** Nanoseconds a short-lived cell keeps its charge. */
  static long defective(long grain, int cell) {
    return between(DEFECT_FROM, DEFECT_TO, share(grain, cell));
  }

  private static long between(double from, double to, double way) {
    return (long) (from * StrictMath.pow(to / from, way));
  }

  private static double share(long grain, int cell) {
    return (mix(grain + cell * 0x9E3779B97F4A7C15L) >>> 11) * 0x1.0p-53;
  }

  /** The finishing steps of the public-domain splitmix64. */
  private static long mix(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return b ^ (b >>> 31);
  }

  private static double nanoseconds(String key) {
    return Electrical.figure(key) * 1e6;
  }
}
