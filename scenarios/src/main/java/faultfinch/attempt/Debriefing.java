package faultfinch.attempt;

import faultfinch.bench.Breach;
import faultfinch.bench.Moves;
import faultfinch.bench.Price;
import faultfinch.board.Milestone;
import faultfinch.fault.Fault;
import faultfinch.fault.RepairAction;
import faultfinch.format.Case;
import faultfinch.machine.Setup;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Looks back on an attempt: all it says is worked out from the moves, the board and the dictionary.
 */
final class Debriefing {
  private static final int FULL_MARKS = 100;
  private static final int MARKS_A_BREACH = 10;
  private static final int MARKS_A_MISS = 15;

  /**
   * How an attempt went.
   *
   * @param known before each note, what was known
   * @param twinLooks number of notes at each look at the twin
   */
  record Course(
      List<Note> notes,
      List<Facts> known,
      List<Decision> decisions,
      List<Integer> twinLooks,
      boolean solved,
      List<Fault> remaining,
      Price spent) {
    Course {
      notes = List.copyOf(notes);
      known = List.copyOf(known);
      decisions = List.copyOf(decisions);
      twinLooks = List.copyOf(twinLooks);
      remaining = List.copyOf(remaining);
    }
  }

  private final Case job;
  private final Adviser adviser;
  private final Course course;

  Debriefing(Case job, Adviser adviser, Course course) {
    this.job = job;
    this.adviser = adviser;
    this.course = course;
  }

  Debrief told() {
    List<Debrief.Leg> route = route();
    Debrief.Best best = adviser.best(job);
    return new Debrief(
        course.solved(),
        new Praise(job, course, route).lines(),
        job.faults().stream().map(this::words).toList(),
        course.remaining().stream().map(this::words).toList(),
        route,
        best,
        course.decisions(),
        toldNothing(route),
        tooEarly(),
        breaches(),
        notReached(),
        course.spent(),
        marks(best),
        job.lesson().notes(),
        new JobSheet(job, course).markdown());
  }

  private String words(Fault fault) {
    return Texts.say("fault", fault.text(), RepairAction.curing(fault, job.board()).text());
  }

  private List<Debrief.Leg> route() {
    List<Debrief.Leg> legs = new ArrayList<>();
    for (int i = 0; i < course.notes().size(); i++) {
      Note n = course.notes().get(i);
      boolean last = i + 1 == course.notes().size();
      OptionalInt field =
          last && course.solved()
              ? OptionalInt.empty()
              : adviser.field(last ? course.known().get(i) : course.known().get(i + 1));
      legs.add(new Debrief.Leg(n.move().text(), n.reading().text(), n.price(), field));
    }
    return legs;
  }

  /** The same look again with nothing done between, or one that left the field as it was. */
  private List<String> toldNothing(List<Debrief.Leg> route) {
    List<String> lines = new ArrayList<>();
    Set<String> sinceChange = new HashSet<>();
    for (int i = 0; i < course.notes().size(); i++) {
      Note n = course.notes().get(i);
      if (n.move().kind() != Moves.LOOK) {
        sinceChange.clear();
      } else if (!sinceChange.add(n.move().text())) {
        lines.add(Texts.say("nothing.again", n.number(), n.move().place()));
      } else if (unmoved(i, route)) {
        lines.add(Texts.say("nothing.field", n.number(), n.move().place()));
      }
    }
    return lines;
  }

  private boolean unmoved(int i, List<Debrief.Leg> route) {
    OptionalInt before = adviser.field(course.known().get(i));
    boolean counted =
        i + 1 < course.known().size() && !course.known().get(i + 1).equals(course.known().get(i));
    return counted && before.isPresent() && before.equals(route.get(i).field());
  }

  private List<String> tooEarly() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < course.notes().size(); i++) {
      Note n = course.notes().get(i);
      if (n.price().pulls() > 0 && adviser.lookFirst(course.known().get(i))) {
        lines.add(Texts.say("early", n.number(), n.move().text()));
      }
    }
    return lines;
  }

  private List<Breach> breaches() {
    return course.notes().stream().flatMap(n -> n.breaches().stream()).toList();
  }

  private List<String> notReached() {
    Map<String, Long> reached =
        Watching.of(Setup.healthy(job.board(), job.seed()).with(job.faults())).milestones();
    return job.board().milestones().stream()
        .filter(m -> !reached.containsKey(m.label()))
        .map(Milestone::says)
        .toList();
  }

  /** Your price held against the best one, less what was broken and what was decided wrongly. */
  private OptionalInt marks(Debrief.Best best) {
    if (!job.coach().marks() || best.why().isPresent()) {
      return OptionalInt.empty();
    }
    if (!course.solved()) {
      return OptionalInt.of(0);
    }
    long misses =
        course.decisions().stream().filter(d -> d.result() == Decision.Result.SAME).count();
    double share = Math.min(1, best.price().total() / Math.max(1, course.spent().total()));
    long marks =
        Math.round(FULL_MARKS * share) - MARKS_A_BREACH * breaches().size() - MARKS_A_MISS * misses;
    return OptionalInt.of((int) Math.max(0, marks));
  }
}
