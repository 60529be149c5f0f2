package faultfinch.desk;

import faultfinch.diagnosis.Observation;
import java.util.Optional;

/**
 * One thing noted, as typed.
 *
 * @param says the words
 * @param who says so
 * @param when how the board stood; empty as for the entry before
 * @param where it was written, for what is said about it; empty if it was typed
 */
public record Entry(
    String says,
    Who who,
    Observation.Doubt doubt,
    Optional<Conditions> when,
    Optional<String> where) {

  /** Who says so. */
  public enum Who {
    OWN_EYES,
    INSTRUMENT,
    OWNER
  }

  /** Typed, seen with one's own eyes or instrument. */
  public static Entry saw(String says) {
    return new Entry(
        says, Who.OWN_EYES, Observation.Doubt.SURE, Optional.empty(), Optional.empty());
  }

  /** Typed, told by the owner. */
  public static Entry told(String says) {
    return new Entry(says, Who.OWNER, Observation.Doubt.SURE, Optional.empty(), Optional.empty());
  }
}
