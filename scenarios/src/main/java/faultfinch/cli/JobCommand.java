package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.board.NearNames;
import faultfinch.desk.Entry;
import faultfinch.desk.JobFile;
import faultfinch.diagnosis.Evidence;
import faultfinch.fault.RepairAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.apache.commons.cli.Options;

/** Keeps a job in a file: what was noted, what was repaired, what is believed, the sheet for it. */
final class JobCommand implements Command {
  private static final String OWNER = "owner";
  private static final String COMPLAINT = "complaint";
  private static final String TOLD = "told";
  private static final String PART = "part";
  private static final String OUT = "out";
  private static final String JSON = "json";
  private static final List<String> VERBS =
      List.of("new", "note", "repaired", "accept", "caution", "show", "sheet");
  private static final int ROWS = 5;
  private static final int BELIEVED = 3;

  private final BiFunction<Board, Terminal, Known> knowledge;
  private final Clock clock;

  /**
   * @param knowledge finds what is known of a board
   */
  JobCommand(BiFunction<Board, Terminal, Known> knowledge) {
    this(knowledge, Clock.systemDefaultZone());
  }

  JobCommand(BiFunction<Board, Terminal, Known> knowledge, Clock clock) {
    this.knowledge = knowledge;
    this.clock = clock;
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(BoardChoice.option())
        .addOption(Given.value(OWNER, "NAME"))
        .addOption(Given.value(COMPLAINT, "TEXT"))
        .addOption(Given.flag(TOLD))
        .addOption(Given.value(PART, "PART"))
        .addOption(Given.value(OUT, "FILE"))
        .addOption(Given.flag(Noted.QUICK))
        .addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    Words words = terminal.words();
    List<String> rest = given.rest();
    if (rest.isEmpty() || !VERBS.contains(rest.get(0))) {
      String found = rest.isEmpty() ? words.say("job.nothing") : rest.get(0);
      throw words.misuse("job.what", found, NearNames.alternatives(VERBS));
    }
    if (rest.size() < 2) {
      throw words.misuse("job.no-file", rest.get(0));
    }
    Path path = Noted.path(rest.get(1), words);
    List<String> texts = rest.subList(2, rest.size());
    switch (rest.get(0)) {
      case "new" -> begin(given, path, texts, terminal);
      case "note" -> note(given, path, texts, terminal);
      case "repaired" -> repaired(given, path, texts, terminal);
      case "accept" -> add(path, JobFile.Kind.ACCEPT, texts, terminal);
      case "caution" -> add(path, JobFile.Kind.CAUTION, texts, terminal);
      case "show" -> show(given, path, texts, terminal);
      default -> sheet(given, path, texts, terminal);
    }
    return DONE;
  }

  private String now() {
    return LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES).toString();
  }

  private void begin(Given given, Path path, List<String> texts, Terminal terminal) {
    none(texts, terminal);
    Board board = new BoardChoice(terminal.words()).board(given);
    Map<String, String> intake = new LinkedHashMap<>();
    given.text(OWNER).ifPresent(o -> intake.put(OWNER, o));
    given.text(COMPLAINT).ifPresent(c -> intake.put(COMPLAINT, c));
    JobFile.begin(path, board.name(), intake, now());
    terminal.say("job.begun", path, board.title());
    if (given.has(COMPLAINT)) {
      Known known = knowledge.apply(board, terminal);
      note(path, Entry.told(intake.get(COMPLAINT)), known, terminal);
    }
  }

  private void note(Given given, Path path, List<String> texts, Terminal terminal) {
    some(texts, "note", terminal);
    Known known = known(path, terminal);
    for (String text : texts) {
      note(path, given.has(TOLD) ? Entry.told(text) : Entry.saw(text), known, terminal);
    }
  }

  private void note(Path path, Entry entry, Known known, Terminal terminal) {
    JobFile job = JobFile.read(path);
    Noted noted = new Noted(known, terminal.words());
    int before = noted.before(job, entry);
    // At once: what is typed is in the file before anything is run that takes long.
    Ranking ranking = ranking(known, noted.evidence());
    List<String> believed = new ArrayList<>();
    ranking.rows().stream()
        .limit(BELIEVED)
        .forEach(
            r ->
                believed.add(
                    terminal
                        .words()
                        .say(
                            "rank.share",
                            r.called(terminal.words()),
                            Figures.perCent(r.belief(), terminal.words()))));
    JobFile.note(path, entry, believed, now());
    Said.print(noted, noted.statements().subList(before, noted.statements().size()), terminal);
    terminal.say("job.believed", String.join(", ", believed));
  }

  private void repaired(Given given, Path path, List<String> texts, Terminal terminal) {
    some(texts, "repaired", terminal);
    Known known = known(path, terminal);
    Noted noted = new Noted(known, terminal.words());
    for (String text : texts) {
      RepairAction action = noted.repair(text);
      List<String> part = given.text(PART).map(List::of).orElse(List.of());
      JobFile.repaired(path, action.text(), part, now());
      terminal.say("job.repaired", action.text());
    }
    JobFile job = JobFile.read(path);
    ranking(known, noted.evidence(job, given, terminal)).print(terminal);
  }

  private void add(Path path, JobFile.Kind kind, List<String> texts, Terminal terminal) {
    some(texts, VERBS.get(kind == JobFile.Kind.ACCEPT ? 3 : 4), terminal);
    cut(JobFile.read(path), terminal);
    texts.forEach(text -> JobFile.add(path, kind, text, now()));
    terminal.say("job.added", texts.size());
  }

  private void show(Given given, Path path, List<String> texts, Terminal terminal) {
    none(texts, terminal);
    JobFile job = JobFile.read(path);
    Known known = knownOf(job, terminal);
    Noted noted = new Noted(known, terminal.words());
    Ranking ranking = ranking(known, noted.evidence(job, given, terminal));
    if (given.has(JSON)) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("board", job.board());
      json.putAll(job.intake());
      List<Object> items = new ArrayList<>();
      for (JobFile.Item item : job.items()) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("at", item.at());
        object.put("what", item.kind().name().toLowerCase(Locale.ROOT));
        object.put("text", item.text());
        object.put("remarks", (Object) item.remarks());
        items.add(object);
      }
      json.put("items", items);
      json.putAll(ranking.json());
      noted.json(json);
      JsonPage.print(json, terminal.out());
      return;
    }
    cut(job, terminal);
    new JobPage(job, terminal.words()).lines().forEach(terminal.out()::println);
    terminal.out().println();
    RankCommand.taken(noted, terminal);
    ranking.print(terminal);
  }

  private void sheet(Given given, Path path, List<String> texts, Terminal terminal) {
    none(texts, terminal);
    JobFile job = JobFile.read(path);
    Known known = knownOf(job, terminal);
    Noted noted = new Noted(known, terminal.words());
    Ranking ranking = ranking(known, noted.evidence(job, given, terminal));
    String sheet = new JobPage(job, terminal.words()).sheet(known.board(), noted, ranking);
    Optional<String> out = given.text(OUT);
    if (out.isPresent()) {
      OutFile.at(out.get(), terminal.words()).write(sheet.getBytes(StandardCharsets.UTF_8));
      terminal.say("run.wrote", out.get());
    } else {
      cut(job, terminal);
      terminal.out().print(sheet);
      terminal.out().flush();
    }
  }

  private Known known(Path path, Terminal terminal) {
    JobFile job = JobFile.read(path);
    cut(job, terminal);
    return knownOf(job, terminal);
  }

  private Known knownOf(JobFile job, Terminal terminal) {
    return knowledge.apply(new BoardChoice(terminal.words()).named(job.board()), terminal);
  }

  private static Ranking ranking(Known known, Evidence evidence) {
    return new Ranking(known.diagnosis().belief(evidence), known, ROWS);
  }

  /** Says what was lost of a line that was being written when the program was killed. */
  private static void cut(JobFile job, Terminal terminal) {
    job.cut().ifPresent(half -> terminal.say("job.cut", half.length()));
  }

  private static void none(List<String> texts, Terminal terminal) {
    if (!texts.isEmpty()) {
      throw terminal.words().misuse("given.too-much", texts.get(0));
    }
  }

  private static void some(List<String> texts, String verb, Terminal terminal) {
    if (texts.isEmpty() || texts.stream().anyMatch(String::isBlank)) {
      throw terminal.words().misuse("job.no-text", verb);
    }
  }
}
