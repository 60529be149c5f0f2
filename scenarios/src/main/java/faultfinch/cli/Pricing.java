package faultfinch.cli;

import faultfinch.bench.Price;
import java.util.Locale;

/** A price in words. */
final class Pricing {
  private Pricing() {}

  /** Such as {@code 4 min, 1 pull}; damage only where it is expected. */
  static String words(Price price, Words words) {
    String text = words.say("train.minutes", price.minutes());
    if (price.pulls() > 0) {
      text += ", " + words.say(price.pulls() == 1 ? "train.pull" : "train.pulls", price.pulls());
    }
    if (price.damage() >= 0.5) {
      text += ", " + words.say("train.damage", String.format(Locale.ROOT, "%.1f", price.damage()));
    }
    return text;
  }
}
