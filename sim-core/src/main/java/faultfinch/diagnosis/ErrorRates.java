package faultfinch.diagnosis;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How far an observation can be trusted: the figures of observations.properties. */
public final class ErrorRates {
  private static final Pattern AMOUNT = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(.*)");
  private static final double ROUNDING = 1e-9;

  private final Properties figures;

  private ErrorRates(Properties figures) {
    this.figures = figures;
  }

  /** The figures that come with the program. */
  public static ErrorRates shipped() {
    Properties figures = new Properties();
    try (InputStream in = ErrorRates.class.getResourceAsStream("observations.properties")) {
      figures.load(in);
    } catch (IOException e) {
      throw new IllegalStateException("observations.properties cannot be read", e);
    }
    return new ErrorRates(figures);
  }

  /** Who can make a look. */
  public enum Tier {
    OWNER("owner"),
    BENCH_ROM("bench-rom"),
    POWERED("powered"),
    ANY("any");

    private final String word;

    Tier(String word) {
      this.word = word;
    }

    /** As the figures and commands name it. */
    public String word() {
      return word;
    }
  }

  /** Who can make this look; a look of an unknown kind counts as the rarest. */
  public Tier tier(String look) {
    String word = find("tier." + kind(look)).orElse(Tier.ANY.word());
    return Arrays.stream(Tier.values())
        .filter(tier -> tier.word().equals(word))
        .findFirst()
        .orElse(Tier.ANY);
  }

  /** Whether a person takes this look in at once with others of its sort. */
  boolean together(String look) {
    return list("together").contains(kind(look));
  }

  /** Prior belief in something the fault list does not hold, 0 to 1. */
  double outside() {
    return number("outside");
  }

  /** Chance that a repair that should cure does not, 0 to 1. */
  double repairFails() {
    return number("repair.fails");
  }

  /** Chance that an outcome is noted as it is, 0 to 1. */
  double right(Observation observation) {
    return 1 - error(observation);
  }

  /**
   * Chance of noting what the observation says if the board shows {@code shown}.
   *
   * @param outcomes how many outcomes the look has
   */
  double likelihood(Observation observation, String shown, int outcomes) {
    double error = error(observation);
    if (observation.seen().equals(shown)) {
      return 1 - error;
    }
    String kind = kind(observation.look());
    double share = number("confusion.share");
    double wrong =
        confused(kind, shown, observation.seen())
            ? error * share
            : error * (1 - share) / Math.max(1, outcomes - 1);
    return observation.source() == Observation.Source.TOLD
        ? Math.max(wrong, (1 - error) / number("told.floor"))
        : wrong;
  }

  private double error(Observation observation) {
    if (observation.source() == Observation.Source.BENCH) {
      return number("error.bench");
    }
    return find("error.told." + kind(observation.look()))
        .map(Double::parseDouble)
        .orElseGet(() -> number("error.told"));
  }

  private boolean confused(String kind, String shown, String seen) {
    if (list("confusion." + kind).contains(shown + ">" + seen)) {
      return true;
    }
    Optional<Double> near = find("near." + kind).map(Double::parseDouble);
    Matcher a = AMOUNT.matcher(shown);
    Matcher b = AMOUNT.matcher(seen);
    return near.isPresent()
        && a.matches()
        && b.matches()
        && a.group(2).equals(b.group(2))
        && Math.abs(Double.parseDouble(a.group(1)) - Double.parseDouble(b.group(1)))
            <= near.get() + ROUNDING;
  }

  /** The word a look begins with. */
  static String kind(String look) {
    return look.split(" ", 2)[0];
  }

  private List<String> list(String key) {
    return find(key).map(l -> Arrays.asList(l.split(", *"))).orElse(List.of());
  }

  private double number(String key) {
    return Double.parseDouble(
        find(key)
            .orElseThrow(
                () -> new IllegalStateException("observations.properties lacks '" + key + "'")));
  }

  private Optional<String> find(String key) {
    return Optional.ofNullable(figures.getProperty(key)).map(String::trim);
  }
}
