package faultfinch.symptom;

/** Strengths of the frequencies in a short stretch of sound, under a Hann window. */
final class Spectrum {
  /** Samples looked at together. */
  static final int SAMPLES = 2048;

  private static final double[] WINDOW = new double[SAMPLES];
  private static final double[] SINE = new double[SAMPLES / 2];
  private static final double[] COSINE = new double[SAMPLES / 2];

  static {
    for (int i = 0; i < SAMPLES; i++) {
      WINDOW[i] = 0.5 - 0.5 * StrictMath.cos(2 * StrictMath.PI * i / SAMPLES);
    }
    for (int i = 0; i < SAMPLES / 2; i++) {
      SINE[i] = StrictMath.sin(2 * StrictMath.PI * i / SAMPLES);
      COSINE[i] = StrictMath.cos(2 * StrictMath.PI * i / SAMPLES);
    }
  }

  private final double hertzPerLine;
  private final double[] power = new double[SAMPLES / 2];

  /**
   * Takes the samples from a place on; what lies beyond either end is silent.
   *
   * @param rate samples a second
   */
  Spectrum(short[] samples, int from, int rate) {
    hertzPerLine = (double) rate / SAMPLES;
    double[] re = new double[SAMPLES];
    double[] im = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      int at = from + i;
      re[i] = at < 0 || at >= samples.length ? 0 : samples[at] * WINDOW[i];
    }
    transform(re, im);
    for (int k = 0; k < power.length; k++) {
      power[k] = re[k] * re[k] + im[k] * im[k];
    }
  }

  /** Fast Fourier transform in place, decimation in time after Cooley and Tukey (1965). */
  private static void transform(double[] re, double[] im) {
    int bits = Integer.numberOfTrailingZeros(SAMPLES);
    for (int i = 0; i < SAMPLES; i++) {
      int j = Integer.reverse(i) >>> 32 - bits;
      if (j > i) {
        double swap = re[i];
        re[i] = re[j];
        re[j] = swap;
      }
    }
    for (int half = 1; half < SAMPLES; half *= 2) {
      int stride = SAMPLES / (2 * half);
      for (int start = 0; start < SAMPLES; start += 2 * half) {
        for (int k = 0; k < half; k++) {
          double c = COSINE[k * stride];
          double s = SINE[k * stride];
          int a = start + k;
          int b = a + half;
          double r = re[b] * c + im[b] * s;
          double m = im[b] * c - re[b] * s;
          re[b] = re[a] - r;
          im[b] = im[a] - m;
          re[a] += r;
          im[a] += m;
        }
      }
    }
  }

  /** How many lines there are. */
  int lines() {
    return power.length;
  }

  /** The line nearest to a frequency. */
  int line(double hertz) {
    return (int) StrictMath.rint(hertz / hertzPerLine);
  }

  /** Power of a line; 0 outside. */
  double power(int line) {
    return line < 0 || line >= power.length ? 0 : power[line];
  }

  /** Power of the lines from one up to but without another. */
  double power(int from, int to) {
    double sum = 0;
    for (int k = Math.max(0, from); k < Math.min(to, power.length); k++) {
      sum += power[k];
    }
    return sum;
  }

  /** Whether a line is stronger than those beside it. */
  boolean peak(int line) {
    return power(line) > power(line - 1) && power(line) >= power(line + 1);
  }

  /** Frequency of a peak between the lines: the top of a parabola through its logarithms. */
  double hertz(int line) {
    double left = StrictMath.log(power(line - 1) + 1e-9);
    double top = StrictMath.log(power(line) + 1e-9);
    double right = StrictMath.log(power(line + 1) + 1e-9);
    double bend = left - 2 * top + right;
    double off = bend == 0 ? 0 : 0.5 * (left - right) / bend;
    return (line + Math.max(-0.5, Math.min(0.5, off))) * hertzPerLine;
  }
}
