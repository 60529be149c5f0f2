package faultfinch.diagnosis;

import java.util.Arrays;
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
  private static final Pattern STEP =
      Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: to (-?\\d+(?:\\.\\d+)?))? (\\p{L}+)");

  private Steps() {}

  /**
   * One name for all that healthy boards show; empty if they differ in more than figures of a unit.
   *
   * @param shown by board, the one first that others are compared with
   */
  static Optional<String> together(List<String> shown) {
    List<String> all = shown.stream().distinct().sorted(Steps::byFigure).toList();
    boolean figures = all.stream().allMatch(s -> STEP.matcher(s).matches());
    long units = all.stream().map(s -> s.substring(s.lastIndexOf(' ') + 1)).distinct().count();
    return all.size() == 1 || figures && units == 1
        ? Optional.of(String.join(OR, all))
        : Optional.empty();
  }

  private static int byFigure(String a, String b) {
    int figures = Double.compare(figure(a), figure(b));
    return figures != 0 ? figures : a.compareTo(b);
  }

  private static double figure(String step) {
    Matcher m = STEP.matcher(step);
    return m.matches() ? Double.parseDouble(m.group(1)) : 0;
  }

  /** Whether an outcome is one of those that stand together under a name. */
  static boolean isOneOf(String outcome, String together) {
    return together.contains(OR) && Arrays.asList(together.split(OR)).contains(outcome);
  }

  /** Whether two outcomes are figures of one unit, no further apart than so much. */
  static boolean near(String a, String b, double most) {
    return Arrays.stream(a.split(OR))
        .anyMatch(one -> Arrays.stream(b.split(OR)).anyMatch(other -> nearSteps(one, other, most)));
  }

  private static boolean nearSteps(String a, String b, double most) {
    Matcher one = STEP.matcher(a);
    Matcher other = STEP.matcher(b);
    return one.matches()
        && other.matches()
        && one.group(3).equals(other.group(3))
        && Math.abs(Double.parseDouble(one.group(1)) - Double.parseDouble(other.group(1))) <= most;
  }
}
