package faultfinch.diagnosis;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * In what a run departed from that of the healthy board.
 *
 * @param otherwise outcome by look, of the looks that show something else
 * @param excited whether anything was otherwise where it was watched, be it seen by a look or not
 */
record Departure(SortedMap<String, String> otherwise, boolean excited) {
  Departure {
    otherwise = Collections.unmodifiableSortedMap(new TreeMap<>(otherwise));
  }

  /**
   * What one row has that the healthy one has not.
   *
   * @param whose for messages
   * @throws IllegalArgumentException if the rows do not know the same looks
   */
  static Departure of(String whose, Row healthy, Row row) {
    if (row.shows().size() != healthy.shows().size()) {
      throw new IllegalArgumentException(
          "found "
              + row.shows().size()
              + " looks for "
              + whose
              + ", right would be "
              + healthy.shows().size());
    }
    SortedMap<String, String> otherwise = new TreeMap<>();
    healthy
        .shows()
        .forEach(
            (look, outcome) -> {
              String shown = row.shows().get(look);
              if (shown == null) {
                throw new IllegalArgumentException(
                    "found no '" + look + "' for " + whose + ", right would be its outcome");
              }
              if (!shown.equals(outcome)) {
                otherwise.put(look, shown);
              }
            });
    return new Departure(otherwise, row.trail() != healthy.trail());
  }

  /** This and what another stage of the same fault showed. */
  Departure and(Departure other) {
    SortedMap<String, String> both = new TreeMap<>(otherwise);
    both.putAll(other.otherwise);
    return new Departure(both, excited || other.excited);
  }
}
