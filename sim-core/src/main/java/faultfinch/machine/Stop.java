package faultfinch.machine;

/**
 * Leaves the processor core inside a bus call; the instruction is replayed from its start later.
 */
final class Stop extends RuntimeException {
  private static final long serialVersionUID = 1L;

  static final Stop NOW = new Stop();

  private Stop() {
    super("the bus call does not end here", null, false, false);
  }
}
