package faultfinch.judging;

/**
 * A fault that cost much.
 *
 * @param share of all jobs that it stands for
 * @param price of such a job, on average
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
    double innocent,
    double looks,
    double repairs,
    int alike) {}
