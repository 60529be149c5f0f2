package faultfinch.machine;

import faultfinch.fault.Fault;
import faultfinch.fault.Harm;
import faultfinch.fault.SupplyBreak;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.StringJoiner;
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
  private final Map<String, Agreement.Outcome> outcomes = new HashMap<>();
  private final List<String> differences = new ArrayList<>();

  /**
   * Tries these faults. Faults that harm alike make the same circuit and so the same run: an open
   * leg and an open contact of one pin are tried once, and the outcome counts for both.
   */
  void run(Map<Fault, FaultSpread.Sort> faults, Function<Fault, Agreement.Outcome> trial) {
    faults.forEach(
        (fault, sort) -> {
          Tally tally = tallies.computeIfAbsent(sort.text(), k -> new Tally());
          tally.drawn++;
          Agreement.Outcome outcome =
              outcomes.computeIfAbsent(harm(fault), k -> tried(fault, trial));
          tally.compared += outcome.compared();
          tally.agreed += outcome.difference().isEmpty() ? 1 : 0;
          outcome.difference().ifPresent(text -> differences.add(fault.text() + ": " + text));
        });
  }

  private static Agreement.Outcome tried(Fault fault, Function<Fault, Agreement.Outcome> trial) {
    try {
      return trial.apply(fault);
    } catch (RuntimeException e) {
      return new Agreement.Outcome(Optional.of(e.toString()), 0);
    }
  }

  /**
   * All that a fault asks of a board being compiled; a break of a supply lead is told by itself.
   */
  static String harm(Fault fault) {
    StringJoiner asked = new StringJoiner("; ");
    Harm harm =
        (Harm)
            Proxy.newProxyInstance(
                Harm.class.getClassLoader(),
                new Class<?>[] {Harm.class},
                (proxy, method, arguments) -> {
                  asked.add(method.getName() + Arrays.toString(arguments));
                  return null;
                });
    fault.applyTo(harm);
    return fault instanceof SupplyBreak ? fault.text() : asked.toString();
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
    line(table, drawn, agreed, compared(), tallies.size() + " sorts, " + outcomes.size() + " runs");
    differences.forEach(d -> table.append("differs: ").append(d).append('\n'));
    return table.toString();
  }

  private static void line(StringBuilder table, Object... cells) {
    table.append(String.format(Locale.ROOT, "%6s %6s %18s  %s%n", cells));
  }
}
