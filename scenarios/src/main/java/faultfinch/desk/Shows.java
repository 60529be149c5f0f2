package faultfinch.desk;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which outcomes a way of speaking covers; all of its terms must hold. */
record Shows(List<String> terms) {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  Shows {
    terms = List.copyOf(terms);
  }

  static Shows of(String written) {
    return new Shows(Arrays.stream(written.split(" & ")).map(String::strip).toList());
  }

  /** Whether it depends on what a healthy board shows in the same look. */
  boolean relative() {
    return terms.stream().anyMatch(List.of("healthy", "wrong", "higher", "lower")::contains);
  }

  boolean covers(String outcome, String healthy) {
    return terms.stream()
        .allMatch(
            term ->
                switch (term) {
                  case "healthy" -> outcome.equals(healthy);
                  case "wrong" -> !outcome.equals(healthy);
                  case "higher" -> first(outcome) > first(healthy);
                  case "lower" -> first(outcome) < first(healthy);
                  default -> outcome.matches(term);
                });
  }

  /** The first number of an outcome; an outcome without one is neither higher nor lower. */
  private static double first(String outcome) {
    Matcher m = NUMBER.matcher(outcome);
    return m.find() ? Double.parseDouble(m.group()) : Double.NaN;
  }
}
