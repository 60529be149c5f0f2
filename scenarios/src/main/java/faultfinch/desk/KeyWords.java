package faultfinch.desk;

import faultfinch.symptom.EveryKey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What is said of keys by somebody who tried them all: which are dead, which stick. */
final class KeyWords {
  /** A sign that stands so often between others was not pressed so often. */
  private static final int STICKS_FROM = 5;

  /** So many signs of a row are no word. */
  private static final int SHORTEST_ROW = 5;

  /** For so many that are named one more may be dead that is named elsewhere. */
  private static final int MORE = 4;

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;
  private final Places places;
  private final Set<String> signs;
  private final String prompt;

  /** Lines of signs as a healthy board shows them, without the last, which repeats some. */
  private final List<String> rows;

  /** What stands above the first line: of a picture that spoils it nobody reads keys. */
  private final List<String> banner;

  private final Map<String, TypedKeys> read = new LinkedHashMap<>();

  KeyWords(Lookbook lookbook, Vocabulary vocabulary, Places places) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    this.places = places;
    boolean tried = isTried();
    PictureText all = PictureText.of(tried ? lookbook.outcomes(EveryKey.NAME).get(0) : "");
    PictureText start = PictureText.of(tried ? lookbook.outcomes(Phrases.SCREEN).get(0) : "");
    prompt = Echo.of(all, start).prompt();
    banner = start.rows().stream().filter(r -> !r.startsWith(prompt.strip())).toList();
    TypedKeys right = keys(tried ? lookbook.outcomes(EveryKey.NAME).get(0) : "");
    signs = right.signs();
    rows = right.lines().stream().limit(Math.max(0, right.lines().size() - 1)).toList();
  }

  /** Whether anything can be said of every key. */
  private boolean isTried() {
    return lookbook.looks().contains(EveryKey.NAME) && lookbook.looks().contains(Phrases.SCREEN);
  }

  private TypedKeys keys(String outcome) {
    return TypedKeys.of(outcome, prompt);
  }

  /** What was typed in a look, line by line. */
  Stream<String> typedIn(String outcome) {
    return keys(outcome).lines().stream();
  }

  /** What keys are marked with, by reference in small letters. */
  Map<String, String> marks() {
    return places.keyMarks();
  }

  /** A text in which keys from one to another are all named. */
  String inFull(String text) {
    return places.spelt(text);
  }

  /** Of all keys, or some of them that are not named; empty if it is nothing of the sort. */
  Optional<Phrases.Finding> find(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    if (!isTried()) {
      return Optional.empty();
    }
    if (isOfAll(small)) {
      return finding(text, keys -> keys.lines().equals(healthy().lines()));
    }
    boolean dead = Vocabulary.in(small, vocabulary.words("typed.unheard")).isPresent();
    if (dead && Vocabulary.in(small, vocabulary.words("keys.one")).isPresent()) {
      return finding(text, keys -> keys.missing(signs).size() == 1);
    }
    if (dead && Vocabulary.in(small, vocabulary.words("keys.some")).isPresent()) {
      return finding(text, keys -> keys.missing(signs).size() > 1 && isMostThere(keys));
    }
    Optional<String> other = without(small);
    return dead && other.isPresent() ? dead(text, other.get()) : Optional.empty();
  }

  /** Whether all keys are said to work. */
  boolean isOfAll(String small) {
    return Vocabulary.in(small, vocabulary.words("keys.all")).isPresent();
  }

  /** The reference of a key without a sign that is spoken of: "SHIFT dead", "the SPACE key". */
  private Optional<String> without(String small) {
    return places
        .wordKeys()
        .filter(key -> Vocabulary.in(small, List.of(key.getKey())).isPresent())
        .map(key -> key.getValue())
        .findFirst();
  }

  /** A key without a sign shows that it is dead by what stands in the last line. */
  private Optional<Phrases.Finding> dead(String text, String ref) {
    Optional<TypedKeys> open = lookbook.shown(ref + ": open", EveryKey.NAME).map(this::keys);
    if (open.isEmpty() || open.get().equals(healthy())) {
      return Optional.empty();
    }
    boolean lines = open.get().lines().size() != healthy().lines().size();
    return finding(
        text,
        keys ->
            lines
                ? keys.lines().size() == open.get().lines().size() && isMostThere(keys)
                : isMostThere(keys) && isLikeLastOf(open.get(), keys));
  }

  /** Unless the signs that would tell are missing everywhere. */
  private boolean isLikeLastOf(TypedKeys open, TypedKeys keys) {
    Set<String> missing = keys.missing(signs);
    String last = open.last(missing);
    return keys.last(Set.of()).equals(last) && !healthy().last(missing).equals(last);
  }

  /**
   * A row of keys as somebody typed it who leaves some out: "wertyuiop", "12345780". What is
   * missing before its first sign counts if it goes on to the end of the row.
   */
  Optional<Phrases.Finding> row(String text) {
    for (String word : text.toLowerCase(Locale.ROOT).split(" +")) {
      String typed = word.replaceAll("^[^a-z0-9]+|[,.)\"]+$", "");
      for (String line : rows) {
        Set<String> left = leftOut(line.toLowerCase(Locale.ROOT), typed);
        if (!left.isEmpty()) {
          return dead(text, left);
        }
      }
    }
    return Optional.empty();
  }

  /** Signs of a row that are not typed; none if it is another row, or too little of this one. */
  private static Set<String> leftOut(String row, String typed) {
    Set<String> left = new LinkedHashSet<>();
    int at = 0;
    for (int i = 0; i < row.length() && at < typed.length(); i++) {
      if (row.charAt(i) == typed.charAt(at)) {
        at++;
      } else {
        left.add(row.substring(i, i + 1));
      }
    }
    boolean typedOfIt = at == typed.length() && at >= SHORTEST_ROW && left.size() < at;
    String first = typedOfIt ? typed.substring(0, 1) : "";
    boolean toItsEnd =
        typedOfIt
            && row.substring(row.indexOf(typed.charAt(at - 1)) + 1)
                .chars()
                .noneMatch(Character::isLetterOrDigit);
    if (!toItsEnd) {
      left.removeIf(sign -> row.indexOf(sign) < row.indexOf(first));
    }
    return typedOfIt ? left : Set.of();
  }

  /** Signs whose keys do nothing, while others come. */
  Optional<Phrases.Finding> dead(String text, Set<String> letters) {
    Set<String> named = new LinkedHashSet<>(letters);
    named.retainAll(signs);
    if (!isTried() || named.isEmpty()) {
      return Optional.empty();
    }
    // Who names the dead keys has tried the others.
    return finding(text, keys -> isNearly(keys.missing(signs), named))
        .or(() -> finding(text, k -> k.missing(signs).containsAll(named) && isMostThere(k)))
        .or(() -> finding(text, k -> !k.missing(named).isEmpty() && isMostThere(k)));
  }

  /** Whether these are missing, and of many named at once hardly any more. */
  private static boolean isNearly(Set<String> missing, Set<String> named) {
    return missing.containsAll(named) && missing.size() <= named.size() + named.size() / MORE;
  }

  /** Signs whose keys do nothing; nobody tried all the others. */
  Optional<Phrases.Finding> unheard(String text, Set<String> letters) {
    return isTried() && signs.containsAll(letters)
        ? finding(text, k -> k.missing(signs).containsAll(letters) && isMostThere(k))
        : Optional.empty();
  }

  /** Signs that come between others. */
  Optional<Phrases.Finding> stick(String text, Set<String> letters) {
    Set<String> named = new LinkedHashSet<>(letters);
    named.retainAll(signs);
    return isTried() && !named.isEmpty()
        ? finding(text, keys -> named.stream().allMatch(s -> keys.times(s) >= STICKS_FROM))
        : Optional.empty();
  }

  private boolean isMostThere(TypedKeys keys) {
    return 2 * keys.missing(signs).size() < signs.size();
  }

  private TypedKeys healthy() {
    return outcomes().get(lookbook.outcomes(EveryKey.NAME).get(0));
  }

  /** Outcomes that can be read, taken apart when the first phrase asks for them. */
  private Map<String, TypedKeys> outcomes() {
    if (read.isEmpty()) {
      for (String outcome : lookbook.outcomes(EveryKey.NAME)) {
        TypedKeys keys = keys(outcome);
        if (!keys.lines().isEmpty() && PictureText.of(outcome).rows().containsAll(banner)) {
          read.put(outcome, keys);
        }
      }
    }
    return read;
  }

  private Optional<Phrases.Finding> finding(String text, Predicate<TypedKeys> holds) {
    List<String> meant = new ArrayList<>();
    outcomes()
        .forEach(
            (outcome, keys) -> {
              if (holds.test(keys)) {
                meant.add(outcome);
              }
            });
    return Phrases.Finding.of(EveryKey.NAME, text, meant);
  }
}
