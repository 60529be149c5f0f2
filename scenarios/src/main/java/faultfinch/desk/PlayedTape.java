package faultfinch.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a board showed when a tape was loaded, another written, and that loaded, taken apart again.
 *
 * @param typed line by line, as it stands behind the prompt
 * @param answers line by line, without what was typed; none if it was not tried
 * @param motor what is said of a tape that does not run as it should; empty if it does
 */
record PlayedTape(List<String> typed, List<String> answers, String motor) {
  private static final Pattern MOTOR = Pattern.compile("^.*'.*?, (the tape [a-z ]+)$");

  PlayedTape {
    typed = List.copyOf(typed);
    answers = List.copyOf(answers);
  }

  /**
   * Of an outcome.
   *
   * @param prompt what a line begins with that somebody types on
   */
  static PlayedTape of(String outcome, String prompt) {
    List<String> lines = new ArrayList<>();
    List<String> answers = new ArrayList<>();
    boolean typed = false;
    for (String row : PictureText.of(outcome).rows()) {
      boolean own = !prompt.isEmpty() && row.startsWith(prompt);
      typed |= own;
      if (own) {
        lines.add(row.substring(prompt.length()));
      }
      if (typed && !own && !row.startsWith(prompt.strip())) {
        answers.add(row);
      }
    }
    Matcher m = MOTOR.matcher(outcome);
    return new PlayedTape(lines, answers, m.matches() ? m.group(1) : "");
  }
}
