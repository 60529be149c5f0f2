package faultfinch.desk;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Letters that look wrong wherever they stand, while others are as they should be: "every r and i
 * is unreadable", "some letters are garbled".
 */
final class GlyphWords {
  /** Letters that look right all the time, so that not just all is wrong. */
  private static final int SOME = 2;

  /** Single letters that are words too. */
  private static final Set<String> WORDS = Set.of("a", "I");

  /** One of them that is called a letter. */
  private static final Pattern CALLED = Pattern.compile("(?i)\\b(?:letter|capital|small) [ai]\\b");

  /** "Does not look like a 1 at all". */
  private static final Pattern UNLIKE =
      Pattern.compile(
          "(?i)(?:not|n't|nothing|hardly|never) (?:look |looks )?(?:much )?like an? ['\"]?([a-z0-9])['\"]?(?= |$)");

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;

  GlyphWords(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
  }

  /** What a phrase, as typed, says of letters on a set; empty if it names none that look wrong. */
  Optional<Phrases.Finding> find(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    Optional<String> wrong = Vocabulary.in(small, vocabulary.words("glyphs.wrong"));
    Matcher unlike = UNLIKE.matcher(text);
    boolean isUnlike = unlike.find();
    if (wrong.isEmpty() && !isUnlike || !lookbook.looks().contains(Phrases.SCREEN)) {
      return Optional.empty();
    }
    Set<Character> named =
        isUnlike
            ? Set.of(unlike.group(1).charAt(0))
            : named(text.substring(0, small.indexOf(wrong.get())));
    boolean some = Vocabulary.in(small, vocabulary.words("glyphs.some")).isPresent();
    return named.isEmpty() && !some
        ? Optional.empty()
        : finding(
            lookbook.ofLetters(shown -> named.stream().allMatch(c -> shown.indexOf(c) >= 0)),
            text,
            glyphs -> glyphs.areWrong(named));
  }

  private PictureText right(String look) {
    return PictureText.of(lookbook.outcomes(look).get(0));
  }

  private Optional<Phrases.Finding> finding(String look, String text, Predicate<Glyphs> holds) {
    PictureText right = right(look);
    List<String> meant =
        lookbook.outcomes(look).stream()
            .filter(o -> holds.test(Glyphs.of(PictureText.of(o), right)))
            .toList();
    return Phrases.Finding.of(look, text, meant);
  }

  /** The letters that a text ends with, behind a word for them if it says anything before. */
  private Set<Character> named(String before) {
    Set<String> letters = new LinkedHashSet<>();
    boolean other = false;
    for (String token : before.strip().split("[ ,:]+")) {
      String bare = token.replaceAll("['\"]s?$|^['\"]", "");
      boolean beside = vocabulary.words("glyphs.beside").contains(token.toLowerCase(Locale.ROOT));
      if (bare.length() == 1 && Character.isLetterOrDigit(bare.charAt(0))) {
        // Behind any other word it is no letter: "pin 3 is wrong".
        letters.addAll(other ? Set.of() : Set.of(bare));
      } else {
        other = !beside;
        letters.removeIf(letter -> !beside);
      }
    }
    Set<Character> named = new LinkedHashSet<>();
    if (!WORDS.containsAll(letters) || CALLED.matcher(before).find()) {
      letters.forEach(letter -> named.add(letter.charAt(0)));
    }
    return named;
  }

  /** How often each letter of a right picture looks right in another, and how often it is there. */
  private record Glyphs(Map<Character, Integer> there, Map<Character, Integer> right) {

    static Glyphs of(PictureText is, PictureText should) {
      Map<Character, Integer> there = new LinkedHashMap<>();
      Map<Character, Integer> right = new LinkedHashMap<>();
      for (int y = 0; y < Math.min(is.rows().size(), should.rows().size()); y++) {
        String row = should.rows().get(y);
        for (int x = 0; x < row.length(); x++) {
          char letter = row.charAt(x);
          if (Character.isLetterOrDigit(letter)) {
            boolean same = x < is.rows().get(y).length() && is.rows().get(y).charAt(x) == letter;
            there.merge(letter, 1, Integer::sum);
            right.merge(letter, same ? 1 : 0, Integer::sum);
          }
        }
      }
      return new Glyphs(there, right);
    }

    /** Whether these are never right and others always; of none, whether that is so of any. */
    boolean areWrong(Set<Character> named) {
      long well = there.keySet().stream().filter(c -> right.get(c).equals(there.get(c))).count();
      boolean ill =
          right.keySet().stream()
              .anyMatch(c -> (Character.isLetter(c) || named.contains(c)) && right.get(c) == 0);
      return well >= SOME && ill && named.stream().allMatch(this::isWrong);
    }

    /** In the case it is named in if it is there so, else in either. */
    private boolean isWrong(char named) {
      String cases =
          there.containsKey(named)
              ? String.valueOf(named)
              : "" + Character.toUpperCase(named) + Character.toLowerCase(named);
      return cases
          .chars()
          .mapToObj(c -> (char) c)
          .filter(there::containsKey)
          .allMatch(c -> right.get(c) == 0);
    }
  }
}
