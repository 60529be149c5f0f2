package faultfinch.desk;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which lines a round of the bench ROM found differing, as far as its stations can be read and
 * differ from those of a healthy board, whose ports differ too where no leads join them. A ribbon
 * is drawn from line 7 to line 0, in whatever signs the picture makes of it.
 *
 * @param gaps lines with a gap in some ribbon, bit by bit
 * @param low lines that some station wrote high and read low
 * @param high lines that some station wrote low and read high
 */
record Stations(int gaps, int low, int high) {
  private static final int LINES = 8;
  private static final int ALL = (1 << LINES) - 1;
  private static final int RADIX = 16;

  private static final Pattern STATION =
      Pattern.compile(
          "(?i)station (\\d\\d) wrote ([0-9a-f]{2}), read ([0-9a-f]{2}) at page[ ;]*[0-9a-f]{2}:"
              + " \\d{3} of \\d{3} differ\\.? +(\\S{8})(?=[; ]|$)");

  /** What a round begins with, as far as one row of the picture goes. */
  private static final Pattern SENTENCE = Pattern.compile("^Station .*? at page(?= )");

  /** One station: what it wrote and read, and its ribbon. */
  private record Station(int wrote, int read, String ribbon) {
    static Station of(MatchResult m) {
      return new Station(
          Integer.parseInt(m.group(2), RADIX), Integer.parseInt(m.group(3), RADIX), m.group(4));
    }
  }

  /** The lines of a round; empty if none of its stations can be read. */
  static Optional<Stations> of(String round, String healthy) {
    Map<Integer, Station> told = read(round);
    Map<Integer, Station> well = read(healthy);
    if (told.isEmpty()) {
      return Optional.empty();
    }
    // Whole is the sign of a line of the first ribbon that most lines have.
    char whole = most(told.values().iterator().next().ribbon);
    int gaps = 0;
    int low = 0;
    int high = 0;
    for (Map.Entry<Integer, Station> e : told.entrySet()) {
      Station station = e.getValue();
      Station usual = well.get(e.getKey());
      boolean itself = usual != null && usual.wrote != usual.read;
      if (itself || station.equals(usual)) {
        continue;
      }
      low |= station.wrote & ~station.read & ALL;
      high |= ~station.wrote & station.read & ALL;
      for (int i = 0; i < LINES; i++) {
        gaps |= station.ribbon.charAt(i) == whole ? 0 : 1 << (LINES - 1 - i);
      }
    }
    return Optional.of(new Stations(gaps | low | high, low, high));
  }

  /**
   * The lines of a round that cannot be read for being written into bad memory: those in which the
   * letters of its first sentence are others than a healthy board's. A set that shows it so for a
   * reason of its own is not told from that.
   */
  static Optional<Stations> spoilt(String round, String healthy) {
    Matcher m = SENTENCE.matcher(healthy);
    if (!m.find() || round.length() < m.end()) {
      return Optional.empty();
    }
    int low = 0;
    int high = 0;
    for (int i = 0; i < m.end(); i++) {
      char right = healthy.charAt(i);
      char shown = round.charAt(i);
      // What memory holds of a figure may be another figure.
      if (Character.isLetter(right) && Character.isLowerCase(right) && shown != ' ') {
        low |= right & ~shown;
        high |= shown & ~right;
      }
    }
    int lines = low | high;
    return Integer.bitCount(lines) == 1
        ? Optional.of(new Stations(lines, low, high))
        : Optional.empty();
  }

  /** Whether a byte written and read so, wherever, goes with these lines. */
  boolean allow(int wrote, int read) {
    int lost = wrote & ~read & ALL;
    int gained = ~wrote & read & ALL;
    boolean differing = ((lost | gained) & ~gaps) == 0 && (lost & ~(low | gaps & ~high)) == 0;
    boolean well = (wrote & read & low) == 0 && (~wrote & ~read & high & ALL) == 0;
    return differing && (gained & ~(high | gaps & ~low)) == 0 && well;
  }

  boolean hasGap(int line) {
    return (gaps >> line & 1) == 1;
  }

  boolean isWell() {
    return gaps == 0;
  }

  /** Whether all lines differ. */
  boolean isAll() {
    return gaps == ALL;
  }

  private static Map<Integer, Station> read(String round) {
    Map<Integer, Station> stations = new LinkedHashMap<>();
    Matcher m = STATION.matcher(round);
    while (m.find()) {
      stations.putIfAbsent(Integer.parseInt(m.group(1)), Station.of(m.toMatchResult()));
    }
    return stations;
  }

  private static char most(String ribbon) {
    return (char)
        ribbon
            .chars()
            .boxed()
            .max(Comparator.comparingLong(c -> ribbon.chars().filter(other -> other == c).count()))
            .orElseThrow()
            .intValue();
  }
}
