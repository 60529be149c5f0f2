package faultfinch.machine;

import faultfinch.part.Part;
import faultfinch.signal.Phase;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The parts that are asked to commit in every phase, less those that are known to have nothing to
 * do: a pin keeps them from it, or nothing has moved since they last did nothing.
 */
final class Committers {
  private static final Phase[] PHASES = Phase.values();

  private final Levels levels;
  private final int[] which;
  private final Part[] parts;
  private final PartPins[] pins;
  private final long[] rises;
  private final long[] falls;

  /** Per phase and part the pins that, high, leave it nothing to commit. */
  private final long[][] rests = new long[PHASES.length][];

  private final boolean[] steady;

  /** Whether a part stored nothing when it was last asked, and what its pins read then. */
  private final boolean[] stood;

  private final long[] stoodAt;

  Committers(Circuit circuit, Levels levels) {
    this.levels = levels;
    which =
        IntStream.range(0, circuit.parts.length)
            .filter(p -> circuit.alive[p] && circuit.parts[p].commitsEveryPhase())
            .toArray();
    parts = Arrays.stream(which).mapToObj(p -> circuit.parts[p]).toArray(Part[]::new);
    pins = Arrays.stream(which).mapToObj(p -> levels.pins[p]).toArray(PartPins[]::new);
    rises = Arrays.stream(which).mapToLong(p -> circuit.risePins[p]).toArray();
    falls = Arrays.stream(which).mapToLong(p -> circuit.fallPins[p]).toArray();
    for (Phase phase : PHASES) {
      rests[phase.ordinal()] =
          Arrays.stream(parts).mapToLong(part -> part.restsWhileHigh(phase)).toArray();
    }
    steady = new boolean[which.length];
    for (int i = 0; i < steady.length; i++) {
      steady[i] = parts[i].standsStill() && (levels.timing == null || !plays(i));
    }
    stood = new boolean[which.length];
    stoodAt = new long[which.length];
  }

  private boolean plays(int i) {
    return levels.timing != null && levels.timing.plays(which[i]);
  }

  /** Commits a phase on its settled levels. */
  void commit(Phase phase) {
    long[] resting = rests[phase.ordinal()];
    boolean noted = levels.recorder != Recorder.NONE;
    for (int i = 0; i < parts.length; i++) {
      PartPins view = pins[i];
      long in = view.in;
      if (steady[i]) {
        boolean still = (view.rose | view.fell) == 0;
        if (still && stood[i] && stoodAt[i] == in && !view.stored && !noted) {
          continue;
        }
        view.stored = false;
        parts[i].commit(view, phase);
        stood[i] = still && !view.stored;
        stoodAt[i] = in;
      } else if (plays(i)) {
        levels.timing.commit(which[i], view, phase);
      } else if ((in & resting[i]) == 0 || (view.rose & rises[i] | view.fell & falls[i]) != 0) {
        parts[i].commit(view, phase);
      }
      view.rose = 0;
      view.fell = 0;
    }
  }
}
