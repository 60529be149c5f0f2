package faultfinch.bench;

import faultfinch.bench.Reading.Amount;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Puts numbers on the dials of the instruments, in the steps a hand can read. */
final class Dial {
  private static final int FINE_MV = 100;
  private static final int TENTH_MV = 100;
  private static final int COARSE_MV = 200;
  private static final int FINE_BELOW_MV = 2000;
  private static final int SUPPLY_FROM_MV = 4750;
  private static final int SUPPLY_TO_MV = 5250;
  private static final String SUPPLY = "5 V";
  private static final int CURRENT_MA = 50;
  private static final int CELSIUS = 5;
  private static final double LEAST_TRACK_MV = 0.02;
  private static final int[] OHMS = {10, 100, 1_000, 10_000, 100_000};
  private static final String[] OHM_STEPS = {
    "under 10 ohms", "10 to 100 ohms", "100 ohms to 1 k", "1 k to 10 k", "10 k to 100 k"
  };
  private static final String NO_WAY = "over 100 k";

  private Dial() {}

  /**
   * Volts in steps of 0.1 V below 2 V, of 0.2 V above. The steps have fixed edges; all that a
   * supply of 5 V may be is one step, since healthy boards differ by as much.
   */
  static Amount volts(int millivolts) {
    int step = Math.abs(millivolts) < FINE_BELOW_MV ? FINE_MV : COARSE_MV;
    String text = volts(StrictMath.rint((double) millivolts / step) * step);
    boolean supply = millivolts >= SUPPLY_FROM_MV && millivolts <= SUPPLY_TO_MV;
    String feature = supply ? SUPPLY : volts((double) Math.floorDiv(millivolts, step) * step);
    return new Amount(text, feature);
  }

  /** With one decimal; written out, since a survey shows hundreds. */
  private static String volts(double millivolts) {
    long tenths = StrictMath.round(millivolts / TENTH_MV);
    return (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + "." + Math.abs(tenths) % 10 + " V";
  }

  /** Milliamperes in steps of 50 with fixed edges. */
  static Amount current(int milliamperes) {
    int from = milliamperes / CURRENT_MA * CURRENT_MA;
    return new Amount(milliamperes + " mA", from + " to " + (from + CURRENT_MA) + " mA");
  }

  /** Tenths of a degree Celsius in steps of 5 degrees with fixed edges. */
  static Amount celsius(int tenths) {
    int from = Math.floorDiv(tenths, 10 * CELSIUS) * CELSIUS;
    return new Amount(
        Math.round(tenths / 10.0f) + " degrees", from + " to " + (from + CELSIUS) + " degrees");
  }

  /** Hertz in three figures. */
  static Amount frequency(double hertz) {
    if (hertz == 0) {
      return new Amount("nothing to count", "0 Hz");
    }
    String text =
        hertz >= 1e6
            ? String.format(Locale.ROOT, "%.2f MHz", hertz / 1e6)
            : hertz >= 1e5
                ? String.format(Locale.ROOT, "%.0f kHz", hertz / 1e3)
                : hertz >= 1e3
                    ? String.format(Locale.ROOT, "%.1f kHz", hertz / 1e3)
                    : String.format(Locale.ROOT, "%.0f Hz", hertz);
    return new Amount(text, text);
  }

  /** Milliohms along a track, in steps of a factor of two. */
  static Amount milliohms(OptionalDouble ohms) {
    if (ohms.isEmpty()) {
      return new Amount("no way", "no way");
    }
    double milliohms = 1000 * ohms.getAsDouble();
    return new Amount(
        String.format(Locale.ROOT, "%.1f milliohms", milliohms), octave(milliohms, "milliohms"));
  }

  /**
   * Millivolts from one pad to another, in hundredths; the sign tells which way the current goes.
   * Differences count by direction and in steps of a factor of two.
   */
  static Amount microvolts(OptionalDouble millivolts, String fromTo) {
    if (millivolts.isEmpty()) {
      return new Amount("no way from one to the other", "no way");
    }
    double mv = StrictMath.rint(millivolts.getAsDouble() * 100) / 100;
    String text = String.format(Locale.ROOT, "%.2f mV", mv + 0.0);
    if (Math.abs(mv) < LEAST_TRACK_MV) {
      return new Amount(text, "nothing");
    }
    String way = mv > 0 ? "flows " + fromTo : "flows against " + fromTo;
    return new Amount(text + ", " + way, way + ", " + octave(Math.abs(mv), "mV"));
  }

  private static String octave(double figure, String unit) {
    double from = StrictMath.pow(2, StrictMath.floor(StrictMath.log(figure) / StrictMath.log(2)));
    return String.format(Locale.ROOT, "%s to %s %s", number(from), number(2 * from), unit);
  }

  private static String number(double figure) {
    return figure >= 1
        ? String.format(Locale.ROOT, "%.0f", figure)
        : String.format(Locale.ROOT, "%.2g", figure);
  }

  /** Ohms by decades. */
  static Amount ohms(OptionalInt ohms) {
    String text = NO_WAY;
    for (int i = OHMS.length - 1; i >= 0; i--) {
      if (ohms.isPresent() && ohms.getAsInt() < OHMS[i]) {
        text = OHM_STEPS[i];
      }
    }
    return new Amount(text, text);
  }
}
