package faultfinch.desk;

import java.util.Locale;

/**
 * What came of the keys that were pressed: the row of the picture in which what is typed stands.
 *
 * @param prompt what that row begins with
 * @param word what is typed, as a healthy board shows it
 */
record Echo(String prompt, String word) {

  /**
   * Found where the picture after typing has a row that it had not before.
   *
   * @param typed what a healthy board shows after typing
   * @param start what it shows before
   */
  static Echo of(PictureText typed, PictureText start) {
    String row =
        typed.rows().stream().filter(r -> !start.rows().contains(r)).findFirst().orElse("");
    int from = 0;
    while (from < row.length() && !Character.isLetterOrDigit(row.charAt(from))) {
      from++;
    }
    return new Echo(row.substring(0, from), bare(row.substring(from)));
  }

  /** What a picture shows of it; nothing if there is no such row, or nothing in it. */
  String in(PictureText picture) {
    return picture.rows().stream()
        .filter(r -> !prompt.isEmpty() && r.startsWith(prompt))
        .map(r -> bare(r.substring(prompt.length())))
        .filter(r -> !r.isEmpty())
        .findFirst()
        .orElse("");
  }

  /** Whether its row is the last of a picture. */
  boolean isLastOf(PictureText picture) {
    String last = picture.isShown() ? picture.rows().get(picture.rows().size() - 1) : "";
    return last.startsWith(prompt) && !bare(last.substring(prompt.length())).isEmpty();
  }

  private static String bare(String text) {
    return text.replace("#", " ").strip().toLowerCase(Locale.ROOT);
  }
}
