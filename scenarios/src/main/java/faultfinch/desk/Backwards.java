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
          + "(?:(?:data|address|input|output|select|enable|used|port) )?(?:pins|legs|inputs|outputs|pin|leg|neighbours|neighbour pins|neighbouring pins)";

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

  /** "Both enables of the LS244 (1 and 19)". */
  private static final Pattern BRACKETED =
      Pattern.compile(
          "(?i)\\b(?:(?:both|all|the) )*(?:[a-z/]+ )?(?:pins|inputs?|outputs?|enables?|selects?|clocks?|gates?|legs|strobes?|lines?)"
              + " (?:of|on|at) (?:the )?([A-Z]{1,3}\\d{1,2}|(?:74)?[A-Z]{1,3}\\d{2,3})(?: (?:that )?(?:i|you|we) (?:can|could) (?:get at|get to|reach|see))? \\((?:pins? )?(\\d{1,2}|"
              + LIST
              + ")\\)");

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

  /** The same the other way round: "555: pin 3 high", "on the op-amp pin 1". */
  private static final Pattern PIN_BEHIND =
      Pattern.compile(
          "(?i)\\b((?:[a-z][a-z-]* ){0,2}?[a-z0-9][a-z0-9-]*)(?:,|:|'s)? (pin|leg) (\\d{1,2})\\b"
              + NO_UNIT);

  /** "New U37 fitted, pin 8 of it still high". */
  private static final Pattern OF_IT =
      Pattern.compile(
          "(?i)\\b(pin|leg) (\\d{1,2}) (?:of|on) (?:it|(?:that|this|the same) (?:chip|ic|part|socket))\\b");

  private static final Pattern ITS =
      Pattern.compile(
          "(?i)\\bits (?=(?:own )?(?:outputs?|inputs?|pins?|legs?|supply|select|enables?|clock|data|address|reset|interrupt|"
              + "(?-i:[A-Z]+\\d*/?))\\b)");

  private static final Pattern BESIDE_IT =
      Pattern.compile(
          "(?i)\\b(?:in front of|behind|before|after|ahead of|next to|that feeds|that drives|driving|feeding) (?:it|that|this)\\b[^.;,]*$");

  /** The pin of that name of other parts: "at U5 and U4 the same line reads 1.8". */
  private static final Pattern SAME_LINE =
      Pattern.compile(
          "\\b(?:at|on) ([A-Z]+\\d+(?:(?:, | and |/)[A-Z]+\\d+)*),? the same (?:line|pin|signal|address|bit)\\b");

  /** One pin that was spoken of: "power off: that pin to ground more than 100 k". */
  private static final Pattern THAT =
      Pattern.compile(
          "(?i)\\b(?:that|this|the same) (?:pin|leg|input|output|line|net)\\b(?! (?:of|on|at) )");

  /** "Probe there: no light". */
  private static final Pattern THERE =
      Pattern.compile("(?i)\\b(probe|meter|multimeter|voltmeter|dvm|scope) there\\b");

  /** A part further on whose pins those before it may be: "Q3 and Q7 of U22". */
  private static final Pattern OF_A_PART =
      Pattern.compile("(?i)\\b(?:of|on|at|off|from) (?:the )?(?:[a-z]{2,} ){0,3}[A-Z]+\\d+\\b");

  /** Of several chips that were spoken of: "RAS/ ok at the RAMs. Pin 15 on all eight is high". */
  private static final Pattern OF_ALL =
      Pattern.compile(
          "(?i)\\b(pin|leg) (\\w+/?) (?:on|of|at) (?:all|each|every one)(?: of)?(?: them)?(?: (?:two|three|four|five|six|seven|eight))?(?=:|,| (?:is|are|stays?|sits?|reads?|shows?)\\b|$)");

  private static final Pattern SEVERAL =
      Pattern.compile(
          "(?i)\\b(?:rams|ram chips|memories|memory chips|drams|4164s|multiplexers|muxes|roms|eproms)\\b");

  /** A part by what it is: "12 V present on the op-amp. Its pin 1 sits at 2.5 V". */
  private static final Pattern DESCRIBED =
      Pattern.compile(
          "(?i)\\b(?:the|an?|another|that|this|my) (?:(?:new|other|second|different|good|known|known-good|spare|fresh) )*"
              + "([a-z0-9][a-z0-9/-]*(?: [a-z0-9/-]+){0,3})");

  private final Places places;
  private final PinsInFull pinsInFull;
  private String part = "";

  /** What was said before, looked through only when somebody speaks of "that pin". */
  private final List<String> sentences = new ArrayList<>();

  /** The first part of the sentence before, which its subject mostly is. */
  private String subject = "";

  /** Nothing was spoken of yet. */
  Backwards(Places places) {
    this.places = places;
    pinsInFull = new PinsInFull(places);
  }

  /** A sentence with every pin named in full; the next one goes on from its last part. */
  String inFull(String sentence) {
    String last = part;
    String here = pinsInFull.of(ofSeveral(bracketed(sentence)));
    String same = replaced(SAME_LINE, here, m -> ofOthers(m, here.substring(0, m.start())));
    String that = replaced(THAT, same, m -> lastPin(same.substring(0, m.start())));
    String those = replaced(THERE, that, m -> lastPin(here).map(pin -> m.group(1) + " at " + pin));
    String text =
        replaced(
            ITS,
            those,
            m ->
                isOfAnother(those, m.start())
                    ? Optional.empty()
                    : whose(those, m.start()).map(r -> r + " "));
    String ofIts = text;
    text = replaced(SAME, text, m -> called(ofIts, m.start(), last));
    text = replaced(OF_THE, text, m -> places.theOne(m.group(2)).map(ref -> m.group(1) + ref));
    text = behindOrOfIt(text, last);
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
                ofAny(listed, m.start(), last)
                    .filter(ref -> places.isPin(ref, m.group(2)))
                    .map(ref -> ref + " pin " + m.group(2)));
    String numbered = text;
    text =
        replaced(
            PinsInFull.NAME_ALONE,
            text,
            m ->
                OF_A_PART.matcher(numbered).find(m.end()) || places.isLine(m.group())
                    ? Optional.empty()
                    : ofAny(numbered, m.start(), last)
                        .filter(ref -> !isBehind(numbered, m.start(), ref))
                        .flatMap(ref -> pinsInFull.pin(ref, m.group())));
    String named = called(text, text.length(), "").orElse("");
    part = named.isEmpty() ? described(ofIts, last, false) : named;
    sentences.add(text);
    subject =
        REF.matcher(text)
            .results()
            .map(MatchResult::group)
            .filter(places::isPart)
            .findFirst()
            .orElse(described(ofIts, subject, true));
    return text;
  }

  private String bracketed(String sentence) {
    return sentence.indexOf('(') < 0
        ? sentence
        : BRACKETED
            .matcher(sentence)
            .replaceAll(
                m ->
                    (m.group(3) == null ? "pin " : "pins ")
                        + m.group(2)
                        + " of "
                        + places.theOneOfType(m.group(1)).orElse(m.group(1)));
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

  /** "The gate in front of it has its input high": nobody knows which that is. */
  private static boolean isOfAnother(String text, int end) {
    return BESIDE_IT.matcher(text.substring(0, end)).find();
  }

  /** What "its" is of: the part that was called by its reference or by what it is. */
  private Optional<String> whose(String text, int end) {
    return called(text, end, "")
        .or(
            () ->
                Optional.of(described(text.substring(0, end), subject, false))
                    .filter(ref -> !ref.isEmpty()));
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

  /** The first or the last part that a text calls by what it is, the only one of its kind. */
  private String described(String text, String otherwise, boolean first) {
    // Most sentences have no article: nothing is set up for them.
    Matcher m = DESCRIBED.matcher(text);
    String found = otherwise;
    boolean more = true;
    while (more && m.find()) {
      Optional<String> ref = described(m);
      found = ref.orElse(found);
      more = !(first && ref.isPresent());
    }
    return found;
  }

  /** Pins right behind what their part is called, and pins "of it"; most sentences have neither. */
  private String behindOrOfIt(String sentence, String last) {
    String text =
        PIN_BEHIND.matcher(sentence).find()
            ? replaced(PIN_BEHIND, sentence, this::behind)
            : sentence;
    return OF_IT.matcher(text).find() ? replaced(OF_IT, text, m -> ofIt(m, text, last)) : text;
  }

  private Optional<String> ofIt(MatchResult m, String text, String last) {
    return called(text, m.start(), last)
        .filter(ref -> places.isPin(ref, m.group(2)))
        .map(ref -> ref + " pin " + m.group(2));
  }

  /** A pin of the only part that the words before it call by what it is, whatever else they say. */
  private Optional<String> behind(MatchResult m) {
    String words = m.group(1);
    int from = 0;
    Optional<String> ref = places.theOne(words);
    while (ref.isEmpty() && words.indexOf(' ', from) >= 0) {
      from = words.indexOf(' ', from) + 1;
      ref = places.theOne(words.substring(from));
    }
    String before = words.substring(0, from);
    return ref.filter(r -> places.isPin(r, m.group(3)))
        .map(r -> before + r + " " + m.group(2) + " " + m.group(3));
  }

  private Optional<String> described(MatchResult m) {
    String words = m.group(1);
    Optional<String> found = places.theOne(words);
    while (found.isEmpty() && words.contains(" ")) {
      words = words.substring(0, words.lastIndexOf(' '));
      found = places.theOne(words);
    }
    return found;
  }

  /** A sentence that speaks of a pin of all, with the kind of chips that was spoken of last. */
  private String ofSeveral(String sentence) {
    return OF_ALL.matcher(sentence).find()
        ? replaced(OF_ALL, sentence, m -> ofSeveral(m, sentence.substring(0, m.start())))
        : sentence;
  }

  private Optional<String> ofSeveral(MatchResult m, String before) {
    return Stream.concat(sentences.stream(), Stream.of(before))
        .flatMap(text -> SEVERAL.matcher(text).results())
        .reduce((one, other) -> other)
        .map(kind -> m.group(1) + " " + m.group(2) + " of all " + kind.group());
  }

  /** The pins of these parts that are called as the last one was. */
  private Optional<String> ofOthers(MatchResult m, String before) {
    List<String> refs = List.of(m.group(1).split(", | and |/"));
    return lastPin(before)
        .map(pin -> pin.substring(pin.indexOf('.') + 1))
        .filter(pin -> refs.stream().allMatch(ref -> places.isPin(ref, pin)))
        .map(pin -> refs.stream().map(r -> r + "." + pin).collect(Collectors.joining(" and ")));
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

  static String replaced(
      Pattern pattern, String text, Function<MatchResult, Optional<String>> with) {
    return pattern
        .matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(with.apply(m).orElse(m.group())));
  }
}
