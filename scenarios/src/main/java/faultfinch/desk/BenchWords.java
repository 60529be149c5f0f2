package faultfinch.desk;

import faultfinch.bench.BenchRom;
import faultfinch.diagnosis.Sight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a round of the bench ROM says of its stations and of the lines of their ribbons. */
final class BenchWords {
  static final String LOOK = BenchRom.ALONE.look();

  private static final Pattern STATION = Pattern.compile("(?<= |^)station (\\d{1,2})(?= |$)");
  private static final Pattern BIT =
      Pattern.compile("(?<= |^)(?:bit|line|data line|gap at|d) ?([0-7])(?= |$)");
  private static final Pattern SPOKEN =
      Pattern.compile("(?<= |^)(station|stations|ribbon|bench rom|ram test|memory test)(?= |$)");

  private static final Pattern WROTE =
      Pattern.compile("(?<= |^)(?:wrote|sent|writes) ([0-9a-f]{2})(?=[ ,]|$)");
  private static final Pattern READ =
      Pattern.compile("(?<= |^)(?:read|reads|got|gets|received|had) ([0-9a-f]{2})(?=[ ,]|$)");
  private static final Pattern PAGE = Pattern.compile("(?<= |^)page ([0-9a-f]{2})(?=[ ,]|$)");

  /** A ribbon from line 7 to line 0. */
  private static final Pattern RIBBON = Pattern.compile("(?<= )[=.]{8}(?=;|$| )");

  private static final int HIGHEST = 7;

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;

  BenchWords(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
  }

  /** Whether a station is named, in small letters. */
  static boolean isOfAStation(String text) {
    return STATION.matcher(text).find();
  }

  /** Whether what was written and what came back are told, which belong together. */
  static boolean isOfBytes(String text) {
    return WROTE.matcher(text).find() || READ.matcher(text).find() && PAGE.matcher(text).find();
  }

  /** What is said of a station or a line, in small letters; empty if it is nothing of the sort. */
  Optional<Phrases.Finding> find(String text) {
    if (!lookbook.looks().contains(LOOK) || !SPOKEN.matcher(text).find()) {
      return Optional.empty();
    }
    Optional<Phrases.Finding> bytes = bytes(text);
    if (bytes.isPresent()) {
      return bytes;
    }
    boolean well = Vocabulary.in(text, vocabulary.words("bench.well")).isPresent();
    List<Predicate<String>> said = new ArrayList<>();
    Matcher station = STATION.matcher(text);
    if (station.find()) {
      int number = Integer.parseInt(station.group(1));
      said.add(outcome -> differing(outcome, number).filter(d -> d != well).isPresent());
    }
    Matcher bit = BIT.matcher(text);
    if (bit.find()) {
      int line = Integer.parseInt(bit.group(1));
      said.add(outcome -> hasGap(outcome, line) != well);
    }
    List<String> meant =
        lookbook.outcomes(LOOK).stream()
            .filter(o -> said.stream().allMatch(s -> s.test(o)))
            .toList();
    return said.isEmpty() || meant.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Phrases.Finding(LOOK, text, List.of(new Sight(List.of(LOOK), meant)), true));
  }

  /** A round in which some station, or this one, wrote and read just so. */
  private Optional<Phrases.Finding> bytes(String text) {
    if (!isOfBytes(text)) {
      return Optional.empty();
    }
    Matcher station = STATION.matcher(text);
    String number =
        station.find() ? String.format("%02d", Integer.parseInt(station.group(1))) : "\\d\\d";
    String line =
        "Station %s wrote %s, read %s at page %s:"
            .formatted(number, hex(WROTE, text), hex(READ, text), hex(PAGE, text));
    Pattern told = Pattern.compile(line);
    List<String> meant =
        lookbook.outcomes(LOOK).stream().filter(o -> told.matcher(o).find()).toList();
    return meant.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Phrases.Finding(LOOK, text, List.of(new Sight(List.of(LOOK), meant)), true));
  }

  private static String hex(Pattern which, String text) {
    Matcher m = which.matcher(text);
    return m.find() ? m.group(1).toUpperCase(Locale.ROOT) : "[0-9A-F]{2}";
  }

  /** Whether a station says that something differed; empty if it cannot be read. */
  private static Optional<Boolean> differing(String outcome, int station) {
    Matcher m =
        Pattern.compile(String.format("Station %02d [^;]*: (\\d{3}) of", station)).matcher(outcome);
    return m.find() ? Optional.of(Integer.parseInt(m.group(1)) > 0) : Optional.empty();
  }

  private static boolean hasGap(String outcome, int line) {
    return RIBBON.matcher(outcome).results().anyMatch(r -> r.group().charAt(HIGHEST - line) == '.');
  }
}
