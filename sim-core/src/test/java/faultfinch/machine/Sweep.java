package faultfinch.machine;

import faultfinch.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** Holds many faults against both machines and keeps count, by sort, of those that agreed. */
final class Sweep {
  private static final class Tally {
    private int drawn;
    private int agreed;
    private long compared;
  }

  private final SortedMap<String, Tally> tallies = new TreeMap<>();
  private final List<String> differences = new ArrayList<>();

  /** Tries these faults; what fails otherwise than by a difference is one too, and is told so. */
  void run(Map<Fault, FaultSpread.Sort> faults, Function<Fault, Agreement.Outcome> trial) {
    faults.forEach(
        (fault, sort) -> {
          Tally tally = tallies.computeIfAbsent(sort.text(), k -> new Tally());
          tally.drawn++;
          Agreement.Outcome outcome;
          try {
            outcome = trial.apply(fault);
          } catch (RuntimeException e) {
            differences.add(fault.text() + ": " + e);
            return;
          }
          tally.compared += outcome.compared();
          tally.agreed += outcome.difference().isEmpty() ? 1 : 0;
          outcome.difference().ifPresent(text -> differences.add(fault.text() + ": " + text));
        });
  }

  /** One line for each fault on which the machines differ. */
  List<String> differences() {
    return List.copyOf(differences);
  }

  /** Cycles from tables that were held, pin by pin, against the plain machine. */
  long compared() {
    return tallies.values().stream().mapToLong(t -> t.compared).sum();
  }

  /** A line for each sort, and the sum. */
  String table() {
    StringBuilder table = new StringBuilder();
    line(table, "drawn", "agreed", "cycles from tables", "kind; role/technology");
    int drawn = 0;
    int agreed = 0;
    for (Map.Entry<String, Tally> e : tallies.entrySet()) {
      Tally t = e.getValue();
      line(table, t.drawn, t.agreed, t.compared, e.getKey());
      drawn += t.drawn;
      agreed += t.agreed;
    }
    line(table, drawn, agreed, compared(), "all " + tallies.size() + " sorts");
    differences.forEach(d -> table.append("differs: ").append(d).append('\n'));
    return table.toString();
  }

  private static void line(StringBuilder table, Object... cells) {
    table.append(String.format(Locale.ROOT, "%6s %6s %18s  %s%n", cells));
  }
}
