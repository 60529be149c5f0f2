package faultfinch.machine;

/**
 * Lets a test in another package go on with a plain machine from where a fast one stands: what both
 * are said to do is then seen on both, without a slow run from power-on.
 */
public final class HandedOver {
  private HandedOver() {}

  /** The machine itself if it is to be of this kind, else a plain one that stands where it does. */
  public static Machine to(Machine.Kind kind, Machine fast) {
    return kind == Machine.Kind.PLAIN ? fast.continuedPlainly(CycleTap.NONE) : fast;
  }
}
