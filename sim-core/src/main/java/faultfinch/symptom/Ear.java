package faultfinch.symptom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/**
 * Takes pitches, noise, brightness and loudness out of samples, knowing nothing of what made them.
 *
 * <p>The voices of these boards are square: a strong line is a pitch unless it is an odd multiple
 * of a lower pitch. Noise is what stands between the lines.
 *
 * <p>Not modelled: a voice at an odd multiple of another is taken for its overtone; two voices less
 * than 45 Hz apart are one pitch.
 */
final class Ear {
  /** Samples a second it wants. */
  static final int RATE = 22_050;

  private static final int STEP_MS = 20;
  private static final int SHORTEST_MS = 60;

  /** Root mean square in samples: below the first nothing is heard. */
  private static final double SILENT = 0.002 * Speaker.VOLT;

  private static final double SOFT = 0.03 * Speaker.VOLT;
  private static final double LOUD = 0.15 * Speaker.VOLT;

  private static final double LOWEST = 60;
  private static final double HIGHEST = 5000;

  /** A pitch has at least this share of the strongest line's power: -17 dB. */
  private static final double WEAKEST = 0.02;

  /** How far a pitch stands out of the lines around it: 16 dB in power. */
  private static final double STANDS_OUT = 40;

  private static final int AROUND = 32;

  /** A Hann window spreads a line over two to either side. */
  private static final int SPREAD = 3;

  private static final double NOISE_FROM = 0.12;
  private static final double BRIGHT_FROM = 3000;
  private static final double BRIGHT_TO = 10_000;

  /** Overtones against a plain square wave's, in power: -3 dB and 8 dB. */
  private static final double DULL_BELOW = 0.5;

  private static final double SHRILL_ABOVE = 6.3;

  /** What is heard in the middle of one step. */
  private record Instant(TreeSet<Integer> pitches, boolean noise, double level, double bright) {
    static final Instant SILENCE = new Instant(new TreeSet<>(), false, 0, 0);

    boolean silent() {
      return level == 0;
    }

    boolean like(Instant other) {
      return silent() == other.silent() && pitches.equals(other.pitches) && noise == other.noise;
    }
  }

  private Ear() {}

  /**
   * Stretches of sound, in order.
   *
   * @param sound at {@link #RATE}
   * @param startMilliseconds time of its first sample since power-on
   */
  static List<Heard> hears(Sound sound, int startMilliseconds) {
    short[] samples = sound.samples();
    int hop = RATE * STEP_MS / 1000;
    List<Instant> instants = new ArrayList<>();
    for (int from = 0; from + hop <= samples.length; from += hop) {
      instants.add(instant(samples, from, hop));
    }
    smooth(instants);
    List<Heard> heard = new ArrayList<>();
    int i = 0;
    while (i < instants.size()) {
      int end = end(instants, i);
      if (!instants.get(i).silent()) {
        heard.add(heard(instants.subList(i, end), startMilliseconds + i * STEP_MS));
      }
      i = end;
    }
    return List.copyOf(heard);
  }

  private static int end(List<Instant> instants, int from) {
    int end = from + 1;
    while (end < instants.size() && instants.get(end).like(instants.get(from))) {
      end++;
    }
    return end;
  }

  /** Where one sound goes over into another, the window sees both: too short to be heard so. */
  private static void smooth(List<Instant> instants) {
    int i = 0;
    Instant last = Instant.SILENCE;
    while (i < instants.size()) {
      int end = end(instants, i);
      boolean brief = (end - i) * STEP_MS < SHORTEST_MS && !instants.get(i).silent();
      if (brief && !last.silent()) {
        Collections.fill(instants.subList(i, end), last);
      } else if (brief && end < instants.size() && !instants.get(end).silent()) {
        Collections.fill(instants.subList(i, end), instants.get(end));
        end = end(instants, i);
        last = instants.get(i);
      } else {
        last = instants.get(i);
      }
      i = end;
    }
  }

  private static Heard heard(List<Instant> same, int from) {
    double loudest = same.stream().mapToDouble(Instant::level).max().orElse(0);
    double bright = same.stream().mapToDouble(Instant::bright).average().orElse(0);
    Instant first = same.get(0);
    Heard.Loudness loudness =
        loudest < SOFT
            ? Heard.Loudness.FAINT
            : loudest < LOUD ? Heard.Loudness.SOFT : Heard.Loudness.LOUD;
    Heard.Brightness brightness =
        first.pitches().isEmpty() || first.noise()
            ? Heard.Brightness.NONE
            : bright < DULL_BELOW
                ? Heard.Brightness.DULL
                : bright > SHRILL_ABOVE ? Heard.Brightness.SHRILL : Heard.Brightness.CLEAR;
    return new Heard(
        List.copyOf(first.pitches()),
        first.noise(),
        brightness,
        loudness,
        from,
        same.size() * STEP_MS);
  }

  private static Instant instant(short[] samples, int from, int hop) {
    double square = 0;
    for (int i = from; i < from + hop; i++) {
      square += (double) samples[i] * samples[i];
    }
    double level = StrictMath.sqrt(square / hop);
    if (level < SILENT) {
      return Instant.SILENCE;
    }
    Spectrum spectrum = new Spectrum(samples, from + hop / 2 - Spectrum.SAMPLES / 2, RATE);
    List<Integer> lines = pitches(spectrum);
    TreeSet<Integer> pitches = new TreeSet<>();
    lines.forEach(line -> pitches.add(Tones.semitone(spectrum.hertz(line))));
    boolean noise = lines.isEmpty() || noisy(spectrum, lines);
    return new Instant(pitches, noise, level, lines.isEmpty() ? 0 : bright(spectrum, lines));
  }

  private static List<Integer> pitches(Spectrum spectrum) {
    int low = spectrum.line(LOWEST);
    int high = spectrum.line(HIGHEST);
    double strongest = 0;
    for (int k = low; k < high; k++) {
      strongest = Math.max(strongest, spectrum.power(k));
    }
    List<Integer> pitches = new ArrayList<>();
    for (int k = low; k < high; k++) {
      if (spectrum.peak(k)
          && spectrum.power(k) >= WEAKEST * strongest
          && standsOut(spectrum, k)
          && !overtone(spectrum, pitches, k)) {
        pitches.add(k);
      }
    }
    return pitches;
  }

  private static boolean standsOut(Spectrum spectrum, int line) {
    List<Double> around = new ArrayList<>();
    for (int k = line - AROUND; k <= line + AROUND; k++) {
      if (k > 0 && Math.abs(k - line) > SPREAD) {
        around.add(spectrum.power(k));
      }
    }
    Collections.sort(around);
    return spectrum.power(line) > STANDS_OUT * around.get(around.size() / 2);
  }

  private static boolean overtone(Spectrum spectrum, List<Integer> pitches, int line) {
    double hertz = spectrum.hertz(line);
    for (int pitch : pitches) {
      double times = hertz / spectrum.hertz(pitch);
      double odd = 2 * StrictMath.rint((times - 1) / 2) + 1;
      double off = Math.abs(hertz - odd * spectrum.hertz(pitch));
      if (odd > 1 && spectrum.line(off) < SPREAD) {
        return true;
      }
    }
    return false;
  }

  /** Share of the power that lies neither in a pitch nor in one of its overtones. */
  private static boolean noisy(Spectrum spectrum, List<Integer> pitches) {
    boolean[] toned = new boolean[spectrum.lines()];
    for (int pitch : pitches) {
      double base = spectrum.hertz(pitch);
      for (int n = 1; spectrum.line(n * base) < toned.length; n++) {
        int middle = spectrum.line(n * base);
        for (int k = middle - SPREAD; k <= middle + SPREAD; k++) {
          if (k >= 0 && k < toned.length) {
            toned[k] = true;
          }
        }
      }
    }
    double rest = 0;
    for (int k = 0; k < toned.length; k++) {
      rest += toned[k] ? 0 : spectrum.power(k);
    }
    return rest > NOISE_FROM * spectrum.power(0, toned.length);
  }

  /** High overtones against what square waves of these pitches and strengths would have. */
  private static double bright(Spectrum spectrum, List<Integer> pitches) {
    double right = 0;
    for (int pitch : pitches) {
      double strength = spectrum.power(pitch - SPREAD, pitch + SPREAD + 1);
      double base = spectrum.hertz(pitch);
      for (int n = 1; n * base < BRIGHT_TO; n += 2) {
        right += n * base >= BRIGHT_FROM ? strength / n / n : 0;
      }
    }
    double is = spectrum.power(spectrum.line(BRIGHT_FROM), spectrum.line(BRIGHT_TO));
    return right == 0 ? 1 : is / right;
  }
}
