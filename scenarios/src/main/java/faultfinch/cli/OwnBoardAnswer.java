package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.PlacedPart;
import faultfinch.board.Tick;
import faultfinch.board.Variants;
import faultfinch.desk.Entry;
import faultfinch.desk.Statement;
import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.ErrorRates;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.OwnBoard;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.RepairAction;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.apache.commons.cli.Options;

/**
 * The answer to somebody whose board is none of ours: what was seen is weighed on every model board
 * that overlays make, and what is said of parts is said by what they do.
 */
final class OwnBoardAnswer {
  private static final String OWN = "own";
  private static final String LIKE = "like";
  private static final String SAW = "saw";
  private static final String TOLD = "told";
  private static final String WHEN = "when";
  private static final List<String> NOT_WITH =
      List.of("board", "repaired", "from", "job", "simulate", "pairs");
  private static final int WIDTH = 110;
  private static final int PARTS_SHOWN = 4;
  private static final double SHOWN = 0.1;
  private static final double NOTHING = 1e-9;

  /** A model board and what was said, as far as it can be expressed there. */
  private record Held(Known known, Noted noted) {
    Set<String> expressed() {
      return noted.statements().stream()
          .filter(s -> !(s instanceof Statement.Kept))
          .map(Statement::said)
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }
  }

  private final Terminal terminal;
  private final Words words;
  private final Variants variants;
  private final Map<String, String> ticked;
  private final Map<String, String> refused = new LinkedHashMap<>();
  private final List<Held> held = new ArrayList<>();
  private final OwnBoard board;

  private OwnBoardAnswer(
      Given given, Terminal terminal, BiFunction<Board, Terminal, Optional<Known>> ready) {
    this.terminal = terminal;
    words = terminal.words();
    variants = Ticks.ofBoards();
    ticked = Ticks.answers(given, variants, words);
    Terminal quiet =
        new Terminal(
            terminal.in(),
            terminal.out(),
            new PrintWriter(Writer.nullWriter()),
            terminal.opener(),
            words);
    List<Board> boards =
        variants.boards().stream().map(v -> BoardReader.shipped(v.name())).toList();
    for (Board model : boards) {
      ready.apply(model, quiet).ifPresent(k -> held.add(new Held(k, new Noted(k, words))));
    }
    if (held.isEmpty()) {
      throw words.misuse("own.nothing-known");
    }
    for (Map.Entry<String, String> said : given.inOrder(List.of(SAW, TOLD, WHEN))) {
      Optional<String> part = partNamed(said.getValue(), boards);
      if (part.isPresent()) {
        refused.put(said.getValue(), part.get());
      } else {
        held.forEach(h -> note(h, said));
      }
    }
    board = new OwnBoard(relatives(), variants.ticks(), ticked, ErrorRates.ownBoard());
  }

  static void addTo(Options options) {
    options.addOption(Given.flag(OWN)).addOption(Given.values(LIKE, "TICK=ANSWER"));
  }

  /**
   * Whether it is asked for.
   *
   * @throws Misuse if something is given with it that does not go with it
   */
  static boolean isAsked(Given given, Words words) {
    if (!given.has(OWN)) {
      if (given.has(LIKE)) {
        throw words.misuse("own.without", LIKE);
      }
      return false;
    }
    for (String option : NOT_WITH) {
      if (given.has(option)) {
        throw words.misuse("own.not-with", option, words.say("own.not-with." + option));
      }
    }
    return true;
  }

  static OwnBoardAnswer of(
      Given given, Terminal terminal, BiFunction<Board, Terminal, Optional<Known>> ready) {
    return new OwnBoardAnswer(given, terminal, ready);
  }

  private void note(Held h, Map.Entry<String, String> said) {
    String says = asCalledThere(said.getValue(), h.known.board());
    switch (said.getKey()) {
      case SAW -> h.noted.and(Entry.saw(says));
      case TOLD -> h.noted.and(Entry.told(says));
      default -> h.noted.stands(says);
    }
  }

  /** Where one part of a model board does what is spoken of, its own name for it. */
  private String asCalledThere(String says, Board model) {
    for (Map.Entry<String, String> duty : variants.duties().entrySet()) {
      String words = duty.getValue().replaceFirst("^(a|an|the) ", "");
      int at = says.toLowerCase(Locale.ROOT).indexOf(words.toLowerCase(Locale.ROOT));
      List<String> roles =
          model.parts().stream()
              .filter(p -> duty.getKey().equals(model.duties().get(p.ref())))
              .map(PlacedPart::role)
              .toList();
      if (at >= 0 && roles.size() == 1) {
        return says.substring(0, at) + roles.get(0) + says.substring(at + words.length());
      }
    }
    return says;
  }

  /** A part that is named by its number on a model board; D0 and A7 are lines on any board. */
  private static Optional<String> partNamed(String said, List<Board> boards) {
    Set<String> refs = new LinkedHashSet<>();
    boards.forEach(b -> b.parts().stream().map(PlacedPart::ref).forEach(refs::add));
    for (String word : said.toUpperCase(Locale.ROOT).split("[^A-Z0-9]+")) {
      if (refs.contains(word) && boards.get(0).net(word).isEmpty()) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }

  private List<OwnBoard.Relative> relatives() {
    Set<String> shared = shared();
    Set<String> run = runEverywhere();
    List<OwnBoard.Relative> relatives = new ArrayList<>();
    for (Held h : held) {
      Suspects suspects = h.known.diagnosis().suspects();
      Suspects alike =
          new Suspects(suspects.all().stream().filter(s -> run.contains(s.fault())).toList());
      Board model = h.known.board();
      Variants.Variant variant =
          variants.boards().stream()
              .filter(v -> v.name().equals(model.name()))
              .findFirst()
              .orElseThrow();
      relatives.add(
          new OwnBoard.Relative(
              model,
              variant,
              suspects,
              belief(h, suspects, h.expressed()),
              belief(h, alike, shared),
              h.known.weightRun()));
    }
    return relatives;
  }

  private static Belief belief(Held held, Suspects suspects, Set<String> said) {
    Evidence all = held.noted.evidence();
    Set<Observation> seen = new LinkedHashSet<>();
    for (Statement statement : held.noted.statements()) {
      if (statement instanceof Statement.Weighed w && said.contains(w.said())) {
        seen.add(w.observation());
      }
    }
    return new Belief(
        held.known.dictionary(),
        suspects,
        ErrorRates.ownBoard(),
        new Evidence(
            List.copyOf(seen), all.missed(), all.done(), List.of(), all.hints(), all.histories()));
  }

  /** Faults whose run every one of them has; a board is no likelier for lack of the others. */
  private Set<String> runEverywhere() {
    Set<String> run = new LinkedHashSet<>();
    held.get(0).known.diagnosis().suspects().all().forEach(s -> run.add(s.fault()));
    held.forEach(h -> run.removeIf(f -> !h.known.diagnosis().suspects().contains(f)));
    return run;
  }

  /** What can be expressed on every one of them. */
  private Set<String> shared() {
    Set<String> shared = held.get(0).expressed();
    held.forEach(h -> shared.retainAll(h.expressed()));
    return shared;
  }

  private Set<String> expressed() {
    Set<String> any = new LinkedHashSet<>();
    held.forEach(h -> any.addAll(h.expressed()));
    return any;
  }

  /** Why each of the other things can be expressed nowhere. */
  private Map<String, String> notExpressed() {
    Map<String, String> why = new LinkedHashMap<>();
    refused.forEach((said, part) -> why.put(said, words.say("own.names-a-part", part)));
    Set<String> any = expressed();
    Noted first = held.get(0).noted;
    for (Statement statement : first.statements()) {
      if (statement instanceof Statement.Kept kept && !any.contains(kept.said())) {
        why.put(kept.said(), first.why(kept));
      }
    }
    return why;
  }

  void print(int most) {
    Map<String, String> not = notExpressed();
    int expressed = expressed().size();
    terminal.say("own.expressed", expressed, expressed + not.size());
    not.forEach((said, why) -> terminal.say("own.not-expressed", said, why));
    for (String said : expressed()) {
      List<String> on =
          held.stream()
              .filter(h -> h.expressed().contains(said))
              .map(h -> h.known.board().name())
              .toList();
      if (on.size() < held.size()) {
        terminal.say("own.some-only", said, String.join(", ", on));
      }
    }
    for (Statement statement : held.get(0).noted.statements()) {
      if (statement instanceof Statement.Weighed w && !w.said().equals(w.observation().text())) {
        terminal.say("rank.taken", w.said(), Taken.words(w.observation(), words));
      } else if (statement instanceof Statement.Tried t) {
        terminal.say("rank.taken", t.said(), Taken.words(t, words));
      } else if (statement instanceof Statement.Past p) {
        terminal.say("rank.taken", p.said(), Taken.words(p, words));
      }
    }
    boards();
    Columns columns = new Columns();
    columns.row(
        words.say("own.head.number"),
        words.say("own.head.belief"),
        words.say("own.head.fitted"),
        words.say("own.head.role"),
        words.say("own.head.where"),
        words.say("own.head.due"));
    List<OwnBoard.Role> roles = shown(most);
    for (int i = 0; i < roles.size(); i++) {
      OwnBoard.Role role = roles.get(i);
      columns.row(
          String.valueOf(i + 1),
          Figures.perCent(role.belief(), words),
          role.fitted() - role.belief() < NOTHING
              ? words.say("own.everywhere")
              : Figures.perCent(role.fitted(), words),
          called(role),
          where(role),
          due(role) + mayDiffer(role));
    }
    columns.print(terminal.out(), WIDTH);
    terminal.say(
        "own.besides",
        Figures.perCent(board.two(), words),
        Figures.perCent(board.outside(), words));
    terminal.say("own.promise");
  }

  private List<OwnBoard.Role> shown(int most) {
    return board.roles().stream().filter(r -> r.belief() > 0).limit(most).toList();
  }

  private void boards() {
    List<String> shares = new ArrayList<>();
    for (OwnBoard.Relative r : board.relatives()) {
      shares.add(words.say("own.board", r.board().name(), Figures.perCent(board.weight(r), words)));
    }
    terminal.say("own.boards", String.join(", ", shares));
    List<String> not =
        variants.boards().stream()
            .map(Variants.Variant::name)
            .filter(n -> held.stream().noneMatch(h -> h.known.board().name().equals(n)))
            .toList();
    if (!not.isEmpty()) {
      terminal.say("own.not-held", String.join(", ", not));
    }
    double least = held.stream().mapToDouble(h -> h.known.weightRun()).min().orElse(0);
    double best = held.stream().mapToDouble(h -> h.known.weightRun()).max().orElse(0);
    if (least < 1) {
      terminal.say("own.boards-known", Figures.perCent(least, words), Figures.perCent(best, words));
    }
    List<String> open =
        variants.ticks().stream().map(Tick::name).filter(t -> !ticked.containsKey(t)).toList();
    if (!open.isEmpty()) {
      terminal.say("own.open", String.join(", ", open));
    }
  }

  private String called(OwnBoard.Role role) {
    return variants.duties().getOrDefault(role.duty(), role.duty());
  }

  /** Of the first board that has such parts. */
  private static String where(OwnBoard.Role role) {
    if (role.parts().isEmpty()) {
      return "-";
    }
    List<String> refs = role.parts().values().iterator().next();
    String some = refs.stream().limit(PARTS_SHOWN).collect(Collectors.joining(" "));
    return refs.size() > PARTS_SHOWN ? some + " ..." : some;
  }

  private Map<String, Double> repairs(OwnBoard.Role role) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (Map.Entry<RepairAction.Kind, Double> e : role.repairs().entrySet()) {
      sums.merge(words.say("own.repair." + e.getKey()), e.getValue(), Double::sum);
    }
    return sums;
  }

  private String due(OwnBoard.Role role) {
    List<String> due = new ArrayList<>();
    repairs(role)
        .forEach(
            (what, share) -> {
              if (share >= SHOWN) {
                due.add(words.say("own.share", what, Figures.perCent(share, words)));
              }
            });
    return String.join(", ", due);
  }

  private String mayDiffer(OwnBoard.Role role) {
    String ticks = role.mayDiffer().stream().map(Tick::name).collect(Collectors.joining(", "));
    return ticks.isEmpty() ? "" : "; " + words.say("own.may-differ", ticks);
  }

  Map<String, Object> json(int most) {
    Map<String, Object> json = new LinkedHashMap<>();
    Map<String, String> not = notExpressed();
    json.put("expressed", List.copyOf(expressed()));
    List<Object> notExpressed = new ArrayList<>();
    not.forEach((said, why) -> notExpressed.add(JsonPage.object("said", said, "why", why)));
    json.put("notExpressed", notExpressed);
    json.put("ticks", ticked);
    List<Object> boards = new ArrayList<>();
    for (int i = 0; i < held.size(); i++) {
      OwnBoard.Relative r = board.relatives().get(i);
      Map<String, Object> object = new LinkedHashMap<>();
      object.put("board", r.board().name());
      object.put("weight", board.weight(r));
      object.put("differs", (Object) board.differs(r).stream().map(Tick::name).toList());
      object.put("expressed", (Object) List.copyOf(held.get(i).expressed()));
      object.put("weightRun", held.get(i).known.weightRun());
      boards.add(object);
    }
    json.put("boards", boards);
    List<Object> roles = new ArrayList<>();
    for (OwnBoard.Role role : shown(most)) {
      Map<String, Object> object = new LinkedHashMap<>();
      object.put("role", role.duty());
      object.put("called", called(role));
      object.put("belief", role.belief());
      object.put("beliefIfFitted", role.fitted());
      object.put("onTheModelBoard", role.parts());
      object.put("due", repairs(role));
      object.put("mayDiffer", (Object) role.mayDiffer().stream().map(Tick::name).toList());
      roles.add(object);
    }
    json.put("roles", roles);
    json.put("twoFaults", board.two());
    json.put("outside", board.outside());
    return json;
  }
}
