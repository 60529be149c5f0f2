package faultfinch.symptom;

import faultfinch.machine.Trace;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds tones in what a sounder was driven with: stretches in which the level comes back after
 * equal times.
 */
final class Tones {
  /** Periods longer than this are clicks, not a tone; in nanoseconds, 25 Hz. */
  private static final long LONGEST_PERIOD = 40_000_000;

  private static final int FEWEST_PERIODS = 4;

  /** Periods within a sixteenth of the last one belong together. */
  private static final int LIKE = 16;

  private static final double A = 440;
  private static final double SEMITONES = 12;
  private static final long MILLISECOND = 1_000_000;

  private Tones() {}

  /** Tones that begin in a span of time, in nanoseconds since power-on. */
  static List<Tone> heard(Trace trace, long from, long to) {
    List<Tone> tones = new ArrayList<>();
    int i = first(trace, from);
    while (i < trace.size() && trace.nanoseconds(i) < to) {
      int last = end(trace, i);
      if (last - i >= 2 * FEWEST_PERIODS) {
        tones.add(tone(trace, i, last));
        i = last;
      } else {
        i++;
      }
    }
    return tones;
  }

  private static int first(Trace trace, long from) {
    int i = 0;
    while (i < trace.size() && trace.nanoseconds(i) < from) {
      i++;
    }
    return i;
  }

  /** The last change of the tone that begins with change i. */
  private static int end(Trace trace, int i) {
    int last = i;
    long period = 0;
    while (last + 2 < trace.size()) {
      long next = trace.nanoseconds(last + 2) - trace.nanoseconds(last);
      boolean like = period == 0 || Math.abs(next - period) <= period / LIKE;
      if (next > LONGEST_PERIOD || !like) {
        break;
      }
      period = next;
      last++;
    }
    return last == i ? i : last + 1;
  }

  private static Tone tone(Trace trace, int first, int last) {
    int even = first + (last - first) / 2 * 2;
    double periods = (even - first) / 2.0;
    double nanoseconds = trace.nanoseconds(even) - trace.nanoseconds(first);
    return new Tone(
        semitone(1e9 * periods / nanoseconds),
        (int) (trace.nanoseconds(first) / MILLISECOND),
        (int) ((trace.nanoseconds(last) - trace.nanoseconds(first)) / MILLISECOND));
  }

  /** Middle of the semitone a frequency falls in, rounded to 1 Hz. */
  static int semitone(double hertz) {
    double above = SEMITONES * StrictMath.log(hertz / A) / StrictMath.log(2);
    return (int) StrictMath.round(A * StrictMath.pow(2, StrictMath.rint(above) / SEMITONES));
  }
}
