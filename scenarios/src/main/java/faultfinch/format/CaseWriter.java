package faultfinch.format;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import faultfinch.fault.Fault;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * Writes a case in its one canonical form: equal cases give equal text, and shipped files are it.
 */
public final class CaseWriter {
  private final JsonGenerator json;

  private CaseWriter(JsonGenerator json) {
    this.json = json;
  }

  /** The case as a file's text. */
  public static String text(Case job) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(layout());
      new CaseWriter(json).job(job);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return out + "\n";
  }

  private static DefaultPrettyPrinter layout() {
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    printer.indentArraysWith(indent);
    printer.indentObjectsWith(indent);
    return printer;
  }

  private void job(Case job) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", 1);
    json.writeStringField("name", job.label().name());
    if (job.label().number() > 0) {
      json.writeNumberField("number", job.label().number());
    }
    json.writeStringField("title", job.label().title());
    json.writeStringField("board", job.label().board());
    json.writeNumberField("seed", job.seed());
    json.writeNumberField("minutes", job.minutes());
    texts("faults", job.faults().stream().map(Fault::text).toList());
    json.writeStringField("complaint", job.intake().complaint());
    if (job.intake().lidOn()) {
      json.writeStringField("lid", "on");
    }
    history(job.intake().answers());
    shows(job.shows());
    if (job.tools().isPresent()) {
      texts("tools", job.tools().get());
    } else {
      json.writeStringField("tools", "all");
    }
    coach(job.coach());
    guide(job.guide());
    json.writeStringField("goal", job.lesson().goal());
    json.writeStringField("notes", job.lesson().notes());
    json.writeEndObject();
  }

  private void texts(String key, List<String> texts) throws IOException {
    json.writeArrayFieldStart(key);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private void history(Map<String, String> answers) throws IOException {
    if (answers.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("history");
    for (Map.Entry<String, String> e : answers.entrySet()) {
      json.writeStartObject();
      json.writeStringField("question", e.getKey());
      json.writeStringField("answer", e.getValue());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void shows(Map<String, String> shows) throws IOException {
    if (shows.isEmpty()) {
      return;
    }
    json.writeObjectFieldStart("shows");
    for (Map.Entry<String, String> e : shows.entrySet()) {
      json.writeStringField(e.getKey(), e.getValue());
    }
    json.writeEndObject();
  }

  private void coach(Coach coach) throws IOException {
    json.writeObjectFieldStart("coach");
    json.writeBooleanField("guided", coach.guided());
    json.writeBooleanField("prices", coach.prices());
    json.writeBooleanField("suspects", coach.suspects());
    json.writeBooleanField("marks", coach.marks());
    json.writeEndObject();
  }

  private void guide(List<GuideLine> guide) throws IOException {
    if (guide.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("guide");
    for (GuideLine line : guide) {
      json.writeStartObject();
      json.writeStringField("says", line.says());
      texts("done", line.done());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
