package faultfinch.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Several lines and as many figures, each told by itself: "A1 and A2 read 2.2 and 1.9 V". */
final class Respectively {
  private static final String LINE = "[A-Z]{1,4}\\d{1,2}/?";
  private static final String FIGURE = "-?\\d+(?:\\.\\d+)?(?: ?V(?:olts)?)?";
  private static final String BETWEEN = "(?:, and |, | and | & | ?/ ?)";

  private static final Pattern TOLD =
      Pattern.compile(
          "(?<![\\w.])("
              + LINE
              + ")(?:(?: to |-| thru |\\.\\.)([A-Z]{0,4}\\d{1,2}/?)|((?:"
              + BETWEEN
              + LINE
              + ")+))((?: [A-Za-z]+){0,6}?)[ :=]+("
              + FIGURE
              + "(?:"
              + BETWEEN
              + FIGURE
              + ")+)(?: respectively|(?! ?[a-zA-Z%.\\d]))");

  private static final Pattern NUMBERED = Pattern.compile("([A-Z]*)(\\d+)(/?)");

  private Respectively() {}

  /** A sentence in which each line has its own figure, where there are as many of both. */
  static String apart(String sentence) {
    return TOLD.matcher(sentence).replaceAll(m -> Matcher.quoteReplacement(apart(m)));
  }

  private static String apart(MatchResult told) {
    List<String> lines = lines(told);
    String[] figures = told.group(5).split(BETWEEN);
    boolean volts = told.group(5).contains(".") || told.group(5).contains("V");
    if (lines.size() != figures.length || !volts) {
      return told.group();
    }
    List<String> each = new ArrayList<>();
    for (int i = 0; i < figures.length; i++) {
      String figure = figures[i].replaceAll("[^-\\d.]", "");
      each.add(lines.get(i) + told.group(4) + " " + figure + " V");
    }
    return String.join(", ", each);
  }

  private static List<String> lines(MatchResult told) {
    List<String> lines = new ArrayList<>(List.of(told.group(1)));
    if (told.group(3) != null) {
      List.of(told.group(3).split(BETWEEN)).stream().filter(l -> !l.isEmpty()).forEach(lines::add);
      return lines;
    }
    Matcher from = NUMBERED.matcher(told.group(1));
    Matcher to = NUMBERED.matcher(told.group(2));
    boolean row =
        from.matches() && to.matches() && List.of("", from.group(1)).contains(to.group(1));
    return row
        ? IntStream.rangeClosed(Integer.parseInt(from.group(2)), Integer.parseInt(to.group(2)))
            .mapToObj(n -> from.group(1) + n + from.group(3))
            .toList()
        : List.of();
  }
}
