package faultfinch.format;

import faultfinch.bench.Intake;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Located;
import faultfinch.board.NearNames;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.UnknownFault;
import faultfinch.signal.BadInput;
import faultfinch.symptom.Symptoms;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a case file. Whatever is not right is a {@link BadInput} with file, line and column. */
public final class CaseReader {
  private static final int VERSION = 1;
  private static final int MOST_CASES = 999;
  private static final int LONGEST_BUDGET = 100_000;
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");
  private static final List<String> REQUIRED =
      List.of(
          "format",
          "name",
          "title",
          "board",
          "seed",
          "minutes",
          "faults",
          "complaint",
          "tools",
          "coach",
          "goal",
          "notes");
  private static final List<String> OPTIONAL =
      List.of("number", "lid", "history", "shows", "guide");

  private CaseReader() {}

  /** The label of a case, without looking at its board. */
  public static Case.Label label(String file, byte[] json) {
    return label(root(file, json));
  }

  /**
   * The whole case.
   *
   * @param file its name for messages
   * @throws BadInput naming file, line and column of what is not right
   */
  public static Case read(String file, byte[] json) {
    Located root = root(file, json);
    Case.Label label = label(root);
    Board board = board(root.get("board"));
    Coach coach = coach(root.get("coach"));
    return new Case(
        label,
        board,
        root.get("seed").whole(0, Integer.MAX_VALUE),
        root.get("minutes").whole(1, LONGEST_BUDGET),
        faults(root.get("faults"), board),
        intake(root),
        shows(root.find("shows"), board),
        tools(root.get("tools")),
        coach,
        guide(root, coach),
        new Case.Lesson(root.get("goal").words(), root.get("notes").words()));
  }

  private static Located root(String file, byte[] json) {
    Located root = Located.read(file, json).keys(REQUIRED, OPTIONAL);
    root.get("format").whole(VERSION, VERSION);
    return root;
  }

  private static Case.Label label(Located root) {
    return new Case.Label(
        root.get("name").text(NAME, "small letters, digits and hyphens, a letter first"),
        root.find("number").map(n -> n.whole(1, MOST_CASES)).orElse(0),
        root.get("title").words(),
        root.get("board").words());
  }

  private static Board board(Located name) {
    if (!BoardReader.shippedNames().contains(name.text())) {
      throw name.wrong(
          "no board '" + name.text() + "'", NearNames.of(name.text(), BoardReader.shippedNames()));
    }
    return BoardReader.shipped(name.text());
  }

  private static List<Fault> faults(Located lines, Board board) {
    List<Fault> faults = new ArrayList<>();
    Map<String, Located> decided = new LinkedHashMap<>();
    for (Located line : lines.items()) {
      Fault fault = fault(line, board);
      if (faults.contains(fault)) {
        throw line.wrong("'" + line.text() + "' again", "each fault once");
      }
      fault.decides().ifPresent(d -> once(d, line, decided));
      faults.add(fault);
    }
    return faults;
  }

  private static void once(String decides, Located line, Map<String, Located> decided) {
    Located first = decided.putIfAbsent(decides, line);
    if (first != null) {
      throw line.wrong(
          "'" + line.text() + "' beside '" + first.text() + "'", "one fault only for " + decides);
    }
  }

  private static Fault fault(Located line, Board board) {
    try {
      return FaultKinds.parse(line.words(), board);
    } catch (UnknownFault e) {
      String message = e.getMessage();
      int found = message.indexOf(": found ");
      int right = message.indexOf(", right would be ");
      throw line.wrongAt(
          Math.min(e.column() - 1, line.text().length()),
          message.substring(found + ": found ".length(), right),
          message.substring(right + ", right would be ".length()));
    }
  }

  private static Intake intake(Located root) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (Located asked : root.find("history").map(Located::items).orElse(List.of())) {
      asked.keys(List.of("question", "answer"), List.of());
      Located question = asked.get("question");
      if (answers.putIfAbsent(question.words(), asked.get("answer").words()) != null) {
        throw question.wrong("'" + question.text() + "' again", "each question once");
      }
    }
    boolean lidOn =
        root.find("lid").map(l -> l.oneOf(List.of("on", "off")).equals("on")).orElse(false);
    return new Intake(root.get("complaint").words(), answers, lidOn);
  }

  private static Map<String, String> shows(Optional<Located> shows, Board board) {
    List<String> known = new ArrayList<>(List.of(Symptoms.DISPLAY, Symptoms.SOUND, Symptoms.LAMP));
    board.exercise().forEach(k -> known.add(Symptoms.KEY + k.ref()));
    Map<String, String> features = new LinkedHashMap<>();
    for (Located.Entry e : shows.map(Located::entries).orElse(List.of())) {
      String what = e.key().text();
      if (!known.contains(what)) {
        throw e.key().wrong("'" + what + "'", NearNames.of(what, known));
      }
      features.put(what, e.value().words());
    }
    return features;
  }

  private static Optional<List<String>> tools(Located tools) {
    if (tools.kind() == Located.Kind.TEXT) {
      tools.oneOf(List.of("all"));
      return Optional.empty();
    }
    List<String> known = Arrays.stream(Moves.values()).map(Moves::word).toList();
    List<String> words = new ArrayList<>();
    for (Located tool : tools.items()) {
      if (!known.contains(tool.text())) {
        throw tool.wrong("no tool '" + tool.text() + "'", NearNames.of(tool.text(), known));
      }
      words.add(tool.text());
    }
    return Optional.of(words);
  }

  private static Coach coach(Located coach) {
    coach.keys(List.of("guided", "prices", "suspects", "marks"), List.of());
    return new Coach(
        coach.get("guided").truth(),
        coach.get("prices").truth(),
        coach.get("suspects").truth(),
        coach.get("marks").truth());
  }

  private static List<GuideLine> guide(Located root, Coach coach) {
    Optional<Located> lines = root.find("guide");
    if (coach.guided() != lines.isPresent()) {
      throw lines
          .orElse(root.get("coach").get("guided"))
          .wrong(
              coach.guided() ? "a guided case without a guide" : "a guide in a case without one",
              coach.guided() ? "'guide' with its lines" : "no 'guide', or \"guided\": true");
    }
    return lines.map(Located::items).orElse(List.of()).stream().map(CaseReader::line).toList();
  }

  private static GuideLine line(Located line) {
    line.keys(List.of("says", "done"), List.of());
    Located done = line.get("done");
    if (done.items().isEmpty()) {
      throw done.wrong("an empty list", "the move, or moves, that fulfil it");
    }
    return new GuideLine(
        line.get("says").words(), done.items().stream().map(CaseReader::act).toList());
  }

  private static String act(Located act) {
    if (act.text().equals(GuideLine.STRIP) || act.text().startsWith(GuideLine.DECIDE)) {
      return act.text();
    }
    try {
      return Move.parse(act.text()).text();
    } catch (IllegalArgumentException notAMove) {
      throw act.wrong("'" + act.text() + "'", right(notAMove));
    }
  }

  private static String right(IllegalArgumentException e) {
    String mark = "right would be ";
    String message = String.valueOf(e.getMessage());
    int at = message.indexOf(mark);
    return at < 0 ? message : message.substring(at + mark.length());
  }
}
