package faultfinch.diagnosis;

/**
 * How much what no row shows is like what each row does. What one fault shows can be told in it
 * when another has spoilt it: a text with other letters in it, a report with one station more.
 */
final class Resemblance {
  private static final String BETWEEN_LINES = " | ";

  private Resemblance() {}

  /**
   * Share of the places that are not blank in both texts at which both have the same sign, 0 to 1,
   * line by line; 1 if both are blank.
   */
  static double of(String one, String other) {
    int all = 0;
    int same = 0;
    int a = 0;
    int b = 0;
    while (a < one.length() || b < other.length()) {
      int endA = end(one, a);
      int endB = end(other, b);
      for (int i = 0; i < Math.max(endA - a, endB - b); i++) {
        char x = a + i < endA ? one.charAt(a + i) : ' ';
        char y = b + i < endB ? other.charAt(b + i) : ' ';
        if (x != ' ' || y != ' ') {
          all++;
          same += x == y ? 1 : 0;
        }
      }
      a = Math.min(one.length(), endA + BETWEEN_LINES.length());
      b = Math.min(other.length(), endB + BETWEEN_LINES.length());
    }
    return all == 0 ? 1 : (double) same / all;
  }

  private static int end(String text, int from) {
    int end = text.indexOf(BETWEEN_LINES, from);
    return end < 0 ? text.length() : end;
  }
}
