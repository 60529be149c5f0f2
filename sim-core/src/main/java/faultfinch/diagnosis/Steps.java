package faultfinch.diagnosis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Outcomes that are figures, in the steps of a dial: "1.2 V", "550 to 600 mA". Where healthy boards
 * stand on both sides of an edge, all of their steps together are what a healthy board shows.
 */
final class Steps {
  private static final String OR = " or ";
  private static final String TO = " to ";
  private static final Pattern STEP =
      Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: to (-?\\d+(?:\\.\\d+)?))? (\\p{L}+)");

  private Steps() {}

  /** From where to where an outcome reaches; the same where it is one figure. */
  private record Span(double from, double to, boolean isRange, String unit) {
    static Optional<Span> of(String outcome) {
      Matcher m = STEP.matcher(outcome);
      if (!m.matches()) {
        return Optional.empty();
      }
      double from = Double.parseDouble(m.group(1));
      boolean range = m.group(2) != null;
      return Optional.of(
          new Span(from, range ? Double.parseDouble(m.group(2)) : from, range, m.group(3)));
    }

    boolean isIn(Span other) {
      return unit.equals(other.unit) && from >= other.from && to <= other.to;
    }
  }

  /**
   * One name for all that healthy boards show, such as "900 to 1000 mA" or "1.2 V or 1.4 V"; empty
   * if they differ in more than figures of a unit.
   *
   * @param shown by board, the one first that others are compared with
   */
  static Optional<String> together(List<String> shown) {
    List<String> all = shown.stream().distinct().toList();
    if (all.size() == 1) {
      return Optional.of(all.get(0));
    }
    List<Span> spans =
        all.stream()
            .flatMap(s -> Span.of(s).stream())
            .sorted(Comparator.comparingDouble(Span::from))
            .toList();
    boolean figures = spans.size() == all.size();
    if (!figures || spans.stream().map(Span::unit).distinct().count() > 1) {
      return Optional.empty();
    }
    boolean joined = spans.stream().allMatch(Span::isRange);
    for (int i = 1; i < spans.size(); i++) {
      joined &= spans.get(i - 1).to == spans.get(i).from;
    }
    List<String> rising =
        all.stream()
            .sorted(Comparator.comparingDouble((String s) -> Span.of(s).orElseThrow().from))
            .toList();
    return Optional.of(
        joined
            ? first(rising.get(0)) + TO + last(rising.get(rising.size() - 1))
            : String.join(OR, rising));
  }

  private static String first(String range) {
    return range.substring(0, range.indexOf(TO));
  }

  private static String last(String range) {
    return range.substring(range.indexOf(TO) + TO.length());
  }

  /** Whether an outcome is one of those that stand together under a name. */
  static boolean isOneOf(String outcome, String together) {
    if (outcome.equals(together)) {
      return false;
    }
    Optional<Span> all = Span.of(together);
    return all.isPresent()
        ? all.get().isRange && Span.of(outcome).filter(s -> s.isIn(all.get())).isPresent()
        : together.contains(OR) && Arrays.asList(together.split(OR)).contains(outcome);
  }

  /**
   * Whether two outcomes are figures of one unit with no more than so much between them; of ranges
   * those that touch are near.
   */
  static boolean near(String a, String b, double most) {
    return Arrays.stream(a.split(OR))
        .anyMatch(one -> Arrays.stream(b.split(OR)).anyMatch(other -> nearSteps(one, other, most)));
  }

  private static boolean nearSteps(String a, String b, double most) {
    Optional<Span> one = Span.of(a);
    Optional<Span> other = Span.of(b);
    if (one.isEmpty() || other.isEmpty() || !one.get().unit.equals(other.get().unit)) {
      return false;
    }
    double from = Math.max(one.get().from, other.get().from);
    double between = from - Math.min(one.get().to, other.get().to);
    boolean ranges = one.get().isRange || other.get().isRange;
    return ranges ? between <= 0 : between <= most;
  }
}
