package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
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
 * @param usual the look of the dictionary that it is, made of a board that stands so
 * @param out references of the parts that are out; what is wrong with them is out with them
 * @param idle faults that do nothing with them out, such as of tracks that lead to nothing then
 * @param healthy what a healthy board shows that stands so
 * @param byRow what is shown with the faults of a row of the dictionary, for those that were run
 */
public record Trial(
    String look,
    String usual,
    Set<String> out,
    Set<String> idle,
    String healthy,
    Map<Integer, String> byRow) {
  /** Least repairs of what leaves the board with the part that is taken out. */
  private static final Set<RepairAction.Kind> OF_THE_PART =
      Set.of(
          RepairAction.Kind.EXCHANGE,
          RepairAction.Kind.DESOLDER_AND_SOCKET,
          RepairAction.Kind.EXCHANGE_SMALL,
          RepairAction.Kind.NEW_SOCKET,
          RepairAction.Kind.STRAIGHTEN_LEG,
          RepairAction.Kind.RESEAT);

  public Trial {
    out = Set.copyOf(out);
    idle = Set.copyOf(idle);
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

  /** Whether a fault is out with the parts, so that the board is a healthy one without them. */
  public boolean takesAway(Suspect suspect) {
    return idle.contains(suspect.fault())
        || out.contains(suspect.place()) && OF_THE_PART.contains(suspect.repair().kind());
  }

  /** What a healthy board shows in these, by look, beside what the dictionary says of it. */
  static Map<String, String> healthy(FaultDictionary dictionary, List<Trial> trials) {
    Map<String, String> shows = new LinkedHashMap<>(dictionary.shows(FaultDictionary.HEALTHY));
    trials.forEach(trial -> shows.put(trial.look, trial.healthy));
    return shows;
  }

  /** The same with a fault. */
  static Map<String, String> shows(
      FaultDictionary dictionary, Suspect suspect, List<Trial> trials) {
    int row = dictionary.row(suspect.fault());
    Map<String, String> shows = new LinkedHashMap<>(dictionary.shows(row));
    for (Trial trial : trials) {
      int standsFor = trial.takesAway(suspect) ? FaultDictionary.HEALTHY : row;
      trial.outcome(standsFor).ifPresent(o -> shows.put(trial.look, o));
    }
    return shows;
  }
}
