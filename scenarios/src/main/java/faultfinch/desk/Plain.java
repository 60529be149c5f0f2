package faultfinch.desk;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The same said in fewer ways: one word for each thing, figures in digits, a blank before a unit.
 */
final class Plain {
  private static final Pattern END = Pattern.compile("[.!?]+(?= |$)|[()]");

  private static final String UNITS = " (?=(?:m?v|volts?|m?a|amps?|k?hz|hertz|k?ohms?)(?= |$))";

  /** Levels have no such opposites. */
  private static final Pattern NEITHER =
      Pattern.compile("(?i)\\bneither (?:a )?(?!high|low)(\\w+) nor (?:a )?(\\w+)(?= |$)");

  private final Vocabulary vocabulary;

  Plain(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** A phrase in plain words. */
  String of(String phrase) {
    String text = END.matcher(phrase.strip()).replaceAll("").strip().replace('\u2019', '\'');
    text = Turns.plain(text);
    for (Map.Entry<String, String> number : vocabulary.pairs("numbers").entrySet()) {
      text = replaced(text, number.getKey(), UNITS, number.getValue() + " ");
    }
    text = NEITHER.matcher(text).replaceAll("no $1 and no $2");
    for (Map.Entry<String, String> pair : vocabulary.pairs("plain").entrySet()) {
      text = replaced(text, pair.getKey(), "(?= |$)", pair.getValue());
    }
    return text;
  }

  /** Few of the words stand in a phrase, so they are looked for before a pattern is made. */
  private static String replaced(String text, String words, String behind, String with) {
    return text.toLowerCase(Locale.ROOT).contains(words)
        ? text.replaceAll(
            "(?i)(?<= |^)" + Pattern.quote(words) + behind, Matcher.quoteReplacement(with))
        : text;
  }
}
