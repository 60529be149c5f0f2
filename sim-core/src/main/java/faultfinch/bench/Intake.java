package faultfinch.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What came with the board.
 *
 * @param complaint the owner's own words
 * @param answers what the owner says when asked, by question
 * @param lidOn whether it came in its case
 */
public record Intake(String complaint, Map<String, String> answers, boolean lidOn) {
  public Intake {
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
  }

  /** A board that came bare. */
  public Intake(String complaint, Map<String, String> answers) {
    this(complaint, answers, false);
  }

  /** A board that came without a word. */
  public static Intake none() {
    return new Intake("", Map.of());
  }
}
