package faultfinch.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which colours are said to be on a set, or not: "only yellow, cyan and white", "no red or blue".
 */
final class Inks {
  private static final String JOINT = "(?:,? and |,? or |, | & | )";

  private final Lookbook lookbook;
  private final Map<String, String> names;
  private final Pattern only;
  private final Pattern none;
  private final Pattern joint;
  private final Pattern turns;
  private final Pattern all;

  Inks(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    names = vocabulary.pairs("inks");
    String ink = "(?:" + String.join("|", names.keySet()) + ")";
    String list = "((?:any )?" + ink + "(?:" + JOINT + ink + ")+)";
    only = Pattern.compile("(?:" + String.join("|", vocabulary.words("inks.only")) + ") " + list);
    none = Pattern.compile("(?:" + String.join("|", vocabulary.words("inks.none")) + ") " + list);
    turns =
        Pattern.compile(
            "(?<= |^)("
                + ink
                + ")(?: [a-z]+){0,2}? (?:(?:is|are|comes|turns|turned|shows|becomes|appears|looks|text|letters)"
                + "(?: [a-z]+)?? )("
                + ink
                + ")(?=[ ,]|$)");
    all =
        Pattern.compile(
            "(?<= |^)(?:"
                + String.join("|", vocabulary.words("inks.ground"))
                + ")(?: (?:is|are|all|just|solid|turned|comes|stays|in|a|bright))* ("
                + ink
                + ")(?=[ ,.]|$)|(?<= |^)("
                + ink
                + ") (?:"
                + String.join("|", vocabulary.words("inks.ground-behind"))
                + ")(?=[ ,.]|$)");
    joint = Pattern.compile(ink + "(?:,(?= " + ink + "))");
  }

  /** Two colours and more in a row, so that no comma parts them. */
  String joined(String text) {
    Matcher m = joint.matcher(text.toLowerCase(Locale.ROOT));
    StringBuilder joined = new StringBuilder(text);
    int gone = 0;
    while (m.find()) {
      joined.replace(m.end() - 1 - gone, m.end() - gone, "");
      gone++;
    }
    return joined.toString();
  }

  /** What a phrase says of two colours or more; empty if it says nothing, or none shows it. */
  Optional<Phrases.Finding> find(String text) {
    if (!lookbook.looks().contains(Phrases.SCREEN)) {
      return Optional.empty();
    }
    String small = text.toLowerCase(Locale.ROOT);
    Matcher left = only.matcher(small);
    if (left.find()) {
      Set<String> said = inks(left.group(1));
      return finding(text, shown -> shown.equals(said))
          .or(() -> finding(text, shown -> !shown.isEmpty() && said.containsAll(shown)));
    }
    Matcher ground = all.matcher(small);
    if (ground.find()) {
      String said = names.get(ground.group(1) == null ? ground.group(2) : ground.group(1));
      Optional<Phrases.Finding> found = grounded(text, said);
      if (found.isPresent()) {
        return found;
      }
    }
    Matcher gone = none.matcher(small);
    if (gone.find()) {
      Set<String> said = inks(gone.group(1));
      return finding(text, shown -> !shown.isEmpty() && shown.stream().noneMatch(said::contains));
    }
    return turned(text, small);
  }

  /** "Whole screen green": a colour that is in all there is, and there by itself. */
  private Optional<Phrases.Finding> grounded(String text, String said) {
    return Phrases.Finding.of(
        Phrases.SCREEN,
        text,
        lookbook.outcomes(Phrases.SCREEN).stream()
            .filter(o -> PictureText.of(o).isAllOf(said))
            .toList());
  }

  /** "White is magenta, yellow is red": what a colour became, and that it is gone. */
  private Optional<Phrases.Finding> turned(String text, String small) {
    Set<String> were = new LinkedHashSet<>();
    Set<String> are = new LinkedHashSet<>();
    Matcher m = turns.matcher(small);
    while (m.find()) {
      were.add(names.get(m.group(1)));
      are.add(names.get(m.group(2)));
    }
    were.removeAll(are);
    return were.isEmpty()
        ? Optional.empty()
        : finding(
            text, shown -> shown.containsAll(are) && shown.stream().noneMatch(were::contains));
  }

  private Optional<Phrases.Finding> finding(String text, Predicate<Set<String>> holds) {
    List<String> meant =
        lookbook.outcomes(Phrases.SCREEN).stream()
            .filter(o -> holds.test(new LinkedHashSet<>(PictureText.of(o).inks())))
            .toList();
    return Phrases.Finding.of(Phrases.SCREEN, text, meant);
  }

  private Set<String> inks(String list) {
    Set<String> inks = new LinkedHashSet<>();
    String rest = " " + list.replace(",", " ") + " ";
    for (Map.Entry<String, String> name : names.entrySet()) {
      if (rest.contains(" " + name.getKey() + " ")) {
        inks.add(name.getValue());
        rest = rest.replace(" " + name.getKey() + " ", " ");
      }
    }
    return inks;
  }
}
