package faultfinch.desk;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Pins of a part that a sentence names but once, each named in full: "A0, A1 and A4 of U9". */
final class PinsInFull {
  private static final Pattern PART = Pattern.compile("\\b[A-Z]{1,3}\\d{1,2}\\b");

  /** A pin by its name alone, which is none of a line: "2Y", "Q3", "OE/". */
  static final Pattern NAME_ALONE =
      Pattern.compile(
          "(?<![\\w./-])(?:\\d[A-Z]\\d?|[A-Z]{1,4}\\d{1,2}/?|[A-Z]{1,4}/)(?![\\w.:/-])");

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

  /** "Pin 1 of K1 to K8". */
  private static final Pattern OF_EACH =
      Pattern.compile(
          "(?i)\\b(?:pin|leg|contact) (\\w+/?) (?:of|on|at) ([a-z]+\\d+ ?(?:to|thru|through|-) ?[a-z]+\\d+)\\b");

  /** "Pin 15 of all RAMs is high". */
  private static final Pattern OF_A_KIND =
      Pattern.compile(
          "(?i)\\b(?:pin|leg) (\\w+/?) (?:of|on|at) (?:all|each|every|both|any)(?: of)?(?: the)? ([a-z][a-z ]*?)(?= (?:is|are|stays?|sits?|reads?|shows?|has|have|steady|solid|always|high|low|dead|pulses?|pulsing|no)\\b|:|,|;|$)");

  private final Places places;

  PinsInFull(Places places) {
    this.places = places;
  }

  /** A sentence in which its pins are told in full, as far as it names their part itself. */
  String of(String sentence) {
    String text = Backwards.replaced(OF_EACH, found(sentence), m -> ofEach(m.group(1), m.group(2)));
    if (OF_A_KIND.matcher(text).find()) {
      text = Backwards.replaced(OF_A_KIND, text, m -> ofAKind(m.group(1), m.group(2)));
    }
    text = Backwards.replaced(ROW_BEFORE, text, m -> row(m.group(2), m.group(1)));
    text = Backwards.replaced(ROW_BEHIND, text, m -> row(m.group(1), m.group(2)));
    return Backwards.replaced(POSSESSED, text, m -> pin(m.group(1), m.group(2)));
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
    if (!many || PART.matcher(sentence.substring(0, colon)).find()) {
      return Optional.empty();
    }
    return Optional.of(
        sentence.substring(0, colon + 2)
            + Backwards.replaced(
                NAME_ALONE,
                sentence.substring(colon + 2),
                m ->
                    head.refs().stream().allMatch(ref -> places.isPin(ref, m.group()))
                        ? Optional.of(head.words().get(0) + " " + m.group())
                        : Optional.empty()));
  }

  private Optional<String> ofEach(String pin, String range) {
    List<String> refs = List.of(places.spelt(range).split(", "));
    boolean all = refs.size() > 1 && refs.stream().allMatch(ref -> pin(ref, pin).isPresent());
    return all
        ? Optional.of(
            refs.stream().map(ref -> ref + "." + pin).collect(Collectors.joining(" and ")))
        : Optional.empty();
  }

  private Optional<String> ofAKind(String pin, String kind) {
    Place parts = places.find(kind, true);
    boolean all =
        parts.refs().size() > 1
            && parts.words().size() == 1
            && parts.refs().stream().allMatch(ref -> pin(ref, pin).isPresent());
    return all
        ? Optional.of(
            parts.refs().stream().map(ref -> ref + "." + pin).collect(Collectors.joining(" and ")))
        : Optional.empty();
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
        + Backwards.replaced(NAME_ALONE, sentence.substring(from, other), m -> pin(ref, m.group()))
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

  /** A pin in full, if the part has it. */
  Optional<String> pin(String ref, String pin) {
    return places.isPart(ref) && places.isPin(ref, pin)
        ? Optional.of(ref + "." + pin)
        : Optional.empty();
  }
}
