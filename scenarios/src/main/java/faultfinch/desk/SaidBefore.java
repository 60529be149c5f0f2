package faultfinch.desk;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the pieces before spoke of: a piece may go on of it without naming it again. */
final class SaidBefore {
  /** A pin in full, and others behind it. */
  private static final String PINS = "[A-Z]+\\d+\\.\\S+(?: and [A-Z]+\\d+\\.\\S+)*";

  /** "And so does the output of VR1". */
  private static final Pattern SO_TOO =
      Pattern.compile("(?i)(?:and )?so (?:is|are|does|do|has|have|did) (?:the )?(.+?)(?: too)?");

  /** Nothing but a figure, of what was named before. */
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?i)^(?:about |around |roughly |only |just |at |both |each |all )*-?(?:\\d[\\d.]* ?m?v\\b|\\d+\\.\\d+$)");

  private static final Pattern PREDICATE =
      Pattern.compile(
          "(?i)(?<= )(?:reads?|is|are|measures?|shows?|sits?|stays?|has|have|gets?|feels?) .+$");

  /** "Same on U24.A8", "U24.A8 the same": as at the pins spoken of before. */
  private static final Pattern AS_BEFORE =
      Pattern.compile(
          "(?i)(?:and )?(?:the )?(?:same|ditto)(?: thing| story)?(?: on| at| for| with)? (?-i:("
              + PINS
              + "))|(?-i:("
              + PINS
              + "))(?: is| are)?(?: just)? (?:the same|ditto|likewise|same)");

  /** How warm something is that was named before: "and it is scorching", "the chip is cold". */
  private static final Pattern FELT =
      Pattern.compile(
          "(?i)(?:and |but )?(?:(?:it|that|this|the chip|the part|the thing|its case|the case)(?: is| feels| gets| runs)? )?"
              + "(?:very |quite |really |rather |just |only )*(\\w+(?: \\w+)*?)"
              + "(?: (?:on|by|with|to) (?:the |an |my )?(?:ir gun|infra ?red|thermometer|ir thermometer|touch|finger))?");

  /** A pin of what was named before: "5.0 V on X1 VCC, 0.2 V on OUT". */
  private static final Pattern OTHER_PIN =
      Pattern.compile("(?<= (?:on|at) )(?:its |the )?([A-Z][A-Z0-9]{1,4}/?)$");

  /** A word for a look, to be put before a piece that lacks its subject. */
  private static final Map<String, String> SUBJECTS =
      Map.of(
          "screen",
          "display",
          "listen",
          "sound",
          "lamp",
          "lamp",
          "current",
          "current",
          BenchWords.LOOK,
          "ribbon");

  /** What a piece without a subject goes on of. */
  private String subject = "";

  /** The last piece that told something of pins in full. */
  private String ofPins = "";

  /** The piece before, if something was read out of it. */
  private String said = "";

  /** The piece before, if it names pins and tells nothing of them. */
  private String place = "";

  /** Whether a piece before was of a round of the bench ROM. */
  private boolean round;

  /** The part that was named last, in whichever entry. */
  private String part = "";

  /** Another entry goes on of nothing but the part. */
  void begin() {
    subject = "";
    ofPins = "";
    said = "";
    place = "";
    round = false;
  }

  /** A piece of which something was read, or nothing. */
  void told(String text, List<Phrases.Finding> findings) {
    boolean some = !findings.isEmpty();
    ofPins = some && text.matches(".*" + PINS + ".*") ? text : ofPins;
    said = some ? text : "";
    subject = some ? subject(findings.get(0).look()) : "";
  }

  /** A piece that names pins and tells nothing of them; nothing if it is none. */
  void leaves(String text) {
    place = text;
  }

  /** A part that a piece names; nothing if it names none. */
  void names(String ref) {
    part = ref.isEmpty() ? part : ref;
  }

  String part() {
    return part;
  }

  boolean hasSubject() {
    return !subject.isEmpty();
  }

  String subject() {
    return subject;
  }

  /** A piece that speaks of the bench ROM, whatever was read out of it. */
  void ofARound() {
    round = true;
  }

  /** Whether pulses of the lamp that are told now are those at the end of a round. */
  boolean goesOnOfARound() {
    return round || isOfARound();
  }

  boolean isOfARound() {
    return subject.equals(BenchWords.SPOKEN_OF);
  }

  /** A piece that is a figure, behind the place of the one before: "VA2 and VA3, 0.9 V each". */
  Optional<String> placed(String text) {
    return place.isEmpty() || !FIGURE.matcher(text).find()
        ? Optional.empty()
        : Optional.of(place + " " + text);
  }

  /**
   * The piece before with other pins in it, if this one says no more of them than "the same", or of
   * something else, if that is so too.
   */
  String inFull(String text) {
    Matcher so = SO_TOO.matcher(text);
    Matcher tail = PREDICATE.matcher(said);
    if (so.matches() && tail.find()) {
      return so.group(1) + " " + tail.group();
    }
    Matcher same = AS_BEFORE.matcher(text);
    if (ofPins.isEmpty() || !same.matches()) {
      return text;
    }
    String pins = same.group(1) == null ? same.group(2) : same.group(1);
    return ofPins.replaceFirst(PINS, Matcher.quoteReplacement(pins));
  }

  /** A piece that ends in what may be a pin of the part named last in the same entry. */
  Optional<String> pinned(String text) {
    Matcher m = OTHER_PIN.matcher(text);
    return m.find() && !part.isEmpty() && !said.isEmpty()
        ? Optional.of(m.replaceFirst(Matcher.quoteReplacement(part + "." + m.group(1))))
        : Optional.empty();
  }

  /** The part named last in the same entry with how warm it is, if a piece says no more. */
  Optional<String> felt(String text, List<String> warmths) {
    Matcher m = FELT.matcher(text);
    boolean warmth = m.matches() && warmths.contains(m.group(1).toLowerCase(Locale.ROOT));
    return warmth && !part.isEmpty() && !said.isEmpty()
        ? Optional.of(part + " is " + m.group(1))
        : Optional.empty();
  }

  /** What a piece without a subject goes on of: the same look, or the same pin. */
  private static String subject(String look) {
    String[] words = look.split(" ", 2);
    boolean placed = words.length > 1 && LookPlaces.AT_PINS.contains(words[0]);
    // A pin in full, or what lines are called by.
    return placed
        ? words[1].replaceAll("(?<=\\.\\S{1,9}) at the (?:pin|pad)$", "")
        : SUBJECTS.getOrDefault(look, "");
  }
}
