package faultfinch.desk;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Several things of which one is said: "screen, keys and lamp normal". */
final class Subjects {
  private final Pattern several;

  Subjects(Vocabulary vocabulary) {
    String thing = "(?:" + either(vocabulary.words("of-several")) + ")";
    String said = either(vocabulary.words("of-several.said"));
    several =
        Pattern.compile(
            "(?i)("
                + thing
                + "(?:, "
                + thing
                + ")*,? (?:and |or )?"
                + thing
                + ")"
                + "(?:,)?(?: are| is| look| looks| all| both)* ("
                + said
                + ")");
  }

  private static String either(List<String> words) {
    return words.stream().map(Pattern::quote).collect(Collectors.joining("|"));
  }

  /** The same said of each by itself; any other text as it is. */
  String apart(String says) {
    Matcher m = several.matcher(says.strip());
    if (!m.matches() || !m.group(1).toLowerCase(Locale.ROOT).matches(".*(, | and | or ).*")) {
      return says;
    }
    return List.of(m.group(1).split(",? and |,? or |, ")).stream()
        .map(thing -> thing + " " + m.group(2))
        .collect(Collectors.joining(", "));
  }
}
