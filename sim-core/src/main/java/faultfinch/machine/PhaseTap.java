package faultfinch.machine;

import faultfinch.signal.Phase;

/** Called on every settled phase while an instrument watches. */
@FunctionalInterface
public interface PhaseTap {
  /** Nobody looks. */
  PhaseTap NOBODY = (phase, nanoseconds) -> {};

  /** The machine's levels now stand as this phase left them, at this time since power-on. */
  void settled(Phase phase, long nanoseconds);
}
