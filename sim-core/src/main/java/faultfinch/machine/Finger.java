package faultfinch.machine;

/** What a finger says of a part's case to somebody who knows how a healthy board feels. */
public enum Finger {
  COLD,
  NORMAL,
  WARM,
  HOT;

  /** Seconds that a board is on before its parts are felt. */
  public static final int SETTLED_SECONDS = 300;

  /**
   * Compares.
   *
   * @param tenths case temperature in tenths of a degree Celsius
   * @param healthyTenths that of the same part of a healthy board switched on as long
   */
  public static Finger of(int tenths, int healthyTenths) {
    int above = tenths - healthyTenths;
    if (above <= -PowerFigures.figure("finger.cold")) {
      return COLD;
    }
    if (above < PowerFigures.figure("finger.warm")) {
      return NORMAL;
    }
    return above < PowerFigures.figure("finger.hot") ? WARM : HOT;
  }
}
