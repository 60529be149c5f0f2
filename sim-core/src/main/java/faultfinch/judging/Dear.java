package faultfinch.judging;

/**
 * A fault of which it cost much not to know it.
 *
 * @param share of all jobs that it stands for
 * @param price of such a job, on average
 * @param known price of it for somebody who knows the fault
 * @param innocent chips taken out in vain, on average
 * @param looks made, on average
 * @param repairs made, on average
 * @param alike how many repairs are due among the faults that show the same in every look, its own
 *     included
 */
public record Dear(
    String fault,
    double share,
    double price,
    double known,
    double innocent,
    double looks,
    double repairs,
    int alike) {

  /** What not knowing it adds to the price of a job of the population, on average. */
  double added() {
    return share * (price - known);
  }
}
