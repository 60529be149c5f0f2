package faultfinch.desk;

import java.util.Comparator;
import java.util.List;

/**
 * A way to say what a look showed, for completion.
 *
 * @param kind of look, by the word it begins with
 * @param words to say it with
 * @param beside whether a subject or a place must stand beside it
 * @param shows the outcomes it covers, as a pattern, or in comparison with a healthy board
 */
public record Saying(String kind, String words, boolean beside, String shows) {

  /** All that come with the program, by kind, longer ones first. */
  public static List<Saying> shipped() {
    return Vocabulary.shipped().ways().stream()
        .sorted(Comparator.comparing((Vocabulary.Way w) -> w.meaning().kind()))
        .map(
            w ->
                new Saying(
                    w.meaning().kind(),
                    w.words(),
                    w.beside(),
                    String.join(" & ", w.meaning().shows().terms())))
        .toList();
  }

  /**
   * Some ways to speak of what is named in many words, such as keys one by one; what each says is
   * found in what the faults of a board show.
   *
   * @param kind of look or move, by its word
   */
  public static List<Saying> examples(String kind) {
    return Vocabulary.shipped().examples(kind).stream()
        .map(words -> new Saying(kind, words, false, ""))
        .toList();
  }
}
