package faultfinch.attempt;

import faultfinch.bench.Moves;
import faultfinch.format.Case;
import java.util.stream.Collectors;

/** The sheet that goes back with the board, in Markdown. */
final class JobSheet {
  private final Case job;
  private final Debriefing.Course course;

  JobSheet(Case job, Debriefing.Course course) {
    this.job = job;
    this.course = course;
  }

  String markdown() {
    String readings =
        course.notes().stream()
            .filter(n -> n.move().kind() == Moves.LOOK)
            .map(n -> Texts.say("sheet.reading", n.move().place(), n.reading().text()))
            .collect(Collectors.joining("\n"));
    String work =
        course.decisions().stream()
            .map(d -> Texts.say("sheet.work", d.repair(), d.says()))
            .collect(Collectors.joining("\n"));
    String none = Texts.say("sheet.none");
    return Texts.say(
        "sheet",
        job.board().title(),
        job.intake().complaint(),
        readings.isEmpty() ? none : readings,
        work.isEmpty() ? none : work,
        Texts.say(course.solved() ? "sheet.passed" : "sheet.failed"),
        course.spent().minutes(),
        course.spent().pulls());
  }
}
