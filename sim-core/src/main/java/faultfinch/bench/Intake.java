package faultfinch.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What came with the board.
 *
 * @param complaint the owner's own words
 * @param answers what the owner says when asked, by question
 */
public record Intake(String complaint, Map<String, String> answers) {
  public Intake {
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
  }

  /** A board that came without a word. */
  public static Intake none() {
    return new Intake("", Map.of());
  }
}
