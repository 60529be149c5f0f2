package faultfinch.fault;

/**
 * When a fault shows.
 *
 * @param kind what it waits for
 * @param figure minutes for {@link Kind#AFTER_MINUTES}, n for {@link Kind#ONE_POWER_ON_IN}, else 0
 */
public record Condition(Kind kind, int figure) {

  /** Always there. */
  public static final Condition ALWAYS = new Condition(Kind.ALWAYS, 0);

  /** What a fault can wait for. */
  public enum Kind {
    ALWAYS,
    WARM,
    COLD,
    LOW_VOLTS,
    AFTER_MINUTES,
    SHAKEN,
    ONE_POWER_ON_IN
  }
}
