package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known of a board on the bench.
 *
 * @param seen in the order of the entries
 * @param missed repairs that were made and changed nothing
 * @param done repairs in the order made; each observation says how many of them came before it
 * @param trials looks the dictionary lacks, as far as they were run
 * @param hints what came of things done to a part for a moment
 * @param histories what became of the board before it was brought
 */
public record Evidence(
    List<Observation> seen,
    List<RepairAction> missed,
    List<RepairAction> done,
    List<Trial> trials,
    List<Hint> hints,
    List<History> histories) {

  /** Nothing known. */
  public static final Evidence NONE = new Evidence(List.of(), List.of());

  public Evidence {
    seen = List.copyOf(seen);
    missed = List.copyOf(missed);
    done = List.copyOf(done);
    trials = List.copyOf(trials);
    hints = List.copyOf(hints);
    histories = List.copyOf(histories);
    for (Observation observation : seen) {
      if (observation.after() > done.size()) {
        throw new IllegalArgumentException(
            "found '"
                + observation.text()
                + "' after repair "
                + observation.after()
                + ", right would be 0 to "
                + done.size());
      }
    }
  }

  /** Of a board on which nothing was repaired, or in vain. */
  public Evidence(List<Observation> seen, List<RepairAction> missed) {
    this(seen, missed, List.of(), List.of(), List.of(), List.of());
  }

  /** Only these observations. */
  public static Evidence of(Observation... seen) {
    return new Evidence(List.of(seen), List.of());
  }

  /** The same with what was run for it. */
  public Evidence tried(List<Trial> run) {
    return new Evidence(seen, missed, done, run, hints, histories);
  }

  /** This and one more observation. */
  public Evidence and(Observation more) {
    List<Observation> longer = new ArrayList<>(seen);
    longer.add(more);
    return new Evidence(longer, missed, done, trials, hints, histories);
  }

  /** This and one more repair without success. */
  public Evidence andMissed(RepairAction action) {
    List<RepairAction> longer = new ArrayList<>(missed);
    longer.add(action);
    return new Evidence(seen, longer, done, trials, hints, histories);
  }

  /** This and one more repair; what is seen from here on is seen after it. */
  public Evidence andDone(RepairAction action) {
    List<RepairAction> longer = new ArrayList<>(done);
    longer.add(action);
    return new Evidence(seen, missed, longer, trials, hints, histories);
  }

  /**
   * Only what was seen since something last changed: what a look showed before a repair that made
   * it show something else is of a board that is no more.
   */
  Evidence asItIsNow() {
    int since = 0;
    for (Observation now : seen) {
      for (Observation before : seen) {
        boolean same = before.look().equals(now.look()) && before.after() < now.after();
        since = same && !before.reach().equals(now.reach()) ? Math.max(since, now.after()) : since;
      }
    }
    int from = since;
    List<Observation> left = seen.stream().filter(o -> o.after() >= from).toList();
    return new Evidence(left, missed, done, trials, hints, histories);
  }

  /** Looks that would show nothing new: made on the bench since the last repair. */
  List<String> looksMade() {
    return seen.stream()
        .filter(o -> o.after() == done.size() && o.source() != Observation.Source.TOLD)
        .flatMap(o -> o.looksMade().stream())
        .distinct()
        .toList();
  }
}
