package faultfinch.cli;

import faultfinch.board.Located;
import faultfinch.board.NearNames;
import faultfinch.desk.Desk;
import faultfinch.desk.Entry;
import faultfinch.desk.EntryFile;
import faultfinch.desk.JobFile;
import faultfinch.desk.Lookbook;
import faultfinch.desk.Repairs;
import faultfinch.desk.Statement;
import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Trial;
import faultfinch.fault.RepairAction;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.commons.cli.Options;

/**
 * All that is known of a real board, as given: entries and repairs in their order, from arguments,
 * a file of entries or a job file.
 */
final class Noted {
  private static final String SAW = "saw";
  private static final String TOLD = "told";
  private static final String WHEN = "when";
  private static final String REPAIRED = "repaired";
  private static final String FROM = "from";
  private static final String JOB = "job";

  /** Not to run the board with parts out. */
  static final String QUICK = "quick";

  private static final List<String> ALL = List.of(SAW, TOLD, WHEN, REPAIRED, FROM, JOB);

  private final Known known;
  private final Words words;
  private final Repairs repairs;
  private final List<Consumer<Desk>> said = new ArrayList<>();
  private Desk desk;

  Noted(Known known, Words words) {
    this.known = known;
    this.words = words;
    desk = new Desk(known.board(), Lookbook.of(known.dictionary()));
    repairs = new Repairs(known.diagnosis().suspects().actions());
  }

  static void addTo(Options options) {
    options
        .addOption(Given.values(SAW, "SEEN"))
        .addOption(Given.values(TOLD, "SEEN"))
        .addOption(Given.values(WHEN, "CONDITIONS"))
        .addOption(Given.values(REPAIRED, "REPAIR"))
        .addOption(Given.values(FROM, "FILE"))
        .addOption(Given.values(JOB, "FILE"))
        .addOption(Given.flag(QUICK));
  }

  /** The board that the files given are of, if any is given. */
  static Optional<String> boardOfFiles(Given given, Words words) {
    for (Map.Entry<String, String> e : given.inOrder(List.of(FROM, JOB))) {
      return Optional.of(
          e.getKey().equals(FROM)
              ? entries(e.getValue(), words).board()
              : JobFile.read(path(e.getValue(), words)).board());
    }
    return Optional.empty();
  }

  /**
   * All that was given.
   *
   * @throws Misuse if a repair is none of the board's
   * @throws BadInput if a file is not right
   */
  Evidence evidence(Given given, Terminal terminal) {
    return evidence(given, List.of(), terminal);
  }

  /**
   * The same.
   *
   * @param asked faults that are run in any case if the board is run with parts out
   */
  Evidence evidence(Given given, List<String> asked, Terminal terminal) {
    for (Map.Entry<String, String> e : given.inOrder(ALL)) {
      switch (e.getKey()) {
        case SAW -> say(d -> d.note(Entry.saw(e.getValue())));
        case TOLD -> say(d -> d.note(Entry.told(e.getValue())));
        case WHEN -> say(d -> d.stands(e.getValue()));
        case REPAIRED -> {
          RepairAction action = repair(e.getValue());
          say(d -> d.repaired(action));
        }
        case FROM -> add(entries(e.getValue(), words));
        default -> add(JobFile.read(path(e.getValue(), words)));
      }
    }
    return weighed(given, asked, terminal);
  }

  /** All of it; where parts were out the board is run so, unless somebody is in a hurry. */
  private Evidence weighed(Given given, List<String> asked, Terminal terminal) {
    return given.has(QUICK) || desk.partsOut().isEmpty()
        ? desk.evidence()
        : simulated(asked, terminal);
  }

  private void say(Consumer<Desk> words) {
    said.add(words);
    words.accept(desk);
  }

  /** The same once more with what the likeliest faults show on a board that stands so. */
  private Evidence simulated(List<String> asked, Terminal terminal) {
    Belief belief = known.diagnosis().belief(desk.evidence());
    Map<List<String>, Lookbook> lookbooks = new LinkedHashMap<>();
    List<Trials> all = new ArrayList<>();
    for (List<String> out : desk.partsOut()) {
      Trials trials = Trials.of(known, out, asked, belief, terminal);
      all.add(trials);
      lookbooks.put(out, trials.lookbook());
    }
    desk = new Desk(known.board(), Lookbook.of(known.dictionary()), lookbooks);
    said.forEach(words -> words.accept(desk));
    Evidence evidence = desk.evidence();
    Set<String> looks = new LinkedHashSet<>();
    evidence.seen().forEach(o -> o.reach().sights().forEach(sight -> looks.addAll(sight.looks())));
    List<Trial> used = all.stream().flatMap(t -> t.used(looks).stream()).toList();
    return evidence.tried(used);
  }

  /** Everything that a job file holds. */
  Evidence evidence(JobFile job, Given given, Terminal terminal) {
    add(job);
    return weighed(given, List.of(), terminal);
  }

  /** The same and one thing more, and how many statements there were before that. */
  int before(JobFile job, Entry more) {
    add(job);
    int before = desk.noted();
    say(d -> d.note(more));
    return before;
  }

  /** Notes one more thing. */
  Evidence and(Entry entry) {
    say(d -> d.note(entry));
    return desk.evidence();
  }

  /** All that it came to so far. */
  Evidence evidence() {
    return desk.evidence();
  }

  /** How the board stands from here on. */
  void stands(String when) {
    say(d -> d.stands(when));
  }

  /** What it came to, in order. */
  List<Statement> statements() {
    return desk.statements();
  }

  /** The repair of these words. */
  RepairAction repair(String said) {
    return repairs
        .named(said)
        .orElseThrow(() -> words.misuse("noted.no-repair", said, repairs.nearest(said)));
  }

  private void add(EntryFile file) {
    same(file.board());
    file.lines().forEach(this::add);
  }

  private void add(JobFile job) {
    same(job.board());
    job.lines().forEach(this::add);
  }

  private void add(EntryFile.Line line) {
    if (line instanceof EntryFile.Line.Noted noted) {
      say(d -> d.note(noted.entry()));
    } else if (line instanceof EntryFile.Line.Repaired repaired) {
      Located text = repaired.words();
      RepairAction action =
          repairs.named(text.text()).orElseThrow(() -> text.wrong(repairs.nearest(text.text())));
      say(d -> d.repaired(action));
    }
  }

  private void same(String board) {
    if (!board.equals(known.board().name())) {
      throw words.misuse("noted.other-board", board, known.board().name());
    }
  }

  private static EntryFile entries(String file, Words words) {
    Path path = path(file, words);
    try {
      return EntryFile.read(file, Files.readAllBytes(path));
    } catch (IOException e) {
      throw new BadInput(file, 1, 1, "no file that can be read", "a file of entries");
    }
  }

  static Path path(String file, Words words) {
    try {
      return Path.of(file);
    } catch (InvalidPathException e) {
      throw words.misuse("file.no-path", file);
    }
  }

  /** Tells what was not weighed and why, and what no fault shows. */
  void remarks(Terminal terminal) {
    remarks().forEach(terminal.out()::println);
  }

  /** How many were weighed, what was not and why, what no fault shows; a line each. */
  List<String> remarks() {
    List<String> lines = new ArrayList<>();
    for (Statement statement : desk.statements()) {
      if (statement instanceof Statement.Weighed w && !w.unheard().isEmpty()) {
        lines.add(
            words.say(
                "seen.nobodys",
                w.observation().look(),
                w.observation().seen(),
                alternatives(w.observation().look(), w.unheard())));
      } else if (statement instanceof Statement.Kept kept) {
        lines.add(words.say("seen.kept", kept.said(), why(kept)));
      }
    }
    return lines;
  }

  /** Why something was not weighed, and what could be said instead. */
  String why(Statement.Kept kept) {
    String why =
        words.say("seen.why." + kept.why(), kept.about(), Standing.words(kept.when(), words));
    return kept.nearest().isEmpty()
        ? why
        : why + words.say("seen.nearest." + kept.why(), alternatives(kept.about(), kept.nearest()));
  }

  /** Outcomes of a look, or other words. */
  private String alternatives(String look, List<String> outcomes) {
    return NearNames.alternatives(InShort.of(outcomes, look, known.dictionary(), words));
  }

  /** For machines: what was weighed, and what was not. */
  void json(Map<String, Object> json) {
    List<Object> weighed = new ArrayList<>();
    List<Object> kept = new ArrayList<>();
    for (Statement statement : desk.statements()) {
      Map<String, Object> object = new LinkedHashMap<>();
      object.put("said", statement.said());
      if (statement instanceof Statement.Weighed w) {
        object.put("look", w.observation().look());
        object.put("seen", w.observation().seen());
        object.put("outcomes", (Object) w.observation().reach().sights().get(0).outcomes());
        object.put("places", w.observation().reach().sights().size());
        object.put("every", w.observation().reach().every());
        object.put("afterRepairs", w.observation().after());
        weighed.add(object);
      } else if (statement instanceof Statement.Kept k) {
        object.put("why", words.say("json.why." + k.why()));
        object.put("about", k.about());
        object.put("nearest", (Object) k.nearest());
        kept.add(object);
      } else if (statement instanceof Statement.Tried t) {
        object.put("tried", words.say("json.came." + t.came()));
        object.put("parts", (Object) t.parts());
        weighed.add(object);
      } else if (statement instanceof Statement.Past p) {
        object.put("history", p.history().word());
        weighed.add(object);
      }
    }
    json.put("weighed", weighed);
    json.put("notWeighed", kept);
    json.put("remarks", remarks());
  }
}
