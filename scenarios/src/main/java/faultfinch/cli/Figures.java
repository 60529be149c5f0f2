package faultfinch.cli;

import faultfinch.bench.Price;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;

/** How prices and shares are written. */
final class Figures {
  private static final int PER_CENT = 2;

  private Figures() {}

  /** A price for machines: its parts, and all of it in minutes. */
  static Map<String, Object> json(Price price) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("minutes", price.minutes());
    json.put("pulls", price.pulls());
    json.put("damage", price.damage());
    json.put("price", price.total());
    return json;
  }

  /** Without digits behind the point. */
  static String noDigit(double figure) {
    return BigDecimal.valueOf(figure).setScale(0, RoundingMode.HALF_UP).toPlainString();
  }

  /** With one digit behind the point. */
  static String oneDigit(double figure) {
    return BigDecimal.valueOf(figure).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  /** With two digits behind the point. */
  static String twoDigits(double figure) {
    return BigDecimal.valueOf(figure).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  /** A share of 1 as so many of a hundred; what is there but rounds to none is "under 1". */
  static String ofAHundred(double share, Words words) {
    String whole = whole(share);
    return share > 0 && whole.equals("0") ? words.say("figure.under-one") : whole;
  }

  /**
   * A share of 1 in whole per cent; what is there but rounds to none is "under 1", and what is not
   * all but rounds to that is "over 99".
   */
  static String perCent(double share, Words words) {
    String whole = whole(share);
    boolean under = share > 0 && whole.equals("0");
    boolean over = share < 1 && whole.equals("100");
    String some = over ? "figure.over-99-per-cent" : "figure.per-cent";
    return words.say(under ? "figure.under-one-per-cent" : some, whole);
  }

  private static String whole(double share) {
    return BigDecimal.valueOf(share)
        .movePointRight(PER_CENT)
        .setScale(0, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
