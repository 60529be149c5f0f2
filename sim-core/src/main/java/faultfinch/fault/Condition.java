package faultfinch.fault;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a fault shows.
 *
 * @param kind what it waits for
 * @param figure minutes for {@link Kind#AFTER_MINUTES} (1 to 120), n for {@link
 *     Kind#ONE_POWER_ON_IN} (2 to 100), else 0
 */
public record Condition(Kind kind, int figure) {

  /** Always there. */
  public static final Condition ALWAYS = new Condition(Kind.ALWAYS, 0);

  /** How a condition may be written behind a fault, for messages. */
  static final String FORMS =
      "when warm, when cold, at low volts, after 3 minutes, when shaken or one power-on in 4";

  private static final Pattern BEHIND =
      Pattern.compile(
          " (when warm|when cold|at low volts|when shaken"
              + "|after (\\d{1,4}) minutes?|one power-on in (\\d{1,4}))$");

  /** What a fault can wait for. */
  public enum Kind {
    ALWAYS(""),
    WARM("when warm"),
    COLD("when cold"),
    LOW_VOLTS("at low volts"),
    AFTER_MINUTES("after "),
    SHAKEN("when shaken"),
    ONE_POWER_ON_IN("one power-on in ");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  public Condition {
    boolean right =
        switch (kind) {
          case AFTER_MINUTES -> figure >= 1 && figure <= 120;
          case ONE_POWER_ON_IN -> figure >= 2 && figure <= 100;
          case ALWAYS, WARM, COLD, LOW_VOLTS, SHAKEN -> figure == 0;
        };
    if (!right) {
      throw new IllegalArgumentException(
          "found " + figure + " for " + kind + ", right would be 1 to 120 minutes, or 2 to 100");
    }
  }

  /** As written behind a fault, such as {@code after 3 minutes}; empty for always. */
  public String text() {
    return switch (kind) {
      case AFTER_MINUTES -> kind.words + figure + (figure == 1 ? " minute" : " minutes");
      case ONE_POWER_ON_IN -> kind.words + figure;
      case ALWAYS, WARM, COLD, LOW_VOLTS, SHAKEN -> kind.words;
    };
  }

  /** The condition at the end of a text, or always. */
  static Condition endOf(String text) {
    Matcher m = BEHIND.matcher(text);
    if (!m.find()) {
      return ALWAYS;
    }
    String figure = m.group(2) != null ? m.group(2) : m.group(3);
    if (figure == null) {
      for (Kind k : Kind.values()) {
        if (k.words.equals(m.group(1))) {
          return new Condition(k, 0);
        }
      }
    }
    Kind kind = m.group(2) != null ? Kind.AFTER_MINUTES : Kind.ONE_POWER_ON_IN;
    try {
      return new Condition(kind, Integer.parseInt(figure));
    } catch (IllegalArgumentException e) {
      throw new UnknownFault(text, m.start() + 2, "'" + m.group(1) + "'", e.getMessage(), e);
    }
  }

  /** A text without the condition at its end. */
  static String before(String text) {
    return BEHIND.matcher(text).replaceFirst("");
  }
}
