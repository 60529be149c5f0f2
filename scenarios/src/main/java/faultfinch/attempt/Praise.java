package faultfinch.attempt;

import faultfinch.bench.Moves;
import faultfinch.format.Case;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** What was done right, the weightiest first; there is always something to say, and all is true. */
final class Praise {
  private static final Set<Moves> HANDS_ON = EnumSet.of(Moves.LIFT, Moves.CUT, Moves.PIGGYBACK);

  private final Case job;
  private final Debriefing.Course course;
  private final List<Debrief.Leg> route;

  Praise(Case job, Debriefing.Course course, List<Debrief.Leg> route) {
    this.job = job;
    this.course = course;
    this.route = route;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (course.solved()) {
      lines.add(Texts.say("right.solved"));
    }
    named(lines);
    if (course.solved() && course.spent().pulls() == 0) {
      lines.add(Texts.say("right.no-pull"));
    }
    narrowed(lines);
    if (looksBeforeHands() > 0) {
      lines.add(Texts.say("right.looked-first", looksBeforeHands()));
    }
    if (!course.twinLooks().isEmpty()) {
      lines.add(Texts.say("right.twin", course.twinLooks().size()));
    }
    if (!course.notes().isEmpty()
        && course.notes().stream().allMatch(n -> n.breaches().isEmpty())) {
      lines.add(Texts.say("right.no-breach"));
    }
    if (course.solved() && course.spent().minutes() <= job.minutes()) {
      lines.add(Texts.say("right.budget", course.spent().minutes(), job.minutes()));
    }
    if (lines.isEmpty()) {
      lines.add(Texts.say(course.notes().isEmpty() ? "right.untouched" : "right.written"));
    }
    return lines;
  }

  /** Decisions that could cure something that was wrong. */
  private void named(List<String> lines) {
    Claims claims = new Claims(job.board());
    for (Decision d : course.decisions()) {
      boolean right =
          claims
              .repair(d.text())
              .map(a -> job.faults().stream().anyMatch(f -> a.cureChance(f) > 0))
              .orElse(job.faults().isEmpty());
      if (right) {
        lines.add(Texts.say("right.named", d.text()));
      }
    }
  }

  private void narrowed(List<String> lines) {
    double best = 1;
    String line = "";
    OptionalInt before = OptionalInt.empty();
    for (int i = 0; i < route.size(); i++) {
      OptionalInt after = route.get(i).field();
      if (before.isPresent() && after.isPresent() && before.getAsInt() > 0) {
        double left = after.getAsInt() / (double) before.getAsInt();
        if (left < best) {
          best = left;
          line =
              Texts.say(
                  "right.narrowed", said(route.get(i).move()), before.getAsInt(), after.getAsInt());
        }
      }
      before = after;
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
  }

  /** A look by what was looked at. */
  private static String said(String move) {
    String look = Moves.LOOK.word() + ": ";
    return move.startsWith(look) ? move.substring(look.length()) : move;
  }

  private int looksBeforeHands() {
    int looks = 0;
    for (Note n : course.notes()) {
      boolean free = n.move().kind().use() == Moves.Use.LOOK || n.move().kind() == Moves.BENCH_ROM;
      boolean setUp =
          n.move().kind().use() == Moves.Use.HANDLE && !HANDS_ON.contains(n.move().kind());
      if (!free && !setUp) {
        return looks;
      }
      looks += free ? 1 : 0;
    }
    return looks;
  }
}
