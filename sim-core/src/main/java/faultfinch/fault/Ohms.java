package faultfinch.fault;

import faultfinch.part.Element;

/** How faults write a resistance: {@code 1 ohm}, {@code 470 ohms}, {@code 1k}, {@code 4k7}. */
final class Ohms {
  /** Reads back every form {@link #text} writes, and {@code 0}, which stands for 1 ohm. */
  static final String PATTERN = "(\\d{1,6}(?:[kMR]\\d{0,3})?)(?: ohms?)?";

  private static final int MOST = 10_000_000;

  private Ohms() {}

  static String text(int ohms) {
    if (ohms >= 1000 && ohms % 100 == 0) {
      int hundreds = ohms % 1000 / 100;
      return ohms / 1000 + "k" + (hundreds == 0 ? "" : hundreds);
    }
    return ohms + (ohms == 1 ? " ohm" : " ohms");
  }

  static int said(Words words, int group) {
    long bound = Long.parseLong(words.said(group).replaceAll("\\D.*", ""));
    boolean far = words.said(group).contains("M") ? bound > 10 : bound > MOST / 1000;
    int ohms =
        far && !words.said(group).matches("\\d+") ? MOST + 1 : Element.ohms(words.said(group));
    if (ohms > MOST) {
      throw words.refuse(group, "'" + words.said(group) + "'", "0 ohms to 10M, such as 470 or 4k7");
    }
    return Math.max(1, ohms);
  }

  static int checked(int ohms) {
    if (ohms < 1) {
      throw new IllegalArgumentException("found " + ohms + " ohms, right would be 1 or more");
    }
    return ohms;
  }
}
