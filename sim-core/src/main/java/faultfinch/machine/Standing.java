package faultfinch.machine;

/** What a processor is about when somebody looks. */
public enum Standing {
  RUNS,
  /** It has no clock, or no supply. */
  NO_CLOCK,
  IN_RESET,
  /** An opcode has locked it up. */
  LOCKED,
  /** It is told that it is not ready. */
  WAITS
}
