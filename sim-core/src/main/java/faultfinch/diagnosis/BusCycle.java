package faultfinch.diagnosis;

/**
 * One cycle of the processor's bus.
 *
 * @param cycle since power-on
 * @param value the byte read or written
 * @param fetches whether it is the first of an instruction
 */
public record BusCycle(long cycle, int address, int value, boolean reads, boolean fetches) {

  /** Whether another does the same with the same byte, be it at another time. */
  boolean sameAs(BusCycle other) {
    return asksAs(other) && value == other.value;
  }

  /** Whether another goes to the same address for the same. */
  public boolean asksAs(BusCycle other) {
    return address == other.address && reads == other.reads && fetches == other.fetches;
  }
}
