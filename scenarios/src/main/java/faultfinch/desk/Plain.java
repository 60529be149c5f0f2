package faultfinch.desk;

import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The same said in fewer ways: one word for each thing, figures in digits, a blank before a unit.
 */
final class Plain {
  private static final Pattern END = Pattern.compile("[.!?]+(?= |$)|[()]");

  /**
   * "5 V is 5.02", "supply is 5.1 V", "5 V rail: 4.9": the rail by its name, then what it reads.
   */
  private static final Pattern RAIL =
      Pattern.compile(
          "(?i)(?<= |^)(?:the )?(?:\\+?5 ?v(?:olts?)?(?: rail| line| supply)?|(?:5 v )?supply)"
              + "(?: is| measures| measured| reads| at|:| =)?(?: only| just| really| down to| at)*"
              + " (?:about |around )?"
              + "(\\d[.,]\\d{1,2})(?: v(?:olts?)?)?(?! ?[km]?ohm)(?= |$|,)");

  /** A pin such as U33 4A is no current, and neither is a byte that was written. */
  private static final Pattern UNIT =
      Pattern.compile(
          "(?i)(?<![\\w.])(?<![a-z]\\d{1,3} |pin |pad |leg )"
              + "(?<!wrote |writes |sent |read |reads |got |back |page |for )"
              + "(-?\\d+(?:\\.\\d+)?)(mv|v|ma|a|hz|khz|mhz|ohms?|k)(?= |$)");

  /** A part called by what it gives is no reading: "the 5 V regulator is hot". */
  private static final Pattern GIVES =
      Pattern.compile("(?i)(?<= |^)(?:the )?\\+?\\d+ v(?:olts?)? (?=regulators?(?: |$))");

  /** As often as that, and no amperes: "more than 4 a second". */
  private static final Pattern A_SECOND = Pattern.compile("(?i)(?<=\\d) a (second|minute)\\b");

  /** A regulator with volts and no unit, of its output if of nothing else: "VR1 5.0". */
  private static final Pattern REGULATOR =
      Pattern.compile(
          "\\b(VR\\d+)(?:\\.| )?(?i:(out(?:put)?|in(?:put)?))?(?i: is| stays(?: at)?| at| gives| reads| only|:)*"
              + " (\\d{1,2}[.,]\\d{1,2})(?= |$|,)(?! ?(?i:m?v|volts?|m?a|k?ohms?)\\b)");

  /** A part felt against another one. */
  private static final Pattern WARMER =
      Pattern.compile(
          "(?<= |^)([A-Z]+\\d+|(?i:one (?:of the )?(?:rams?|memory|memories|chips?|ics?)(?: chips?)?))(?: is| are| feels?| gets?)?(?: clearly| much| far| noticeably| a bit)? (warmer|hotter)"
              + " than (?:[A-Z]+\\d+|(?:the |its |any |all )*(?:others?|rest|neighbours?)(?: [a-z]+)?)(?= |$)");

  /** The 5 V of a part: "5 V at U4 is missing". */
  private static final Pattern FIVE_GONE =
      Pattern.compile(
          "(?i)\\b5 ?v(?:olts?)? (?:at|on) (?:the )?(?-i:([A-Z]+\\d+)) (?:is |are )?(?:missing|gone|absent|not there)(?= |$)");

  /** The same of a part: "no 12 V at U21". */
  private static final Pattern NO_TWELVE =
      Pattern.compile(
          "(?i)\\bno \\+?12 ?v(?:olts?)? (?:at|on|to|reaches) (?:the )?(?-i:([A-Z]+\\d+))(?= |$)");

  /** What goes on meanwhile: "even with tune running in a loop". */
  private static final Pattern MEANWHILE =
      Pattern.compile(
          "(?i) (?:even )?(?:with|while) [^,;]{2,30} (?:running|playing|going)(?: in a loop| all the time)?$");

  /** Volts when it was cold or warm. */
  private static final Pattern VOLTS_WHEN =
      Pattern.compile("(?i)(?<=\\d V) (?:when )?(cold|hot|warm)(?= |$|,)");

  /**
   * A board that works as long as it is warm enough, or cold: "works for ten minutes then freezes".
   */
  private static final Pattern FOR_A_WHILE =
      Pattern.compile(
          "(?i)^.*\\b(?:works|runs|fine|ok|good|perfect)\\b.* for (?:about |some |the first |a )?(?:few |couple of |\\w+ )?"
              + "min(?:ute)?s?,?(?: and)? then (?:it )?(?:freezes|hangs|crashes|dies|stops|locks up|goes wild|garbage)\\b.*$");

  /** What a hand on a part does: "works when I press on U9". */
  private static final Pattern WHILE_PRESSED =
      Pattern.compile(
          "(?i)^(?:it |board |machine |only )*(?:works|runs|starts|comes up|boots)(?: again| fine)? (?:when|if|while|as long as)"
              + " (?:i |you |one )?(?:press|push|lean|squeeze|wiggle)(?:es|ing)?(?: down)?(?: on)?(?: the)? (?-i:([A-Z]+\\d+))$");

  /** The rail of 12 V by its volts: "12 V good". */
  private static final Pattern TWELVE =
      Pattern.compile(
          "(?i)^((?:and |yet |but |also )?)(?:the )?\\+?12 ?v(?:olts?)? (?:is |was |also |still |too )*"
              + "(?:good|right|ok|okay|there|present|fine|correct|normal)$");

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
    text = RAIL.matcher(text).replaceAll("rail is $1 V");
    text = A_SECOND.matcher(text).replaceAll(" per $1");
    text = REGULATOR.matcher(text).replaceAll(Plain::volts);
    text = UNIT.matcher(text).replaceAll("$1 $2");
    text = VOLTS_WHEN.matcher(text).replaceAll(" when $1");
    text = MEANWHILE.matcher(text).replaceAll("");
    text = FIVE_GONE.matcher(text).replaceAll("$1 has no rail");
    text = NO_TWELVE.matcher(text).replaceAll("$1 12 v rail missing");
    text = FOR_A_WHILE.matcher(text).replaceFirst("crashes when warm");
    text = WHILE_PRESSED.matcher(text).replaceFirst("pressing on $1 brings it back");
    text =
        WARMER
            .matcher(text)
            .replaceAll(m -> m.group(1) + (m.group(2).startsWith("w") ? " warm" : " hot"));
    text = TWELVE.matcher(text).replaceAll(m -> m.group(1) + "12 v rail fine");
    text = GIVES.matcher(text).replaceAll("the ");
    for (Map.Entry<String, String> number : vocabulary.pairs("numbers").entrySet()) {
      text = replaced(text, number.getKey(), UNITS, number.getValue() + " ");
    }
    text = NEITHER.matcher(text).replaceAll("no $1 and no $2");
    for (Map.Entry<String, String> pair : vocabulary.pairs("plain").entrySet()) {
      text = replaced(text, pair.getKey(), "(?= |$)", pair.getValue());
    }
    return text;
  }

  private static String volts(MatchResult m) {
    boolean in = m.group(2) != null && m.group(2).toLowerCase(Locale.ROOT).startsWith("in");
    return m.group(1) + (in ? " input " : " output ") + m.group(3) + " V";
  }

  /** Few of the words stand in a phrase, so they are looked for before a pattern is made. */
  private static String replaced(String text, String words, String behind, String with) {
    return text.toLowerCase(Locale.ROOT).contains(words)
        ? text.replaceAll(
            "(?i)(?<= |^)" + Pattern.quote(words) + behind, Matcher.quoteReplacement(with))
        : text;
  }
}
