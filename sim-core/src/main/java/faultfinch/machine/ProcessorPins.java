package faultfinch.machine;

import faultfinch.part.M6502;
import faultfinch.part.mpu6502.Mpu6502;
import faultfinch.signal.Pinout;

/** Carries the processor's control pins to its core after levels may have moved. */
final class ProcessorPins {
  private static final Pinout PINOUT = new M6502().pinout();
  static final long RES = PINOUT.pin("RES/");
  static final long RDY = PINOUT.pin("RDY");
  static final long IRQ = PINOUT.pin("IRQ/");
  static final long NMI = PINOUT.pin("NMI/");
  static final long SO = PINOUT.pin("SO");
  static final long CONTROL = RES | RDY | IRQ | NMI | SO | PINOUT.pin("PHI0");

  private static final int OVERFLOW = 0x40;

  private long was = NMI | SO;
  private boolean inReset = true;

  /** A reset that ends before this cycle came before the processor's own clock ran. */
  private long startsAt;

  /** Whether it woke up as if it had been reset. */
  private boolean wakesReset;

  /** Chance of this power-on: a processor that was not reset goes on from wherever it woke up. */
  void wakeUp(long startsAt, boolean wakesReset) {
    this.startsAt = startsAt;
    this.wakesReset = wakesReset;
  }

  /** Reads the pins as they stand at the end of a cycle; the cycle's number is {@code cycle}. */
  void sample(long in, Mpu6502 core, long cycle) {
    boolean irqLow = (in & IRQ) == 0;
    if (irqLow && core.irqSince == Mpu6502.NEVER) {
      core.irqSince = cycle;
    } else if (!irqLow && core.irqSince != Mpu6502.NEVER) {
      core.irqReleased(cycle);
    }
    if ((was & NMI) != 0 && (in & NMI) == 0) {
      core.nmiFellAt = cycle;
    }
    if ((was & SO) != 0 && (in & SO) == 0) {
      core.p |= OVERFLOW;
    }
    if ((in & RES) == 0) {
      inReset = true;
    } else if (inReset) {
      inReset = false;
      if (cycle >= startsAt || wakesReset) {
        core.requestReset();
      }
    }
    was = in;
  }

  void continueFrom(ProcessorPins other) {
    was = other.was;
    inReset = other.inReset;
    startsAt = other.startsAt;
    wakesReset = other.wakesReset;
  }

  boolean inReset() {
    return inReset;
  }

  /** The control pins as last read. */
  long control() {
    return was & CONTROL;
  }

  boolean ready(long in) {
    return (in & RDY) != 0;
  }
}
