package faultfinch.desk;

import faultfinch.diagnosis.History;
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

  /**
   * Something was tried, and is weighed by what came of it.
   *
   * @param parts references of what it was tried on
   */
  record Tried(String said, Conditions when, Came came, List<String> parts) implements Statement {
    public Tried {
      parts = List.copyOf(parts);
    }
  }

  /** Something that became of the board before it was brought. */
  record Past(String said, Conditions when, History history) implements Statement {}

  /** What came of something tried. */
  enum Came {
    /** Parts were exchanged or reseated, and the board is as it was. */
    REPAIR_MISSED,
    /** The same, and what was seen before is gone. */
    REPAIR_CURED,
    /** The same, and what came of it is told by what follows. */
    REPAIRED,
    /** Something done for a moment helped. */
    HELPED,
    /** The same, in vain. */
    IN_VAIN,
    /** An ohmmeter across two lines read next to nothing. */
    JOINED,
    /** It read a lot. */
    APART
  }

  /** Why something is not weighed. */
  enum Why {
    /** No look, place or outcome was found in the words. */
    NOT_UNDERSTOOD,
    /** It is of a good board, or of this one before it failed. */
    OF_A_GOOD_BOARD,
    /** There is a look and no place on this board for it. */
    NO_PLACE,
    /** The board has no such part. */
    NO_SUCH_PART,
    /** The part has no such pin. */
    NO_SUCH_PIN,
    /** It differs between healthy boards. */
    DIFFERS_ANYWAY,
    /** Nothing is known of a board that stands so. */
    OTHER_CONDITIONS,
    /** It is so for as long as another line has a level, or something is done. */
    FOR_A_MOMENT,
    /** Keys that work are not to be seen on a set that is dark. */
    TYPED_BLIND,
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
