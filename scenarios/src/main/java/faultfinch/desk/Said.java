package faultfinch.desk;

import faultfinch.symptom.Screen;

/**
 * A meaning found in a phrase.
 *
 * @param not whether it is denied
 * @param start what the screen of a healthy board shows after a start; empty if it has none
 */
record Said(Vocabulary.Meaning meaning, boolean not, String start) {
  boolean covers(String outcome, String healthy) {
    // A picture that rolls is called so, whatever else is said of it.
    if (outcome.endsWith(Screen.ROLLS) && !meaning.name().equals(Screen.ROLLS)) {
      return false;
    }
    return meaning.shows().covers(outcome, new Comparison.Normal(healthy, start)) != not;
  }
}
