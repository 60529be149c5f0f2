package faultfinch.attempt;

import faultfinch.bench.Bench;
import faultfinch.bench.Breach;
import faultfinch.bench.Job;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Offer;
import faultfinch.bench.Outcome;
import faultfinch.bench.Price;
import faultfinch.bench.Prices;
import faultfinch.bench.Reading;
import faultfinch.diagnosis.CurrentRows;
import faultfinch.fault.RepairAction;
import faultfinch.format.Case;
import faultfinch.format.CaseWriter;
import faultfinch.format.GuideLine;
import faultfinch.library.Library;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** One attempt at a case: whoever plays it, in a window or in the terminal, plays through this. */
public final class Attempt {
  private static final int LAST_FREE_TWIN = 5;

  /** What a hand has put on the board, or off it, and a retest does not want there. */
  private static final List<Moves> TAKING_BACK =
      List.of(Moves.BENCH_ROM_OFF, Moves.LEADS_OFF, Moves.PIGGYBACK_OFF, Moves.PLUG_IN);

  private final Case job;
  private final Later<Bench> bench;
  private final Prices prices = Prices.shipped();
  private final Twin twin;
  private final Guide guide;
  private final Journal journal = new Journal();
  private final List<Note> notes = new ArrayList<>();

  private final List<Facts> known = new ArrayList<>();
  private final List<Decision> decisions = new ArrayList<>();
  private final List<Integer> twinLooks = new ArrayList<>();
  private final Later<Reading> firstCheck;
  private final Later<Claims> claims;
  private final Later<Adviser> adviser;
  private Price twinPaid = Price.NOTHING;
  private Facts facts = Facts.NONE;

  /** Whether something was done since the last decision that may have cured the board. */
  private boolean mended;

  private int decided;
  private boolean hunched;
  private boolean over;
  private boolean passes;
  private Optional<Debrief> debrief = Optional.empty();

  private Attempt(Case job) {
    this.job = job;
    Job asItCame = new Job(job.board(), job.faults(), job.seed(), job.intake(), prices);
    bench = new Later<>(() -> new Bench(asItCame));
    firstCheck = new Later<>(() -> check(new Bench(asItCame)));
    twin = new Twin(new Job(job.board(), List.of(), job.seed(), job.intake(), prices));
    guide = new Guide(job.guide());
    claims = new Later<>(() -> new Claims(job.board()));
    adviser = new Later<>(() -> Advisers.of(job.board(), prices));
    journal.write(
        "case", Map.of("case", job.label().name(), "digest", Journal.digest(CaseWriter.text(job))));
  }

  /** The cases that come with the program, in their order. */
  public static List<CaseLine> cases() {
    return Library.labels().stream()
        .map(l -> new CaseLine(l.number(), l.name(), l.title(), l.board()))
        .toList();
  }

  /** Begins a case. */
  public static Attempt begin(Case job) {
    return new Attempt(job);
  }

  /**
   * Begins a case that comes with the program; numbers as in {@link #cases()}.
   *
   * @throws faultfinch.signal.BadInput if there is none of this number
   */
  public static Attempt begin(int number) {
    return begin(Library.find(Integer.toString(number)));
  }

  /**
   * Begins a case of one's own.
   *
   * @throws faultfinch.signal.BadInput if the file is not right
   */
  public static Attempt begin(Path caseFile) {
    return begin(Library.find(caseFile.toString()));
  }

  /** What lies on the bench with the board. */
  public JobCard card() {
    return new JobCard(
        job.label().number(),
        job.label().title(),
        job.board(),
        job.intake().complaint(),
        List.copyOf(job.intake().answers().keySet()),
        job.lesson().goal(),
        job.tools(),
        job.minutes(),
        new JobCard.Shown(
            job.coach().guided(),
            job.coach().prices(),
            job.coach().suspects(),
            job.coach().marks()),
        twinFree());
  }

  /** The one act asked for now; empty if the case is not guided or the guide has said all. */
  public Optional<String> guide() {
    return over ? Optional.empty() : guide.asks();
  }

  /** All that can be done now, with prices; a case without prices has them too, for the debrief. */
  public List<Offer> possible() {
    return over
        ? List.of()
        : bench.get().possible().stream().filter(o -> allowed(o.move())).toList();
  }

  private boolean allowed(Move move) {
    return job.tools().map(t -> t.contains(move.kind().word())).orElse(true);
  }

  /** The rules a move would break now: ask once, then let it be done. */
  public List<Breach> warnings(Move move) {
    return bench.get().breaches(move);
  }

  /** Whether a suspect and an expectation should be asked before this move. */
  public boolean asksHunch(Move move) {
    return job.coach().suspects() && !hunched && pulls(move);
  }

  private boolean pulls(Move move) {
    return prices.of(move).pulls() > 0;
  }

  /** Keeps what was thought before the next move, for the journal and the debrief. */
  public void hunch(Hunch hunch) {
    hunched = true;
    journal.write("hunch", Map.of("suspect", hunch.suspect(), "expects", hunch.expects().words()));
  }

  /** Nothing is expected of the next pull. */
  public void noHunch() {
    hunched = true;
    journal.write("no hunch", Map.of());
  }

  /**
   * Makes a move and writes it down.
   *
   * @throws Slip if it cannot be made now; it costs nothing
   */
  public Note act(Move move) {
    if (over) {
      throw new Slip(Texts.say("slip.over"), List.of());
    }
    if (!allowed(move)) {
      throw new Slip(Texts.say("slip.tool", move.kind().word()), List.of());
    }
    return note(perform(move));
  }

  /**
   * Makes the move of a text, such as {@code look: screen} or {@code reseat: U9}.
   *
   * @throws Slip if it is none, or cannot be made now; it costs nothing
   */
  public Note act(String text) {
    return act(parsed(text));
  }

  private Move parsed(String text) {
    try {
      return Move.parse(text);
    } catch (IllegalArgumentException e) {
      throw new Slip(Texts.say("slip.unknown", text.strip()), near(text, possible()));
    }
  }

  private Outcome perform(Move move) {
    if (!bench.get().can(move)) {
      List<Offer> alike = possible().stream().filter(o -> alike(o.move(), move)).toList();
      throw new Slip(
          Texts.say("slip.cannot"), near(move.text(), alike.isEmpty() ? possible() : alike));
    }
    return bench.get().perform(move);
  }

  private static boolean alike(Move offer, Move wanted) {
    return offer.kind() == wanted.kind()
        && (offer.kind() != Moves.LOOK || offer.asLook().kind() == wanted.asLook().kind());
  }

  private static List<String> near(String text, List<Offer> offers) {
    return Spelling.nearest(text, offers.stream().map(o -> o.move().text()).toList());
  }

  private Note note(Outcome outcome) {
    Move move = outcome.move();
    learn(outcome);
    twin.follow(move);
    Note note =
        new Note(
            notes.size() + 1,
            move,
            outcome.reading(),
            outcome.price(),
            spent().minutes(),
            spent().pulls(),
            outcome.breaches());
    notes.add(note);
    if (outcome.price().pulls() > 0) {
      hunched = false;
    }
    guide.did(move.text(), bench.get().powered());
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("move", move.text());
    fields.put("reading", outcome.reading().feature());
    fields.put("minutes", note.minutesSoFar());
    fields.put("pulls", note.pullsSoFar());
    if (!outcome.breaches().isEmpty()) {
      fields.put("breaches", outcome.breaches().stream().map(Breach::name).toList());
    }
    journal.write("move", fields);
    return note;
  }

  /**
   * A reading counts for the dictionary only as the board came: with every chip in its place and
   * nothing on it, and before anything was done that may have cured it.
   */
  private void learn(Outcome outcome) {
    known.add(facts);
    Moves.Use use = outcome.move().kind().use();
    mended |= use == Moves.Use.MEND || use == Moves.Use.REPAIR;
    Optional<String> look =
        switch (outcome.move().kind()) {
          case LOOK -> Optional.of(outcome.move().asLook().text());
          case EVERY_KEY, STICKS, TAPE -> Optional.of(outcome.move().text());
          case FLOW -> Optional.of(CurrentRows.look(outcome.move().place()));
          default -> Optional.empty();
        };
    if (look.isPresent() && bench.get().asItCame() && !mended) {
      facts = facts.and(look.get(), outcome.reading().feature());
    }
  }

  /** Everything done so far. */
  public List<Note> notebook() {
    return List.copyOf(notes);
  }

  /** Power, clock, cost and what is still possible. */
  public Status status() {
    OptionalInt field = job.coach().suspects() ? adviser.get().field(facts) : OptionalInt.empty();
    Price spent = spent();
    return new Status(bench.get().powered(), spent.minutes(), spent.pulls(), spent.total(), field);
  }

  private Price spent() {
    return bench.get().spent().plus(twinPaid);
  }

  /**
   * What is still possible, likeliest first; empty if the case does not tell or it is not known.
   */
  public List<Suspect> suspects() {
    return job.coach().suspects() ? adviser.get().suspects(facts) : List.of();
  }

  private boolean twinFree() {
    return job.label().number() <= LAST_FREE_TWIN;
  }

  /**
   * What the healthy twin shows at the same point, with the same chips out.
   *
   * @throws Slip if it cannot be looked at so now
   */
  public Reading twin(Look look) {
    try {
      Reading reading = twin.look(look);
      twinLooks.add(notes.size());
      if (!twinFree()) {
        twinPaid = twinPaid.plus(prices.of(look));
      }
      journal.write("twin", Map.of("look", look.text(), "reading", reading.feature()));
      return reading;
    } catch (IllegalArgumentException e) {
      throw new Slip(e.getMessage(), List.of());
    }
  }

  /**
   * What the display shows beside what it should, bit by bit.
   *
   * @throws Slip if the display was not yet seen, or showed nothing
   */
  public Strip strip() {
    List<Integer> cells = List.of();
    for (Note n : notes) {
      if (n.reading() instanceof Reading.Picture picture) {
        cells = picture.cells();
      }
    }
    if (cells.size() < job.board().rightDisplay().length()) {
      throw new Slip(Texts.say("slip.strip"), List.of(Moves.LOOK.word() + ": screen"));
    }
    guide.did(GuideLine.STRIP, bench.get().powered());
    journal.write("strip", Map.of());
    return Strip.of(cells, job.board().rightDisplay());
  }

  /** What {@link #decide} takes for a part; for the empty reference, for the whole board. */
  public List<String> decisions(String ref) {
    return claims.get().of(ref);
  }

  /**
   * Decides what is wrong, such as {@code U9: contact}, {@code U4}, {@code track U1.D0-U3.D0},
   * {@code supply} or {@code nothing wrong}. The repair is made, all is tried again, and if the
   * board still fails you go on.
   *
   * @throws Slip if it is no decision; it costs nothing
   */
  public Decision decide(String text) {
    if (over) {
      throw new Slip(Texts.say("slip.over"), List.of());
    }
    Optional<RepairAction> action = claims.get().repair(text);
    String said = claims.get().canonical(text);
    int first = notes.size();
    Optional<Move> repair = action.map(this::move);
    boolean done = repair.map(this::alreadyDone).orElse(true);
    if (!done) {
      repair(repair.orElseThrow());
    }
    makeReady();
    Reading before = lastCheck();
    Reading retest = make(Moves.RETEST, "").reading();
    passes = retest instanceof Reading.Check check && check.passed();
    Decision.Result result = result(before, retest);
    mended = false;
    if (result == Decision.Result.CHANGED) {
      facts = Facts.NONE;
    } else if (result == Decision.Result.SAME && action.isPresent()) {
      facts = facts.andMissed(action.get());
    }
    Decision decision = decision(said, words(action, done), result, retest, price(first));
    decisions.add(decision);
    decided = notes.size();
    guide.did(GuideLine.DECIDE + said, bench.get().powered());
    journal.write(
        "decision", Map.of("text", said, "result", result.name().toLowerCase(Locale.ROOT)));
    over = passes;
    return decision;
  }

  private Move move(RepairAction action) {
    boolean fits =
        action.kind() == RepairAction.Kind.EXCHANGE && bench.get().out().contains(action.place());
    return fits ? new Move(Moves.FIT_NEW, action.place()) : Move.repair(action);
  }

  /**
   * Once more would move the chip once more, and a contact that touches could let go again; unless
   * all was tried since, and failed.
   */
  private boolean alreadyDone(Move repair) {
    for (int i = notes.size() - 1; i >= decided; i--) {
      Move m = notes.get(i).move();
      if (m.equals(repair)) {
        return true;
      }
      if (m.kind() != Moves.LOOK && m.place().equals(repair.place())) {
        return false;
      }
    }
    return false;
  }

  private void repair(Move repair) {
    makeIf(Moves.POWER_OFF);
    makeIf(Moves.LID_OFF);
    if (!bench.get().breaches(repair).isEmpty()) {
      makeIf(Moves.WRIST_STRAP);
    }
    for (String ref : bench.get().out().stream().sorted().toList()) {
      if (!ref.equals(repair.place())) {
        make(Moves.PUT_BACK, ref);
      }
    }
    make(repair.kind(), repair.place());
  }

  /** Everything in its place, and the board on its own supply, which is tried first. */
  private void makeReady() {
    makeIf(Moves.LID_OFF);
    for (Moves takesBack : TAKING_BACK) {
      for (Move move : bench.get().possible(takesBack)) {
        makeIf(Moves.POWER_OFF);
        makeIf(Moves.WRIST_STRAP);
        make(move.kind(), move.place());
      }
    }
    for (String ref : bench.get().out().stream().sorted().toList()) {
      makeIf(Moves.POWER_OFF);
      makeIf(Moves.WRIST_STRAP);
      make(Moves.PUT_BACK, ref);
    }
    makeIf(Moves.OWN_SUPPLY);
    if (!bench.get().breaches(new Move(Moves.RETEST, "")).isEmpty()) {
      makeIf(Moves.SUPPLY_OFF_LOAD);
      makeIf(Moves.SUPPLY_ON_DUMMY);
    }
  }

  private void makeIf(Moves kind) {
    if (bench.get().can(new Move(kind, ""))) {
      make(kind, "");
    }
  }

  private Note make(Moves kind, String place) {
    return note(perform(new Move(kind, place)));
  }

  private static Reading check(Bench fresh) {
    return fresh.perform(new Move(Moves.RETEST, "")).reading();
  }

  /** What all was like when last tried, or when the board came. */
  private Reading lastCheck() {
    return decisions.isEmpty() ? firstCheck.get() : decisions.get(decisions.size() - 1).retest();
  }

  /** Judged by what a learner can see: a fault cured behind another one shows nothing yet. */
  private Decision.Result result(Reading before, Reading after) {
    return passes
        ? Decision.Result.PASSES
        : after.feature().equals(before.feature()) ? Decision.Result.SAME : Decision.Result.CHANGED;
  }

  private static String words(Optional<RepairAction> action, boolean done) {
    return action
        .map(a -> done ? Texts.say("decision.already", a.text()) : a.text())
        .orElseGet(() -> Texts.say("decision.nothing"));
  }

  private static Decision decision(
      String said, String repair, Decision.Result result, Reading retest, Price price) {
    String says =
        switch (result) {
          case PASSES -> Texts.say("decision.passes");
          case CHANGED -> Texts.say("decision.changed");
          case SAME -> Texts.say("decision.same", said);
        };
    return new Decision(said, repair, result, retest, price, says);
  }

  private Price price(int first) {
    return notes.subList(first, notes.size()).stream()
        .map(Note::price)
        .reduce(Price.NOTHING, Price::plus);
  }

  /** Whether the board has passed after a decision, or was left. */
  public boolean over() {
    return over;
  }

  /** Ends the attempt where it stands. */
  public Debrief close() {
    if (debrief.isEmpty()) {
      over = true;
      journal.write("closed", Map.of("solved", passes));
      debrief = Optional.of(new Debriefing(job, adviser.get(), course()).told());
    }
    return debrief.get();
  }

  private Debriefing.Course course() {
    return new Debriefing.Course(
        notes, known, decisions, twinLooks, passes, bench.get().remaining(), spent());
  }

  /** JSON lines, each with the digest of the one before. */
  public List<String> journal() {
    return journal.lines();
  }
}
