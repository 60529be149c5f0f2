package faultfinch.signal;

/** How strongly an output pulls: volts behind ohms, for low and for high. */
public enum DriveClass {
  LS_GATE("LS gate", "ls-gate"),
  LS_BUFFER("LS buffer", "ls-buffer"),
  NMOS_LSI("NMOS LSI", "nmos-lsi"),
  MOS_MEMORY("MOS memory", "mos-memory"),

  /** A sound output: high is where it rests, low is where it falls when its input fails. */
  ANALOGUE("analogue", "analogue"),

  /** What a tape recorder puts out; it comes over a capacitor, so only its turns count. */
  TAPE_HEAD("tape head", "tape-head"),

  /** An operational amplifier driven to either end, on 12 V. */
  AMPLIFIER("amplifier", "amplifier");

  private final String words;
  private final int lowMillivolts;
  private final int lowOhms;
  private final int highMillivolts;
  private final int highOhms;

  DriveClass(String words, String key) {
    this.words = words;
    this.lowMillivolts = Electrical.figure("drive." + key + ".low.mv");
    this.lowOhms = Electrical.figure("drive." + key + ".low.ohm");
    this.highMillivolts = Electrical.figure("drive." + key + ".high.mv");
    this.highOhms = Electrical.figure("drive." + key + ".high.ohm");
  }

  /** Source millivolts when driving the given level. */
  public int millivolts(boolean high) {
    return high ? highMillivolts : lowMillivolts;
  }

  /** Source ohms when driving the given level. */
  public int ohms(boolean high) {
    return high ? highOhms : lowOhms;
  }

  /**
   * The class written as in a role line, such as {@code LS gate}.
   *
   * @throws IllegalArgumentException if there is no such class
   */
  public static DriveClass named(String words) {
    for (DriveClass c : values()) {
      if (c.words.equals(words)) {
        return c;
      }
    }
    throw new IllegalArgumentException(
        "found drive class '"
            + words
            + "', right would be LS gate, LS buffer, NMOS LSI, MOS memory, analogue, tape head or"
            + " amplifier");
  }
}
