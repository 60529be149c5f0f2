package faultfinch.bench;

import java.util.List;

/** How one kind of move is carried out. */
interface Act {

  /** Where it can be done now; a list with an empty text if it needs no place. */
  List<String> places(Patient patient);

  /**
   * Whether it can be done there now; more than {@link #places} if places can be written freely.
   */
  default boolean takes(Patient patient, String place) {
    return places(patient).contains(place);
  }

  /** Does it. */
  Reading perform(Patient patient, String place);
}
