package faultfinch.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Stations of a round of the bench ROM by their numbers, and how much of each differed. */
final class StationWords {
  private static final Pattern LISTED =
      Pattern.compile(
          "(?<= |^)stations?(?: no| nos| number| numbers)?\\.? "
              + "(\\d{1,2}(?:(?:, and |, | and | & |/| to |-)\\d{1,2})*)(?=[ ,:]|$)");

  private static final Pattern FIRST =
      Pattern.compile("(?<= |^)first (\\d{1,2}) stations(?=[ ,:]|$)");

  /** "127 out of 255 differ". */
  private static final Pattern COUNT =
      Pattern.compile(
          "(?<= |^)(\\d{1,3})(?: bytes| cells| places)? (?:out )?of (\\d{1,3})(?=[ ,]|$)");

  private static final Pattern HALF =
      Pattern.compile(
          "(?<= |^)half (?:of )?(?:(?:the|its|all|their) )*"
              + "(?:bytes|cells|places|pages|addresses|locations)(?=[ ,]|$)");

  private static final Pattern DIFFER =
      Pattern.compile("(?i)station (\\d\\d) [^;:]*;?[^;:]*: (\\d{3}) of (\\d{3})");

  private static final Pattern READ =
      Pattern.compile("(?i)station (\\d\\d) wrote ([0-9a-f]{2}), read ([0-9a-f]{2})(?![0-9a-f])");

  private static final double LITTLE_LESS_THAN_HALF = 0.4;
  private static final double LITTLE_MORE_THAN_HALF = 0.6;

  private StationWords() {}

  /** The stations that a text names, in small letters and figures, in their order. */
  static List<Integer> numbers(String text) {
    List<Integer> numbers = new ArrayList<>();
    FIRST
        .matcher(text)
        .results()
        .forEach(m -> IntStream.rangeClosed(1, number(m.group(1))).forEach(numbers::add));
    LISTED
        .matcher(text)
        .results()
        .flatMap(m -> Stream.of(m.group(1).split(", and |, | and | & |/")))
        .forEach(
            one -> {
              String[] ends = one.split(" to |-");
              IntStream.rangeClosed(number(ends[0]), number(ends[ends.length - 1]))
                  .forEach(numbers::add);
            });
    return numbers;
  }

  /**
   * Whether a station says that something differed, by its count or, where that cannot be read, by
   * what it wrote and read; empty if it cannot be read.
   */
  static Optional<Boolean> differing(String outcome, int station) {
    return DIFFER
        .matcher(outcome)
        .results()
        .filter(m -> number(m.group(1)) == station)
        .map(m -> number(m.group(2)) > 0)
        .findFirst()
        .or(
            () ->
                READ.matcher(outcome)
                    .results()
                    .filter(m -> number(m.group(1)) == station)
                    .map(m -> !m.group(2).equalsIgnoreCase(m.group(3)))
                    .findFirst());
  }

  /** Whether all stations that can be read, but for these, say what they say on a good board. */
  static boolean isAsUsualBut(List<Integer> stations, String outcome, String healthy) {
    return DIFFER
        .matcher(outcome)
        .results()
        .map(m -> number(m.group(1)))
        .filter(s -> !stations.contains(s))
        .allMatch(s -> differing(outcome, s).equals(differing(healthy, s)));
  }

  /**
   * What a text says of how much differed, in small letters and figures; of these stations, or of
   * whichever if there are none.
   */
  static Optional<Predicate<String>> counted(String text, List<Integer> stations) {
    Matcher count = COUNT.matcher(text);
    Predicate<MatchResult> told;
    if (count.find()) {
      int differ = number(count.group(1));
      int of = number(count.group(2));
      told = m -> number(m.group(2)) == differ && number(m.group(3)) == of;
    } else if (HALF.matcher(text).find()) {
      told =
          m ->
              number(m.group(2)) >= LITTLE_LESS_THAN_HALF * number(m.group(3))
                  && number(m.group(2)) <= LITTLE_MORE_THAN_HALF * number(m.group(3));
    } else {
      return Optional.empty();
    }
    return Optional.of(
        outcome ->
            stations.isEmpty()
                ? DIFFER.matcher(outcome).results().anyMatch(told)
                : stations.stream()
                    .allMatch(
                        s ->
                            DIFFER
                                .matcher(outcome)
                                .results()
                                .filter(m -> number(m.group(1)) == s)
                                .anyMatch(told)));
  }

  private static int number(String figures) {
    return Integer.parseInt(figures);
  }
}
