package faultfinch.judging;

import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Lot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The faults that bring a board to the bench, kind by kind. Jobs are drawn by weight within a kind,
 * from each kind as many as its share, and two at least, so that a spread can be told.
 */
public final class Population {
  private static final int LEAST = 2;
  private static final int DRAW = 71;
  private static final String ANY_KIND = "any";

  private record One(Truth truth, Complaint complaint) {}

  private final Map<String, List<One>> kinds = new LinkedHashMap<>();
  private final List<Suspect> noticed = new ArrayList<>();
  private final double weight;
  private final double silent;

  /**
   * @param kind of a fault
   */
  public Population(
      FaultDictionary dictionary, Suspects suspects, Signs signs, Function<Suspect, String> kind) {
    for (Suspect suspect : suspects.all()) {
      Optional<Complaint> complaint = signs.complaint(dictionary.row(suspect.fault()));
      if (complaint.isPresent()) {
        noticed.add(suspect);
        List<One> ones = kinds.computeIfAbsent(kind.apply(suspect), k -> new ArrayList<>());
        Truth.of(suspect).forEach(t -> ones.add(new One(t, complaint.get())));
      }
    }
    weight = noticed.stream().mapToDouble(Suspect::weight).sum();
    silent = 1 - weight / suspects.weight();
  }

  /** The faults in it. */
  public List<Suspect> noticed() {
    return List.copyOf(noticed);
  }

  /** Share of the faults that nobody would notice, each by how likely it is, 0 to 1. */
  public double silent() {
    return silent;
  }

  /** Everything that can come. */
  public List<Truth> truths() {
    return noticed.stream().flatMap(s -> Truth.of(s).stream()).toList();
  }

  /** The same by its complaint. */
  public Map<Complaint, List<Truth>> byComplaint() {
    Map<Complaint, List<Truth>> all = new LinkedHashMap<>();
    kinds
        .values()
        .forEach(
            ones ->
                ones.forEach(
                    o -> all.computeIfAbsent(o.complaint, c -> new ArrayList<>()).add(o.truth)));
    return all;
  }

  /**
   * Draws jobs.
   *
   * @param count of a few, too few for two of each kind, kinds are not looked at
   */
  public List<Job> draw(int count, long seed) {
    Map<String, List<One>> strata =
        count < LEAST * kinds.size() ? Map.of(ANY_KIND, together()) : kinds;
    Map<String, Integer> counts = counts(strata, count);
    List<Job> jobs = new ArrayList<>();
    strata.forEach(
        (kind, ones) -> {
          double all = weight(ones);
          int n = counts.get(kind);
          for (int i = 0; i < n; i++) {
            One one = at(ones, Lot.share(seed, DRAW, Lot.of(kind), i) * all);
            jobs.add(new Job(one.truth, one.complaint, kind, all / weight / n, jobs.size()));
          }
        });
    return List.copyOf(jobs);
  }

  private List<One> together() {
    return kinds.values().stream().flatMap(List::stream).toList();
  }

  /** To each kind its share; what is left by rounding down goes to the largest remainders. */
  private Map<String, Integer> counts(Map<String, List<One>> strata, int count) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, Double> over = new LinkedHashMap<>();
    strata.forEach(
        (kind, ones) -> {
          double due = count * weight(ones) / weight;
          counts.put(kind, Math.max(Math.min(LEAST, count), (int) due));
          over.put(kind, due - counts.get(kind));
        });
    int left = count - counts.values().stream().mapToInt(Integer::intValue).sum();
    over.entrySet().stream()
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .limit(Math.max(0, left))
        .forEach(e -> counts.merge(e.getKey(), 1, Integer::sum));
    return counts;
  }

  private static double weight(List<One> ones) {
    return ones.stream().mapToDouble(o -> o.truth.weight()).sum();
  }

  private static One at(List<One> ones, double at) {
    double left = at;
    for (One one : ones.subList(0, ones.size() - 1)) {
      if (left < one.truth.weight()) {
        return one;
      }
      left -= one.truth.weight();
    }
    return ones.get(ones.size() - 1);
  }
}
