package faultfinch.machine;

/**
 * Nets that resistors of 200 ohms and more, or diodes, couple; solved together.
 *
 * @param nets members, at most 12
 * @param from per element, index into {@code nets}, or -1 - source code for a fixed net
 * @param to likewise
 * @param diode whether current goes only from {@code from} to {@code to}
 */
record Coupling(int[] nets, int[] from, int[] to, int[] ohms, boolean[] diode) {
  static final int LARGEST = 12;
}
