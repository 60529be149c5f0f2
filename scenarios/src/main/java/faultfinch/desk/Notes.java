package faultfinch.desk;

import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Hint;
import faultfinch.diagnosis.History;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import faultfinch.fault.RepairAction;
import faultfinch.symptom.Screen;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What was noted of a board, and what of it can be weighed. A look made twice is one look. */
final class Notes {
  /** The board as it is run complete; tells how a healthy one shows. */
  private final Lookbook complete;

  private final List<Statement> statements = new ArrayList<>();
  private final List<Observation> seen = new ArrayList<>();
  private final List<RepairAction> done = new ArrayList<>();
  private final List<RepairAction> missed = new ArrayList<>();
  private final List<Hint> hints = new ArrayList<>();
  private final List<History> histories = new ArrayList<>();
  private final List<Unsaid> unsaid = new ArrayList<>();

  /**
   * A repair of which it is not said what came of it.
   *
   * @param statement its index
   * @param first index of its first action among those done
   */
  private record Unsaid(int statement, int first, int actions) {}

  /** From so many looks on it is a report. */
  private static final int MANY = 3;

  Notes(Lookbook complete) {
    this.complete = complete;
  }

  /** How many statements there are, what goes without saying left out. */
  int noted() {
    return statements.size();
  }

  List<Statement> statements() {
    List<Statement> all = new ArrayList<>(statements);
    for (Observation set : unspoken().stream().toList()) {
      all.add(new Statement.Weighed(set.seen(), Conditions.USUAL, set, List.of()));
    }
    for (Unsaid repair : inVain()) {
      Statement.Tried told = (Statement.Tried) all.get(repair.statement);
      all.set(
          repair.statement,
          new Statement.Tried(
              told.said(), told.when(), Statement.Came.REPAIR_MISSED, told.parts()));
    }
    return List.copyOf(all);
  }

  /** What goes without saying, once it is a report and not the beginning of one. */
  private Optional<Observation> unspoken() {
    return seen.size() < MANY ? Optional.empty() : UnspokenSet.of(complete, seen, statements);
  }

  Evidence evidence() {
    List<RepairAction> vain = new ArrayList<>(missed);
    List<RepairAction> made = new ArrayList<>();
    int[] before = new int[done.size() + 1];
    List<Unsaid> inVain = inVain();
    for (int i = 0; i < done.size(); i++) {
      int at = i;
      boolean missed = inVain.stream().anyMatch(u -> u.first <= at && at < u.first + u.actions);
      (missed ? vain : made).add(done.get(i));
      before[i + 1] = made.size();
    }
    List<Observation> then =
        Stream.concat(
                seen.stream().map(o -> o.afterRepairs(before[o.after()])), unspoken().stream())
            .toList();
    return new Evidence(then, vain, made, List.of(), hints, histories);
  }

  /**
   * Repairs that brought nothing: it is not said what came of them, and nothing that was seen
   * before was looked at again. Who cures a board says so.
   */
  private List<Unsaid> inVain() {
    return unsaid.stream().filter(repair -> !isLookedAtAgain(repair.first)).toList();
  }

  private boolean isLookedAtAgain(int repair) {
    return seen.stream()
        .filter(o -> o.after() > repair)
        .anyMatch(
            o -> seen.stream().anyMatch(b -> b.after() <= repair && b.look().equals(o.look())));
  }

  /** Repairs that were done so far. */
  int repairs() {
    return done.size();
  }

  boolean hasSeen(String look) {
    return seen.stream().anyMatch(o -> o.look().equals(look));
  }

  /** What an owner sees and hears of the board as it came, since the last repair. */
  List<Observation> asItCame() {
    return seen.stream()
        .filter(o -> o.after() == done.size() && LookPlaces.AT_A_GLANCE.contains(o.look()))
        .filter(o -> o.reach().climate() == Observation.Climate.USUAL)
        .toList();
  }

  /** Whether it was said that the set stays dark, since the last repair. */
  boolean isDark() {
    return seen.stream()
        .filter(o -> o.after() == done.size() && o.look().equals(Phrases.SCREEN))
        .flatMap(o -> o.reach().sights().stream())
        .anyMatch(sight -> Screen.NOTHING.containsAll(sight.outcomes()));
  }

  /** What cannot be weighed. */
  void keep(String said, Conditions when, Phrases.Trouble trouble) {
    statements.add(
        new Statement.Kept(said, when, trouble.why(), trouble.about(), trouble.nearest()));
  }

  /** What became of the board before; told twice it counts once. */
  void past(String said, Conditions when, History history) {
    if (!histories.contains(history)) {
      histories.add(history);
    }
    statements.add(new Statement.Past(said, when, history));
  }

  void repaired(RepairAction action) {
    done.add(action);
  }

  /** An ohmmeter across two lines. */
  void across(String said, Conditions when, Hint hint) {
    hints.add(hint);
    Statement.Came came = hint.helped() ? Statement.Came.JOINED : Statement.Came.APART;
    statements.add(new Statement.Tried(said, when, came, List.of(hint.part())));
  }

  /**
   * Something done to parts, and what came of it.
   *
   * @param actions the repairs it was, if it was any
   */
  void came(String said, Conditions when, Deeds.Deed deed, List<RepairAction> actions) {
    Deeds.Result result = deed.result();
    Optional<Hint.How> how = how(deed.kind());
    if (how.isPresent()) {
      boolean helped = result == Deeds.Result.HELPED;
      deed.refs().forEach(ref -> hints.add(new Hint(how.get(), ref, helped)));
      Statement.Came came = helped ? Statement.Came.HELPED : Statement.Came.IN_VAIN;
      statements.add(new Statement.Tried(said, when, came, deed.refs()));
      return;
    }
    Statement.Came came =
        switch (result) {
          case NOTHING -> Statement.Came.REPAIR_MISSED;
          case HELPED -> Statement.Came.REPAIR_CURED;
          case NOT_SAID -> Statement.Came.REPAIRED;
        };
    statements.add(new Statement.Tried(said, when, came, deed.refs()));
    if (result == Deeds.Result.NOTHING) {
      missed.addAll(actions);
      return;
    }
    if (result == Deeds.Result.NOT_SAID) {
      unsaid.add(new Unsaid(statements.size() - 1, done.size(), actions.size()));
    }
    List<Observation> before = seen.stream().filter(o -> o.after() == done.size()).toList();
    done.addAll(actions);
    if (result == Deeds.Result.HELPED) {
      before.stream().filter(Notes::exact).forEach(o -> seen.add(cured(o)));
    }
  }

  /** The same look, as a healthy board shows it, after all repairs so far. */
  private Observation cured(Observation before) {
    String look = before.reach().sights().get(0).looks().get(0);
    String healthy = complete.outcomes(look).get(0);
    return new Observation(look, healthy, before.source()).afterRepairs(done.size());
  }

  private static Optional<Hint.How> how(Deeds.Kind kind) {
    return switch (kind) {
      case SPRAY -> Optional.of(Hint.How.SPRAY);
      case PRESS -> Optional.of(Hint.How.PRESS);
      case PIGGYBACK -> Optional.of(Hint.How.PIGGYBACK);
      case PULL, GOOD, RESEAT, SOCKET, EXCHANGE -> Optional.empty();
    };
  }

  /**
   * A look that can be weighed.
   *
   * @param unheard what faults of the list show there, where none shows this
   */
  void see(String said, Conditions when, Observation observation, List<String> unheard) {
    boolean again =
        exact(observation)
            && seen.stream()
                .anyMatch(
                    o ->
                        o.after() == done.size()
                            && exact(o)
                            && o.look().equals(observation.look()));
    if (again) {
      merge(said, when, observation, unheard);
      return;
    }
    particular(observation);
    Observation rest = withoutWhatIsToldApart(observation);
    seen.add(rest);
    statements.add(new Statement.Weighed(said, when, rest, unheard));
  }

  /** What is said of one of many holds against what was said of all: "all pulse but MD3 is low". */
  private void particular(Observation one) {
    for (int i = 0; i < seen.size(); i++) {
      Observation all = seen.get(i);
      if (all.after() == done.size() && !isOfMany(one)) {
        renew(i, without(all, one));
      }
    }
  }

  /** The same if the one was spoken of before: "MD3 is low, all the lines pulse". */
  private Observation withoutWhatIsToldApart(Observation all) {
    Observation rest = all;
    for (Observation one : seen) {
      rest = one.after() == done.size() && !isOfMany(one) ? without(rest, one) : rest;
    }
    return rest;
  }

  private static boolean isOfMany(Observation o) {
    return o.reach().sights().size() > 1;
  }

  /** What is said of all, less what something else is said of alone; all if nothing is left. */
  private static Observation without(Observation all, Observation one) {
    List<Sight> left =
        all.reach().sights().stream().filter(s -> !contradicts(s, one.reach().sights())).toList();
    boolean some = !left.isEmpty() && left.size() < all.reach().sights().size();
    if (!some || !all.reach().every()) {
      return all;
    }
    Observation.Reach reach =
        new Observation.Reach(left, true, all.reach().tally(), all.reach().climate());
    return new Observation(all.look(), all.seen(), all.source(), all.doubt(), reach, all.after());
  }

  private static boolean contradicts(Sight all, List<Sight> one) {
    return one.stream()
        .anyMatch(
            s ->
                !Collections.disjoint(s.looks(), all.looks())
                    && Collections.disjoint(s.outcomes(), all.outcomes()));
  }

  private void renew(int which, Observation by) {
    Observation first = seen.set(which, by);
    for (int s = 0; s < statements.size(); s++) {
      if (statements.get(s) instanceof Statement.Weighed w && w.observation().equals(first)) {
        statements.set(s, new Statement.Weighed(w.said(), w.when(), by, w.unheard()));
      }
    }
  }

  /** Takes back what was seen by a look, or by that look of a board that stood otherwise. */
  void drop(String look) {
    seen.removeIf(o -> o.look().startsWith(look));
    for (int i = statements.size() - 1; i >= 0; i--) {
      int at = i;
      if (statements.get(i) instanceof Statement.Weighed w
          && w.observation().look().startsWith(look)) {
        statements.remove(i);
        unsaid.replaceAll(
            u -> u.statement > at ? new Unsaid(u.statement - 1, u.first, u.actions) : u);
      }
    }
  }

  /** Whether it is of one look, or of a probe and of the meter that is put on later. */
  private static boolean exact(Observation o) {
    List<String> looks = o.reach().sights().get(0).looks();
    boolean later =
        looks.size() == 2 && looks.get(0).startsWith("probe ") && looks.get(1).startsWith("meter ");
    return o.reach().sights().size() == 1 && (looks.size() == 1 || later);
  }

  /**
   * The same look once more: what both allow is what was seen; if there is none, the first holds.
   */
  private void merge(String said, Conditions when, Observation again, List<String> unheard) {
    for (int i = 0; i < seen.size(); i++) {
      Observation first = seen.get(i);
      if (first.after() == done.size() && exact(first) && first.look().equals(again.look())) {
        Set<String> both = new LinkedHashSet<>(first.reach().sights().get(0).outcomes());
        boolean narrower = both.retainAll(again.reach().sights().get(0).outcomes());
        boolean tallied = !again.reach().tally().equals(first.reach().tally());
        boolean wavers =
            again.reach().tally().equals(Tally.NOW_AND_THEN)
                && first.reach().tally().equals(Tally.NOW_AND_THEN);
        if (both.isEmpty() && wavers) {
          seen.add(again);
          statements.add(new Statement.Weighed(said, when, again, unheard));
          return;
        }
        boolean copied = Copied.isCopy(again) && !Copied.isCopy(first);
        if (both.isEmpty() && !tallied && (isWell(first) || copied)) {
          // "It boots, but every second letter is wrong": what is odd is said on purpose. And
          // letters that were copied tell more than what they look like.
          outdo(i, said, when, again, unheard);
          return;
        }
        if (both.isEmpty() || tallied) {
          keep(
              said,
              when,
              new Phrases.Trouble(Statement.Why.TWICE, again.look(), List.of(first.seen())));
          return;
        }
        if (!narrower) {
          statements.add(new Statement.Weighed(said, when, first, unheard));
          return;
        }
        Sight sight = new Sight(first.reach().sights().get(0).looks(), List.copyOf(both));
        Observation narrowed =
            new Observation(
                first.look(),
                first.seen() + ", " + again.seen(),
                first.source(),
                first.doubt(),
                new Observation.Reach(
                    List.of(sight), true, first.reach().tally(), first.reach().climate()),
                first.after());
        renew(i, narrowed);
        statements.add(new Statement.Weighed(said, when, narrowed, unheard));
        return;
      }
    }
  }

  /** Whether a good board shows it too. */
  boolean isWell(Observation o) {
    Sight sight = o.reach().sights().get(0);
    String look = sight.looks().get(0);
    return complete.looks().contains(look)
        && sight.outcomes().contains(complete.outcomes(look).get(0));
  }

  /** A later word of a look holds in place of an earlier one. */
  private void outdo(
      int which, String said, Conditions when, Observation again, List<String> unheard) {
    Observation first = seen.set(which, again);
    for (int s = 0; s < statements.size(); s++) {
      if (statements.get(s) instanceof Statement.Weighed w && w.observation().equals(first)) {
        statements.set(
            s,
            new Statement.Kept(
                w.said(), w.when(), Statement.Why.TWICE, first.look(), List.of(said)));
      }
    }
    statements.add(new Statement.Weighed(said, when, again, unheard));
  }
}
