package faultfinch.signal;

/**
 * The six phases of a processor cycle, in order: the video half, then the processor half. PHI2 is
 * high in the processor half and falls at the end of {@link #C_END}.
 */
public enum Phase {
  V_ROW,
  V_COL,
  V_LATCH,
  C_ROW,
  C_COL,
  C_END;

  /** Whether the processor's clock is high. */
  public boolean processorHalf() {
    return ordinal() >= C_ROW.ordinal();
  }
}
