package faultfinch.part;

/**
 * The bits a 15-bit shift register gives when its two last bits are fed back through an exclusive
 * or: 32,767 of them, then the same again.
 */
final class Noise {
  /** Bits until it repeats. */
  static final int ROUND = 32_767;

  private static final boolean[] BITS = new boolean[ROUND];

  static {
    int register = 1;
    for (int i = 0; i < ROUND; i++) {
      BITS[i] = (register & 1) != 0;
      register = register >>> 1 | ((register ^ register >>> 1) & 1) << 14;
    }
  }

  private Noise() {}

  /** The bit at a place of the round. */
  static boolean high(int at) {
    return BITS[at % ROUND];
  }

  /**
   * The place of the round reached.
   *
   * @param from the place it began at
   * @param step the noise register; 0 stands still
   * @param since cycles gone by
   */
  static int at(long from, long step, long since) {
    long steps = step == 0 ? 0 : since / (step * ToneGenerator.NOISE_STEP);
    return (int) ((from + steps) % ROUND);
  }

  /** How many steps from a place on until the bit is another, 1 to 15. */
  static int same(int at) {
    int steps = 1;
    while (high(at + steps) == high(at)) {
      steps++;
    }
    return steps;
  }
}
