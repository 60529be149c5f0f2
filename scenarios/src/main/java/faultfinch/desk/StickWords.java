package faultfinch.desk;

import faultfinch.board.Drill;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** What is said of joysticks, the ways they are pushed, and of what is turned on them. */
final class StickWords {
  /** A level as the program prints it: two hexadecimal digits. */
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<= |^)(?:levels?|reads?|shows?|values?|at|is)(?: always| only| just| stuck at)? "
              + "((?=[0-9a-f]*\\d)[0-9a-f]{2})(?= |,|$)");

  private static final Pattern JOINED_WAYS =
      Pattern.compile("\\b(up|down|left|right)[-+/](?=up|down|left|right)");

  /** Letters of the ways, as the program prints them. */
  private static final Pattern READ_OUT =
      Pattern.compile(
          "\\b(?:reads?|shows?|gives?|prints?|says?) (?:only )?([UDLRF](?:(?:,? and |, | |\\+)[UDLRF])*)(?=[ ,.]|$)");

  private static final Pattern BESIDES = Pattern.compile("(?i)\\b(?:too|also|as well|besides)\\b");

  /** Of five ways of a stick, fewer than "the others". */
  private static final int FEW = 2;

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;
  private final Map<String, PushedSticks> read = new LinkedHashMap<>();

  StickWords(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
  }

  /** Whether a phrase is of joysticks that somebody has tried. */
  boolean isOfThem(String small) {
    return lookbook.looks().contains(Drill.STICKS)
        && (says(small, "sticks.subject") || says(small, "sticks.level"))
        && !says(small, "sticks.other");
  }

  /** What a phrase, as typed, says of joysticks; empty if it is nothing that a board shows. */
  Optional<Phrases.Finding> find(String text) {
    String small = JOINED_WAYS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("$1 ");
    if (!isOfThem(small)) {
      return Optional.empty();
    }
    Optional<Phrases.Finding> read = asRead(text);
    if (read.isPresent()) {
      return read;
    }
    boolean spoken = says(small, "sticks.subject");
    boolean level = says(small, "sticks.level") || spoken && says(small, "sticks.level.beside");
    Set<String> sticks = named(small, "sticks.which.");
    Set<String> ways = named(small, "sticks.way.");
    // "Up" and "right" are ways only beside a stick that is spoken of.
    String rest = masked(small, ways);
    if (level) {
      return ofLevel(text, rest, sticks);
    }
    if (says(rest, "sticks.keys")) {
      return finding(text, (healthy, pushed) -> pushed.isHalfOf(healthy));
    }
    if (says(rest, "sticks.dead") || says(small, "sticks.dead")) {
      return ways.isEmpty() ? dead(text, sticks) : lacking(text, sticks, ways);
    }
    if (says(rest, "sticks.stuck")) {
      return of(text, sticks, (stick, pair) -> isMore(stick, pair, ways));
    }
    if (says(rest, "sticks.wrong")) {
      return finding(text, (healthy, pushed) -> !ways(pushed).equals(ways(healthy)));
    }
    if (says(rest, "sticks.others") && says(rest, "sticks.fine")) {
      return of(text, sticks, (stick, pair) -> isMostly(stick, pair));
    }
    if (says(small, "sticks.directions") && says(rest, "sticks.fine")) {
      return finding(text, (healthy, pushed) -> isPushed(sticks, healthy, pushed));
    }
    return says(rest, "sticks.fine")
        ? finding(text, (healthy, pushed) -> isWhole(sticks, healthy, pushed))
        : Optional.empty();
  }

  /** A line of the program as somebody reads it out: "stick 2 pushed up-left reads U L". */
  private Optional<Phrases.Finding> asRead(String text) {
    Matcher m = READ_OUT.matcher(text);
    if (!m.find()) {
      return Optional.empty();
    }
    String before = text.substring(0, m.start()).toLowerCase(Locale.ROOT);
    String small = JOINED_WAYS.matcher(before).replaceAll("$1 ");
    Set<String> sticks = named(small, "sticks.which.");
    Set<String> pushed = named(small, "sticks.way.");
    Set<String> shown =
        new LinkedHashSet<>(List.of(m.group(1).replaceAll("[^UDLRF]", "").split("")));
    return of(
        text,
        sticks,
        (stick, pair) -> {
          List<PushedSticks.Line> told = pair.pushed.of(Set.of(stick));
          List<PushedSticks.Line> right = pair.healthy.of(Set.of(stick));
          return IntStream.range(0, told.size())
              .filter(i -> pushed.isEmpty() || right.get(i).ways().equals(pushed))
              .anyMatch(i -> told.get(i).ways().equals(shown));
        });
  }

  private boolean says(String small, String key) {
    return Vocabulary.in(small, vocabulary.words(key)).isPresent();
  }

  /** Which of some things that have words of their own are named. */
  private Set<String> named(String small, String prefix) {
    Set<String> named = new LinkedHashSet<>();
    for (String name : vocabulary.words(prefix + "all")) {
      if (says(small, prefix + name)) {
        named.add(name.toUpperCase(Locale.ROOT));
      }
    }
    return named;
  }

  private String masked(String small, Set<String> ways) {
    String rest = small;
    for (String way : ways) {
      String key = "sticks.way." + way.toLowerCase(Locale.ROOT);
      rest = Vocabulary.masked(rest, Vocabulary.in(rest, vocabulary.words(key)).orElse(""));
    }
    return rest;
  }

  /**
   * A stick that may be pushed as one likes; without a number it is one of them, or all. So it is
   * too where nothing can be typed to see it.
   */
  private Optional<Phrases.Finding> dead(String text, Set<String> sticks) {
    List<String> meant = new ArrayList<>();
    of(
            text,
            sticks,
            (stick, pair) ->
                pair.pushed.of(Set.of(stick)).stream()
                        .map(PushedSticks.Line::ways)
                        .distinct()
                        .count()
                    == 1)
        .ifPresent(finding -> meant.addAll(finding.sights().get(0).outcomes()));
    lookbook.outcomes(Drill.STICKS).stream()
        .filter(o -> !PictureText.of(o).isShown())
        .forEach(meant::add);
    return Phrases.Finding.of(Drill.STICKS, text, meant);
  }

  /**
   * A stick of which just these ways do not come; failing that, these and others. Where more is
   * dead, "too", the word for it may be beyond typing: then they were tried in another way.
   */
  private Optional<Phrases.Finding> lacking(String text, Set<String> sticks, Set<String> ways) {
    List<String> meant = new ArrayList<>();
    of(text, sticks, (s, pair) -> pair.pushed.lacks(s, pair.healthy).equals(ways))
        .or(
            () ->
                of(text, sticks, (s, pair) -> pair.pushed.lacks(s, pair.healthy).containsAll(ways)))
        .ifPresent(finding -> meant.addAll(finding.sights().get(0).outcomes()));
    if (!meant.isEmpty() && BESIDES.matcher(text).find()) {
      String title = healthy().title();
      outcomes().entrySet().stream()
          .filter(o -> o.getValue().told().isEmpty() && o.getValue().title().equals(title))
          .forEach(o -> meant.add(o.getKey()));
    }
    return Phrases.Finding.of(Drill.STICKS, text, meant);
  }

  /** Of some ways it is said that they fail, and these are the others. */
  private static boolean isMostly(String stick, Pair pair) {
    int lacks = pair.pushed.lacks(stick, pair.healthy).size();
    return lacks > 0 && lacks <= FEW;
  }

  /** Whether a way of a stick comes where it is not pushed; of no way that is named any. */
  private static boolean isMore(String stick, Pair pair, Set<String> ways) {
    Set<String> more = pair.healthy.lacks(stick, pair.pushed);
    return ways.isEmpty() ? !more.isEmpty() : more.containsAll(ways);
  }

  private Optional<Phrases.Finding> ofLevel(String text, String rest, Set<String> sticks) {
    if (says(rest, "sticks.fine")) {
      return of(
          text,
          sticks,
          (stick, pair) -> levels(stick, pair.pushed).equals(levels(stick, pair.healthy)));
    }
    Matcher figure = FIGURE.matcher(rest);
    if (figure.find()) {
      String told = figure.group(1).toUpperCase(Locale.ROOT);
      return of(
          text,
          sticks,
          (stick, pair) ->
              isStill(stick, pair.pushed) && levels(stick, pair.pushed).contains(told));
    }
    if (says(rest, "sticks.nought")) {
      return of(
          text,
          sticks,
          (stick, pair) ->
              isStill(stick, pair.pushed) && levels(stick, pair.pushed).contains(lowest()));
    }
    if (says(rest, "sticks.still") || says(rest, "sticks.dead") || says(rest, "sticks.stuck")) {
      return of(text, sticks, (stick, pair) -> isStill(stick, pair.pushed));
    }
    return says(rest, "sticks.wrong")
        ? of(
            text,
            sticks,
            (stick, pair) -> !levels(stick, pair.pushed).equals(levels(stick, pair.healthy)))
        : Optional.empty();
  }

  private String lowest() {
    return vocabulary.words("sticks.lowest").get(0).toUpperCase(Locale.ROOT);
  }

  private static boolean isStill(String stick, PushedSticks pushed) {
    return new LinkedHashSet<>(levels(stick, pushed)).size() == 1;
  }

  private static List<String> levels(String stick, PushedSticks pushed) {
    return pushed.of(Set.of(stick)).stream().map(PushedSticks.Line::level).toList();
  }

  private static List<Set<String>> ways(PushedSticks pushed) {
    return pushed.told().stream().map(PushedSticks.Line::ways).toList();
  }

  /** All ways come, whatever the levels are. */
  private static boolean isPushed(Set<String> sticks, PushedSticks healthy, PushedSticks pushed) {
    return pushed.isAsLongAs(healthy)
        && IntStream.range(0, pushed.told().size())
            .filter(i -> sticks.isEmpty() || sticks.contains(healthy.told().get(i).stick()))
            .allMatch(i -> pushed.told().get(i).ways().equals(healthy.told().get(i).ways()));
  }

  private static boolean isWhole(Set<String> sticks, PushedSticks healthy, PushedSticks pushed) {
    return sticks.isEmpty()
        ? pushed.equals(healthy)
        : pushed.isAsLongAs(healthy) && pushed.of(sticks).equals(healthy.of(sticks));
  }

  /** A good board and one that is looked at, of which as much is told. */
  private record Pair(PushedSticks healthy, PushedSticks pushed) {}

  /** What holds for each of the sticks that are named, or for one of all. */
  private Optional<Phrases.Finding> of(
      String text, Set<String> sticks, BiPredicate<String, Pair> holds) {
    Set<String> all = new LinkedHashSet<>();
    healthy().told().forEach(l -> all.add(l.stick()));
    return finding(
        text,
        (healthy, pushed) -> {
          Predicate<String> one = stick -> holds.test(stick, new Pair(healthy, pushed));
          return pushed.isAsLongAs(healthy)
              && (sticks.isEmpty() ? all.stream().anyMatch(one) : sticks.stream().allMatch(one));
        });
  }

  private PushedSticks healthy() {
    return outcomes().get(lookbook.outcomes(Drill.STICKS).get(0));
  }

  /** Outcomes that can be read, taken apart when the first phrase asks for them. */
  private Map<String, PushedSticks> outcomes() {
    if (read.isEmpty()) {
      lookbook.outcomes(Drill.STICKS).stream()
          .filter(o -> PictureText.of(o).isShown())
          .forEach(o -> read.put(o, PushedSticks.of(o)));
    }
    return read;
  }

  private Optional<Phrases.Finding> finding(
      String text, BiPredicate<PushedSticks, PushedSticks> holds) {
    PushedSticks healthy = healthy();
    List<String> meant = new ArrayList<>();
    outcomes()
        .forEach(
            (outcome, pushed) -> {
              if (holds.test(healthy, pushed)) {
                meant.add(outcome);
              }
            });
    return Phrases.Finding.of(Drill.STICKS, text, meant);
  }
}
