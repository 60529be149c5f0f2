package faultfinch.desk;

import java.util.Arrays;
import java.util.List;

/**
 * Which outcomes a way of speaking covers; all of its terms must hold. A term is a {@link
 * Comparison}, a colour that is wanting ("lacks blue"), a key of which nothing came ("unheard e"),
 * or a pattern.
 */
record Shows(List<String> terms) {
  private static final String LACKS = "lacks ";
  private static final String UNHEARD = "unheard ";

  Shows {
    terms = List.copyOf(terms);
  }

  static Shows of(String written) {
    return new Shows(Arrays.stream(written.split(" & ")).map(String::strip).toList());
  }

  /** That nothing came of this key, as far as its letter belongs to what is typed. */
  static Shows unheard(String letter) {
    return new Shows(List.of(UNHEARD + letter));
  }

  /** Whether it depends on what a healthy board shows in the same look. */
  boolean relative() {
    return terms.stream().anyMatch(t -> Comparison.named(t).isPresent() || t.startsWith(LACKS));
  }

  boolean covers(String outcome, Comparison.Normal normal) {
    return terms.stream().allMatch(term -> covers(term, outcome, normal));
  }

  private static boolean covers(String term, String outcome, Comparison.Normal normal) {
    if (term.startsWith(LACKS)) {
      String ink = term.substring(LACKS.length());
      PictureText is = PictureText.of(outcome);
      return is.isShown() && !is.hasIn(ink) && PictureText.of(normal.same()).hasIn(ink);
    }
    if (term.startsWith(UNHEARD)) {
      return !Comparison.echo(outcome, normal).contains(term.substring(UNHEARD.length()));
    }
    return Comparison.named(term)
        .map(c -> c.holds(outcome, normal))
        .orElseGet(() -> outcome.matches(term));
  }
}
