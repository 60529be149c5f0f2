package faultfinch.diagnosis;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one look shows on boards that stand otherwise than in the dictionary, such as with a chip
 * out, as far as it was run.
 *
 * @param look a text of its own, such as {@code screen with U8 out}
 * @param healthy what a healthy board shows that stands so
 * @param byRow what is shown with the faults of a row of the dictionary, for those that were run
 */
public record Trial(String look, String healthy, Map<Integer, String> byRow) {
  public Trial {
    byRow = Map.copyOf(byRow);
  }

  /** All that was seen of it, the healthy outcome first. */
  public List<String> outcomes() {
    Set<String> outcomes = new LinkedHashSet<>(List.of(healthy));
    byRow.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(e -> outcomes.add(e.getValue()));
    return List.copyOf(outcomes);
  }

  /** What a row shows, if it was run. */
  Optional<String> outcome(int row) {
    return row == FaultDictionary.HEALTHY
        ? Optional.of(healthy)
        : Optional.ofNullable(byRow.get(row));
  }

  /** What a row shows in these, by look, beside what the dictionary says of it. */
  static Map<String, String> shows(FaultDictionary dictionary, int row, List<Trial> trials) {
    Map<String, String> shows = new LinkedHashMap<>(dictionary.shows(row));
    for (Trial trial : trials) {
      trial.outcome(row).ifPresent(o -> shows.put(trial.look, o));
    }
    return shows;
  }
}
