package faultfinch.desk;

import java.util.HashMap;
import java.util.Map;

/**
 * What is written as it should be, but with other letters: each sign stands for one and the same.
 */
final class Spelling {
  private Spelling() {}

  /** Whether a text is another one, sign for sign, in letters that may be others. */
  static boolean alike(String text, String right) {
    Map<Character, Character> shown = new HashMap<>();
    boolean alike = text.length() == right.length();
    for (int i = 0; alike && i < text.length(); i++) {
      Character before = shown.putIfAbsent(right.charAt(i), text.charAt(i));
      alike = before == null || before == text.charAt(i);
    }
    return alike;
  }
}
