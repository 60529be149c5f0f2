package faultfinch.judging;

import faultfinch.diagnosis.Choice;
import faultfinch.diagnosis.Due;
import faultfinch.diagnosis.Outlook;
import faultfinch.diagnosis.Planner;
import faultfinch.diagnosis.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Does what the advisor says, until the advisor says that the fault is none of its list. Jobs that
 * look the same so far are at the same point of one tree, and what to do there is worked out once.
 */
final class Advised implements Practice {

  /** Of the repairs that may be due, so many are kept. */
  private static final int KEPT = 20;

  /** More steps than any job needs; whoever comes so far goes in circles. */
  private static final int MOST_STEPS = 300;

  /** From this belief on that the fault is none of the list the list is no guide. */
  private static final double NONE_OF_THE_LIST = 0.9;

  private static final String IN_VAIN = "";

  private final Function<Complaint, Outlook> opening;
  private final Planner planner;
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
   */
  Advised(Function<Complaint, Outlook> opening, Planner planner) {
    this.opening = opening;
    this.planner = planner;
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
    for (int i = 0; i < MOST_STEPS; i++) {
      if (!node.known) {
        node.decision = decide(way.now());
        node.known = true;
      }
      if (node.decision.isEmpty()) {
        return;
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
      }
      way.untold.add(new Past(decision.step(), saw));
      node = node.next.computeIfAbsent(saw, s -> new Node());
    }
  }

  private Optional<Decision> decide(Outlook outlook) {
    if (outlook.isEmpty() || outlook.outside() >= NONE_OF_THE_LIST) {
      return Optional.empty();
    }
    worked++;
    Choice choice = outlook.choose(planner);
    if (choice.step() instanceof Step.Act act) {
      return Optional.of(
          new Decision(
              act,
              outlook.due().stream().limit(KEPT).map(Due::action).toList(),
              outlook.cureChance(act.action())));
    }
    return Optional.of(new Decision(choice.step(), List.of(), 0));
  }
}
