package faultfinch.attempt;

import java.util.Arrays;
import java.util.List;
import java.util.ResourceBundle;

/**
 * All that an attempt says, kept apart so that it can be translated. A text holds its gaps as {0},
 * {1} and so on.
 */
final class Texts {
  private static final ResourceBundle TEXTS =
      ResourceBundle.getBundle("faultfinch.attempt.attempt");

  private Texts() {}

  /** The text of a key with its gaps filled. */
  static String say(String key, Object... gaps) {
    String text = TEXTS.getString(key);
    for (int i = 0; i < gaps.length; i++) {
      text = text.replace("{" + i + "}", String.valueOf(gaps[i]));
    }
    return text;
  }

  /** A text that lists words, between commas. */
  static List<String> list(String key) {
    return Arrays.asList(TEXTS.getString(key).split(", *"));
  }
}
