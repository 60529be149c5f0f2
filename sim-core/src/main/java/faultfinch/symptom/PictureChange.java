package faultfinch.symptom;

import java.util.ArrayList;
import java.util.List;

/**
 * What became of a picture between two looks, as its owner would say it: letters that came or went.
 * A cursor that blinks, and marks that are no letters, are not told.
 */
final class PictureChange {
  /** More rows than these are told as a new picture. */
  private static final int TOLD_ROW_BY_ROW = 4;

  private PictureChange() {}

  /** Whether nothing came or went that an owner would tell. */
  static boolean none(Screen before, Screen after) {
    boolean read = before.synced() && after.synced();
    return before.synced() == after.synced() && (!read || letters(before).equals(letters(after)));
  }

  /** In words, such as {@code 'f' appears}. */
  static String between(Screen before, Screen after) {
    if (!after.synced()) {
      return before.synced() ? "picture lost" : "no picture";
    }
    if (!before.synced()) {
      return "picture comes: " + after.says();
    }
    if (after.dark()) {
      return before.dark() ? "picture dark as before" : "picture turns dark";
    }
    List<String> told = told(letters(before), letters(after));
    if (told.isEmpty()) {
      return "picture unchanged";
    }
    return told.size() > TOLD_ROW_BY_ROW
        ? "another picture: " + after.says()
        : String.join(", ", told);
  }

  private static List<String> told(List<String> before, List<String> after) {
    List<String> told = new ArrayList<>();
    for (int row = 0; row < Math.max(before.size(), after.size()); row++) {
      String was = row < before.size() ? before.get(row) : "";
      String is = row < after.size() ? after.get(row) : "";
      if (is.equals(was)) {
        continue;
      }
      if (is.startsWith(was)) {
        told.add("'" + text(is.substring(was.length())) + "' appears");
      } else if (was.startsWith(is)) {
        told.add("'" + text(was.substring(is.length())) + "' goes");
      } else {
        told.add("'" + text(was) + "' becomes '" + text(is) + "'");
      }
    }
    return told;
  }

  private static String text(String row) {
    return row.replaceAll("^[ #]+", "");
  }

  /** Rows without the marks at their ends. */
  private static List<String> letters(Screen screen) {
    return screen.rows().stream().map(r -> r.replaceAll("[ #]+$", "")).toList();
  }
}
