package faultfinch.desk;

import faultfinch.board.Drill;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Finds in a sentence what was copied from a glass: in quotes; several words in a row that stand on
 * some glass of the list just so; a word that is no word of ours and stands on few; what came of
 * the word that is typed.
 */
final class Copied {
  private static final Pattern TYPED =
      Pattern.compile(
          "(?i)\\b(types?|typed|typing|entering|enter|ask for|asking for) [\"'][^\"']*[\"']"
              + "|[\"'][^\"']*[\"'](?= (?:becomes?|became|turns into|comes out as|gives|appears as|is shown as|ends up as) [\"'])");

  private static final Pattern QUOTED =
      Pattern.compile("\"([^\"]+)\"|(?<= |^)'([^']+)'(?=[ ,.;:]|$)");

  /** A mark at the end of a sentence belongs to it, but not to a word of a glass. */
  private static final Pattern MARKS = Pattern.compile("^[\"'(]+|[\"',;:.!?)]+$");

  private static final Pattern GAPS = Pattern.compile("\\s+");

  private static final String READS = "reads '";

  private static final int SHORTEST_QUOTED = 3;
  private static final int SHORTEST_WORD = 3;

  /** So long a word with signs between its letters is no chance. */
  private static final int LONG = 6;

  private static final Pattern NO_WORD = Pattern.compile("\\p{L}[^\\p{L}\\d .'/-]\\p{L}");

  /** So many words in a row are a sentence of a glass, even of our own words. */
  private static final int SENTENCE = 4;

  /** A sign that is one in so many of a picture, or more, fills it. */
  private static final int MANY = 3;

  /** Of the character set of a board. */
  private static final int SIGNS = 128;

  /** A word that stands in more outcomes than this is one of the program's. */
  private static final int FEW = 8;

  private final Vocabulary vocabulary;
  private final Lookbook lookbook;
  private final Map<String, Glass> glasses = new LinkedHashMap<>();
  private final Set<String> ours = new LinkedHashSet<>();

  /**
   * What a look at a set can show.
   *
   * @param rows of the outcomes, in their order, in one line
   * @param texts the same in small letters
   * @param words in how many outcomes each stands
   * @param echoes what comes of the typed word, by outcome; nothing where nothing does
   */
  private record Glass(
      String look,
      List<String> outcomes,
      List<String> rows,
      List<String> texts,
      Map<String, Integer> words,
      List<String> echoes) {

    /** Whoever writes a capital minds which letters are; whoever writes none may not. */
    boolean hasInCase(String text) {
      String line = lined(text);
      return isSmall(line) ? has(line) : rows.stream().anyMatch(r -> r.contains(line));
    }

    /** Two capitals or more that a healthy board does not show, or lacks, are no slip. */
    boolean isRightButForCase(String text) {
      String line = lined(text);
      int at = texts.get(0).indexOf(flat(text));
      if (at < 0 || hasInCase(text)) {
        return false;
      }
      String right = rows.get(0).substring(at, at + line.length());
      int off = 0;
      for (int i = 0; i < line.length(); i++) {
        off += line.charAt(i) == right.charAt(i) ? 0 : 1;
      }
      return off > 1;
    }

    /** The outcomes that hold a text, letter for letter where some do and capitals are minded. */
    Predicate<Integer> holding(String text) {
      String line = lined(text);
      String small = flat(text);
      return !isSmall(line) && hasInCase(text)
          ? o -> rows.get(o).contains(line)
          : o -> texts.get(o).contains(small);
    }

    private static boolean isSmall(String line) {
      return line.equals(line.toLowerCase(Locale.ROOT));
    }

    boolean has(String text) {
      return texts.stream().anyMatch(t -> t.contains(text));
    }

    List<String> where(Predicate<Integer> which) {
      List<String> meant = new ArrayList<>();
      for (int i = 0; i < outcomes.size(); i++) {
        if (which.test(i)) {
          meant.add(outcomes.get(i));
        }
      }
      return meant;
    }
  }

  Copied(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
  }

  /** What in a phrase, as typed, stands on a glass; empty if nothing surely does. */
  Optional<Phrases.Finding> find(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    if (!mayStand(small)) {
      return Optional.empty();
    }
    for (String look : looks(small)) {
      Glass glass = glass(look);
      // "I get 'file'" is what came of the keys, wherever else these letters stand.
      Optional<Phrases.Finding> found =
          (isOfOneWord(text) ? echo(glass, text) : Optional.<Phrases.Finding>empty())
              .or(() -> quoted(glass, text))
              .or(() -> echo(glass, text))
              .or(() -> isSpeltOtherwise(glass, text) ? Optional.empty() : inARow(glass, text));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** Whether a phrase is more than a few of our own words; else no glass is looked at. */
  private boolean mayStand(String small) {
    List<String> tokens = List.of(small.split(" "));
    return tokens.size() >= SENTENCE
        || small.contains("\"")
        || small.contains("'")
        || Vocabulary.in(small, vocabulary.words("typed.becomes")).isPresent()
        || tokens.stream()
            .map(t -> MARKS.matcher(t).replaceAll(""))
            .anyMatch(t -> t.length() >= SHORTEST_WORD && !ours().contains(t));
  }

  private static boolean isOfOneWord(String text) {
    List<String> quotes = quotes(text);
    return quotes.size() == 1 && !quotes.get(0).contains(" ");
  }

  private static boolean isSpeltOtherwise(Glass glass, String text) {
    return quotes(text).stream().anyMatch(glass::isRightButForCase);
  }

  /** What is quoted as an answer, not as what somebody typed. */
  private static List<String> quotes(String text) {
    return QUOTED
        .matcher(TYPED.matcher(text).replaceAll("$1"))
        .results()
        .map(r -> r.group(1) != null ? r.group(1) : r.group(2))
        .filter(q -> q.strip().length() >= SHORTEST_QUOTED)
        .toList();
  }

  /** Whether some outcome of a look at a set holds a text. */
  boolean stands(String look, String shown) {
    return glass(look).has(flat(shown));
  }

  /** Whether a phrase has quotes in it whose words stand on a glass. */
  boolean isQuoted(String text) {
    return QUOTED.matcher(text).find()
        && looks(text.toLowerCase(Locale.ROOT)).stream()
            .anyMatch(look -> quoted(glass(look), text).isPresent());
  }

  private List<String> looks(String small) {
    boolean bench = Vocabulary.in(small, vocabulary.subjects("bench")).isPresent();
    boolean typed = Vocabulary.in(small, vocabulary.words("typed.said")).isPresent();
    boolean sticks = Vocabulary.in(small, vocabulary.subjects(Drill.STICKS)).isPresent();
    List<String> looks =
        bench
            ? List.of(BenchWords.LOOK)
            : sticks
                ? List.of(Drill.STICKS, Phrases.TYPED, Phrases.SCREEN)
                : typed
                    ? List.of(Phrases.TYPED, Phrases.SCREEN)
                    : List.of(Phrases.SCREEN, Phrases.TYPED);
    return looks.stream().filter(lookbook.looks()::contains).toList();
  }

  private Optional<Phrases.Finding> quoted(Glass glass, String text) {
    List<String> all = quotes(text);
    Optional<Phrases.Finding> spoilt =
        all.stream()
            .filter(q -> !glass.hasInCase(q))
            .map(q -> NearCopy.of(q, glass.outcomes, glass.rows))
            .filter(near -> !near.isEmpty())
            .findFirst()
            .map(near -> finding(glass.look, String.join(" ... ", all), near));
    List<String> quotes =
        all.stream().filter(q -> glass.has(flat(q)) && !glass.isRightButForCase(q)).toList();
    return spoilt.or(() -> quotes.isEmpty() ? Optional.empty() : finding(glass, quotes));
  }

  /** What came of the keys, told by what stands there instead of the word. */
  private Optional<Phrases.Finding> echo(Glass glass, String text) {
    if (!glass.look.equals(Phrases.TYPED)) {
      return Optional.empty();
    }
    String right = glass.echoes.get(0);
    List<String> tokens = List.of(text.split(" "));
    for (int i = 0; i < tokens.size(); i++) {
      String raw = tokens.get(i).toLowerCase(Locale.ROOT);
      String before =
          String.join(" ", tokens.subList(Math.max(0, i - 3), i)).toLowerCase(Locale.ROOT);
      boolean led =
          vocabulary.words("typed.becomes").stream()
              .anyMatch(w -> (" " + before).endsWith(" " + w));
      for (String token : List.of(raw, MARKS.matcher(raw).replaceAll(""))) {
        boolean own = token.length() >= SHORTEST_WORD && !ours().contains(token);
        if (token.length() < 2 || right.contains(token) && !led || !own && !led) {
          continue;
        }
        List<String> just = glass.where(o -> glass.echoes.get(o).equals(token));
        boolean part = token.length() > SHORTEST_WORD && own && just.isEmpty();
        List<String> meant = part ? glass.where(o -> glass.echoes.get(o).contains(token)) : just;
        if (!meant.isEmpty() && !token.equals(right)) {
          return Optional.of(finding(glass.look, token, meant));
        }
      }
    }
    return Optional.empty();
  }

  /** The longest pieces of the phrase that stand there just so and can be no chance. */
  private Optional<Phrases.Finding> inARow(Glass glass, String text) {
    List<String> tokens = List.of(text.split(" "));
    List<String> found = new ArrayList<>();
    int from = 0;
    while (from < tokens.size()) {
      int to = tokens.size();
      while (to > from && !isCopy(glass, tokens.subList(from, to))) {
        to--;
      }
      if (to > from) {
        found.add(bare(tokens.subList(from, to)));
        from = to;
      } else {
        from++;
      }
    }
    return found.isEmpty() ? Optional.empty() : finding(glass, found);
  }

  private boolean isCopy(Glass glass, List<String> tokens) {
    String text = bare(tokens);
    boolean odd = tokens.stream().anyMatch(t -> isOdd(glass, bare(List.of(t)), tokens.size()));
    return (odd || tokens.size() >= SENTENCE) && glass.has(text) && standsApart(glass, text);
  }

  /** Whether a word is none of ours and none that the program says all the time. */
  private boolean isOdd(Glass glass, String word, int beside) {
    if (word.length() < SHORTEST_WORD || ours().contains(word)) {
      return false;
    }
    if (word.length() >= LONG && NO_WORD.matcher(word).find() && glass.has(word)) {
      return !glass.texts.get(0).contains(word);
    }
    int times = glass.words.getOrDefault(word, 0);
    boolean figure = beside > 1 && word.chars().allMatch(Character::isDigit);
    return times > 0
        && (times <= FEW || figure)
        && !Arrays.asList(glass.texts.get(0).split(" ")).contains(word);
  }

  private static boolean standsApart(Glass glass, String text) {
    return glass.texts.stream().anyMatch(t -> (" " + t + " ").contains(" " + text));
  }

  /** The outcomes that hold all of these texts; the first alone if none does. */
  private static Optional<Phrases.Finding> finding(Glass glass, List<String> texts) {
    List<Predicate<Integer>> each = texts.stream().map(glass::holding).toList();
    List<String> all = glass.where(o -> each.stream().allMatch(holds -> holds.test(o)));
    List<String> meant = all.isEmpty() ? glass.where(each.get(0)) : all;
    return Optional.of(finding(glass.look, String.join(" ... ", texts), meant));
  }

  private static Phrases.Finding finding(String look, String shown, List<String> meant) {
    Sight sight = new Sight(List.of(look), meant);
    return new Phrases.Finding(look, READS + shown + "'", List.of(sight), true);
  }

  /** Whether an observation is of letters that were copied. */
  static boolean isCopy(Observation seen) {
    return seen.seen().startsWith(READS);
  }

  private Glass glass(String look) {
    return glasses.computeIfAbsent(look, this::read);
  }

  private Glass read(String look) {
    List<String> outcomes = lookbook.outcomes(look);
    boolean bench = look.equals(BenchWords.LOOK);
    List<String> rows =
        outcomes.stream()
            .map(o -> lined(bench ? o : withBlanks(String.join(" ", PictureText.of(o).rows()))))
            .toList();
    List<String> texts = rows.stream().map(Copied::flat).toList();
    Map<String, Integer> words = new LinkedHashMap<>();
    texts.forEach(
        t -> Arrays.stream(t.split(" ")).distinct().forEach(w -> words.merge(w, 1, Integer::sum)));
    List<String> echoes = new ArrayList<>();
    if (look.equals(Phrases.TYPED) && lookbook.looks().contains(Phrases.SCREEN)) {
      Comparison.Normal normal =
          new Comparison.Normal(outcomes.get(0), lookbook.outcomes(Phrases.SCREEN).get(0));
      outcomes.forEach(o -> echoes.add(Comparison.echo(o, normal)));
    } else {
      outcomes.forEach(o -> echoes.add(""));
    }
    return new Glass(look, outcomes, rows, texts, words, echoes);
  }

  /**
   * Where a sign stands for the blank all over a picture, a person reads the words between: the
   * text as it stands, and once more with blanks.
   */
  private static String withBlanks(String text) {
    int[] times = new int[SIGNS];
    text.chars().filter(c -> c < SIGNS && !Character.isLetterOrDigit(c)).forEach(c -> times[c]++);
    int most = ' ';
    for (int c = 0; c < SIGNS; c++) {
      most = times[c] > times[most] ? c : most;
    }
    return most == ' ' || times[most] * MANY < text.length()
        ? text
        : text + " " + text.replace((char) most, ' ');
  }

  /** Every word of the vocabulary's ways to speak. */
  private Set<String> ours() {
    if (ours.isEmpty()) {
      vocabulary.ways().forEach(w -> ours.addAll(Arrays.asList(w.words().split(" "))));
      Phrases.KINDS.forEach(
          k -> vocabulary.subjects(k).forEach(s -> ours.addAll(Arrays.asList(s.split(" ")))));
      ours.addAll(vocabulary.words("plain-words"));
    }
    return ours;
  }

  private static String bare(List<String> tokens) {
    return flat(
        String.join(" ", tokens.stream().map(t -> MARKS.matcher(t).replaceAll("")).toList()));
  }

  /** In small letters, however wide the gaps are: nobody counts blanks on a display. */
  private static String flat(String text) {
    return lined(text.toLowerCase(Locale.ROOT));
  }

  private static String lined(String text) {
    return GAPS.matcher(text).replaceAll(" ").strip();
  }
}
