package faultfinch.desk;

import faultfinch.board.Drill;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What is said of single letters on a set: they do not come, or come by themselves. */
final class Keystrokes {
  private static final Set<String> NAMED =
      Set.of("letter", "letters", "key", "keys", "figure", "digit", "number");
  private static final Set<String> JOINED = Set.of("and", "or", "&");

  /** A letter that is a word too counts only where it is called a letter. */
  private static final Set<String> WORDS = Set.of("a", "i");

  /** Behind these a figure is no key: "memory bit 3 stuck". */
  private static final Set<String> OF_LINES =
      Set.of(
          "bit", "bits", "line", "lines", "pin", "pins", "leg", "legs", "page", "station", "rom");

  /** Behind a figure these are no letters: "12 V is missing". */
  private static final Set<String> UNITS = Set.of("v", "a", "k");

  /** Before these a figure is no key either. */
  private static final Set<String> OF_FIGURES =
      Set.of("v", "mv", "volt", "volts", "ma", "ohm", "ohms", "k", "mhz", "khz", "hz");

  private static final Pattern FIGURE = Pattern.compile("[-+]?\\d+(?:[.,]\\d+)?");

  private static final Pattern MARKS = Pattern.compile("^[\"'(]+|[\"',;:!?)]+$");

  /** A comma, which parts the words of a list and cannot stand in it. */
  private static final String COMMA = "COMMA";

  /** Of a part, if no pin of it follows. */
  private static final Pattern REFERENCE = Pattern.compile("(?i)\\b[a-z]+\\d+\\b(?!\\.| pin)");

  private static final Pattern NO_LETTER = Pattern.compile("(no|without|lacks|lacking) [b-z2-9]");

  private static final Pattern RANGE = Pattern.compile("(?<= |^)([A-Z]) to ([A-Z])(?= |,|$)");

  private static final Pattern IN_A_ROW =
      Pattern.compile("(?<= |^)[A-Za-z0-9](?:(?:, and |, | and )[A-Za-z0-9]){2,}(?= |$)");

  /** What lines of a picture are called. */
  private static final Set<String> COLOURS = Set.of("r", "g", "b");

  /** Of one letter; of "a" it would be of any. */
  private static final Pattern UNTYPED =
      Pattern.compile(
          "(.* )?(can ?not|can ?'?t|will not|won't) (type|get|make|enter) "
              + "((a|an|any|the|letter|figure|number|digit) )*[b-z0-9]\\W*");

  /** "When he writes sticks the screen shows stiks". */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?:type|typing|types|typed|write|writes|writing|wrote|enter|enters|entering|entered) (?:in )?"
              + "['\"]?([a-z]{4,})['\"]?,? .*?\\b(?:gives?|gave|shows?|comes out(?: as)?|becomes|reads?|gets?|got|only)"
              + "(?: only| me| as)? ['\"]?([a-z]{3,})['\"]?(?= and |$)");

  /** "It arrives as stics". */
  private static final Pattern ARRIVES =
      Pattern.compile(
          "\\b(?:arrives?|comes out|comes|came out|came|appears?|shows up|ends up) as ['\"]?([a-z]{3,})['\"]?(?= |,|$)");

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;
  private final KeyWords keyWords;

  Keystrokes(Lookbook lookbook, Vocabulary vocabulary, KeyWords keyWords) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    this.keyWords = keyWords;
  }

  /** "A to P" with all that stands between. */
  private static String inFull(String text) {
    Matcher range = RANGE.matcher(text);
    return !range.find()
        ? text
        : range.replaceAll(
            r ->
                r.group(1).compareTo(r.group(2)) > 0
                    ? r.group()
                    : IntStream.rangeClosed(r.group(1).charAt(0), r.group(2).charAt(0))
                        .mapToObj(Character::toString)
                        .collect(Collectors.joining(", ")));
  }

  /** A text in which keys are called by what they are marked with: "K16 dead" is "key 3 dead". */
  private String marked(String text) {
    return REFERENCE
        .matcher(keyWords.inFull(inFull(text)))
        .replaceAll(
            r -> {
              String mark = keyWords.marks().get(r.group().toLowerCase(Locale.ROOT));
              return Matcher.quoteReplacement(mark == null ? r.group() : "key " + mark);
            });
  }

  /** Whether so many single letters stand in a row that no lines are meant: "V, B, N and J". */
  boolean isOfLetters(String text) {
    return IN_A_ROW.matcher(text).find() && !COLOURS.containsAll(letters(text));
  }

  /** What a phrase, as typed, says of letters; empty if it is nothing of the sort. */
  Optional<Phrases.Finding> find(String typed) {
    String text = marked(typed);
    if (!isTyped()) {
      return Optional.empty();
    }
    String small = text.toLowerCase(Locale.ROOT);
    if (Vocabulary.in(small, vocabulary.words("typed.strokes")).isPresent()) {
      return Optional.empty();
    }
    boolean self = Vocabulary.in(small, vocabulary.words("typed.self")).isPresent();
    boolean unheard =
        Vocabulary.in(small, vocabulary.words("typed.unheard")).isPresent()
            || NO_LETTER.matcher(small).matches()
            || UNTYPED.matcher(small).matches();
    boolean sticks = Vocabulary.in(small, vocabulary.words("keys.stick")).isPresent();
    Set<String> letters = self || unheard || sticks ? letters(text) : Set.of();
    if (letters.isEmpty()) {
      // "R, T and Q all print" is of three, and no more.
      return letters(text).isEmpty() || !keyWords.isOfAll(small)
          ? keyWords.find(text)
          : Optional.empty();
    }
    if (self) {
      return finding(Phrases.SCREEN, text, letters, (echo, right) -> echo)
          .or(() -> keyWords.stick(text, letters));
    }
    return sticks ? keyWords.stick(text, letters) : unheard(text, letters);
  }

  /** Who names letters of the exercise may have typed nothing else. */
  private Optional<Phrases.Finding> unheard(String text, Set<String> letters) {
    String word = exercise();
    Optional<Phrases.Finding> others =
        letters.stream().allMatch(word::contains) ? Optional.empty() : keyWords.dead(text, letters);
    return others.or(() -> finding(Phrases.TYPED, text, letters, (echo, right) -> !echo && right));
  }

  /** Whether anything is typed on this board, on a set. */
  private boolean isTyped() {
    return lookbook.looks().containsAll(List.of(Phrases.TYPED, Phrases.SCREEN));
  }

  /** The word that the exercise types, of which there is a look of its own. */
  private String exercise() {
    Comparison.Normal normal =
        new Comparison.Normal(
            lookbook.outcomes(Phrases.TYPED).get(0), lookbook.outcomes(Phrases.SCREEN).get(0));
    return Comparison.echo(normal.same(), normal);
  }

  /** Outcomes in which each letter is as it was said to be; those of the typed word, if it must. */
  private Optional<Phrases.Finding> finding(
      String look, String text, Set<String> letters, BiPredicate<Boolean, Boolean> holds) {
    String start = lookbook.outcomes(Phrases.SCREEN).get(0);
    Comparison.Normal normal =
        new Comparison.Normal(lookbook.outcomes(Phrases.TYPED).get(0), start);
    String word = Comparison.echo(normal.same(), normal);
    List<String> said = new ArrayList<>(letters);
    if (look.equals(Phrases.TYPED)) {
      said.removeIf(letter -> !word.contains(letter));
    }
    List<String> meant =
        lookbook.outcomes(look).stream()
            .filter(
                o -> {
                  String echo = Comparison.echo(o, normal);
                  return said.stream()
                      .allMatch(l -> holds.test(echo.contains(l), word.contains(l)));
                })
            .toList();
    return Phrases.Finding.of(look, text, said.isEmpty() ? List.of() : meant);
  }

  /** What can be nothing else: a row of keys with holes, a figure called by its name. */
  Optional<Phrases.Finding> sure(String text) {
    boolean figure =
        !digits(text).equals(" " + text + " ")
            || UNTYPED.matcher(text.toLowerCase(Locale.ROOT)).matches()
            || !marked(text).equals(text);
    return keyWords
        .row(text)
        .or(() -> leftOut(text))
        .or(() -> figure ? find(text) : Optional.empty());
  }

  /** A word that was typed, and the same without some letters, whose keys do nothing. */
  private Optional<Phrases.Finding> leftOut(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    Matcher typed = WRITTEN.matcher(small);
    Matcher arrives = ARRIVES.matcher(small);
    if (!isTyped()) {
      return Optional.empty();
    }
    if (typed.find() && !typed.group(1).equals(exercise())) {
      return leftOut(text, typed.group(1), typed.group(2));
    }
    return arrives.find()
        ? commands().flatMap(c -> leftOut(text, c, arrives.group(1)).stream()).findFirst()
        : Optional.empty();
  }

  private Optional<Phrases.Finding> leftOut(String text, String typed, String came) {
    Set<String> left = new LinkedHashSet<>(List.of(typed.split("")));
    left.removeAll(List.of(came.split("")));
    String rest = typed;
    for (String letter : left) {
      rest = rest.replace(letter, "");
    }
    boolean others = !left.isEmpty() && rest.equals(came);
    return others ? keyWords.unheard(text, left) : Optional.empty();
  }

  /** What is typed to try joysticks and the tape. */
  private Stream<String> commands() {
    return Stream.of(Drill.STICKS, Drill.TAPE)
        .filter(lookbook.looks()::contains)
        .flatMap(drill -> keyWords.typedIn(lookbook.outcomes(drill).get(0)))
        .map(line -> line.split(" ")[0])
        .filter(word -> word.matches("[a-z]{4,}"))
        .distinct();
  }

  /** A text between blanks, in which figures that are keys are no words: "the nine is dead". */
  private String digits(String text) {
    String spelt = " " + text + " ";
    for (Map.Entry<String, String> digit : vocabulary.pairs("digits").entrySet()) {
      String begun = "^ (?!one )(?=\\w+ (?:is|does|never|missing|dead|key) )";
      String called = "(?i)(" + begun + "| the | number | digit | figure | key )" + digit.getKey();
      String key = "(?= (?:is|does|key|never|missing|dead) )";
      spelt = spelt.replaceAll(called + key, "$1" + digit.getValue());
    }
    return spelt;
  }

  private Set<String> letters(String text) {
    List<String> tokens = new ArrayList<>();
    String spelt = digits(text);
    for (Map.Entry<String, String> name : vocabulary.pairs("letters").entrySet()) {
      String letter = name.getValue().equals(COMMA) ? "," : name.getValue();
      spelt =
          spelt.replaceAll(
              "(?i) " + name.getKey() + "(?=[ ,])", Matcher.quoteReplacement(" " + letter));
    }
    for (String token : spelt.strip().split(" +|(?<=[A-Za-z0-9]), ?")) {
      String quoted = token.replaceAll("^[\"']|[\"']$", "");
      String bare = MARKS.matcher(token).replaceAll("");
      String named = quoted.length() == 1 ? quoted : token.length() == 1 ? token : bare;
      tokens.add(named.equals("A") ? named : named.toLowerCase(Locale.ROOT));
    }
    Set<String> letters = new LinkedHashSet<>();
    for (int i = 0; i < tokens.size(); i++) {
      String token = tokens.get(i);
      String before = i == 0 ? "" : tokens.get(i - 1);
      String behind = i + 1 == tokens.size() ? "" : tokens.get(i + 1);
      boolean called =
          NAMED.contains(before)
              || NAMED.contains(behind)
              || JOINED.contains(before) && i > 1 && tokens.get(i - 2).length() == 1
              || JOINED.contains(behind) && i + 2 < tokens.size() && tokens.get(i + 2).length() == 1
              || before.equals("the") && token.equals("i");
      boolean article = token.equals("a") && !NAMED.contains(before);
      boolean unit =
          UNITS.contains(token) && FIGURE.matcher(before).matches()
              || FIGURE.matcher(token).matches() && OF_FIGURES.contains(behind);
      boolean line = OF_LINES.contains(before);
      boolean letter = token.length() == 1 && !token.equals("&") && !article && !unit && !line;
      if (letter && (called || !WORDS.contains(token.toLowerCase(Locale.ROOT)))) {
        letters.add(token.toLowerCase(Locale.ROOT));
      }
    }
    return letters;
  }
}
