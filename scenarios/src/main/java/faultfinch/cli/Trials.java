package faultfinch.cli;

import static java.util.stream.Collectors.joining;

import faultfinch.bench.Look;
import faultfinch.bench.Survey;
import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.Supply;
import faultfinch.desk.Desk;
import faultfinch.desk.Lookbook;
import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Share;
import faultfinch.diagnosis.Trial;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.RepairAction;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;

/**
 * The board with parts out, run here and now: healthy, which is also what it shows with a fault of
 * those parts or of what leads to nothing without them, and with the likeliest other faults so far.
 * Faults that no look tells apart are run once.
 */
final class Trials {
  private static final int MOST = 24;
  private static final double SHARE = 0.99;
  private static final int THREADS = 2;
  private static final long THE_BOARD = 1;

  /** How many times as likely what is on a line of the parts counts when it is asked who is run. */
  private static final double ON_THEIR_LINES = 10;

  private static final Pattern PAD = Pattern.compile("\\b([A-Z]+\\d+)\\.([^ :-]+)");

  /** Repairs of what only leads somewhere. */
  private static final Set<RepairAction.Kind> BROKEN =
      Set.of(RepairAction.Kind.LINK_TRACK, RepairAction.Kind.REFLOW);

  private static final int FIRST_POWER_ON = 0;

  private final Map<String, Map<Integer, String>> byLook = new LinkedHashMap<>();
  private final Known known;
  private final Set<String> looks;
  private final List<String> out;
  private final Set<String> idle = new LinkedHashSet<>();

  private Trials(Known known, List<String> out) {
    this.known = known;
    this.looks = new LinkedHashSet<>(known.dictionary().looks());
    this.out = out;
  }

  /**
   * Runs them, and tells how far it is.
   *
   * @param asked faults that are run in any case, as far as the dictionary knows them
   */
  static Trials of(
      Known known, List<String> out, List<String> asked, Belief belief, Terminal terminal) {
    FaultDictionary dictionary = known.dictionary();
    Trials trials = new Trials(known, out);
    trials.findIdle();
    Map<Integer, List<Fault>> faults = new LinkedHashMap<>();
    faults.put(FaultDictionary.HEALTHY, List.of());
    for (String fault : asked) {
      if (dictionary.knows(fault) && !trials.takesAway(fault)) {
        faults.putIfAbsent(dictionary.row(fault), List.of(FaultKinds.parse(fault, known.board())));
      }
    }
    double rest = belief.faults().stream().mapToDouble(Share::belief).sum() * SHARE;
    for (Share share : inTheirOrder(belief.faults(), out, known.board())) {
      int row = dictionary.row(share.what());
      if (faults.size() <= MOST && rest > 0 && !trials.takesAway(share.what())) {
        faults.putIfAbsent(row, List.of(FaultKinds.parse(share.what(), known.board())));
      }
      rest -= faults.containsKey(row) ? share.belief() : 0;
    }
    Words words = terminal.words();
    terminal.err().println(words.say("trials.begin", faults.size(), String.join(", ", out)));
    Survey survey = Survey.on(known.board());
    ExecutorService workers = Executors.newFixedThreadPool(THREADS);
    try {
      Map<Integer, Future<SortedMap<Look, String>>> runs = new LinkedHashMap<>();
      faults.forEach(
          (row, wrong) ->
              runs.put(row, workers.submit(() -> survey.features(trials.setup(wrong)))));
      int done = 0;
      for (Map.Entry<Integer, Future<SortedMap<Look, String>>> run : runs.entrySet()) {
        trials.add(run.getKey(), run.getValue().get());
        terminal.err().println(words.say("trials.progress", ++done, faults.size()));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while running the board", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
    return trials;
  }

  private Setup setup(List<Fault> wrong) {
    return new Setup(known.board(), wrong, Set.copyOf(out), THE_BOARD, FIRST_POWER_ON);
  }

  /** Of what is broken on the way to the parts, what differs in nothing from a good board now. */
  private void findIdle() {
    Pattern there =
        Pattern.compile(out.stream().map(Pattern::quote).collect(joining("|", "\\b(?:", ")\\.")));
    Machine healthy = new Machine(setup(List.of()), Machine.Kind.PLAIN);
    for (String fault : known.dictionary().faults()) {
      RepairAction.Kind cure = known.diagnosis().suspects().of(fault).repair().kind();
      if (BROKEN.contains(cure) && there.matcher(fault).find()) {
        List<Fault> wrong = List.of(FaultKinds.parse(fault, known.board()));
        if (new Machine(setup(wrong), Machine.Kind.PLAIN).wiredAs(healthy)) {
          idle.add(fault);
        }
      }
    }
  }

  /** The likeliest first; without the parts most is otherwise for what is on their lines. */
  static List<Share> inTheirOrder(List<Share> shares, List<String> out, Board board) {
    Map<Pad, Net> nets = board.netOfPad();
    Supply supply = board.supply();
    Set<Net> lines = new LinkedHashSet<>();
    nets.forEach(
        (pad, net) -> {
          boolean fed = supply.feeds(net.name()) || net.name().equals(supply.groundNet());
          if (out.contains(pad.ref()) && !fed) {
            lines.add(net);
          }
        });
    Map<Share, Double> counts = new HashMap<>();
    for (Share share : shares) {
      counts.put(share, share.belief() * (isOn(lines, nets, share.what()) ? ON_THEIR_LINES : 1));
    }
    return shares.stream()
        .sorted(Comparator.comparingDouble((Share share) -> -counts.get(share)))
        .toList();
  }

  private static boolean isOn(Set<Net> lines, Map<Pad, Net> nets, String fault) {
    return PAD.matcher(fault)
        .results()
        .anyMatch(pad -> lines.contains(nets.get(new Pad(pad.group(1), pad.group(2)))));
  }

  private boolean takesAway(String fault) {
    Trial any = new Trial("", "", Set.copyOf(out), idle, "", Map.of());
    return any.takesAway(known.diagnosis().suspects().of(fault));
  }

  private void add(int row, SortedMap<Look, String> features) {
    features.forEach(
        (look, shown) -> {
          if (looks.contains(look.text())) {
            byLook.computeIfAbsent(look.text(), k -> new LinkedHashMap<>()).put(row, shown);
          }
        });
  }

  /** What can be said of a board that stands so. */
  Lookbook lookbook() {
    return new Lookbook() {
      @Override
      public Set<String> looks() {
        return byLook.keySet();
      }

      @Override
      public List<String> outcomes(String look) {
        return trial(look).outcomes();
      }

      @Override
      public Set<String> differing() {
        return Set.of();
      }
    };
  }

  private Trial trial(String look) {
    Map<Integer, String> rows = byLook.get(look);
    String healthy = rows.get(FaultDictionary.HEALTHY);
    return new Trial(look + Desk.suffix(out), look, Set.copyOf(out), idle, healthy, rows);
  }

  /** Those of these looks. */
  List<Trial> used(Set<String> wanted) {
    List<Trial> used = new ArrayList<>();
    for (String look : byLook.keySet()) {
      if (wanted.contains(look + Desk.suffix(out))) {
        used.add(trial(look));
      }
    }
    return used;
  }
}
