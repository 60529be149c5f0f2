package faultfinch.judging;

/**
 * What following boards with two faults has shown.
 *
 * @param jobs followed, those that are masked left out
 * @param masked boards on which both faults together, and each alone, bring the same complaint: the
 *     first cure changes nothing to see or hear
 * @param cured share of the jobs with both faults cured and the retest passed
 * @param atLeast its lower limit, 95 times in 100 (Wilson's)
 * @param curedMasked the same share of the masked ones
 * @param innocent chips a job taken out in vain
 * @param minutes at the bench a job
 * @param price a job
 * @param ratio of that to the price of the two jobs with one fault each
 */
public record PairsJudged(
    int jobs,
    int masked,
    double cured,
    double atLeast,
    double curedMasked,
    double innocent,
    double minutes,
    double price,
    double ratio) {}
