package faultfinch.desk;

import faultfinch.diagnosis.Observation;
import java.util.List;

/** What an entry, or a part of it, comes to. */
public sealed interface Statement {

  /** The words it came from. */
  String said();

  /** How the board stood. */
  Conditions when();

  /**
   * Weighed.
   *
   * @param unheard outcomes nearest to what was seen, if no fault of the list shows that; else none
   */
  record Weighed(String said, Conditions when, Observation observation, List<String> unheard)
      implements Statement {
    public Weighed {
      unheard = List.copyOf(unheard);
    }
  }

  /**
   * Kept, but not weighed.
   *
   * @param about what the reason is about, such as a look
   * @param nearest what could be said instead
   */
  record Kept(String said, Conditions when, Why why, String about, List<String> nearest)
      implements Statement {
    public Kept {
      nearest = List.copyOf(nearest);
    }
  }

  /** Why something is not weighed. */
  enum Why {
    /** No look, place or outcome was found in the words. */
    NOT_UNDERSTOOD,
    /** There is a look and no place on this board for it. */
    NO_PLACE,
    /** It differs between healthy boards. */
    DIFFERS_ANYWAY,
    /** Nothing is known of a board that stands so. */
    OTHER_CONDITIONS,
    /** No fault of the list shows it. */
    NOBODY_SHOWS_IT,
    /** Every fault of the list shows it. */
    EVERYBODY_SHOWS_IT,
    /** Somebody looked and could not say. */
    UNDECIDED,
    /** So many of so many cannot be. */
    MISCOUNTED,
    /** The same look was noted before, as the board stands now. */
    TWICE
  }
}
