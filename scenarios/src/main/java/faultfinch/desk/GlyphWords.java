package faultfinch.desk;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Letters that look wrong wherever they stand, while others are as they should be: "every r and i
 * is unreadable", "some letters are garbled".
 */
final class GlyphWords {
  /** Letters that look right all the time, so that not just all is wrong. */
  private static final int SOME = 2;

  /** Single letters that are words too. */
  private static final Set<String> WORDS = Set.of("a", "I");

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
    if (wrong.isEmpty() || !lookbook.looks().contains(Phrases.SCREEN)) {
      return Optional.empty();
    }
    Set<Character> named = named(text.substring(0, small.indexOf(wrong.get())));
    boolean some = Vocabulary.in(small, vocabulary.words("glyphs.some")).isPresent();
    return named.isEmpty() && !some
        ? Optional.empty()
        : finding(text, glyphs -> glyphs.areWrong(named));
  }

  private Optional<Phrases.Finding> finding(String text, Predicate<Glyphs> holds) {
    List<String> outcomes = lookbook.outcomes(Phrases.SCREEN);
    PictureText right = PictureText.of(outcomes.get(0));
    List<String> meant =
        outcomes.stream().filter(o -> holds.test(Glyphs.of(PictureText.of(o), right))).toList();
    return Phrases.Finding.of(Phrases.SCREEN, text, meant);
  }

  /** The letters a text lists, if it says nothing else. */
  private Set<Character> named(String before) {
    Set<String> letters = new LinkedHashSet<>();
    for (String token : before.strip().split("[ ,:]+")) {
      String bare = token.replaceAll("['\"]s?$|^['\"]", "");
      if (bare.length() == 1 && Character.isLetterOrDigit(bare.charAt(0))) {
        letters.add(bare);
      } else if (!vocabulary.words("glyphs.beside").contains(token.toLowerCase(Locale.ROOT))) {
        return Set.of();
      }
    }
    Set<Character> named = new LinkedHashSet<>();
    if (!WORDS.containsAll(letters)) {
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
          right.keySet().stream().anyMatch(c -> Character.isLetter(c) && right.get(c) == 0);
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
