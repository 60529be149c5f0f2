package faultfinch.diagnosis;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What one run showed.
 *
 * @param shows features by the text of the look
 * @param trail a digest of all that the run did where it was watched; runs that differ anywhere
 *     there, on a pin, in a stored bit or a level, have different ones
 */
public record Row(SortedMap<String, String> shows, long trail) {
  public Row {
    shows = Collections.unmodifiableSortedMap(new TreeMap<>(shows));
  }
}
