package faultfinch.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Parts what somebody says into pieces that each say one thing. Quotes stay whole. */
final class Pieces {

  /** What keys are called that have signs, and where sticks go. */
  private static final String NAME =
      "(?:left|right|open|close) bracket|minus|plus|comma|stop|equals|slash|star|colon|semicolon|quote|apostrophe|hash|space|shift|return|enter"
          + "|[Uu]p|[Dd]own|[Ll]eft|[Rr]ight|fire";

  /** A comma between names of keys, parts or pins parts no pieces: "keys A, E and I". */
  private static final Pattern LISTED =
      Pattern.compile(
          "(?<=(?:^| )(?:"
              + NAME
              + "|[A-Za-z]{0,2}\\d{0,2})), (?=(?:"
              + NAME
              + "|[A-Za-z]{0,2}\\d{0,2})(?:[,:]| and | or ))");

  /** A line by what it is called: in capitals, with a figure or a sign behind it. */
  private static final String LINE = "[A-Z]{1,6}(?:\\d{1,2}/?|/)";

  /** The same of lines, of which one thing is said behind the last: "RAS/, CAS/, WR/ all there". */
  private static final Pattern LINES_LISTED =
      Pattern.compile(
          "(?<=(?:^| )(?:"
              + LINE
              + "|(?!OK|NO)[A-Z]{2,4})), (?="
              + LINE
              + "(?:,| and | or |,? (?:all|both|each|are|is|do|does|show|shows|have|has|pulse|pulses|swing|toggle|move|read|reads|stay|stays|sit|sits|look|looks|there|never|dead|low|high|fine|ok)\\b))");

  /** Pins called by name once more: "both enables of U19, 1G/ and 2G/, sit at 0.2". */
  private static final Pattern APPOSED =
      Pattern.compile(
          "(?<=[a-z0-9]), ((?:[A-Z0-9]{1,4}/?)(?:(?:, | and )[A-Z0-9]{1,4}/?)*), (?=(?:sits?|is|are|reads?|stays?|stands?|shows?|measures?|rests?|hangs?|do|does|all|both|only) )");

  /** The same before the last of them. */
  private static final Pattern LAST_LISTED =
      Pattern.compile("(?<=(?:^| )[A-Za-z]?\\d{0,2}), (and|or) (?=[A-Za-z]?\\d{0,2}(?: |$))");

  /** The comma behind the last of them. */
  private static final Pattern LIST_END =
      Pattern.compile("(?<= and " + LINE + "), (?=(?:do|does|are|is|all|both|have|has) )");

  /** How often a lamp pulses, and then: "blinks 1, 2". */
  private static final Pattern CODE =
      Pattern.compile(
          "(?i)\\b(blinks?|flash|flashes|pulses?|winks?|lamp|led|code) (\\d), (\\d)(?=$|[;.)]|, [a-z])");

  /** Lines and figures in turn: "D0 1.1 D1 1.0 D2 1.4". */
  private static final Pattern PAIRS =
      Pattern.compile(
          "(?<=\\b\\d{0,2}[A-Z]{1,4}\\d{0,2}/? \\d{1,2}\\.\\d{1,2}(?: V)?) (?=(?:[A-Z]{1,4}\\d{1,2}/?|\\d{1,2}V[A-Z]?) \\d{1,2}\\.\\d)");

  private static final Pattern PARTED =
      Pattern.compile(
          "\"[^\"]*\"|\\((?i:good|normal|ref|should|healthy|other|usual)\\b[^()\"]*\\)|([,;](?= )(?! then (?:\\d|one|two|three|four)(?:$|[,;.) ](?!m?[va]\\b)))|(?i) then(?= (?:the )?(?:drive |power |caps )?(?:lamp|screen|picture|display|sound)\\b)|(?i) (?:but(?! for)|though(?! (?:reads|is|are|shows|has|stays|sits|measures)\\b)|although|whereas|while(?= (?:(?:the )?"
              + "[A-Z]+\\d|(?:all |its |the |both )+(?:neighbours|others|other|rest)))) |! "
              + "|(?<=\\d ?(?:m?V|volts|[km]?Hz|m?A),?) and (?=(?:pin \\d{1,2} (?:of|on) [A-Z]+\\d+|[A-Z]+\\d+(?: pin |\\.)\\S+) (?:is|stays|sits|reads|has|never)\\b)"
              + "|(?<=[a-z]{3}|\\d)\\. (?=[A-Z]))");

  private static final Pattern EXCEPT =
      Pattern.compile(
          "(?i)(.+?),? (?:but for|except for|except|apart from|save for|bar(?= (?:the|its|one|two|for|[A-Z]+\\d))) (.+)");

  /** What was measured, and a figure behind the colon. */
  private static final Pattern VALUE =
      Pattern.compile(
          "(?i)^((?!.*\").*(?:ohms|ohmmeter|resistance|volts|voltage|current|frequency|beep test|beeper test|continuity|\\d ?v (?:at|on) ).*): (?=(?:under |over |about |less than |more than |only )*-?\\d|(?:practically |nearly |almost |dead |a )*(?:open|short|shorted|nothing|zero)\\b)");

  /** What was looked at with an instrument, or a pin, and what it showed behind the colon. */
  private static final Pattern SHOWN =
      Pattern.compile(
          "(?i)^((?!.*\")(?:.*\\b(?:probe|meter|multimeter|dvm|scope|oscilloscope|counter|frequency)\\b.*"
              + "|(?:.* )?(?:pin|leg) \\w+/?(?: of (?:[A-Z]+\\d+|all [a-z]+(?: chips)?))?)): ");

  /** A figure with its unit, and nothing else, of what stands before the colon. */
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?i)^((?!.*\").{3,60}): (?=(?:about |only |just |around )*-?\\d+(?:\\.\\d+)? ?(?:m?v|volts?|k?ohms?|[km]?hz|k)\\.?$)");

  private static final Pattern AND = Pattern.compile("(?i) and ");

  private static final int SHORTEST_SENTENCE = 5;

  private Pieces() {}

  /** What holds, and what it does not hold for: "all dead but for the lamp". */
  record Except(String says, String not) {}

  /** The pieces in their order; the whole if it has none. */
  static List<String> of(String says) {
    String told = PAIRS.matcher(CODE.matcher(says).replaceAll("$1 $2, then $3")).replaceAll(", ");
    String beside = APPOSED.matcher(told).replaceAll(" $1 ");
    String last = LAST_LISTED.matcher(beside).replaceAll(" $1 ");
    String lines = LINES_LISTED.matcher(last).replaceAll(" and ");
    String ended = LIST_END.matcher(lines).replaceAll(" ");
    String text = LISTED.matcher(ended).replaceAll(" and ");
    List<String> pieces = new ArrayList<>();
    Matcher m = PARTED.matcher(text);
    int from = 0;
    while (m.find()) {
      if (m.group(1) != null) {
        pieces.add(text.substring(from, m.start()).strip());
        from = m.end();
      }
    }
    pieces.add(text.substring(from).strip());
    pieces =
        pieces.stream().flatMap(piece -> explained(piece).stream()).collect(Collectors.toList());
    pieces.removeIf(String::isBlank);
    return pieces.isEmpty() ? List.of(says) : pieces;
  }

  /**
   * What is said in general and, behind a colon, in particular; before it a few words are a label.
   */
  private static List<String> explained(String piece) {
    String value = VALUE.matcher(piece).replaceFirst("$1 ");
    value = SHOWN.matcher(value).replaceFirst("$1 ");
    value = FIGURE.matcher(value).replaceFirst("$1 ");
    if (!value.equals(piece)) {
      return List.of(value);
    }
    int colon = piece.contains("\"") ? -1 : piece.indexOf(": ");
    return colon < 0 || piece.substring(0, colon).split(" ").length < SHORTEST_SENTENCE
        ? List.of(piece)
        : List.of(piece.substring(0, colon), piece.substring(colon + 2).strip());
  }

  static Optional<Except> except(String piece) {
    Matcher m = EXCEPT.matcher(piece);
    return m.matches() ? Optional.of(new Except(m.group(1), m.group(2))) : Optional.empty();
  }

  /** Both sides of each "and", the first "and" first; none of a piece with quotes in it. */
  static List<List<String>> halves(String piece) {
    List<List<String>> halves = new ArrayList<>();
    Matcher and = AND.matcher(piece);
    while (!piece.contains("\"") && and.find()) {
      halves.add(List.of(piece.substring(0, and.start()), piece.substring(and.end())));
    }
    return halves;
  }
}
