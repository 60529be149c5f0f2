package faultfinch.signal;

/**
 * What a pin is made of; it sets the input threshold and what an unpowered part does to its nets.
 */
public enum Technology {
  LS,
  NMOS,
  CMOS,
  SCHMITT,
  PASSIVE;

  /**
   * Input threshold in millivolts before the pin's own deviation; rail is the part's supply in mV.
   */
  public int threshold(int railMillivolts) {
    return switch (this) {
      case LS -> Electrical.figure("threshold.ls");
      case NMOS -> Electrical.figure("threshold.nmos");
      case SCHMITT -> Electrical.figure("threshold.schmitt.rising");
      case CMOS -> railMillivolts / 2;
      case PASSIVE -> Electrical.figure("threshold.nmos");
    };
  }

  /** Largest deviation of one pin's threshold from the nominal, in millivolts. */
  public int spread() {
    return switch (this) {
      case LS -> Electrical.figure("spread.ls");
      case NMOS -> Electrical.figure("spread.nmos");
      case CMOS -> Electrical.figure("spread.cmos");
      case SCHMITT, PASSIVE -> 0;
    };
  }
}
