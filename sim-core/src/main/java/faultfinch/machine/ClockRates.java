package faultfinch.machine;

import faultfinch.part.M6502;
import faultfinch.part.Oscillator;
import faultfinch.signal.Electrical;

/**
 * Rates of clock nets, found by turning the oscillators on the wired circuit and counting what
 * moves. An open, stuck or bridged divider so needs no code of its own. What moves only between two
 * halves of a cycle has a rate too.
 */
final class ClockRates {
  private static final int WARM_UP = 64;
  private static final int HALVES = 256;
  private static final int MIDDLE_MV = 1300;

  /** Changes of each net over {@link #HALVES} half-periods of the crystal. */
  final int[] changes;

  /** Half-periods each net was high. */
  final int[] highs;

  private final int processorChanges;

  ClockRates(Circuit c, Store state) {
    Store store = state.copy();
    Levels levels = new Levels(c, store, 1);
    PlainCycle plain = new PlainCycle(c, levels, store);
    changes = new int[c.netCount];
    highs = new int[c.netCount];
    boolean[] was = new boolean[c.netCount];
    boolean wasAtProcessor = false;
    int atProcessor = 0;
    for (int half = -WARM_UP; half < HALVES; half++) {
      turn(c, levels, half);
      plain.tick();
      for (int net = 0; net < c.netCount; net++) {
        boolean high = high(levels, net);
        if (half >= 0) {
          changes[net] += high != was[net] ? 1 : 0;
          highs[net] += high ? 1 : 0;
        }
        was[net] = high;
      }
      if (c.cpu >= 0) {
        boolean high = (levels.pins[c.cpu].in & PHI0) != 0;
        atProcessor += half >= 0 && high != wasAtProcessor ? 1 : 0;
        wasAtProcessor = high;
      }
    }
    processorChanges = atProcessor;
    for (int net = 0; processorChanges > 0 && net < c.netCount; net++) {
      if (c.betweenHalves[net]) {
        // Up and down again in each half, of which a cycle has two.
        changes[net] = 2 * processorChanges;
        highs[net] = HALVES * Electrical.figure("between-halves.per-mille") / 1000;
      }
    }
  }

  private static final long PHI0 = new M6502().pinout().pin("PHI0");

  private static void turn(Circuit c, Levels levels, int half) {
    for (int p = 0; p < c.parts.length; p++) {
      if (c.parts[p] instanceof Oscillator && c.alive[p] && !c.harm.clockDead) {
        levels.pins[p].hold(Oscillator.TURN, half & 1);
      }
    }
  }

  /** Whether something drives a net, and high. */
  static boolean high(Levels levels, int net) {
    return levels.mv[net] > MIDDLE_MV && levels.kind[net] == Levels.DRIVEN;
  }

  /** Hertz of a net for a crystal of so many hertz; 0 if it does not move. */
  double hertz(int net, double crystalHertz) {
    return crystalHertz * changes[net] / HALVES;
  }

  /** Share of time a net is high, 0 to 1. */
  double duty(int net) {
    return (double) highs[net] / HALVES;
  }

  /** Hertz at the processor's clock pin. */
  double processorHertz(double crystalHertz) {
    return crystalHertz * processorChanges / HALVES;
  }
}
