package faultfinch.diagnosis;

/**
 * How often something was seen: so many times of so many.
 *
 * @param times 0 to {@code of}; both are 0 if it was now and then and nobody counted
 */
public record Tally(int times, int of) {

  /** Looked once, and there it was. */
  public static final Tally ONCE = new Tally(1, 1);

  /** Sometimes so, sometimes not. */
  public static final Tally NOW_AND_THEN = new Tally(0, 0);

  public Tally {
    if (times < 0 || times > of) {
      throw new IllegalArgumentException(
          "found " + times + " of " + of + ", right would be 0 to " + of);
    }
  }

  /**
   * Chance of this tally if each time alone has the chance {@code each}. Of now and then it is the
   * chance that two times differ.
   */
  double chance(double each) {
    if (of == 0) {
      return 2 * each * (1 - each);
    }
    double log = times * StrictMath.log(each) + (of - times) * StrictMath.log(1 - each);
    for (int i = 1; i <= times; i++) {
      log += StrictMath.log((double) (of - times + i) / i);
    }
    return StrictMath.exp(log);
  }

  /** The same if nothing is known of that chance: every tally is as likely. */
  double chanceIfAnyRate() {
    return of == 0 ? 1.0 / 3 : 1.0 / (of + 1);
  }

  /** Whether it says the same of every time. */
  boolean always() {
    return of > 0 && (times == 0 || times == of);
  }
}
