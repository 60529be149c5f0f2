package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.desk.Conditions;
import faultfinch.desk.JobFile;
import faultfinch.desk.Statement;
import java.util.ArrayList;
import java.util.List;

/** A job for people: its lines one after the other, or the sheet that goes with the board. */
final class JobPage {
  private final JobFile job;
  private final Words words;

  JobPage(JobFile job, Words words) {
    this.job = job;
    this.words = words;
  }

  /** Everything in order. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        words.say("job.head", job.board(), intake("owner"), intake("complaint"), intake("at")));
    for (JobFile.Item item : job.items()) {
      lines.add(words.say("job.line." + item.kind(), item.at(), item.text()));
      for (String remark : item.remarks()) {
        lines.add(words.say("job.remark." + item.kind(), remark));
      }
    }
    return lines;
  }

  private String intake(String key) {
    return job.intake().getOrDefault(key, words.say("job.not-said"));
  }

  /** In Markdown: findings, readings, parts, acceptance, cautions. */
  String sheet(Board board, Noted noted, Ranking ranking) {
    List<String> readings = new ArrayList<>();
    for (Statement statement : noted.statements()) {
      String stands =
          statement.when().equals(Conditions.USUAL)
              ? ""
              : ", " + Standing.words(statement.when(), words);
      int after = statement instanceof Statement.Weighed w ? w.observation().after() : 0;
      String since = after > 0 ? words.say("job.sheet.after", after) : "";
      String weight =
          statement instanceof Statement.Kept kept
              ? words.say("job.sheet.not-weighed", noted.why(kept))
              : "";
      readings.add("- " + statement.said() + stands + since + weight);
    }
    List<String> findings = new ArrayList<>();
    ranking
        .rows()
        .forEach(
            r ->
                findings.add(
                    words.say(
                        "job.sheet.finding",
                        r.called(words),
                        Figures.perCent(r.belief(), words),
                        r.repairs().get(0).what())));
    return words.say(
        "job.sheet",
        board.title(),
        intake("owner"),
        intake("complaint"),
        intake("at"),
        readings.isEmpty() ? words.say("job.sheet.none") : String.join("\n", readings),
        of(JobFile.Kind.REPAIR),
        String.join("\n", findings),
        of(JobFile.Kind.ACCEPT),
        cautions());
  }

  private String of(JobFile.Kind kind) {
    List<String> lines = new ArrayList<>();
    for (JobFile.Item item : job.items()) {
      if (item.kind() == kind) {
        String part =
            item.remarks().isEmpty() ? "" : words.say("job.sheet.part", item.remarks().get(0));
        lines.add("- " + item.text() + part);
      }
    }
    return lines.isEmpty() ? words.say("job.sheet.none") : String.join("\n", lines);
  }

  /** Those noted, and those that go with what was done. */
  private String cautions() {
    List<String> lines = new ArrayList<>();
    lines.add(words.say("job.sheet.caution.brick"));
    boolean soldered =
        job.items().stream()
            .anyMatch(
                i ->
                    i.kind() == JobFile.Kind.REPAIR
                        && i.text().matches(".*(solder|reflow|link|socket).*"));
    if (soldered) {
      lines.add(words.say("job.sheet.caution.solder"));
    }
    job.items().stream()
        .filter(i -> i.kind() == JobFile.Kind.CAUTION)
        .forEach(i -> lines.add("- " + i.text()));
    return String.join("\n", lines);
  }
}
