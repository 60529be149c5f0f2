package faultfinch.diagnosis;

import java.util.Arrays;

/**
 * Whether the owner notices: what is wrong with a board that was brought with a complaint shows in
 * the looks an owner takes, or is not all that is wrong.
 */
final class Noticed {
  private final boolean complaint;
  private final boolean[] byRow;
  private final double unnoticed;

  Noticed(FaultDictionary dictionary, ErrorRates rates, Likelihoods likelihoods) {
    complaint = complaint(likelihoods, rates);
    unnoticed = StrictMath.log(rates.unnoticed());
    byRow = new boolean[dictionary.rows()];
    if (complaint) {
      for (int look = 0; look < dictionary.looks().size(); look++) {
        if (rates.tier(dictionary.looks().get(look)) == ErrorRates.Tier.OWNER) {
          for (int row = 0; row < byRow.length; row++) {
            byRow[row] |= dictionary.cell(look, row) != 0;
          }
        }
      }
    } else {
      Arrays.fill(byRow, true);
    }
  }

  /**
   * Whether, before any repair, something an owner sees or hears was odd, as the board stands at
   * any time: what comes and goes, or waits for warmth, is in no row.
   */
  private static boolean complaint(Likelihoods likelihoods, ErrorRates rates) {
    for (int i = 0; i < likelihoods.weighed().size(); i++) {
      Observation seen = likelihoods.weighed().get(i);
      boolean owners = seen.looks().stream().allMatch(l -> rates.tier(l) == ErrorRates.Tier.OWNER);
      boolean always =
          seen.reach().climate() == Observation.Climate.USUAL
              && seen.reach().tally().equals(Tally.ONCE);
      if (owners && always && seen.after() == 0 && likelihoods.isOdd(i)) {
        return true;
      }
    }
    return false;
  }

  /** Logarithm of the chance that a board with this fault alone is brought. */
  double alone(int row) {
    return byRow[row] ? 0 : unnoticed;
  }
}
