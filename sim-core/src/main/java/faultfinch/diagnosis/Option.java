package faultfinch.diagnosis;

/**
 * A step that could be taken with some candidates left.
 *
 * @param column of the look, or -1 for a repair
 * @param action of the repair, or -1 for a look
 * @param gain bits it tells about which repair is due, times the weight of the candidates
 * @param waste minutes it costs beyond what the due repair costs anyway, times that weight
 */
record Option(int column, int action, double gain, double waste) {
  private static final double NONE = 1e-12;

  /** Bits a minute; without end if nothing is wasted. */
  double score() {
    return waste <= NONE * gain ? Double.POSITIVE_INFINITY : gain / waste;
  }

  boolean isLook() {
    return column >= 0;
  }

  /** Whether nothing but repairing is left to do. */
  boolean wastesNothing() {
    return Double.isInfinite(score());
  }
}
