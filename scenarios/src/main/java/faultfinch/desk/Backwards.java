package faultfinch.desk;

import faultfinch.board.Pad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Pins said by number only, and "its output", belong to the part that was spoken of last: each is
 * named in full here, sentence by sentence.
 */
final class Backwards {
  private static final Pattern REF = Pattern.compile("\\b[A-Z]{1,3}\\d{1,2}\\b(?!\\.)");

  private static final Pattern PART = Pattern.compile("\\b[A-Z]{1,3}\\d{1,2}\\b");

  private static final String LIST =
      "(\\d{1,2}(?:(?:, and |, or |, | and | or | & | to | thru |-)\\d{1,2})+)";

  private static final String PINS =
      "(?:the |all )?(?:other )?(?:(?:two|three|four|five|six) )?"
          + "(?:(?:data|address|input|output|select|enable|used) )?(?:pins|legs|inputs|outputs|pin|leg)";

  /** No figure with a unit behind it, and no share: "1 and 2 V", "3 of 8". */
  private static final String NO_UNIT =
      "(?! ?(?:m?v|volts?|m?a|k|k?ohms?|[km]?hz|times?|of \\d)\\b)(?![.\\d])";

  private static final Pattern PINS_LISTED =
      Pattern.compile(
          "(?i)(?:\\b([A-Z]{1,3}\\d{1,2})(?: on| at)? )?\\b"
              + PINS
              + " (?:\\(pins? )?"
              + LIST
              + "\\)?"
              + NO_UNIT
              + "(?: (?:of|on|at) (?:the )?([A-Z]{1,3}\\d{1,2})\\b)?(?! (?:of|on|at) (?:the |all )?[a-z])");

  private static final Pattern PIN_ALONE =
      Pattern.compile(
          "(?i)(?<![a-z]\\d{1,2} |\\. | of | on | at )\\b(pin|leg) (\\d{1,2})\\b"
              + NO_UNIT
              + "(?! (?:of|on|at|from) )");

  /** At the beginning of a piece: "too hot to touch, output 2 V". */
  private static final Pattern SIDE =
      Pattern.compile(
          "(?i)(?<=^|, |; )(?=(?:output|input)s? (?:is |at |only |of |about |voltage |= )*-?\\d[\\d.,]* ?m?v)");

  private static final Pattern SAME =
      Pattern.compile("(?i)(?<=\\b(?:of|on|at) )the same (?:chip|ic|part)\\b");

  /** A pin of a part that is called by what it is: "pin 22 of the video controller". */
  private static final Pattern OF_THE =
      Pattern.compile(
          "(?i)(\\b(?:pin|leg) \\w+/? (?:of|on|at) )(?:the )([a-z/][a-z/ ]*?)(?= (?:is|are|stays|goes|has|pulses|low|high|still|dead)\\b|,|;|$)");

  private static final Pattern ITS =
      Pattern.compile(
          "(?i)\\bits (?=(?:own )?(?:outputs?|inputs?|pins?|legs?|supply|select|enables?|clock|data|address|reset|interrupt|"
              + "(?-i:[A-Z]+\\d*/?))\\b)");

  /** One pin that was spoken of: "power off: that pin to ground more than 100 k". */
  private static final Pattern THAT =
      Pattern.compile(
          "(?i)\\b(?:that|this|the same) (?:pin|leg|input|output|line|net)\\b(?! (?:of|on|at) )");

  /** A pin by its name alone, which is none of a line: "2Y", "Q3", "OE/". */
  private static final Pattern NAME_ALONE =
      Pattern.compile(
          "(?<![\\w./-])(?:\\d[A-Z]\\d?|[A-Z]{1,4}\\d{1,2}/?|[A-Z]{1,4}/)(?![\\w.:/-])");

  /** A part further on whose pins those before it may be: "Q3 and Q7 of U22". */
  private static final Pattern OF_A_PART =
      Pattern.compile("(?i)\\b(?:of|on|at|off|from) (?:the )?(?:[a-z]{2,} ){0,3}[A-Z]+\\d+\\b");

  /** "U15's 3Y". */
  private static final Pattern POSSESSED =
      Pattern.compile("\\b([A-Z]{1,3}\\d{1,2})'s (?:pin |leg )?([A-Z0-9]{1,5}/?)(?![\\w.])");

  /** Where somebody went, and what he found there: "so I went round the character ROM: A2 low". */
  private static final Pattern AT_A_PART =
      Pattern.compile(
          "(?i)^([^:\"]*?\\b(?:round|around|at|on|to|of|over|probed|checked|tested) (?:the )?)([a-z0-9/ ]+?)(?:: | - )(?=\\S)");

  /** "On the character ROM, leg A6 is low", "On U24 I took the probe to A5". */
  private static final Pattern ON_A_PART =
      Pattern.compile(
          "(?i)^((?:on|at|around) (?:the )?)([a-z]+\\d+(?=[ ,])|[a-z0-9/ ]+?(?=, ))(?:, | )(?=\\S)");

  private static final String PIN = "[A-Z0-9]{1,5}/?";
  private static final String NEXT = "(?:, and |, or |, | and | or | & | )";

  /** "A0, A1 and A4 of U9", "Y0 Y1 Y4 of U30". */
  private static final Pattern ROW_BEFORE =
      Pattern.compile(
          "(?<![\\w.])(?:pins |legs )?("
              + PIN
              + "(?:"
              + NEXT
              + PIN
              + ")+) (?:of|on|at) (?:the )?([A-Z]{1,3}\\d{1,2})\\b(?!\\.)");

  /** "U30 Y0, Y1 and Y4". */
  private static final Pattern ROW_BEHIND =
      Pattern.compile(
          "(?<![\\w.])([A-Z]{1,3}\\d{1,2})(?: pins?| legs?)? ("
              + PIN
              + "(?:"
              + NEXT
              + PIN
              + "){2,})(?![\\w./])");

  private final Places places;
  private String part = "";

  /** What was said before, looked through only when somebody speaks of "that pin". */
  private final List<String> sentences = new ArrayList<>();

  /** The first part of the sentence before, which its subject mostly is. */
  private String subject = "";

  /** Nothing was spoken of yet. */
  Backwards(Places places) {
    this.places = places;
  }

  /** A sentence with every pin named in full; the next one goes on from its last part. */
  String inFull(String sentence) {
    String last = part;
    String there = found(sentence);
    String those = replaced(THAT, there, m -> lastPin(there.substring(0, m.start())));
    those = replaced(ROW_BEFORE, those, m -> row(m.group(2), m.group(1)));
    those = replaced(ROW_BEHIND, those, m -> row(m.group(1), m.group(2)));
    String own = replaced(POSSESSED, those, m -> pin(m.group(1), m.group(2)));
    String text = replaced(ITS, own, m -> called(own, m.start(), subject).map(r -> r + " "));
    String ofIts = text;
    text = replaced(SAME, text, m -> called(ofIts, m.start(), last));
    text = replaced(OF_THE, text, m -> places.theOne(m.group(2)).map(ref -> m.group(1) + ref));
    String sides = text;
    text = replaced(SIDE, text, m -> called(sides, m.start(), last).map(r -> r + " "));
    String all = text;
    text = replaced(PINS_LISTED, text, m -> pins(m, called(all, m.start(), last)));
    String listed = text;
    text =
        replaced(
            PIN_ALONE,
            text,
            m ->
                called(listed, m.start(), last)
                    .filter(ref -> places.isPin(ref, m.group(2)))
                    .map(ref -> ref + " pin " + m.group(2)));
    String numbered = text;
    text =
        replaced(
            NAME_ALONE,
            text,
            m ->
                OF_A_PART.matcher(numbered).find(m.end()) || places.isLine(m.group())
                    ? Optional.empty()
                    : ofAny(numbered, m.start(), last)
                        .filter(ref -> !isBehind(numbered, m.start(), ref))
                        .flatMap(ref -> pin(ref, m.group())));
    part = called(text, text.length(), last).orElse("");
    sentences.add(text);
    subject =
        REF.matcher(text)
            .results()
            .map(MatchResult::group)
            .filter(places::isPart)
            .findFirst()
            .orElse(subject);
    return text;
  }

  /**
   * What stands behind the name of a part and a colon, its pins in full, be they called as lines.
   */
  private String found(String sentence) {
    return Stream.of(AT_A_PART, ON_A_PART)
        .map(at -> at.matcher(sentence))
        .filter(Matcher::find)
        .flatMap(at -> whoseIs(at.group(2)).map(ref -> found(ref, sentence, at.end())).stream())
        .findFirst()
        .or(() -> ofMany(sentence))
        .orElse(sentence);
  }

  /** "RAM address legs compared: A6 is high": the A6 of each of those chips. */
  private Optional<String> ofMany(String sentence) {
    int colon = sentence.contains("\"") ? -1 : sentence.indexOf(": ");
    if (colon < 0) {
      return Optional.empty();
    }
    Place head = places.find(sentence.substring(0, colon), true);
    boolean many = head.refs().size() > 1 && head.words().size() == 1;
    if (!many || REF.matcher(sentence.substring(0, colon)).find()) {
      return Optional.empty();
    }
    return Optional.of(
        sentence.substring(0, colon + 2)
            + replaced(
                NAME_ALONE,
                sentence.substring(colon + 2),
                m ->
                    head.refs().stream().allMatch(ref -> places.isPin(ref, m.group()))
                        ? Optional.of(head.words().get(0) + " " + m.group())
                        : Optional.empty()));
  }

  /** Pins of one part that are told in a row, if they all are some. */
  private Optional<String> row(String ref, String list) {
    List<String> pins = List.of(list.split(NEXT));
    boolean all = pins.stream().allMatch(pin -> pin(ref, pin).isPresent());
    return all && pins.size() > 1
        ? Optional.of(
            pins.stream().map(pin -> ref + "." + pin).collect(Collectors.joining(" and ")))
        : Optional.empty();
  }

  private String found(String ref, String sentence, int from) {
    int other = firstPart(sentence, from);
    return sentence.substring(0, from)
        + replaced(NAME_ALONE, sentence.substring(from, other), m -> pin(ref, m.group()))
        + sentence.substring(other);
  }

  /** Where another part is named: what follows may be of that. */
  private int firstPart(String sentence, int from) {
    return PART.matcher(sentence)
        .results()
        .filter(m -> m.start() >= from && places.isPart(m.group()))
        .mapToInt(MatchResult::start)
        .findFirst()
        .orElse(sentence.length());
  }

  private Optional<String> whoseIs(String words) {
    return Optional.of(words).filter(places::isPart).or(() -> places.theOne(words));
  }

  private Optional<String> pin(String ref, String pin) {
    return places.isPart(ref) && places.isPin(ref, pin)
        ? Optional.of(ref + "." + pin)
        : Optional.empty();
  }

  /** Whether a part stands right before a place in a text. */
  private static boolean isBehind(String text, int at, String ref) {
    return text.substring(0, at).matches("(?s).*\\b" + ref + "(?: pins?| legs?)? ");
  }

  /** The part that was named last before a place in a text, else in a text before. */
  private Optional<String> called(String text, int end, String before) {
    Matcher m = REF.matcher(text.substring(0, end));
    String last = before;
    while (m.find()) {
      last = places.isPart(m.group()) ? m.group() : last;
    }
    return Optional.of(last).filter(ref -> !ref.isEmpty());
  }

  /** The same, be a pin of it spoken of or all of it. */
  private Optional<String> ofAny(String text, int end, String before) {
    return PART.matcher(text.substring(0, end))
        .results()
        .map(MatchResult::group)
        .filter(places::isPart)
        .reduce((one, other) -> other)
        .or(() -> Optional.of(before).filter(ref -> !ref.isEmpty()));
  }

  /** The last pin, or line, that a text, or one before it, speaks of alone. */
  private Optional<String> lastPin(String text) {
    List<String> pieces = new ArrayList<>();
    sentences.forEach(sentence -> pieces.addAll(Pieces.of(sentence)));
    pieces.addAll(Pieces.of(text));
    for (int i = pieces.size() - 1; i >= 0; i--) {
      List<List<Pad>> lines = places.find(pieces.get(i), false).lines();
      if (lines.size() == 1) {
        return Optional.of(lines.get(0).get(0).text());
      }
    }
    return Optional.empty();
  }

  private Optional<String> pins(MatchResult m, Optional<String> before) {
    Optional<String> named = Stream.of(m.group(1), m.group(3)).filter(r -> r != null).findFirst();
    Optional<String> ref = named.filter(places::isPart).or(() -> before);
    List<String> numbers = numbers(m.group(2));
    boolean known =
        ref.isPresent()
            && !numbers.isEmpty()
            && numbers.stream().allMatch(n -> places.isPin(ref.get(), n));
    return known && named.map(places::isPart).orElse(true)
        ? Optional.of(
            numbers.stream().map(n -> ref.get() + "." + n).collect(Collectors.joining(" and ")))
        : Optional.empty();
  }

  private static List<String> numbers(String list) {
    return Stream.of(list.split(", and |, or |, | and | or | & "))
        .flatMap(
            one -> {
              String[] ends = one.split(" to | thru |-");
              int from = Integer.parseInt(ends[0]);
              return IntStream.rangeClosed(from, Integer.parseInt(ends[ends.length - 1]))
                  .mapToObj(String::valueOf);
            })
        .toList();
  }

  private static String replaced(
      Pattern pattern, String text, Function<MatchResult, Optional<String>> with) {
    return pattern
        .matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(with.apply(m).orElse(m.group())));
  }
}
