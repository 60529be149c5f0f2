package faultfinch.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What stands on a set after every key was pressed, taken apart again.
 *
 * @param lines what was typed, line by line, without the prompt and the cursor; none if no key was
 *     tried, or nothing came
 */
record TypedKeys(List<String> lines) {
  TypedKeys {
    lines = List.copyOf(lines);
  }

  /**
   * Of an outcome.
   *
   * @param prompt what a line begins with that somebody types on
   */
  static TypedKeys of(String outcome, String prompt) {
    List<String> lines = new ArrayList<>();
    for (String row : PictureText.of(outcome).rows()) {
      if (row.startsWith(prompt)) {
        lines.add(row.substring(prompt.length()).replaceAll("#$", ""));
      }
    }
    return new TypedKeys(lines);
  }

  /** Signs of all lines but the last, which repeats some among keys without a sign. */
  Set<String> signs() {
    Set<String> signs = new LinkedHashSet<>();
    for (String line : lines.subList(0, Math.max(0, lines.size() - 1))) {
      signs.addAll(List.of(line.toLowerCase(Locale.ROOT).split("")));
    }
    signs.remove("");
    return signs;
  }

  /** Those of some signs of which nothing came. */
  Set<String> missing(Set<String> signs) {
    String all = String.join("", lines).toLowerCase(Locale.ROOT);
    Set<String> missing = new LinkedHashSet<>(signs);
    missing.removeIf(all::contains);
    return missing;
  }

  /** How often a sign stands there. */
  int times(String sign) {
    String all = String.join("", lines).toLowerCase(Locale.ROOT);
    return all.length() - all.replace(sign, "").length();
  }

  /** The last line without signs of which nothing came elsewhere either. */
  String last(Set<String> without) {
    String last = lines.isEmpty() ? "" : lines.get(lines.size() - 1);
    StringBuilder left = new StringBuilder();
    for (String sign : last.split("")) {
      left.append(without.contains(sign.toLowerCase(Locale.ROOT)) ? "" : sign);
    }
    return left.toString();
  }
}
