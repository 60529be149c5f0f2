package faultfinch.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures with a unit, as typed and as the outcomes of looks have them. */
final class Amounts {
  private static final String FIGURE = "(-?\\d+(?:\\.\\d+)?)";
  private static final String UNIT = "(mv|v|ma|a|hz|khz|mhz|ohms?|kohms?|k)";
  private static final Pattern RANGE =
      Pattern.compile(
          "(?:between )?"
              + FIGURE
              + " ?"
              + UNIT
              + "? ?(?:to|-|and|\\.\\.) ?"
              + FIGURE
              + " ?"
              + UNIT
              + "(?= |$)");
  private static final Pattern SINGLE =
      Pattern.compile("(?<![\\w.])" + FIGURE + " ?" + UNIT + "(?= |$)");
  private static final Pattern BARE = Pattern.compile("(?<![\\w.])-?\\d+\\.\\d{1,2}(?= |$)");
  private static final Pattern BARE_RANGE =
      Pattern.compile("(?<![\\w.])between -?\\d+\\.\\d{1,2} and -?\\d+\\.\\d{1,2}(?= |$)");
  private static final Pattern NOTE = Pattern.compile("\\d+(?= and| Hz)");

  /**
   * So many times as far as the nearest outcome, or such a share of the figure, is about as far.
   */
  private static final double AS_FAR = 3;

  private static final double OF_FIGURE = 0.1;

  /** So far off a pitch may be told. */
  private static final double EAR = 0.02;

  private static final Pattern STEP =
      Pattern.compile("(?:(under|over) )?" + FIGURE + "(?: (k|ohms))?(?: to " + FIGURE + ")? (.+)");
  private static final double LOW_BELOW = 0.5;
  private static final double FINE_BELOW = 2;
  private static final int QUARTERS = 4;
  private static final double HIGH_FROM = 2.9;
  private static final double HIGH_BELOW = 4.6;
  private static final double SUPPLY = 5;
  private static final double SUPPLY_STEP = 0.25;
  private static final double FINE = 0.1;
  private static final double COARSE = 0.2;

  /** Volts of a supply below which it is called dead. */
  private static final double NEXT_TO_NOTHING = 1.01;

  /** Supplies by the figure they are called by, and so far off it they are said to be there. */
  private static final Map<String, Double> NOMINAL = Map.of("5", 0.05, "9", 0.16, "12", 0.05);

  private final Vocabulary vocabulary;

  Amounts(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * A figure as typed.
   *
   * @param kind of look that has this unit
   * @param from and {@code to} in volts, milliamperes, hertz or ohms
   * @param words as typed
   */
  record Amount(String kind, double from, double to, String words) {

    /** Whether an outcome is off what a healthy board shows to the same side as this. */
    boolean isOnTheSideOf(String outcome, String healthy) {
      double[] right = span(kind, healthy).orElse(new double[] {from, to});
      double[] is = span(kind, outcome).orElse(right);
      return to < right[0] && is[1] <= right[0] || from > right[1] && is[0] >= right[1];
    }

    /** How far an outcome is from this, in its unit; 0 if it holds some of it. */
    double distance(String outcome) {
      return Arrays.stream(outcome.split(" or "))
          .flatMap(step -> span(kind, step).stream())
          .mapToDouble(s -> Math.max(0, Math.max(s[0] - to, from - s[1])))
          .min()
          .orElse(Double.POSITIVE_INFINITY);
    }

    /** By how many decades an outcome is off this; 0 if it holds some of it. */
    double decades(String outcome) {
      return span(kind, outcome)
          .map(s -> s[0] > to ? StrictMath.log10(s[0] / to) : StrictMath.log10(from / s[1]))
          .map(off -> Math.max(0, off))
          .orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether an outcome is as far off as the nearest one, or hardly farther. */
    boolean isAboutAsFar(String outcome, double nearest) {
      return distance(outcome) <= Math.max(AS_FAR * nearest, OF_FIGURE * Math.abs(to));
    }

    /** Whether a note of what is heard has this pitch. */
    boolean isHeardIn(String outcome) {
      return NOTE.matcher(outcome)
          .results()
          .mapToDouble(r -> Double.parseDouble(r.group()))
          .anyMatch(hertz -> hertz > from * (1 - EAR) && hertz < to * (1 + EAR));
    }

    /**
     * Whether this and an outcome are both next to nothing of what a supply should have: how little
     * a short leaves is for the regulator to say.
     */
    boolean isLeftByAShort(String outcome, String healthy) {
      double[] is = span(kind, outcome).orElse(new double[] {to, NEXT_TO_NOTHING});
      double[] right = span(kind, healthy).orElse(is);
      return to < NEXT_TO_NOTHING && is[1] <= NEXT_TO_NOTHING && right[0] > HIGH_FROM;
    }

    /** Whether an outcome of the look holds some of it. */
    boolean covers(String outcome) {
      return Arrays.stream(outcome.split(" or "))
          .anyMatch(step -> span(kind, step).map(s -> s[1] > from && s[0] < to).orElse(false));
    }
  }

  /** The first amount in a text in small letters. */
  Optional<Amount> find(String text) {
    Matcher range = RANGE.matcher(text);
    if (range.find()) {
      String unit = range.group(4);
      double from = value(range.group(1), Optional.ofNullable(range.group(2)).orElse(unit));
      double to = value(range.group(3), unit);
      double low = Math.min(from, to);
      double high = Math.max(from, to);
      // Both ends were read: what begins at the upper one is in it.
      return Optional.of(new Amount(kind(unit), low, Math.nextUp(high), range.group()));
    }
    Matcher single = SINGLE.matcher(text);
    if (!single.find()) {
      return Optional.empty();
    }
    String kind = kind(single.group(2));
    double value = value(single.group(1), single.group(2));
    String before = text.substring(0, single.start()).strip();
    if (ends(before, "under")) {
      // Who says of a rail that it is below 4.7 V has not found next to nothing.
      boolean rail = kind.equals("meter") && value >= HIGH_FROM;
      double from = rail ? value / QUARTERS : Double.NEGATIVE_INFINITY;
      return Optional.of(new Amount(kind, from, value, single.group()));
    }
    if (ends(before, "over")) {
      return Optional.of(new Amount(kind, value, Double.POSITIVE_INFINITY, single.group()));
    }
    boolean rounded = single.group(1).matches("[34]") && single.group(2).equals("v");
    if (rounded) {
      // Who says 4 V means a good high, and has not read the dial to its last figure.
      return Optional.of(
          new Amount(kind, Math.min(value - FINE, HIGH_FROM), HIGH_BELOW, single.group()));
    }
    double give =
        kind.equals("meter") && NOMINAL.containsKey(single.group(1))
            ? NOMINAL.get(single.group(1)) * value
            : give(kind, value, ends(before, "about"));
    return Optional.of(new Amount(kind, value - give, value + give, single.group()));
  }

  /**
   * The first figure with a point and no unit, or from one to another, which at a pin are volts.
   */
  Optional<Amount> bare(String text) {
    Matcher between = BARE_RANGE.matcher(text);
    if (between.find()) {
      return find(between.group() + " v");
    }
    Matcher bare = BARE.matcher(text);
    return bare.find()
        ? find(text.substring(0, bare.end()) + " v" + text.substring(bare.end()))
        : Optional.empty();
  }

  private boolean ends(String before, String key) {
    return vocabulary.words(key).stream().anyMatch(w -> (" " + before).endsWith(" " + w));
  }

  /** How far a figure read may be from what the board has. */
  private double give(String kind, double value, boolean about) {
    String of = about ? "about." : "dial.";
    return switch (kind) {
      case "meter" ->
          about
              ? vocabulary.figure("about.meter")
              : vocabulary.figure("dial.meter." + range(Math.abs(value)));
      case "current" -> vocabulary.figure(of + "current");
      default -> Math.abs(value) * vocabulary.figure(of + kind + ".percent") / 100;
    };
  }

  /** Lows and highs of outputs are told by their sort: 0.1 V and 0.2, 3.4 V and 3.8 are one. */
  private static String range(double volts) {
    if (volts < LOW_BELOW) {
      return "low";
    }
    if (volts < FINE_BELOW) {
      return "fine";
    }
    return volts > HIGH_FROM && volts < HIGH_BELOW ? "high" : "coarse";
  }

  private static String kind(String unit) {
    return switch (unit) {
      case "mv", "v" -> "meter";
      case "ma", "a" -> "current";
      case "hz", "khz", "mhz" -> "counter";
      default -> "ohms";
    };
  }

  private static double value(String figure, String unit) {
    double factor =
        switch (unit) {
          case "mv" -> 1e-3;
          case "a", "khz", "k", "kohm", "kohms" -> 1e3;
          case "mhz" -> 1e6;
          default -> 1;
        };
    return Double.parseDouble(figure) * factor;
  }

  /** From where to where an outcome reaches; empty if it is no figure of this kind. */
  private static Optional<double[]> span(String kind, String outcome) {
    Matcher m = STEP.matcher(outcome.toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      return Optional.empty();
    }
    String unit = m.group(5);
    if (kind.equals("meter") && unit.equals("v")) {
      return Optional.of(volts(m.group(2)));
    }
    if (!kind.equals(kind(unit))) {
      return Optional.empty();
    }
    String ownUnit = Optional.ofNullable(m.group(3)).orElse(unit);
    double from = value(m.group(2), ownUnit);
    if (m.group(1) != null) {
      boolean under = m.group(1).equals("under");
      return Optional.of(
          under ? new double[] {0, from} : new double[] {from, Double.POSITIVE_INFINITY});
    }
    // A counter's outcome is one figure; half of its last digit to each side.
    double last = from / 1000;
    return Optional.of(
        m.group(4) == null
            ? new double[] {from - last, from + last}
            : new double[] {from, value(m.group(4), unit)});
  }

  /** The meter's steps have fixed edges, and a supply of 5 V is one step. */
  private static double[] volts(String figure) {
    double from = Double.parseDouble(figure);
    if (List.of("5").contains(figure)) {
      return new double[] {SUPPLY - SUPPLY_STEP, SUPPLY + SUPPLY_STEP};
    }
    return new double[] {from, from + (Math.abs(from) < FINE_BELOW ? FINE : COARSE)};
  }
}
