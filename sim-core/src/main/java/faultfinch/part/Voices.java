package faultfinch.part;

import faultfinch.signal.State;
import java.util.Arrays;
import java.util.function.ToLongFunction;

/**
 * What a tone generator sounds from a moment on, as its registers stand: a sum of square voices and
 * noise, worked out for any span of cycles. Times are processor cycles since power-on.
 */
public final class Voices {
  private static final int LOUDEST = 15;
  private static final int DECAY_STEPS = 16;
  private static final int SOURCES = 3;

  private final long[] step;
  private final long[] from;
  private final int[] loudness;
  private final boolean[] decays;
  private final long decayStep;
  private final long decayFrom;
  private final long noise;
  private final long noiseFrom;
  private final long noiseAt;

  private final long[] words;

  private Voices(ToLongFunction<State> word) {
    words = ToneGenerator.WORDS.stream().mapToLong(word).toArray();
    step =
        new long[] {
          word.applyAsLong(ToneGenerator.HALF_A) * ToneGenerator.VOICE_STEP,
          word.applyAsLong(ToneGenerator.HALF_B) * ToneGenerator.VOICE_STEP
        };
    from =
        new long[] {word.applyAsLong(ToneGenerator.FROM_A), word.applyAsLong(ToneGenerator.FROM_B)};
    int loud = (int) word.applyAsLong(ToneGenerator.LOUDNESS);
    int shared = (int) word.applyAsLong(ToneGenerator.SHARED);
    loudness = new int[] {loud & 0xF, loud >>> 4, shared & 0xF};
    decays = new boolean[] {(shared & 0x10) != 0, (shared & 0x20) != 0, (shared & 0x40) != 0};
    decayStep = word.applyAsLong(ToneGenerator.DECAY) * ToneGenerator.DECAY_STEP;
    decayFrom = word.applyAsLong(ToneGenerator.FROM_DECAY);
    noise = word.applyAsLong(ToneGenerator.NOISE);
    noiseFrom = word.applyAsLong(ToneGenerator.FROM_NOISE);
    noiseAt = word.applyAsLong(ToneGenerator.NOISE_AT);
  }

  /** Takes them from the words of a tone generator. */
  public static Voices of(ToLongFunction<State> word) {
    return new Voices(word);
  }

  /** Whether the registers stood the same, so that from either the same sounds. */
  public boolean same(Voices other) {
    return Arrays.equals(words, other.words);
  }

  /** Whether nothing sounds, now or later. */
  public boolean silent() {
    return (step[0] == 0 || loudness[0] == 0)
        && (step[1] == 0 || loudness[1] == 0)
        && (noise == 0 || loudness[2] == 0);
  }

  /**
   * Mean of the sum over a span, between -1 (all at their loudest, low) and 1.
   *
   * @param to after start
   */
  public double mean(double start, double to) {
    double sum = 0;
    for (int voice = 0; voice < step.length; voice++) {
      if (step[voice] != 0 && loudness[voice] != 0) {
        double area = area(to - from[voice], step[voice]) - area(start - from[voice], step[voice]);
        sum += share(voice, start) * area / (to - start);
      }
    }
    if (noise != 0 && loudness[2] != 0) {
      sum += share(2, start) * noise(start, to);
    }
    return sum / SOURCES;
  }

  private double share(int source, double at) {
    double full = (double) loudness[source] / LOUDEST;
    if (!decays[source] || decayStep == 0 || at < decayFrom) {
      return full;
    }
    double gone = StrictMath.floor((at - decayFrom) / decayStep);
    return full * Math.max(0, DECAY_STEPS - gone) / DECAY_STEPS;
  }

  /** Area under a square wave from its beginning, low first; whole periods cancel. */
  private static double area(double since, long step) {
    if (since <= 0) {
      return 0;
    }
    double within = since % (2.0 * step);
    return within < step ? -within : within - 2.0 * step;
  }

  private double noise(double start, double to) {
    double unit = (double) noise * ToneGenerator.NOISE_STEP;
    double area = 0;
    double at = Math.max(start, noiseFrom);
    while (at < to) {
      double steps = StrictMath.floor((at - noiseFrom) / unit);
      double end = Math.min(to, noiseFrom + (steps + 1) * unit);
      boolean high = Noise.high((int) ((noiseAt + (long) steps) % Noise.ROUND));
      area += (end - at) * (high ? 1 : -1);
      at = end;
    }
    return area / (to - start);
  }

  /** Level of a voice's pin: low first, the other level every n steps; 0 stands low. */
  static boolean high(long half, long since) {
    long step = half * ToneGenerator.VOICE_STEP;
    return step != 0 && since / step % 2 == 1;
  }
}
