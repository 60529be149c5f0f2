package faultfinch.cli;

import faultfinch.diagnosis.DictionaryRows;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.PairSearch;
import faultfinch.diagnosis.RowSource;
import faultfinch.diagnosis.SuspectPair;
import faultfinch.diagnosis.Verdict;
import faultfinch.fault.Contradictions;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Two faults at once: the likeliest pairs, run here and now, since only a run convicts them. */
final class Pairs {
  /** A counted number, never a time: the same words find the same pairs on every computer. */
  private static final int MOST = 10;

  private static final int SHOWN = 5;
  private static final int THREADS = 2;
  private static final int WIDTH = 100;

  private record Pair(SuspectPair suspects, List<Fault> faults) {}

  /** A pair that was run. */
  private record Found(SuspectPair pair, double odds, Verdict verdict) {}

  private final List<Found> found;

  private Pairs(List<Found> found) {
    this.found = found;
  }

  /** Runs them, and tells how far it is. */
  static Pairs of(Known known, Evidence evidence, Terminal terminal) {
    List<Pair> pairs = new ArrayList<>();
    PairSearch search = known.diagnosis().pairs(evidence);
    for (SuspectPair pair : search.proposals(MOST)) {
      List<Fault> faults =
          pair.faults().stream().map(f -> FaultKinds.parse(f, known.board())).toList();
      if (Contradictions.in(faults).isEmpty()) {
        pairs.add(new Pair(pair, faults));
      }
    }
    Words words = terminal.words();
    if (!pairs.isEmpty()) {
      terminal.err().println(words.say("pairs.begin", pairs.size()));
    }
    ExecutorService workers = Executors.newFixedThreadPool(THREADS);
    try {
      RowSource rows = DictionaryRows.of(known.board(), evidence);
      List<Future<List<Map<String, String>>>> runs = new ArrayList<>();
      for (Pair pair : pairs) {
        runs.add(workers.submit(() -> Reruns.of(pair.faults, evidence.done(), rows)));
      }
      List<Found> found = new ArrayList<>();
      for (int i = 0; i < runs.size(); i++) {
        SuspectPair pair = pairs.get(i).suspects;
        List<Map<String, String>> stages = runs.get(i).get();
        String both = String.join(" and ", pair.faults());
        Verdict verdict =
            known.diagnosis().weigh(both, stages, Reruns.curing(pairs.get(i).faults), evidence);
        found.add(new Found(pair, search.odds(pair, stages), verdict));
        terminal.err().println(words.say("trials.progress", i + 1, runs.size()));
      }
      found.sort(Comparator.comparingDouble(Found::odds).reversed());
      return new Pairs(found);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while running the board", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }

  void print(Terminal terminal) {
    Words words = terminal.words();
    if (found.isEmpty()) {
      terminal.say("pairs.none");
      return;
    }
    terminal.say("pairs.head", found.size());
    Columns columns = new Columns();
    columns.row(words.say("pairs.odds"), words.say("pairs.both"), words.say("pairs.verdict"));
    for (Found one : found.subList(0, Math.min(SHOWN, found.size()))) {
      columns.row(
          odds(one.odds, words),
          String.join(words.say("pairs.and"), one.pair.faults()),
          words.say("pairs." + one.verdict.finding()));
    }
    columns.print(terminal.out(), WIDTH);
  }

  /** Against the likeliest single fault, such as "12 to 1" or "1 to 30". */
  private static String odds(double odds, Words words) {
    double times = odds < 1 ? 1 / odds : odds;
    String round =
        times >= 1_000_000
            ? words.say("pairs.million")
            : times >= 10 ? Figures.noDigit(times) : Figures.oneDigit(times);
    return words.say(odds < 1 ? "pairs.against" : "pairs.for", round);
  }

  /** For machines, all that were run. */
  List<Object> json() {
    List<Object> json = new ArrayList<>();
    for (Found one : found) {
      Map<String, Object> object = new LinkedHashMap<>();
      object.put("faults", one.pair.faults());
      object.put(
          "repairs", List.of(one.pair.one().repair().text(), one.pair.other().repair().text()));
      object.put("odds", one.odds);
      object.put("finding", WeighCommand.finding(one.verdict));
      object.put("fit", one.verdict.fit());
      json.add(object);
    }
    return json;
  }
}
