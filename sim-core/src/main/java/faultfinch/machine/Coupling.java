package faultfinch.machine;

/**
 * Nets that resistances of 200 ohms or more, diodes or analogue switches couple; solved together.
 *
 * @param nets members, at most 12
 * @param from per element, index into {@code nets}, or -1 - net for one with a source
 * @param to likewise
 * @param diode whether current goes only from {@code from} to {@code to}
 * @param control the pin that must read high for the element to conduct, or -1
 */
record Coupling(int[] nets, int[] from, int[] to, int[] ohms, boolean[] diode, int[] control) {
  static final int LARGEST = 12;
}
