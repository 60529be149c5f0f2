package faultfinch.diagnosis;

/** What to do with the candidates that are left, while a board is played through on a ground. */
@FunctionalInterface
interface Policy {

  /**
   * The step to take; there must be a candidate left.
   *
   * @param made steps that were taken before
   */
  Option at(int[] members, int made);
}
