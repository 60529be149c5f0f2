package faultfinch.desk;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which outcomes a way of speaking covers; all of its terms must hold. */
record Shows(List<String> terms) {
  private static final List<String> RELATIVE =
      List.of("healthy", "wrong", "higher", "lower", "same-text", "other-text", "no-word");

  /** What stands between the quotes of an outcome. */
  private static final Pattern TEXT = Pattern.compile("'(.*)'", Pattern.DOTALL);

  /** Letters enough to be told from chance. */
  private static final Pattern WORD = Pattern.compile("\\p{L}{4,}");

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  Shows {
    terms = List.copyOf(terms);
  }

  static Shows of(String written) {
    return new Shows(Arrays.stream(written.split(" & ")).map(String::strip).toList());
  }

  /** Whether it depends on what a healthy board shows in the same look. */
  boolean relative() {
    return terms.stream().anyMatch(RELATIVE::contains);
  }

  boolean covers(String outcome, String healthy) {
    return terms.stream()
        .allMatch(
            term ->
                switch (term) {
                  case "healthy" -> outcome.equals(healthy);
                  case "wrong" -> !outcome.equals(healthy);
                  case "same-text" -> text(outcome).equals(text(healthy));
                  case "other-text" -> !text(outcome).equals(text(healthy));
                  case "no-word" ->
                      WORD.matcher(text(healthy))
                          .results()
                          .noneMatch(word -> text(outcome).contains(word.group()));
                  case "higher" -> first(outcome) > first(healthy);
                  case "lower" -> first(outcome) < first(healthy);
                  default -> outcome.matches(term);
                });
  }

  /** What can be read of an outcome; nothing if nothing can. */
  private static String text(String outcome) {
    Matcher m = TEXT.matcher(outcome);
    return m.find() ? m.group(1) : "";
  }

  /** The first number of an outcome; an outcome without one is neither higher nor lower. */
  private static double first(String outcome) {
    Matcher m = NUMBER.matcher(outcome);
    return m.find() ? Double.parseDouble(m.group()) : Double.NaN;
  }
}
