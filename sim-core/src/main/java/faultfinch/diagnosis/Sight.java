package faultfinch.diagnosis;

import java.util.List;

/**
 * What somebody saw at one place: at one of these looks, one of these outcomes. More than one look
 * if it is not known which pad of a line was touched, more than one outcome if the words cover
 * several.
 *
 * @param outcomes as the dictionary words them
 */
public record Sight(List<String> looks, List<String> outcomes) {
  public Sight {
    looks = List.copyOf(looks);
    outcomes = List.copyOf(outcomes);
    if (looks.isEmpty() || outcomes.isEmpty()) {
      throw new IllegalArgumentException(
          "found " + looks + " with " + outcomes + ", right would be one look and outcome or more");
    }
  }
}
