package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/** How far an observation can be trusted: the figures of observations.properties. */
public final class ErrorRates {
  private static final double ROUNDING = 1e-9;

  private final Properties figures;
  private final String outsideKey;

  /** As they are asked for: thousands of looks have a dozen kinds. */
  private final Map<String, Tier> tiers = new ConcurrentHashMap<>();

  private ErrorRates(Properties figures, String outsideKey) {
    this.figures = figures;
    this.outsideKey = outsideKey;
  }

  /** The figures that come with the program, for boards whose faults we drew ourselves. */
  public static ErrorRates shipped() {
    return new ErrorRates(figures(), "outside");
  }

  /** The same for a real board, of which the fault list holds less. */
  public static ErrorRates desk() {
    return new ErrorRates(figures(), "outside.desk");
  }

  /** The same for a board that is none of ours. */
  public static ErrorRates ownBoard() {
    return new ErrorRates(figures(), "outside.own");
  }

  /**
   * The same with another figure.
   *
   * @param key of observations.properties
   */
  public ErrorRates assuming(String key, double figure) {
    Properties other = new Properties();
    other.putAll(figures);
    other.setProperty(key, Double.toString(figure));
    return new ErrorRates(other, outsideKey);
  }

  /**
   * The same for somebody who has come to believe that it is none of the list and thinks again: any
   * reading may be wrong, and the list is all there is.
   */
  public ErrorRates doubting() {
    return assuming("error.bench", Math.max(bench(), number("doubting.bench")))
        .assuming("error.told", Math.max(told(), number("doubting.told")))
        .assuming(outsideKey, number("doubting.outside"));
  }

  private static Properties figures() {
    Properties figures = new Properties();
    try (InputStream in = ErrorRates.class.getResourceAsStream("observations.properties")) {
      figures.load(in);
    } catch (IOException e) {
      throw new IllegalStateException("observations.properties cannot be read", e);
    }
    return figures;
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
    return tiers.computeIfAbsent(
        kind(look),
        kind -> {
          String word = find("tier." + kind).orElse(Tier.ANY.word());
          return Arrays.stream(Tier.values())
              .filter(tier -> tier.word().equals(word))
              .findFirst()
              .orElse(Tier.ANY);
        });
  }

  /** Whether a person takes this look in at once with others of its sort. */
  boolean together(String look) {
    return list("together").contains(kind(look));
  }

  /** Prior belief in something the fault list does not hold, 0 to 1. */
  double outside() {
    return number(outsideKey);
  }

  /**
   * By how much a board counts less for each tick in which it differs from the one on the table.
   */
  double tick() {
    return number("own.tick");
  }

  /** Chance that a repair happens to cure what the fault list does not hold, 0 to 1. */
  double curedOutside() {
    return number("outside.cured");
  }

  /** Chance that what the fault list does not hold shows other than its likeness in it, 0 to 1. */
  double unlike() {
    return number("outside.unlike");
  }

  /** How much a repair of the same part counts beside one that cures the likeness, 0 to 1. */
  double samePart() {
    return number("outside.same.part");
  }

  /** How much a repair at the same net counts beside one that cures the likeness, 0 to 1. */
  double sameNet() {
    return number("outside.same.net");
  }

  /** Chance that what a fault shows is gone when a part is out that it is not in, 0 to 1. */
  double curedByAnotherOut() {
    return number("out.cures.another");
  }

  /**
   * How many times as likely a fault is after this, above 0.
   *
   * @param kind of the least repair that cures it
   */
  double likelier(History history, RepairAction.Kind kind) {
    return find("history." + history.word() + "." + kind).map(Double::parseDouble).orElse(1.0);
  }

  /**
   * Chance that something done to a part for a moment makes a board work, 0 to 1.
   *
   * @param where the fault is, seen from the part: inside, contact or elsewhere
   */
  double helps(Hint.How how, String where) {
    return number("helps." + how.word() + "." + where);
  }

  /** Chance that a board with one fault has another one too, 0 to 1. */
  double another() {
    return number("another");
  }

  /** Chance that another fault meddles with what a fault shows, 0 to 1. */
  double meddles() {
    return number("another.meddles");
  }

  /**
   * How sharply the row that has most in common with what no row shows stands out: by so many more
   * natural logarithms for each share of the signs in common, above 0.
   */
  double sharpness() {
    return number("unheard.sharpness");
  }

  /** Of what no row shows, the share that need not be like any, 0 to 1. */
  double likeNone() {
    return number("unheard.like.none");
  }

  /** Chance that a board is brought though its only fault shows an owner nothing, 0 to 1. */
  double unnoticed() {
    return number("unnoticed");
  }

  /** Chance that a repair that should cure does not, 0 to 1. */
  double repairFails() {
    return number("repair.fails");
  }

  /** Share of faults that wait for a board to be cold or warm, 0 to 1. */
  double waits() {
    return number("waits");
  }

  /** Share of faults of contact that come and go, 0 to 1. */
  double contactsComeAndGo() {
    return number("comes.and.goes.contacts");
  }

  /** Share of faults that come and go, 0 to 1. */
  double comesAndGoes() {
    return number("comes.and.goes");
  }

  /**
   * One entry in words never counts against a fault by more than one in so many: it may have been
   * misread, and who speaks of many lines has not looked at each.
   */
  double floor(Observation observation) {
    return switch (observation.source()) {
      case BENCH -> 0;
      case WORDS -> (1 - error(observation)) / number("words.floor");
      case TOLD -> (1 - error(observation)) / number("told.floor");
    };
  }

  /** Chance that what an observation says is not what the board shows, 0 to a half. */
  double error(Observation observation) {
    double error = error(observation.source(), kind(observation.looks().get(0)));
    double factor =
        switch (observation.doubt()) {
          case SURE -> 1;
          case FAIRLY -> number("doubt.fairly");
          case HARDLY -> number("doubt.hardly");
        };
    return Math.min(number("doubt.most"), error * factor);
  }

  private double error(Observation.Source source, String kind) {
    if (source != Observation.Source.TOLD) {
      return number("error.bench");
    }
    return find("error.told." + kind)
        .map(Double::parseDouble)
        .orElseGet(() -> number("error.told"));
  }

  /**
   * Chance of taking what a look shows for one of some outcomes.
   *
   * @param error chance of any mistake
   * @param meant the outcomes noted
   * @param outcomes how many outcomes the look has
   */
  double taken(String look, String shown, List<String> meant, int outcomes, double error) {
    if (meant.contains(shown)) {
      return 1 - error;
    }
    String kind = kind(look);
    double share = number("confusion.share");
    Confusions confusions = confusions(kind);
    double sum = 0;
    boolean named = false;
    for (String noted : meant) {
      if (confusions.have(shown, noted)) {
        named = true;
      } else {
        sum += error * (1 - share) / Math.max(1, outcomes - 1);
      }
    }
    return Math.min(error, sum + (named ? error * share : 0));
  }

  /** Outcomes of a look for which this one is easily taken. */
  public List<String> confusions(String look, String shown, List<String> outcomes) {
    Confusions confusions = confusions(kind(look));
    return outcomes.stream().filter(o -> !o.equals(shown) && confusions.have(shown, o)).toList();
  }

  /** Chance that a reading of the bench is wrong, 0 to 1. */
  public double bench() {
    return number("error.bench");
  }

  /** Chance that what a person tells is wrong, 0 to 1; of a few kinds of look it is another. */
  public double told() {
    return number("error.told");
  }

  /** Of mistakes, the share that goes to such outcomes. */
  public double confusionShare() {
    return number("confusion.share");
  }

  /**
   * What is easily taken for what, of one kind of look; asked of each outcome with each.
   *
   * @param pairs what is shown and what is seen with {@code >} between them
   * @param near how far figures can be apart, if they are
   */
  private record Confusions(List<String> pairs, Optional<Double> near) {

    boolean have(String shown, String seen) {
      return !pairs.isEmpty() && pairs.contains(shown + ">" + seen)
          || near.isPresent() && Steps.near(shown, seen, near.get() + ROUNDING);
    }
  }

  private Confusions confusions(String kind) {
    return new Confusions(list("confusion." + kind), find("near." + kind).map(Double::parseDouble));
  }

  /** The word a look begins with. */
  static String kind(String look) {
    int space = look.indexOf(' ');
    return space < 0 ? look : look.substring(0, space);
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
