package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.Drill;
import faultfinch.board.Pad;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a technician's phrase as looks and outcomes. What it finds are findings, each of one kind
 * of look; what it cannot place it says why.
 */
final class Phrases {
  /** In this order: which of two subjects comes first must not depend on the start. */
  static final List<String> KINDS =
      List.of(
          "screen",
          "listen",
          "lamp",
          "typed",
          "bench",
          "key",
          "current",
          "finger",
          "probe",
          "meter",
          "counter",
          "continuity",
          "ohms");

  private static final Pattern VERBATIM =
      Pattern.compile(
          "(?i)(?:reads|says|shows|displays|reading|showing) ['\"]?(.+?)['\"]?"
              + "(?: instead of .*| and not .*)?$");

  private static final Pattern TRACK =
      Pattern.compile("([A-Z]+\\d+\\.\\S+?) ?(?:TO|AND|-) ?([A-Z]+\\d+\\.\\S+)");

  private static final Pattern TO_A_PART =
      Pattern.compile(
          "([A-Z]+\\d+)[. ](\\S+) (?:ALONG |DOWN |UP |ACROSS |OVER )?TO (?:THE )?([A-Z]+\\d+)(?![.\\w])");

  /** Something that may be a place in a row of eight. */
  private static final Pattern MARKED =
      Pattern.compile(
          "(?i)\\b(?:eight|8|marks?|signs?|blocks?|squares?|bars?|box(?:es)?|symbols?|ribbon|from the (?:left|right))\\b");

  static final String SCREEN = "screen";
  static final String TYPED = "typed";
  static final String KEY = "key";

  /** Letters that a copied text needs, to be no chance, behind "it says" and without. */
  private static final int SHORTEST_SAID = 6;

  private static final int SHORTEST_COPIED = 10;

  /**
   * What a phrase says of one kind of look.
   *
   * @param look what was looked at, in words
   * @param seen what it showed, in words
   * @param sights what is to be had at which looks
   */
  record Finding(String look, String seen, List<Sight> sights, boolean every) {

    /** Of one look that showed one of some outcomes; empty if there are none. */
    static Optional<Finding> of(String look, String seen, List<String> meant) {
      return meant.isEmpty()
          ? Optional.empty()
          : Optional.of(new Finding(look, seen, List.of(new Sight(List.of(look), meant)), true));
    }
  }

  /** What is wrong with a phrase; see {@link Statement.Kept}. */
  record Trouble(Statement.Why why, String about, List<String> nearest) {}

  /** All that is in a phrase, and what is wrong with what is not among the findings. */
  record Read(List<Finding> findings, Optional<Trouble> trouble) {
    boolean isNothing() {
      return findings.isEmpty() && trouble.isEmpty();
    }
  }

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;
  private final Places places;
  private final Strangers strangers;
  private final Amounts amounts;
  private final LookPlaces lookPlaces;
  private final BenchWords benchWords;
  private final CurrentWords currentWords;
  private final FuseWords fuseWords;
  private final StickWords stickWords;
  private final TapeWords tapeWords;
  private final Thermometer thermometer;
  private final OtherLines otherLines;
  private final Copied copied;
  private final Keystrokes keystrokes;
  private final GlyphWords glyphWords;
  private final LetterSwaps letterSwaps;
  private final Inks inks;
  private final Marks marks;
  private final Findings findings;
  private final WhereGood whereGood;
  private final List<Vocabulary.Way> ways;

  Phrases(Board board, Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    places = new Places(board, vocabulary);
    strangers = new Strangers(board, places);
    amounts = new Amounts(vocabulary);
    lookPlaces = new LookPlaces(lookbook, places);
    benchWords = new BenchWords(board, lookbook, vocabulary);
    currentWords = new CurrentWords(lookbook, vocabulary, places::netAt);
    fuseWords = new FuseWords(lookbook, vocabulary);
    stickWords = new StickWords(lookbook, vocabulary);
    tapeWords = new TapeWords(lookbook, vocabulary);
    otherLines = new OtherLines(board, lookbook);
    thermometer = new Thermometer(board, lookbook, places);
    copied = new Copied(lookbook, vocabulary);
    keystrokes = new Keystrokes(lookbook, vocabulary, new KeyWords(lookbook, vocabulary, places));
    glyphWords = new GlyphWords(lookbook, vocabulary);
    letterSwaps = new LetterSwaps(lookbook);
    inks = new Inks(lookbook, vocabulary);
    marks = new Marks(lookbook, vocabulary);
    ProbedLater probedLater = new ProbedLater(places, lookbook, vocabulary);
    findings = new Findings(lookbook, vocabulary, places, lookPlaces, probedLater);
    whereGood = new WhereGood(lookbook, vocabulary, amounts);
    boolean types = lookPlaces.known(TYPED);
    ways =
        vocabulary.ways().stream().filter(w -> types || !w.meaning().kind().equals(TYPED)).toList();
  }

  Strangers strangers() {
    return strangers;
  }

  /**
   * Reads a phrase.
   *
   * @param text as typed, without conditions, tallies and doubts
   */
  Read read(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    for (String whole : List.of("report", "alone")) {
      for (Vocabulary.Group report : vocabulary.groups(whole)) {
        if (report.words().contains(small)) {
          return report(report);
        }
      }
    }
    boolean atPins = !places.find(text, false).lines().isEmpty();
    Optional<Read> known =
        currentWords
            .find(text)
            .or(() -> fuseWords.find(text))
            .or(() -> stickWords.find(text))
            .or(() -> tapeWords.find(text))
            .or(() -> thermometer.find(text))
            .or(() -> letterSwaps.find(text))
            .map(f -> new Read(List.of(f), Optional.empty()))
            .or(() -> track(text))
            .or(() -> round(small))
            .or(() -> copied(text))
            .or(() -> onGlass(text, atPins));
    if (known.isPresent()) {
      return known.get();
    }
    Optional<String> stranger =
        atPins ? Optional.empty() : Vocabulary.in(small, vocabulary.words("strangers"));
    if (stranger.isPresent() && stickWords.isOfThem(small)) {
      return trouble(Statement.Why.NOBODY_SHOWS_IT, Drill.STICKS, lookbook.examples(Drill.STICKS));
    }
    if (stranger.isPresent()) {
      return trouble(Statement.Why.NO_PLACE, stranger.get(), List.of());
    }
    if (Vocabulary.in(small, vocabulary.words("deeds")).isPresent()) {
      return trouble(Statement.Why.NOT_UNDERSTOOD, text, nearWays(text));
    }
    Set<String> subjects = subjects(small);
    boolean lamp = !subjects.contains("probe") && (small.contains("lamp") || small.contains("led"));
    if (subjects.size() > 1 && !lamp || atPins && subjects.contains("probe")) {
      // "Light" is said of probes and screens too, and a probe has lamps of its own.
      subjects.remove("lamp");
    }
    boolean measured = atPins || subjects.stream().anyMatch(LookPlaces.AT_PINS::contains);
    // Ohms are measured with the board off: "cold, over 100k" is of no finger.
    boolean off = amounts.find(small).filter(a -> a.kind().equals("ohms")).isPresent();
    List<Said> said = new ArrayList<>();
    String rest = small;
    for (Vocabulary.Way way : ways) {
      String kind = way.meaning().kind();
      boolean elsewhere =
          (measured || subjects.contains("bench"))
              && LookPlaces.OWNERS.contains(kind)
              && !subjects.contains(kind);
      elsewhere |= off && kind.equals("finger");
      if (!way.beside() && !elsewhere && Vocabulary.in(rest, List.of(way.words())).isPresent()) {
        rest = take(way, rest, said);
        subjects.add(kind);
      }
    }
    boolean feels = said.stream().anyMatch(w -> w.meaning().kind().equals("finger"));
    Place place = places.find(capitals(text, rest), feels || subjects.contains("finger"));
    String open = rest;
    for (String words : place.words()) {
      open = Vocabulary.masked(open, words);
    }
    Set<String> kinds = kinds(place, subjects);
    for (Vocabulary.Way way : ways) {
      String kind = way.meaning().kind();
      boolean any = kind.equals(Vocabulary.ANY) && !onlyFelt(place, subjects, feels);
      if (way.beside()
          && (any || kinds.contains(kind))
          && !isOtherInstrument(way.meaning(), place)
          && Vocabulary.in(open, List.of(way.words())).isPresent()) {
        open = take(way, open, said);
      }
    }
    String figures = open;
    Optional<Amounts.Amount> amount =
        amounts
            .find(open)
            .or(
                () ->
                    atPins || !place.refs().isEmpty() && said.isEmpty()
                        ? amounts.bare(figures)
                        : Optional.empty());
    if (said.isEmpty() && amount.isEmpty()) {
      Read whole = report(small, text, place, subjects);
      if (!whole.isNothing()) {
        return whole;
      }
    }
    boolean whole = isOfTheWhole(open);
    Read read = findings.of(new Findings.Spoken(text, said, amount, place, kinds, whole));
    return read.isNothing() ? trouble(Statement.Why.NOT_UNDERSTOOD, text, nearWays(text)) : read;
  }

  /** What was read, at the places where a good board shows what is told of one. */
  Read whereGood(Read read, String text, String there) {
    return new Read(
        read.findings.stream().map(f -> whereGood.narrowed(f, text, there)).toList(), read.trouble);
  }

  /**
   * A figure of which no place was found, at any place where a good board has the one told of it;
   * at this part, if there is such a place.
   */
  Optional<Read> anywhereGood(String text, String there, String part) {
    return whereGood
        .anywhere(text, there, pad -> pad.startsWith(part + "."))
        .or(() -> whereGood.anywhere(text, there, pad -> true))
        .map(f -> new Read(List.of(f), Optional.empty()));
  }

  /** The part that is named last in a text by its reference; nothing if none is. */
  String lastPart(String text) {
    return Arrays.stream(text.split("[ ,:;()]+"))
        .map(w -> w.split("[.]", 2)[0])
        .filter(places::isPart)
        .reduce("", (before, ref) -> ref.toUpperCase(Locale.ROOT));
  }

  /** What is said of pins or lines, without those that other words name. */
  Finding without(Finding finding, String excepted) {
    Set<String> pads =
        places.find(excepted, false).lines().stream()
            .flatMap(List::stream)
            .map(Pad::text)
            .collect(Collectors.toSet());
    List<Sight> left =
        finding.sights.stream()
            .filter(s -> s.looks().stream().noneMatch(l -> isAt(l, pads)))
            .toList();
    return left.isEmpty() || left.size() == finding.sights.size()
        ? finding
        : new Finding(finding.look, finding.seen, left, finding.every);
  }

  private static boolean isAt(String look, Set<String> pads) {
    String[] words = look.split(" ");
    return words.length > 1 && pads.contains(words[1]);
  }

  /** Whether what is left of a phrase names nothing, so that all of the board can be meant. */
  private boolean isOfTheWhole(String left) {
    List<String> little = vocabulary.words("of-the-whole");
    return Arrays.stream(left.split("[ ,:]+")).allMatch(w -> w.equals("|") || little.contains(w));
  }

  /** Words or letters that stand on a set, or should; of pins only what is in quotes is any. */
  private Optional<Read> onGlass(String text, boolean atPins) {
    if (atPins && !copied.isQuoted(text) && !keystrokes.isOfLetters(text)) {
      return Optional.empty();
    }
    // A joystick has a number, and no key: "joystick 1 dead" is not said of the key 1.
    Optional<String> strange =
        Vocabulary.in(text.toLowerCase(Locale.ROOT), vocabulary.words("strangers"));
    Optional<Finding> marked = ribbon(text);
    return (marked.isPresent() ? marked : keystrokes.sure(text))
        .or(() -> glyphWords.find(text))
        .or(() -> copied.find(text))
        .or(() -> strange.isPresent() ? Optional.empty() : keystrokes.find(text))
        .or(() -> inks.find(text))
        .or(() -> marks.find(text))
        .map(f -> new Read(List.of(f), Optional.empty()));
  }

  /** Most phrases name nothing that is drawn as a ribbon: nothing is set up for them. */
  private Optional<Finding> ribbon(String text) {
    return lookPlaces.known(SCREEN) && MARKED.matcher(text).find()
        ? Ribbon.find(text, lookbook)
        : Optional.empty();
  }

  /** What is said of how warm a part is, longer ways first. */
  List<String> warmths() {
    return ways.stream()
        .filter(way -> way.meaning().kind().equals("finger"))
        .map(Vocabulary.Way::words)
        .toList();
  }

  /**
   * Whether a part is called warm, or hot, that is so on a good board too, and not said to be more
   * so than usual: it may be all there is to it.
   */
  boolean isAsUsual(Finding finding, String text) {
    Set<String> felt =
        finding.sights.stream()
            .flatMap(sight -> sight.outcomes().stream())
            .collect(Collectors.toSet());
    String least = felt.contains("warm") ? "warm" : "hot";
    return Collections.disjoint(felt, List.of("normal", "cold"))
        && Vocabulary.in(text.toLowerCase(Locale.ROOT), vocabulary.words("finger.more")).isEmpty()
        && finding.sights.stream()
            .flatMap(sight -> sight.looks().stream())
            .allMatch(look -> thermometer.isUsually(look, least));
  }

  /**
   * What is meant by keys that work on a set that shows something odd from the start: that what is
   * typed comes, and what should come of it, as well as it can be read there.
   */
  Finding asWellAsItCanBeRead(Finding finding) {
    if (!LookPlaces.ON_THE_SET.contains(finding.look) || !lookPlaces.known(SCREEN)) {
      return finding;
    }
    List<String> all = lookbook.outcomes(finding.look);
    Sight sight = finding.sights.get(0);
    if (!sight.outcomes().contains(all.get(0))) {
      return finding;
    }
    List<String> atStart = lookbook.outcomes(SCREEN);
    PictureText right = PictureText.of(atStart.get(0));
    Set<String> meant = new LinkedHashSet<>(sight.outcomes());
    all.stream()
        .filter(shown -> PictureText.of(shown).isShown())
        .filter(shown -> !atStart.contains(shown) || PictureText.of(shown).isAllLit())
        .filter(shown -> !PictureText.of(shown).hasRowsOf(right))
        .forEach(meant::add);
    return new Finding(
        finding.look,
        finding.seen,
        List.of(new Sight(sight.looks(), List.copyOf(meant))),
        finding.every);
  }

  /** What goes without saying beside something that was said. */
  Optional<OtherLines.Bus> unsaid(Finding finding) {
    return otherLines.beside(finding);
  }

  /** For a report that begins. */
  Backwards backwards() {
    return new Backwards(places);
  }

  /** Whether a phrase begins with something that an owner sees or hears, of which it is then. */
  boolean isOfItsOwn(String text) {
    return subjects(text.toLowerCase(Locale.ROOT)).stream().anyMatch(LookPlaces.OWNERS::contains);
  }

  /** Whether a phrase is of joysticks. */
  boolean isOfSticks(String text) {
    return stickWords.isOfThem(text.toLowerCase(Locale.ROOT));
  }

  /** Whether no place of the board is named. */
  boolean isNowhere(String text) {
    return places.find(text, false).isNowhere();
  }

  /** The lines that a text names, each by its pads. */
  List<List<Pad>> lines(String text) {
    return places.find(text, false).lines();
  }

  /** Whether pins or lines are named. */
  boolean isAtPins(String text) {
    return !places.find(text, false).lines().isEmpty();
  }

  /** A text in which no comma parts colours. */
  String colours(String text) {
    return inks.joined(text);
  }

  /** Whether a finding is of a kind of look that some words name. */
  boolean isOf(Finding finding, String words) {
    return subjects(words.toLowerCase(Locale.ROOT)).contains(finding.look.split(" ", 2)[0]);
  }

  /** Whether a phrase is of all that was not spoken of. */
  boolean isOfTheRest(String text) {
    return vocabulary.groups("report").stream()
        .filter(report -> report.name().equals("all-else"))
        .anyMatch(report -> report.words().contains(text.toLowerCase(Locale.ROOT)));
  }

  /** Whether it tells how often the lamp pulses after a round of the bench ROM. */
  boolean isOfPulses(String text) {
    return benchWords.isOfPulses(text);
  }

  /** What is said of a station of the bench ROM, which is never anything else. */
  private Optional<Read> round(String small) {
    Optional<Read> read = benchWords.find(small).map(f -> new Read(List.of(f), Optional.empty()));
    if (read.isPresent() || !BenchWords.isOfAStation(small)) {
      return read;
    }
    return Optional.of(
        lookPlaces.known(BenchWords.LOOK)
            ? trouble(
                Statement.Why.NOBODY_SHOWS_IT, BenchWords.LOOK, lookbook.examples(BenchWords.LOOK))
            : trouble(Statement.Why.NO_PLACE, "bench", List.of()));
  }

  /** The capitals of the text as typed, where words were not yet taken out of it. */
  private static String capitals(String typed, String rest) {
    List<String> words = new ArrayList<>();
    List<String> capitals = List.of(typed.split(" "));
    for (String word : rest.split(" ")) {
      words.add(capitals.stream().filter(w -> w.equalsIgnoreCase(word)).findFirst().orElse(word));
    }
    return String.join(" ", words);
  }

  private Said said(Vocabulary.Meaning meaning, boolean not) {
    String start = lookPlaces.known(SCREEN) ? lookbook.outcomes(SCREEN).get(0) : "";
    return new Said(meaning, not, start);
  }

  /** Whether a place is a part, of which no look but a finger's tells without a word for it. */
  private boolean onlyFelt(Place place, Set<String> subjects, boolean feels) {
    return !place.refs().isEmpty()
        && place.lines().isEmpty()
        && !feels
        && subjects.isEmpty()
        && place.refs().stream().noneMatch(r -> lookPlaces.known("key " + r));
  }

  /** Notes a way of speaking; the text without it, and without a word before that denies it. */
  private String take(Vocabulary.Way way, String text, List<Said> said) {
    for (String not : vocabulary.words("not")) {
      String denied = not + " " + way.words();
      if (Vocabulary.in(text, List.of(denied)).isPresent()) {
        said.add(said(way.meaning(), true));
        return Vocabulary.masked(text, denied);
      }
    }
    // What is wrong may be that something is missing: "every second column missing".
    boolean fault = way.meaning().shows().terms().contains("wrong");
    for (String not : vocabulary.words("not-behind")) {
      String denied = way.words() + " " + not;
      if (!fault && Vocabulary.in(text, List.of(denied)).isPresent()) {
        said.add(said(way.meaning(), true));
        return Vocabulary.masked(text, denied);
      }
    }
    said.add(said(way.meaning(), false));
    return Vocabulary.masked(text, way.words());
  }

  /** A piece of track between two pins, which conducts or not. */
  private Optional<Read> track(String text) {
    Matcher m = TRACK.matcher(text.toUpperCase(Locale.ROOT));
    if (!m.find()) {
      return trackToAPart(text);
    }
    String look =
        List.of(m.group(1) + "-" + m.group(2), m.group(2) + "-" + m.group(1)).stream()
            .map(t -> "continuity " + t)
            .filter(lookPlaces::known)
            .findFirst()
            .orElse("");
    if (m.group().contains(" AND ") && (look.isEmpty() || at(look, text).isEmpty())) {
      // Two pins of one net, each with a level of its own.
      return Optional.empty();
    }
    if (look.isEmpty()) {
      return Optional.of(
          trouble(
              Statement.Why.NO_PLACE, "continuity", lookPlaces.near("continuity " + m.group(1))));
    }
    return Optional.of(
        at(look, text)
            .map(f -> new Read(List.of(f), Optional.empty()))
            .orElseGet(() -> trouble(Statement.Why.NOT_UNDERSTOOD, text, lookbook.examples(look))));
  }

  /** A piece of track from a pin to whichever pin of a part: "no beep from U30.Y3/ to K30". */
  private Optional<Read> trackToAPart(String text) {
    Matcher m = TO_A_PART.matcher(text.toUpperCase(Locale.ROOT));
    if (!m.find()) {
      return Optional.empty();
    }
    String pin = m.group(1) + "." + m.group(2);
    String from = "continuity " + pin + "-" + m.group(3) + ".";
    String back = "-" + pin;
    return lookbook.looks().stream()
        .filter(
            l ->
                l.startsWith(from)
                    || l.startsWith("continuity " + m.group(3) + ".") && l.endsWith(back))
        .findFirst()
        .flatMap(look -> at(look, text))
        .map(f -> new Read(List.of(f), Optional.empty()));
  }

  /** What a phrase says of one look whose outcome it is known to be of. */
  Optional<Finding> at(String look, String text) {
    String kind = look.split(" ", 2)[0];
    String small = text.toLowerCase(Locale.ROOT);
    if (look.equals(BenchWords.LOOK)) {
      Optional<Finding> round = benchWords.find(small + " " + BenchWords.SPOKEN_OF);
      if (round.isPresent()) {
        return round;
      }
    }
    List<String> outcomes = lookbook.outcomes(look);
    List<Said> said = new ArrayList<>();
    String rest = small;
    for (Vocabulary.Way way : ways) {
      boolean fits = Set.of(kind, Vocabulary.ANY).contains(way.meaning().kind());
      if (fits && Vocabulary.in(rest, List.of(way.words())).isPresent()) {
        rest = take(way, rest, said);
      }
    }
    Optional<Amounts.Amount> amount = amounts.find(small).filter(a -> a.kind().equals(kind));
    List<String> meant =
        outcomes.stream()
            .filter(
                o ->
                    said.stream().allMatch(m -> m.covers(o, outcomes.get(0)))
                        && amount.stream().allMatch(a -> a.covers(o)))
            .toList();
    return said.isEmpty() && amount.isEmpty() || meant.isEmpty()
        ? Optional.empty()
        : Optional.of(new Finding(look, text, List.of(new Sight(List.of(look), meant)), true));
  }

  private Set<String> subjects(String small) {
    Set<String> subjects = new LinkedHashSet<>();
    String text = withoutParts(small);
    for (String kind : KINDS) {
      if (Vocabulary.in(text, vocabulary.subjects(kind)).isPresent()) {
        subjects.add(kind);
      }
    }
    return subjects;
  }

  /** A sound chip is no sound, and a display controller no display. */
  private String withoutParts(String small) {
    // A tracer feels no supply.
    String text =
        Vocabulary.in(small, vocabulary.words("flow.said"))
            .map(tool -> Vocabulary.masked(small, tool))
            .orElse(small);
    for (Vocabulary.Group group : vocabulary.groups("part")) {
      for (String name : group.words()) {
        text = name.contains(" ") ? Vocabulary.masked(text, name) : text;
      }
    }
    return text;
  }

  /** Kinds of looks that can be meant. */
  private Set<String> kinds(Place place, Set<String> subjects) {
    Set<String> kinds = new LinkedHashSet<>(subjects);
    boolean key = place.refs().stream().anyMatch(r -> lookbook.looks().contains("key " + r));
    if (key) {
      kinds.add(KEY);
      kinds.remove("listen");
    }
    if (!place.lines().isEmpty()) {
      kinds.addAll(LookPlaces.AT_PINS);
    } else if (!place.refs().isEmpty() && subjects.isEmpty()) {
      kinds.add("finger");
    }
    return kinds;
  }

  /** What is neither a known way of speaking nor a figure: a display's text, a lack, a report. */
  private Read report(String small, String text, Place place, Set<String> subjects) {
    Matcher verbatim = VERBATIM.matcher(text);
    boolean screen = subjects.contains(SCREEN) || subjects.isEmpty() && place.isNowhere();
    if (screen && verbatim.find() && DisplayText.isText(verbatim.group(1), verbatim.group())) {
      String shown = verbatim.group(1).strip();
      return lookPlaces.known(SCREEN)
          ? copied(SCREEN, shown)
          : trouble(Statement.Why.NO_PLACE, SCREEN, List.of());
    }
    if (place.quantity() == Place.Quantity.NONE && !place.lines().isEmpty()) {
      String wanting = findings.isRail(place) ? "meter" : "probe";
      String name = wanting.equals("meter") ? "none" : "stuck";
      Place each = new Place(place.refs(), place.lines(), Place.Quantity.EVERY, place.words());
      return vocabulary.ways().stream()
          .filter(w -> w.meaning().kind().equals(wanting) && w.meaning().name().equals(name))
          .findFirst()
          .map(w -> said(w.meaning(), false))
          .map(
              w ->
                  new Findings.Spoken(
                      text, List.of(w), Optional.empty(), each, Set.of(wanting), false))
          .map(findings::of)
          .orElseThrow();
    }
    if (place.isNowhere()) {
      for (Vocabulary.Group report : vocabulary.groups("report")) {
        if (isAllThatIsSaid(small, report.words(), subjects)) {
          Read all = report(report);
          // "No sign of life on the screen" is not said of the lamp.
          List<Finding> meant =
              all.findings.stream()
                  .filter(f -> subjects.isEmpty() || subjects.contains(f.look.split(" ", 2)[0]))
                  .toList();
          return new Read(meant, all.trouble);
        }
      }
    }
    return new Read(List.of(), Optional.empty());
  }

  /** "Dead" is said of a board where nothing else is named: "joystick dead" is not. */
  private boolean isAllThatIsSaid(String small, List<String> words, Set<String> subjects) {
    return Vocabulary.in(small, words)
        .filter(w -> !subjects.isEmpty() || isOfTheWhole(Vocabulary.masked(small, w)))
        .isPresent();
  }

  private Read report(Vocabulary.Group report) {
    List<Finding> findings = new ArrayList<>();
    for (String part : report.which().split("; *")) {
      findings.addAll(read(part).findings);
    }
    return new Read(findings, Optional.empty());
  }

  /** Words that stand on some glass just so, with or without "it says" before them. */
  private Optional<Read> copied(String text) {
    Matcher says = VERBATIM.matcher(text);
    boolean said = says.find();
    String shown = (said ? says.group(1) : text).strip();
    boolean enough = said ? shown.length() >= SHORTEST_SAID : shown.length() >= SHORTEST_COPIED;
    return List.of(SCREEN, TYPED).stream()
        .filter(look -> enough && shown.contains(" ") && lookPlaces.known(look))
        .filter(look -> copied.stands(look, shown))
        .findFirst()
        .map(look -> copied(look, shown));
  }

  private Read copied(String look, String shown) {
    return new Read(
        List.of(DisplayText.finding(look, shown, lookbook.outcomes(look))), Optional.empty());
  }

  /** "Missing" is a matter for a meter on a rail, and for a probe on any other line. */
  private boolean isOtherInstrument(Vocabulary.Meaning meaning, Place place) {
    boolean meter = meaning.kind().equals("meter") && meaning.name().equals("none");
    boolean probe = meaning.kind().equals("probe") && meaning.name().equals("stuck");
    return !place.lines().isEmpty() && (findings.isRail(place) ? probe : meter);
  }

  /** Whether no fault of the list shows what a finding holds. */
  boolean unheard(Finding finding) {
    return finding.sights.stream()
        .allMatch(
            s ->
                s.looks().stream()
                    .noneMatch(
                        l -> lookbook.outcomes(l).stream().anyMatch(s.outcomes()::contains)));
  }

  /** Whether some look of this kind can show an outcome. */
  boolean canShow(String kind, String outcome) {
    return lookPlaces.canShow(kind, outcome);
  }

  /** Ways to speak that share most letters in a row with the text. */
  private List<String> nearWays(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    Map<String, Integer> shared = new LinkedHashMap<>();
    for (Vocabulary.Way way : vocabulary.ways()) {
      shared.computeIfAbsent(way.words(), w -> shared(w, small));
    }
    return shared.entrySet().stream()
        .sorted(
            Comparator.comparingInt((Map.Entry<String, Integer> e) -> -e.getValue())
                .thenComparing(e -> e.getKey().length()))
        .limit(3)
        .map(Map.Entry::getKey)
        .toList();
  }

  private static int shared(String words, String text) {
    int best = 0;
    for (int from = 0; from < words.length(); from++) {
      int to = from + best + 1;
      while (to <= words.length() && text.contains(words.substring(from, to))) {
        best = to - from;
        to++;
      }
    }
    return best;
  }

  static Read trouble(Statement.Why why, String about, List<String> nearest) {
    return new Read(List.of(), Optional.of(new Trouble(why, about, nearest)));
  }

  /** A finding as an observation. */
  static Observation observation(
      Finding finding, Observation.Source source, Observation.Doubt doubt, Tally tally, int after) {
    Observation.Reach reach = new Observation.Reach(finding.sights, finding.every, tally);
    return new Observation(finding.look, finding.seen, source, doubt, reach, after);
  }
}
