package faultfinch.machine;

/** Follows each bus cycle the processor makes: what it asked and what its data pins read. */
@FunctionalInterface
public interface CycleTap {
  CycleTap NONE = (cycle, address, value, reads, sync, control) -> {};

  /**
   * One finished cycle.
   *
   * @param control the processor's control pins as they read at its end
   */
  void cycle(long cycle, int address, int value, boolean reads, boolean sync, long control);
}
