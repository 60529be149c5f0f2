package faultfinch.desk;

import faultfinch.bench.BenchRom;
import faultfinch.board.Board;
import faultfinch.board.Milestone;
import faultfinch.symptom.Screen;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** What a round of the bench ROM says of its stations and of the lines of their ribbons. */
final class BenchWords {
  static final String LOOK = BenchRom.ALONE.look();

  /** A word by which a phrase is of a round. */
  static final String SPOKEN_OF = "ribbon";

  private static final Pattern STATION =
      Pattern.compile(
          "(?<= |^)(?:stations? (?:\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)|first [a-z0-9]+ stations)(?= |,|$)");
  private static final Pattern BIT =
      Pattern.compile(
          "(?<= |^)(?:bit|bits|line|data line|gap at|gap in|hole at|hole in|d|md) ?([0-7])(?=[ ,]|$)");

  /** A line may be told by its place in a ribbon. */
  private static final Pattern PLACED =
      Pattern.compile(
          "\\b(?:from the (?:left|right)|marks?|signs?|blocks?|squares?|bits?|leftmost|rightmost)\\b");

  private static final Pattern SPOKEN =
      Pattern.compile(
          "(?<= |^)(station|stations|ribbon|ram test|memory test|memory bit|ram bit)(?=[ :]|$)");

  private static final Pattern WROTE =
      Pattern.compile("(?<= |^)(?:wrote|sent|writes|write) ([0-9a-f]{2})(?=[ ,]|$)");
  private static final Pattern READ =
      Pattern.compile(
          "(?<= |^)(?:read|reads|got|gets|received|had|read back|reads back) ([0-9a-f]{2})"
              + "(?=[ ,]|$)");
  private static final Pattern PAGE = Pattern.compile("(?<= |^)page ([0-9a-f]{2})(?=[ ,]|$)");

  /** "read 52 for 5A". */
  private static final Pattern FOR =
      Pattern.compile(
          "(?<= |^)(?:read|reads|got) ([0-9a-f]{2}) (?:for|instead of|not) ([0-9a-f]{2})"
              + "(?=[ ,]|$)");

  /** How often the lamp pulses: "lamp flashes 3, then 1", "code 3-1", "lamp 2". */
  private static final Pattern PULSES =
      Pattern.compile(
          "(?<= |^)(?:lamp|led|light|flash|blink|pulse|wink|code|pattern)[a-z]*\\b[^,;\\d]*?(?<= )"
              + "(\\d{1,2})(?: (?:flash|blink|pulse|wink)[a-z]*)?"
              + "(?:-|/|,? (?:and then|then|and|[+]) )(\\d{1,2})(?= |,|$)"
              + "|(?<= |^)lamp(?: (?:flashes|pulses|blinks|winks|gives|goes|does))? (\\d{1,2})(?= |$)"
              + "(?! (?:times )?(?:a|per) )");

  /** Before what the lamp says of a round. */
  private static final String LAMP = "; lamp";

  private static final String NO_PULSE = LAMP + " no pulse";

  private static final int RADIX = 16;
  private static final int LINES = 8;

  /** A byte that was written, and what was read of it. */
  private record Bytes(int wrote, int read) {}

  private static final Pattern STATION_NAME = Pattern.compile("station (\\d+)");

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;

  /** What is about to be tried, by the number of the station. */
  private final Map<Integer, String> tries = new LinkedHashMap<>();

  /** The lines of each round that was asked for. */
  private final Map<String, Optional<Stations>> rounds = new HashMap<>();

  /** Rounds that are as on a good board but for the signs they are shown in. */
  private final Set<String> seenThrough = new HashSet<>();

  BenchWords(Board board, Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    List<Milestone> milestones =
        board.benchRom().isPresent() ? board.benchRom().get().milestones() : List.of();
    for (Milestone milestone : milestones) {
      Matcher m = STATION_NAME.matcher(milestone.name());
      if (m.matches()) {
        tries.put(Integer.valueOf(m.group(1)), milestone.says());
      }
    }
  }

  /** Whether a station is named, in small letters. */
  static boolean isOfAStation(String text) {
    return STATION.matcher(text).find();
  }

  /** Whether what was written and what came back are told, which belong together. */
  static boolean isOfBytes(String text) {
    return WROTE.matcher(text).find()
        || FOR.matcher(text).find()
        || READ.matcher(text).find() && PAGE.matcher(text).find();
  }

  /** Whether it tells how often the lamp pulsed, as it does at the end of a round. */
  boolean isOfPulses(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    return isWithoutPulse(small) || PULSES.matcher(figures(small)).find();
  }

  private boolean isWithoutPulse(String small) {
    return Vocabulary.in(small, vocabulary.words("bench.no-pulse")).isPresent()
        && Vocabulary.in(small, vocabulary.subjects("lamp")).isPresent();
  }

  /** What is said of a station or a line, in small letters; empty if it is nothing of the sort. */
  Optional<Phrases.Finding> find(String text) {
    boolean named = Vocabulary.in(text, vocabulary.subjects("bench")).isPresent();
    boolean spokenOf = named || SPOKEN.matcher(text).find() || !pairs(text).isEmpty();
    if (!lookbook.looks().contains(LOOK) || !spokenOf) {
      return Optional.empty();
    }
    Optional<Phrases.Finding> bytes = bytes(text);
    if (bytes.isPresent()) {
      return bytes;
    }
    Optional<Phrases.Finding> pulses = pulses(text);
    if (pulses.isPresent()) {
      return pulses;
    }
    boolean well = Vocabulary.in(text, vocabulary.words("bench.well")).isPresent();
    List<Predicate<String>> said = new ArrayList<>();
    String figures = figures(text);
    List<Integer> numbers = StationWords.numbers(figures);
    boolean only = Vocabulary.in(text, vocabulary.words("inks.only")).isPresent();
    for (int number : numbers) {
      said.add(
          outcome -> StationWords.differing(outcome, number).filter(d -> d != well).isPresent());
    }
    if (only && !well && !numbers.isEmpty()) {
      said.add(o -> StationWords.isAsUsualBut(numbers, o, lookbook.outcomes(LOOK).get(0)));
    }
    StationWords.counted(figures, numbers).ifPresent(said::add);
    List<Integer> stations = of(text);
    boolean ill = !well && Vocabulary.in(text, vocabulary.words("bench.ill")).isPresent();
    if (!stations.isEmpty() && (well || ill)) {
      said.add(
          outcome ->
              well
                  ? stations.stream()
                      .allMatch(s -> StationWords.differing(outcome, s).filter(d -> !d).isPresent())
                  : spoilt(outcome).isPresent()
                      || stations.stream()
                          .anyMatch(s -> StationWords.differing(outcome, s).orElse(false)));
      if (ill && only) {
        said.add(o -> StationWords.isAsUsualBut(stations, o, lookbook.outcomes(LOOK).get(0)));
      }
    }
    List<Integer> bits = bits(text);
    if (!bits.isEmpty()) {
      said.add(
          outcome ->
              stations(outcome)
                  .or(() -> spoilt(outcome))
                  .filter(s -> bits.stream().allMatch(line -> s.hasGap(line) != well))
                  .filter(s -> well || !only || gaps(s) == bits.size())
                  .isPresent());
    } else if (Vocabulary.in(text, vocabulary.words("bench.every-line")).isPresent()) {
      said.add(outcome -> stations(outcome).filter(Stations::isAll).isPresent());
    } else if (well && !isOfAStation(text) && stations.isEmpty()) {
      said.add(outcome -> stations(outcome).map(Stations::isWell).orElse(lampSaysWell(outcome)));
    } else if (said.isEmpty() && Vocabulary.in(text, vocabulary.words("bench.mute")).isPresent()) {
      said.add(BenchWords::isDark);
    } else if (said.isEmpty()
        && Vocabulary.in(text, vocabulary.words("bench.garbage")).isPresent()) {
      said.add(outcome -> !isDark(outcome) && stations(outcome).isEmpty());
    } else if (said.isEmpty()
        && Vocabulary.in(text, vocabulary.words("bench.ignored")).isPresent()) {
      said.add(outcome -> outcome.startsWith(title()));
    }
    List<String> meant =
        lookbook.outcomes(LOOK).stream()
            .filter(o -> said.stream().allMatch(s -> s.test(o) || isSeenThrough(s, o)))
            .toList();
    return said.isEmpty() ? Optional.empty() : Phrases.Finding.of(LOOK, text, meant);
  }

  /**
   * Whether it is the round of a good board on a set that makes other signs of some: who knows what
   * should stand there reads that nothing differs.
   */
  private boolean isSeenThrough(Predicate<String> said, String outcome) {
    return said.test(lookbook.outcomes(LOOK).get(0)) && seenThrough().contains(outcome);
  }

  /** All such rounds, looked for when the first phrase asks. */
  private Set<String> seenThrough() {
    if (seenThrough.isEmpty()) {
      String healthy = lookbook.outcomes(LOOK).get(0);
      String should = signs(healthy, 1);
      seenThrough.add(healthy);
      lookbook.outcomes(LOOK).stream()
          .filter(o -> isSeenThrough(o, healthy, should))
          .forEach(seenThrough::add);
    }
    return seenThrough;
  }

  private static boolean isSeenThrough(String outcome, String healthy, String should) {
    int blank = healthy.indexOf(' ');
    if (outcome.length() <= blank || !lamp(outcome).equals(lamp(healthy))) {
      return false;
    }
    // A sentence that is right stands in one piece, any other in the two rows of the set.
    String is = signs(outcome, 2).replace(String.valueOf(outcome.charAt(blank)), "");
    Map<Character, Character> signs = new HashMap<>();
    boolean same = is.length() == should.length();
    for (int i = 0; same && i < should.length(); i++) {
      char sign = is.charAt(i);
      same = signs.merge(should.charAt(i), sign, (had, now) -> had) == sign;
    }
    return same;
  }

  /** What stands on the set, without blanks and the ribbon that ends each so many pieces. */
  private static String signs(String outcome, int pieces) {
    String[] all = outcome.substring(0, outcome.length() - lamp(outcome).length()).split("; ");
    StringBuilder signs = new StringBuilder();
    for (int i = 0; i < all.length; i++) {
      boolean last = i % pieces == pieces - 1;
      signs.append(last ? all[i].replaceAll(".{8}$", "") : all[i]);
    }
    return signs.toString().replace(" ", "");
  }

  private static String lamp(String outcome) {
    int at = outcome.indexOf(LAMP);
    return at < 0 ? "" : outcome.substring(at);
  }

  /** How often the lamp pulsed, and then: "lamp flashes one, then two". */
  private Optional<Phrases.Finding> pulses(String text) {
    Matcher m = PULSES.matcher(figures(text));
    boolean none = isWithoutPulse(text);
    if (!none && !m.find()) {
      return Optional.empty();
    }
    String tail =
        none
            ? NO_PULSE
            : m.group(1) == null
                ? LAMP + " pulses " + m.group(3)
                : LAMP + " pulses " + m.group(1) + ", then " + m.group(2);
    return Phrases.Finding.of(
        LOOK, text, lookbook.outcomes(LOOK).stream().filter(o -> o.endsWith(tail)).toList());
  }

  private String figures(String text) {
    String figures = text;
    for (Map.Entry<String, String> number : vocabulary.pairs("numbers").entrySet()) {
      figures = figures.replaceAll("\\b" + number.getKey() + "\\b", number.getValue());
    }
    return figures.replaceAll("\\bonce\\b", "1").replaceAll("\\btwice\\b", "2");
  }

  /** The stations that try what a text speaks of: "rom 1", "the memory". */
  private List<Integer> of(String text) {
    String rest = text;
    for (String name : vocabulary.subjects("bench")) {
      rest = Vocabulary.masked(rest, name);
    }
    for (Vocabulary.Group group : vocabulary.groups("station")) {
      if (!isOfAStation(text) && Vocabulary.in(rest, group.words()).isPresent()) {
        return tries.entrySet().stream()
            .filter(e -> e.getValue().matches(group.which()))
            .map(Map.Entry::getKey)
            .toList();
      }
    }
    return List.of();
  }

  /** A round in which some station, or this one, wrote and read just so. */
  private Optional<Phrases.Finding> bytes(String text) {
    if (!isOfBytes(text)) {
      return Optional.empty();
    }
    String number =
        StationWords.numbers(figures(text)).stream()
            .findFirst()
            .map(n -> String.format("%02d", n))
            .orElse("\\d\\d");
    String line =
        "Station %s wrote %s, read %s at page[ ;]*%s:"
            .formatted(number, hex(WROTE, text), hex(READ, text), hex(PAGE, text));
    Pattern told = Pattern.compile("(?i)" + line);
    List<Bytes> pairs = pairs(text);
    List<String> outcomes = lookbook.outcomes(LOOK);
    List<String> said = outcomes.stream().filter(o -> told.matcher(o).find()).toList();
    // Bytes of nobody's station in particular tell which lines are low and high.
    boolean ours = isOfAStation(text) || PAGE.matcher(text).find();
    List<String> meant =
        pairs.isEmpty() || ours && !said.isEmpty()
            ? said
            : outcomes.stream().filter(o -> said.contains(o) || allows(o, pairs)).toList();
    return Phrases.Finding.of(LOOK, text, meant);
  }

  /** Of a round that nobody can read the lamp tells that it passed, if it pulses then. */
  private boolean lampSaysWell(String outcome) {
    String healthy = lookbook.outcomes(LOOK).get(0);
    int lamp = healthy.indexOf(LAMP);
    return lamp >= 0 && !healthy.endsWith(NO_PULSE) && outcome.endsWith(healthy.substring(lamp));
  }

  /** The first row of what a good board shows without the bench ROM. */
  private String title() {
    return PictureText.of(lookbook.outcomes(Phrases.SCREEN).get(0)).rows().get(0);
  }

  private static boolean isDark(String outcome) {
    return Screen.NOTHING.stream().anyMatch(outcome::startsWith);
  }

  private static long gaps(Stations stations) {
    return IntStream.range(0, LINES).filter(stations::hasGap).count();
  }

  private static String hex(Pattern which, String text) {
    Matcher m = which.matcher(text);
    return m.find() ? m.group(1).toUpperCase(Locale.ROOT) : "[0-9A-F]{2}";
  }

  /** Lines by their numbers, and by their places in a ribbon. */
  private static List<Integer> bits(String text) {
    Set<Integer> bits = new TreeSet<>();
    BIT.matcher(text).results().forEach(m -> bits.add(Integer.valueOf(m.group(1))));
    if (PLACED.matcher(text).find()) {
      bits.addAll(Ribbon.lines(text));
    }
    return List.copyOf(bits);
  }

  private Optional<Stations> stations(String round) {
    String healthy = lookbook.outcomes(LOOK).get(0);
    return rounds.computeIfAbsent(round, r -> Stations.of(r, healthy));
  }

  private Optional<Stations> spoilt(String outcome) {
    return Stations.spoilt(outcome, lookbook.outcomes(LOOK).get(0));
  }

  private boolean allows(String outcome, List<Bytes> pairs) {
    return stations(outcome)
        .filter(s -> pairs.stream().allMatch(p -> s.allow(p.wrote, p.read)))
        .isPresent();
  }

  /** All that was written and read back, in their order. */
  private static List<Bytes> pairs(String text) {
    List<Bytes> pairs = new ArrayList<>();
    FOR.matcher(text)
        .results()
        .forEach(m -> pairs.add(new Bytes(number(m.group(2)), number(m.group(1)))));
    if (pairs.isEmpty()) {
      List<String> wrote = WROTE.matcher(text).results().map(m -> m.group(1)).toList();
      List<String> read = READ.matcher(text).results().map(m -> m.group(1)).toList();
      for (int i = 0; i < Math.min(wrote.size(), read.size()); i++) {
        pairs.add(new Bytes(number(wrote.get(i)), number(read.get(i))));
      }
    }
    return pairs;
  }

  private static int number(String hex) {
    return Integer.parseInt(hex, RADIX);
  }
}
