package faultfinch.judging;

import faultfinch.diagnosis.Choice;
import faultfinch.diagnosis.Due;
import faultfinch.diagnosis.Outlook;
import faultfinch.diagnosis.Planner;
import faultfinch.diagnosis.Step;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Does what the advisor says, until the advisor says that the fault is none of its list, was wrong
 * a few times or has been asked very often. Jobs that look the same so far are at the same point of
 * one tree, and what to do there is worked out once.
 */
final class Advised implements Practice {

  /** Of the repairs that may be due, so many are kept. */
  private static final int KEPT = 20;

  /**
   * How long the list is believed to be a guide.
   *
   * @param steps 1 or more
   * @param misses repairs in vain, 1 or more
   */
  record Patience(int steps, int misses) {
    private static final int MORE_THAN_NEEDED = 40;
    private static final int NO_CHANCE = 3;

    /** More of both than jobs need whose fault is in the list. */
    static final Patience FIRM = new Patience(MORE_THAN_NEEDED, MORE_THAN_NEEDED);

    /** The same, but three repairs in vain are not believed to be chance. */
    static final Patience USUAL = new Patience(MORE_THAN_NEEDED, NO_CHANCE);
  }

  /** From this belief on that the fault is none of the list the list is no guide. */
  private static final double NONE_OF_THE_LIST = 0.9;

  private static final String IN_VAIN = "";

  private final Function<Complaint, Outlook> opening;
  private final Planner planner;
  private final Patience patience;
  private final Map<Complaint, Node> roots = new LinkedHashMap<>();
  private final Map<Complaint, Outlook> openings = new LinkedHashMap<>();
  private int worked;

  private static final class Node {
    private final Map<String, Node> next = new LinkedHashMap<>();
    private Optional<Decision> decision = Optional.empty();
    private boolean known;
  }

  /** One step of a way and what came of it. */
  private record Past(Step step, String saw) {}

  /** The way of one job: what is believed is worked out only where nobody has been. */
  private final class Way {
    private final List<Past> untold = new ArrayList<>();
    private final Complaint complaint;
    private Optional<Outlook> reached = Optional.empty();

    Way(Complaint complaint) {
      this.complaint = complaint;
    }

    Outlook now() {
      Outlook outlook =
          reached.orElseGet(() -> openings.computeIfAbsent(complaint, opening::apply));
      for (Past past : untold) {
        outlook =
            past.step instanceof Step.Observe o
                ? outlook.seen(o.look(), past.saw)
                : outlook.missed(((Step.Act) past.step).action());
      }
      untold.clear();
      reached = Optional.of(outlook);
      return outlook;
    }
  }

  /**
   * @param opening what is believed after the complaint
   * @param patience with the list
   */
  Advised(Function<Complaint, Outlook> opening, Planner planner, Patience patience) {
    this.opening = opening;
    this.planner = planner;
    this.patience = patience;
  }

  /** At how many points of the tree a step was worked out. */
  int worked() {
    return worked;
  }

  @Override
  public void go(Visit visit) {
    Complaint complaint = visit.complaint();
    Node node = roots.computeIfAbsent(complaint, c -> new Node());
    Way way = new Way(complaint);
    int misses = 0;
    for (int i = 0; i < patience.steps && misses < patience.misses; i++) {
      if (!node.known) {
        node.decision = decide(way.now());
        node.known = true;
      }
      if (node.decision.isEmpty()) {
        break;
      }
      Decision decision = node.decision.get();
      String saw = IN_VAIN;
      if (decision.step() instanceof Step.Observe observe) {
        saw = visit.look(observe.look());
      } else {
        Step.Act act = (Step.Act) decision.step();
        visit.believes(act.action(), decision);
        if (visit.repair(act.action())) {
          return;
        }
        misses++;
      }
      way.untold.add(new Past(decision.step(), saw));
      node = node.next.computeIfAbsent(saw, s -> new Node());
    }
  }

  static List<RepairAction> kept(Stream<Due> due) {
    return due.limit(KEPT).map(Due::action).toList();
  }

  private static Decision act(Step.Act act, Outlook outlook) {
    return new Decision(act, kept(outlook.due().stream()), outlook.cureChance(act.action()));
  }

  private Optional<Decision> decide(Outlook outlook) {
    if (outlook.isEmpty() || outlook.outside() >= NONE_OF_THE_LIST) {
      return Optional.empty();
    }
    worked++;
    Choice choice = outlook.choose(planner);
    return Optional.of(
        choice.step() instanceof Step.Act act
            ? act(act, outlook)
            : new Decision(choice.step(), List.of(), 0));
  }
}
