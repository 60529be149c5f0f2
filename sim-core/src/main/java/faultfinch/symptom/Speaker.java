package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Machine;
import faultfinch.machine.SoundNet;
import faultfinch.part.PartCatalog;
import faultfinch.part.ToneGenerator;
import faultfinch.part.Voices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Listens to a board that sounds through an analogue path: keeps what the tone generator's
 * registers said from moment to moment, and works out afterwards what the speaker made of it.
 *
 * <p>Not modelled: registers written and written again between two moments, sound at the mix-in.
 */
final class Speaker {
  /** Between two looks at the registers, in milliseconds. */
  static final int SAMPLE_MS = 5;

  /** Steps of the network to a sample: short against the capacitors' times. */
  private static final int STEPS = 4;

  /** Samples at one volt across the speaker. */
  static final double VOLT = 14_000;

  /** Below this nothing moves any more, in volts. */
  private static final double STILL = 1e-6;

  private static final double SECOND = 1e9;

  /** What sounds from a time on. */
  private record Moment(long nanoseconds, long cycle, double cycleNanoseconds, Voices voices) {
    double cycle(double at) {
      return cycle + (at - nanoseconds) / cycleNanoseconds;
    }
  }

  private final String generator;
  private final List<Moment> moments = new ArrayList<>();

  Speaker(String generator) {
    this.generator = generator;
  }

  /** A listener, if the board has a tone generator and a speaker. */
  static Optional<Speaker> of(Board board) {
    return board.firstOf(PartCatalog.SPEAKER).isEmpty()
        ? Optional.empty()
        : board.firstOf(PartCatalog.TONE_GENERATOR).map(PlacedPart::ref).map(Speaker::new);
  }

  /** Notes what the registers say now. */
  void look(Machine machine) {
    Voices voices = Voices.of(word -> machine.word(generator, word).orElse(0L));
    if (moments.isEmpty() || !moments.get(moments.size() - 1).voices().same(voices)) {
      double hertz = machine.processorHertz();
      double cycle = hertz > 0 ? SECOND / hertz : machine.board().cycleNanoseconds();
      note(machine.nanoseconds(), machine.cycles(), cycle, voices);
    }
  }

  /** From this time on, which is this cycle, these voices sound. */
  void note(long nanoseconds, long cycle, double cycleNanoseconds, Voices voices) {
    moments.add(new Moment(nanoseconds, cycle, cycleNanoseconds, voices));
  }

  /**
   * What was heard.
   *
   * @param from nanoseconds since power-on
   * @param to after from
   * @param rate samples a second
   */
  Sound sound(SoundNet net, long from, long to, int rate) {
    int count = (int) ((double) (to - from) * rate / SECOND);
    short[] samples = new short[count];
    if (net.source().isEmpty() || net.speaker().isEmpty()) {
      return new Sound(rate, samples);
    }
    double step = SECOND / rate / STEPS;
    Transient path = new Transient(net, step / SECOND);
    int at = -1;
    for (int i = 0; i < count; i++) {
      double start = from + i * SECOND / rate;
      while (at + 1 < moments.size() && moments.get(at + 1).nanoseconds() <= start) {
        at++;
      }
      boolean silent = at < 0 || moments.get(at).voices().silent();
      if (!silent || path.moving(STILL)) {
        double sum = 0;
        for (int s = 0; s < STEPS; s++) {
          double begin = start + s * step;
          sum += path.step(silent ? 0 : volts(moments.get(at), begin, begin + step));
        }
        samples[i] = sample(sum / STEPS);
      }
    }
    return new Sound(rate, samples);
  }

  private static double volts(Moment moment, double begin, double end) {
    double share = moment.voices().mean(moment.cycle(begin), moment.cycle(end));
    return share * ToneGenerator.SWING_MILLIVOLTS / 1000;
  }

  private static short sample(double volts) {
    double value = StrictMath.rint(volts * VOLT);
    return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, value));
  }
}
