package faultfinch.desk;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Takes out of a phrase what is said of a good board beside the one on the bench: "0.1 V where I
 * expect 3 V", "should be high", "two tones instead of the chord". What a good board shows is
 * known.
 */
final class GoodBoard {
  /** "3.8 V not 0.1 V", "1.8 V where 5 should be". */
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?i)(?<=\\d ?m?[va]?) (?:not|where|when) (?:about )?-?\\d[\\d.]*(?: ?m?[va])?"
              + "(?: (?:should|ought|is|was|would)\\b.*)?$");

  /** "3.8 where half of that is usual", "1.4 where 3.8 belongs". */
  private static final Pattern WHERE =
      Pattern.compile(
          "(?i)(?<=.) (?:where|when|while) .*\\b"
              + "(?:usual|usually|belongs|normal|normally|expected|right|should|ought)\\b.*$");

  /** "normal 1.5". */
  private static final Pattern NORMAL =
      Pattern.compile(
          "(?:normal|usual|good|healthy|expected|nominal)(?:ly)? (?:is |about |around |at )?-?\\d.*");

  /** "0.2 is right", "3.4 V would be normal". */
  private static final Pattern IS_RIGHT =
      Pattern.compile(
          "(?i)(?:about )?-?\\d[\\d.]* (?:is|would be|being) (?:right|normal|correct|expected|usual)");

  /** "(ref. 3.0 V)", "(0.2 on mine)". */
  private static final Pattern BESIDE =
      Pattern.compile(
          "(?i) ?\\((?:ref\\b|normal|should|good|other|healthy|usual|instead)[^)]*\\)"
              + "| ?\\([^)]*\\b(?:on mine|on my|on the other|on a good|normal|normally)\\b[^)]*\\)");

  /** "Just like on my healthy board" is said of this one. */
  private static final Pattern LIKE_ONE =
      Pattern.compile(
          "(?i),? (?:just |exactly |the same )*(?:like|as) (?:on|in|by) (?:a|the|my) [a-z ]*(?:one|board|machine|spare)$");

  /** "The good board has 0.2 there", "my other machine shows a blank". */
  private static final Pattern ONE =
      Pattern.compile(
          "^(?:and |but |where |when |while |whereas )?(?:on |in )?(?:the |a |an |my |our |your |his |any |another )?"
              + "(?:(?:(?:known[- ])?(?:good|healthy|sound|working)|other|another|reference|ref|sister|spare|donor|second|known good) "
              + "(?:board|set|unit|machine|computer|sample|specimen|one(?= (?:has|had|reads|shows|gives|measures|sits|is|was|would|says|there)\\b))\\b"
              + "|(?:reference|donor|spare|good one|healthy one) (?:has|had|reads|shows|gives|sits|is|was|says)\\b)");

  /** Nothing but the name of one. */
  private static final Pattern ALONE =
      Pattern.compile(
          "(?i)(?:the |a |my |our )?(?:good|healthy|working|sister|spare|reference|other|donor) (?:one|board|set|unit|machine)[:.]?");

  /** "On a good machine it is 3.4 V", "on the spare". */
  private static final Pattern ON_ONE =
      Pattern.compile(
          "\\b(?:on|in|by|with) (?:a|the|my|our|any|another) (?:known )?"
              + "(?:(?:good|working|healthy|sound|spare|second|donor|reference|sister) (?:one|board|machine|set|unit|computer)|spare|donor|friend|sister board)\\b");

  private final Vocabulary vocabulary;

  GoodBoard(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * A phrase taken apart.
   *
   * @param here what it says of the board on the bench
   * @param there what it says of a good one
   */
  record Apart(String here, String there) {}

  /** Pieces of which none is but the name of a good board: "good one, no light at all". */
  List<String> joined(List<String> pieces) {
    List<String> joined = new ArrayList<>();
    String name = "";
    for (String piece : pieces) {
      joined.add(name + piece);
      boolean named = ALONE.matcher(piece).matches();
      name = named && joined.size() < pieces.size() ? joined.remove(joined.size() - 1) + " " : "";
    }
    return joined;
  }

  /** A phrase in what is said of this board and of a good one; each can be nothing. */
  Apart apart(String told) {
    String here = without(told);
    if (here.isEmpty()) {
      return new Apart("", told);
    }
    String there = BESIDE.matcher(told).results().map(MatchResult::group).collect(joining(" "));
    String phrase = BESIDE.matcher(told).replaceAll("").strip();
    String cut = phrase.startsWith(here) ? phrase.substring(here.length()) : "";
    return new Apart(here, (there + " " + cut).strip());
  }

  /** The rest of a phrase; nothing if all of it is of a good board. */
  private String without(String told) {
    String phrase = before(LIKE_ONE.matcher(BESIDE.matcher(told).replaceAll("")).replaceAll(""));
    String small = phrase.toLowerCase(Locale.ROOT).strip();
    boolean begins =
        vocabulary.words("good-board.begins").stream()
            .anyMatch(w -> (small + " ").startsWith(w + " "));
    if (begins
        || isSaid(small, "good-board.in")
        || ON_ONE.matcher(small).find()
        || ONE.matcher(small).find()
        || IS_RIGHT.matcher(small).matches()
        || NORMAL.matcher(small).matches()) {
      return "";
    }
    String here = WHERE.matcher(phrase).replaceAll("");
    return FIGURE.matcher(here).replaceAll("").strip();
  }

  /** What stands before words behind which it goes on of a good board. */
  private String before(String phrase) {
    int end = phrase.length();
    for (String words : vocabulary.words("good-board.from")) {
      int at = (" " + phrase.toLowerCase(Locale.ROOT) + " ").indexOf(" " + words + " ");
      // "HS and VS pulsing": in capitals among small letters it is the name of a line.
      boolean name =
          at > 0
              && phrase.startsWith(words.toUpperCase(Locale.ROOT), at)
              && !phrase.equals(phrase.toUpperCase(Locale.ROOT));
      end = at > 0 && !name ? Math.min(end, at) : end;
    }
    return phrase.substring(0, end);
  }

  /** Whether a phrase tells how the board was before it failed: "it used to play a chord". */
  boolean isOfBefore(String phrase) {
    return isSaid(phrase, "before-it-failed");
  }

  private boolean isSaid(String phrase, String key) {
    List<String> words = vocabulary.words(key);
    return Vocabulary.in(phrase.toLowerCase(Locale.ROOT), words).isPresent();
  }
}
