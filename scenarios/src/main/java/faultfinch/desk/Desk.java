package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Hint;
import faultfinch.diagnosis.History;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Takes what is noted of a board, entry by entry, and says what it comes to. */
public final class Desk {
  /** "U5.A1", or "U5 A1" where nothing else can be meant. */
  private static final String PIN_OF_IT =
      "(?:\\.[^ ,;)]+| [A-Z]{1,4}\\d{1,2}/?| (?:RAS|CAS|WE|CS|CE|OE)/?)";

  /** A comma that parts two pins and nothing else. */
  private static final Pattern PINS_IN_A_ROW =
      Pattern.compile(
          "((?:^|[,;:(] ?|and |on |at )[A-Z]+\\d+"
              + PIN_OF_IT
              + "), (?=[A-Z]+\\d+"
              + PIN_OF_IT
              + "(?=[ ,;.)]|$))");

  /** Without any of these no piece is of an ohmmeter across two lines: nothing is set up for it. */
  private static final Pattern MEASURED_ACROSS =
      Pattern.compile(
          "(?i)\\bk?ohms?\\b|\\dk\\b|short|bridge|joined|connect|conduct|beep|buzz|\\brings?\\b|continuity");

  /** How a sentence begins that tells all of what it tells of a moment. */
  private static final Pattern OF_AN_ACT =
      Pattern.compile(
          "(?i)^(?:while|when|during|as soon as|scope in|on the scope in|probe in|in) ");

  /** "When BUF/ is low, D0 to D7 float": a level for a moment, which no look of the list is of. */
  private static final Pattern WHILE =
      Pattern.compile(
          "^(?i:when|whenever|while|with|as long as|each time|every time) (?i:the )?([A-Z][A-Z0-9./]*(?: pin \\w+)?"
              + " (?i:(?:is|are|goes|at) )?(?i:low|high|active|asserted)\\b[^,;:]*), (?=\\S)");

  private final Board board;
  private final Vocabulary vocabulary;
  private final Circumstances circumstances;
  private final Tries tries;
  private final Written written;
  private final Plain plain;
  private final GoodBoard goodBoard;
  private final Subjects subjects;
  private final Stand complete;
  private Optional<Stand> leads = Optional.empty();
  private final Map<List<String>, Stand> without = new LinkedHashMap<>();

  private final Notes notes;

  private Conditions conditions = Conditions.USUAL;
  private final SaidBefore saidBefore = new SaidBefore();
  private Optional<AcrossWords> acrossWords = Optional.empty();

  /** What was said so far in the same entry. */
  private final List<String> pieces = new ArrayList<>();

  /** What pins without a part are of: also what the entry before spoke of. */
  private Optional<Backwards> backwards = Optional.empty();

  /** What is said of a good board beside the piece under way. */
  private String there = "";

  /** What the piece under way does not hold for. */
  private String excepted = "";

  /** For a board of which these looks can be weighed; nothing is noted yet. */
  public Desk(Board board, Lookbook lookbook) {
    this(board, lookbook, Map.of());
  }

  /**
   * The same where it was also run with parts out.
   *
   * @param out looks that can be weighed, by the parts that are out
   */
  public Desk(Board board, Lookbook lookbook, Map<List<String>, Lookbook> out) {
    vocabulary = Vocabulary.shipped();
    circumstances = new Circumstances(board, vocabulary);
    plain = new Plain(vocabulary);
    goodBoard = new GoodBoard(vocabulary);
    subjects = new Subjects(vocabulary);
    complete = new Stand(lookbook, new Phrases(board, lookbook, vocabulary), "");
    this.board = board;
    notes = new Notes(lookbook);
    tries = new Tries(new Deeds(board, vocabulary), plain, notes);
    written = new Written(circumstances);
    out.forEach(
        (parts, looks) ->
            without.put(
                parts, new Stand(looks, new Phrases(board, looks, vocabulary), suffix(parts))));
  }

  /** What stands behind a look of a board with parts out. */
  public static String suffix(List<String> out) {
    return " with " + String.join(", ", out) + " out";
  }

  /** The parts out, each time something was kept for that and nothing else. */
  public List<List<String>> partsOut() {
    return notes.statements().stream()
        .filter(s -> s instanceof Statement.Kept k && k.why() == Statement.Why.OTHER_CONDITIONS)
        .map(Statement::when)
        .filter(Conditions::onlyOut)
        .map(Conditions::out)
        .distinct()
        .toList();
  }

  private Stand stand() {
    if (conditions.onlyOut()) {
      return without.getOrDefault(conditions.out(), complete);
    }
    boolean known = conditions.onlyLeads() && RoundWithLeads.isKnown(complete.lookbook());
    return known ? withLeads() : complete;
  }

  /** Put together when somebody first speaks of the leads. */
  private Stand withLeads() {
    if (leads.isEmpty()) {
      Lookbook round = new RoundWithLeads(complete.lookbook());
      Phrases phrases = new Phrases(board, round, vocabulary);
      leads = Optional.of(new Stand(round, phrases, RoundWithLeads.SUFFIX));
    }
    return leads.get();
  }

  /**
   * Notes an entry; an entry that says nothing of how the board stood goes on from the last one.
   * The bench ROM is in as long as an entry speaks of it.
   */
  public void note(Entry entry) {
    entry.when().ifPresent(when -> conditions = when);
    Conditions before = conditions;
    saidBefore.begin();
    pieces.clear();
    read(entry);
    conditions = conditions.benchRom() && !before.benchRom() ? before : conditions;
  }

  private void read(Entry entry) {
    boolean known = complete.phrases().strangers().part(entry.says()).isEmpty();
    if (known && tries.whole(entry.says(), conditions, this::pieces, stand().phrases())) {
      return;
    }
    if (!canonical(entry, entry.says(), entry.doubt()) && !undecided(entry)) {
      List<String> pieces = goodBoard.joined(pieces(entry.says()));
      for (int i = 0; i < pieces.size(); i++) {
        String next = i + 1 < pieces.size() ? pieces.get(i + 1) : "";
        String own = goodBoard.apart(pieces.get(i)).there();
        there = own.isEmpty() && goodBoard.apart(next).here().isEmpty() ? next : own;
        note(entry, pieces.get(i));
      }
    }
  }

  /**
   * Pins are measured on the board as it is, unless the piece itself says that the bench ROM is in.
   */
  private boolean measured(String piece, Entry entry) {
    return conditions.onlyBenchRom()
        && !circumstances.of(piece, Conditions.USUAL, entry.doubt()).when().benchRom()
        && complete.phrases().isAtPins(piece);
  }

  /** Whether somebody looked and could not say, which says nothing whatever else is in it. */
  private boolean undecided(Entry entry) {
    boolean undecided = circumstances.of(entry.says(), conditions, entry.doubt()).undecided();
    if (undecided) {
      keep(entry.says(), new Phrases.Trouble(Statement.Why.UNDECIDED, entry.says(), List.of()));
    }
    return undecided;
  }

  /** How the board stands from here on, in words; what else is in them is noted. */
  public void stands(String words) {
    Circumstances.Bared bared = circumstances.of(words, conditions, Observation.Doubt.SURE);
    conditions = bared.when();
    if (!bared.bare()) {
      note(Entry.saw(bared.text()));
    }
  }

  /** Whether a piece tells what became of the board before. */
  private boolean history(String piece) {
    String small = piece.toLowerCase(Locale.ROOT);
    for (History history : History.values()) {
      String key = "history." + history.word();
      if (Vocabulary.in(small, vocabulary.words(key)).isPresent()) {
        notes.past(piece, conditions, history);
        return true;
      }
    }
    return false;
  }

  /** A repair that was done; what is noted from here on was seen after it. */
  public void repaired(RepairAction action) {
    tries.settle(conditions);
    notes.repaired(action);
  }

  /** All that was noted, in order. */
  public List<Statement> statements() {
    tries.settle(conditions);
    return notes.statements();
  }

  /** How many of them were noted; behind those stands what goes without saying. */
  public int noted() {
    tries.settle(conditions);
    return notes.noted();
  }

  /** What of it can be weighed. */
  public Evidence evidence() {
    tries.settle(conditions);
    return notes.evidence();
  }

  private List<String> pieces(String says) {
    if (backwards.isEmpty()) {
      backwards = Optional.of(stand().phrases().backwards());
    }
    List<String> pieces =
        Sentences.of(Turns.whole(says)).stream()
            .map(Respectively::apart)
            .map(backwards.get()::inFull)
            .flatMap(sentence -> piecesOf(sentence).stream())
            .toList();
    return pieces.isEmpty() ? List.of(says) : pieces;
  }

  private List<String> piecesOf(String sentence) {
    if (isOfAMoment(sentence)) {
      String[] apart = sentence.split("; ", 2);
      List<String> rest = apart.length > 1 ? piecesOf(apart[1]) : List.of();
      return Stream.concat(Stream.of(apart[0]), rest.stream()).toList();
    }
    return BenchWords.isOfBytes(sentence.toLowerCase(Locale.ROOT))
        ? List.of(sentence)
        : Pieces.of(
            stand()
                .phrases()
                .colours(subjects.apart(PINS_IN_A_ROW.matcher(sentence).replaceAll("$1 and "))));
  }

  /** Whether a sentence speaks of pins at times, or for as long as another line has a level. */
  private boolean isOfAMoment(String sentence) {
    String small = sentence.toLowerCase(Locale.ROOT);
    boolean act =
        OF_AN_ACT.matcher(sentence).find()
            && Vocabulary.in(small, vocabulary.words("act")).isPresent();
    if ((act || Vocabulary.in(small, vocabulary.words("moment")).isPresent())
        && complete.phrases().isAtPins(sentence)) {
      return true;
    }
    Matcher m = WHILE.matcher(sentence);
    return m.find()
        && complete.phrases().isAtPins(m.group(1))
        && complete.phrases().isAtPins(sentence.substring(m.end()));
  }

  /** Whether a line does something when somebody, or the board, does something else. */
  private boolean isOfAnAct(String piece) {
    String small = piece.toLowerCase(Locale.ROOT);
    return Vocabulary.in(small, vocabulary.words("act")).isPresent()
        && Vocabulary.in(small, vocabulary.words("not-at-all")).isEmpty()
        && !complete.phrases().isNowhere(piece);
  }

  /** Whether a piece is of an ohmmeter across two lines; it may name them or go on of them. */
  private boolean across(String piece) {
    pieces.add(piece);
    if (!MEASURED_ACROSS.matcher(piece).find()) {
      return false;
    }
    acrossWords = acrossWords.or(() -> Optional.of(new AcrossWords(board)));
    Optional<Hint> hint = acrossWords.get().find(pieces, complete.phrases());
    hint.ifPresent(h -> notes.across(piece, conditions, h));
    return hint.isPresent();
  }

  private void note(Entry entry, String piece) {
    if (across(piece)) {
      return;
    }
    if (isOfAMoment(piece) || isOfAnAct(piece)) {
      keep(piece, new Phrases.Trouble(Statement.Why.FOR_A_MOMENT, piece, List.of()));
      return;
    }
    Strangers strangers = complete.phrases().strangers();
    Optional<Phrases.Trouble> stranger = strangers.part(piece);
    // The whole still has its quotes: what stands on a screen is no part.
    if (stranger.isPresent() && strangers.part(entry.says()).isPresent()) {
      keep(piece, stranger.get());
      return;
    }
    if (history(piece) || tries.one(piece, conditions, this::saysNothing)) {
      return;
    }
    tries.settle(conditions);
    if (conditions.complete() && tries.isInVain(piece)) {
      // What came of something that is no repair of the list.
      keep(piece, new Phrases.Trouble(Statement.Why.NOT_UNDERSTOOD, piece, List.of()));
      return;
    }
    if (piece.endsWith("?")) {
      keep(piece, new Phrases.Trouble(Statement.Why.UNDECIDED, piece, List.of()));
      return;
    }
    String here = goodBoard.apart(piece).here();
    here = goodBoard.isOfBefore(here) ? "" : here;
    if (here.isEmpty()) {
      keep(piece, new Phrases.Trouble(Statement.Why.OF_A_GOOD_BOARD, piece, List.of()));
      return;
    }
    String words = piece.toLowerCase(Locale.ROOT).replace(":", "");
    if (Vocabulary.in(words, vocabulary.words("aside")).isPresent()) {
      keep(piece, new Phrases.Trouble(Statement.Why.OTHER_CONDITIONS, piece, List.of()));
      return;
    }
    if (Vocabulary.in(piece.toLowerCase(Locale.ROOT), vocabulary.words("nothing-found"))
        .isPresent()) {
      keep(piece, new Phrases.Trouble(Statement.Why.NOT_UNDERSTOOD, piece, List.of()));
      return;
    }
    conditions = measured(here, entry) ? Conditions.USUAL : conditions;
    Circumstances.Bared bared = circumstances.of(here, conditions, entry.doubt());
    boolean changed = !bared.when().equals(conditions);
    conditions = bared.when();
    if (bared.bare()) {
      if (!changed) {
        keep(piece, new Phrases.Trouble(Statement.Why.NOT_UNDERSTOOD, piece, List.of()));
      }
      return;
    }
    if (bared.miscounted()) {
      keep(piece, new Phrases.Trouble(Statement.Why.MISCOUNTED, piece, List.of()));
      return;
    }
    if (canonical(entry, bared.text(), bared.doubt())) {
      return;
    }
    if (conditions.onlyOut() && tries.isInVain(bared.text()) && !notes.asItCame().isEmpty()) {
      notes.asItCame().forEach(before -> weigh(piece, before, List.of()));
      return;
    }
    Optional<Pieces.Except> except = Pieces.except(bared.text());
    if (except.isPresent()) {
      Optional<String> round = roundBut(except.get());
      if (round.isPresent()) {
        note(under(entry, bared), round.get());
        return;
      }
      excepted = except.get().not();
      note(under(entry, bared), except.get().says());
      excepted = "";
      return;
    }
    Optional<List<String>> halves = halves(bared.text());
    if (halves.isPresent()) {
      halves.get().forEach(half -> note(under(entry, bared), half));
      return;
    }
    String text = goingOn(bared.text().replace(Written.BETWEEN, " "));
    Phrases.Read read = stand().phrases().read(text);
    boolean alone = read.findings().isEmpty() || read.trouble().isPresent();
    if (Vocabulary.in(text.toLowerCase(Locale.ROOT), vocabulary.subjects("bench")).isPresent()) {
      saidBefore.ofARound();
    }
    boolean bench = conditions.onlyBenchRom() || saidBefore.goesOnOfARound();
    if (conditions.onlyBenchRom() || bench && stand().phrases().isOfPulses(text)) {
      // "with the bench ROM in it runs through": of what the bench ROM says.
      Phrases.Read round = stand().phrases().read(vocabulary.subjects("bench").get(0) + " " + text);
      boolean said = round.findings().stream().anyMatch(f -> f.look().equals(BenchWords.LOOK));
      read = said || alone && !round.findings().isEmpty() ? round : read;
    }
    if (alone && saidBefore.hasSubject() && mayGoOn(text)) {
      // "two beeps, both higher than usual": the subject stands in the piece before.
      Phrases.Read again = stand().phrases().read(saidBefore.subject() + " " + text);
      read = again.findings().isEmpty() ? read : again;
    }
    Optional<String> placed = saidBefore.placed(text);
    if (read.findings().isEmpty() && placed.isPresent()) {
      Phrases.Read behind = stand().phrases().read(placed.get());
      read = behind.findings().isEmpty() ? read : behind;
    }
    if (!read.findings().isEmpty()) {
      saidBefore.leaves("");
    } else if (stand().phrases().isAtPins(text)) {
      saidBefore.leaves(text);
    }
    if (read.findings().isEmpty() && goesByHalves(entry, bared)) {
      return;
    }
    saidBefore.names(stand().phrases().lastPart(text));
    if (!there.isEmpty()) {
      read =
          read.findings().isEmpty()
              ? stand().phrases().anywhereGood(text, there, saidBefore.part()).orElse(read)
              : stand().phrases().whereGood(read, text, there);
    }
    saidBefore.told(text, read.findings());
    Optional<Phrases.Trouble> noPin =
        read.findings().isEmpty() ? strangers.pin(text) : Optional.empty();
    Optional<Phrases.Trouble> trouble = noPin.isPresent() ? noPin : read.trouble();
    if (trouble.isPresent()) {
      keep(piece, trouble.get());
    }
    boolean owner = bared.owner() || entry.who() == Entry.Who.OWNER;
    boolean rest = stand().phrases().isOfTheRest(bared.text());
    for (Phrases.Finding found : read.findings()) {
      if (stand().phrases().isOf(found, excepted)) {
        continue;
      }
      Phrases.Finding finding =
          excepted.isEmpty() ? found : stand().phrases().without(found, excepted);
      if (rest && notes.hasSeen(finding.look())) {
        continue;
      }
      Observation.Source source = owner ? Observation.Source.TOLD : Observation.Source.WORDS;
      Observation.Doubt doubt =
          stand().phrases().isAsUsual(finding, text) ? Observation.Doubt.HARDLY : bared.doubt();
      weigh(
          piece,
          Phrases.observation(
              stand().phrases().asWellAsItCanBeRead(finding),
              source,
              doubt,
              bared.tally(),
              notes.repairs()),
          stand().phrases().unheard(finding)
              ? stand().lookbook().examples(finding.sights().get(0).looks().get(0))
              : List.of());
      stand().phrases().unsaid(finding).ifPresent(bus -> unsaid(piece, bus, source));
    }
  }

  /** "All stations pass but for that of the sound chip": of a round, what is bad alone. */
  private Optional<String> roundBut(Pieces.Except except) {
    String bench = vocabulary.subjects("bench").get(0);
    boolean round =
        conditions.onlyBenchRom()
            || saidBefore.isOfARound()
            || Vocabulary.in(
                    except.says().toLowerCase(Locale.ROOT).replace(":", ""),
                    vocabulary.subjects("bench"))
                .isPresent();
    String text = bench + " only " + except.not() + " bad";
    return round
            && stand().phrases().read(text).findings().stream()
                .anyMatch(f -> f.look().equals(BenchWords.LOOK))
        ? Optional.of(text)
        : Optional.empty();
  }

  /** One thing of each bus, however many of its lines are spoken of one by one. */
  private void unsaid(String piece, OtherLines.Bus bus, Observation.Source source) {
    notes.drop(bus.look());
    bus.another()
        .map(
            f ->
                Phrases.observation(
                    f, source, Observation.Doubt.HARDLY, Tally.ONCE, notes.repairs()))
        .ifPresent(another -> weigh(piece, another, List.of()));
  }

  /** A piece with what it goes on of, where it does not name that again. */
  private String goingOn(String piece) {
    String text = saidBefore.inFull(piece);
    Phrases phrases = stand().phrases();
    Optional<String> pinned = phrases.isNowhere(text) ? saidBefore.pinned(text) : Optional.empty();
    return saidBefore
        .felt(text, phrases.warmths())
        .or(() -> pinned.filter(phrases::isAtPins))
        .orElse(text);
  }

  /** Who speaks of a place has begun anew, unless it is what the bench ROM says of it. */
  private boolean mayGoOn(String text) {
    return stand().phrases().isNowhere(text)
            && !stand().phrases().isOfItsOwn(text)
            && !stand().phrases().isOfSticks(text)
            && !LetterSwaps.isOfTwo(text)
        || saidBefore.isOfARound() && !stand().phrases().isAtPins(text);
  }

  private boolean saysNothing(String piece) {
    return stand().phrases().read(piece).findings().isEmpty();
  }

  /** Whether one half of a piece that is not understood says something; then both are noted. */
  private boolean goesByHalves(Entry entry, Circumstances.Bared bared) {
    Optional<List<String>> halves = Pieces.halves(bared.text()).stream().findFirst();
    boolean some =
        halves.stream()
            .flatMap(List::stream)
            // One word says something only of what the rest is of.
            .filter(half -> half.strip().contains(" "))
            .anyMatch(half -> !stand().phrases().read(plain.of(half)).findings().isEmpty());
    if (some) {
      halves.get().forEach(half -> note(under(entry, bared), half));
    }
    return some;
  }

  /** A part of an entry, as surely as the piece it is of. */
  private static Entry under(Entry entry, Circumstances.Bared piece) {
    return new Entry(entry.says(), entry.who(), piece.doubt(), Optional.empty(), entry.where());
  }

  /** Both sides of an "and", if each says something by itself, and of another look. */
  private Optional<List<String>> halves(String text) {
    return Pieces.halves(text).stream()
        .filter(halves -> areApart(halves.get(0), halves.get(1)))
        .findFirst();
  }

  private boolean areApart(String one, String other) {
    List<Phrases.Finding> findings = stand().phrases().read(one).findings();
    List<Phrases.Finding> others = stand().phrases().read(other).findings();
    return !findings.isEmpty()
        && !others.isEmpty()
        && findings.stream()
            .map(Phrases.Finding::look)
            .noneMatch(look -> others.stream().anyMatch(f -> f.look().equals(look)));
  }

  /** An entry as the program itself writes it: a look, a colon, what it showed. */
  private boolean canonical(Entry entry, String says, Observation.Doubt doubt) {
    Optional<Written.Told> told =
        written.of(says, entry.who(), doubt, stand(), conditions, notes.repairs());
    told.ifPresent(
        t -> {
          conditions = t.when();
          t.trouble().ifPresent(trouble -> keep(says, trouble));
          t.seen().ifPresent(seen -> weigh(says, seen, t.unheard()));
        });
    return told.isPresent();
  }

  private void keep(String said, Phrases.Trouble trouble) {
    notes.keep(said, conditions, trouble);
  }

  private void weigh(String said, Observation seenThen, List<String> unheard) {
    Observation observation = standing(seenThen);
    String look = observation.look();
    if (conditions.complete() && typedBlind(observation)) {
      keep(said, new Phrases.Trouble(Statement.Why.TYPED_BLIND, look, List.of()));
      return;
    }
    boolean known =
        conditions.onlyBenchRom()
            ? seenThen.look().equals(BenchWords.LOOK) && conditions.onlyLeads() == stand().isLeads()
            : stand() != complete;
    if (!conditions.complete() && !known && !staysWithThemIn(seenThen)) {
      keep(said, new Phrases.Trouble(Statement.Why.OTHER_CONDITIONS, look, List.of(look)));
      return;
    }
    notes.see(said, conditions, observation, unheard);
  }

  /** "Screen black, but the keyboard works": heard by the drive or the clicks, and not read. */
  private boolean typedBlind(Observation seen) {
    return LookPlaces.ON_THE_SET.contains(seen.look()) && notes.isWell(seen) && notes.isDark();
  }

  /** A short that is there with parts out is there with them in. */
  private boolean staysWithThemIn(Observation seen) {
    return conditions.onlyOut()
        && seen.reach().sights().stream()
            .allMatch(
                s ->
                    s.looks().stream().allMatch(look -> look.startsWith("ohms "))
                        && s.outcomes().stream().allMatch(ohms -> ohms.startsWith("under ")));
  }

  /** The same of a board as it stands now: another warmth, or a part out, makes another look. */
  private Observation standing(Observation o) {
    Observation.Climate climate = conditions.climate();
    String suffix = stand().suffix();
    if (climate == Observation.Climate.USUAL && suffix.isEmpty()) {
      return o;
    }
    boolean usual = climate == Observation.Climate.USUAL;
    String warmth = usual ? "" : " " + climate.name().toLowerCase(Locale.ROOT);
    Observation.Reach reach = o.reach();
    List<Sight> sights =
        reach.sights().stream()
            .map(s -> new Sight(s.looks().stream().map(l -> l + suffix).toList(), s.outcomes()))
            .toList();
    return new Observation(
        o.look() + suffix + warmth,
        o.seen(),
        o.source(),
        o.doubt(),
        new Observation.Reach(sights, reach.every(), reach.tally(), climate),
        o.after());
  }
}
