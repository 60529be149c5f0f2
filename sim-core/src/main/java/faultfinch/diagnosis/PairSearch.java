package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Proposes two faults that may explain together what one does not, and weighs such pairs once they
 * were run. A proposal composes what both show, each look after the one that shows something there,
 * or, if both do, after the one that changes more of the board; only a run tells what two faults do
 * to each other.
 */
public final class PairSearch {
  /** Single rows that propose, those first that explain most of what was seen. */
  private static final int SINGLES = 50;

  private static final int NONE = -1;

  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final ErrorRates rates;
  private final Evidence evidence;
  private final Likelihoods likelihoods;
  private final Noticed noticed;
  private final double[] weightOfRow;

  /** The likeliest suspect of each row, or {@link #NONE}. */
  private final int[] first;

  /**
   * In how many looks each row shows anything odd: where both do, the one with more hides the
   * other.
   */
  private final int[] changes;

  private record Proposal(int one, int other, double log) {}

  PairSearch(FaultDictionary dictionary, Suspects suspects, ErrorRates rates, Evidence evidence) {
    this.dictionary = dictionary;
    this.suspects = suspects;
    this.rates = rates;
    this.evidence = evidence;
    likelihoods = new Likelihoods(dictionary, rates, evidence);
    noticed = new Noticed(dictionary, rates, likelihoods);
    weightOfRow = suspects.weightOfRow(dictionary);
    first = new int[dictionary.rows()];
    Arrays.fill(first, NONE);
    changes = changes(dictionary);
    for (int i = 0; i < suspects.all().size(); i++) {
      Suspect suspect = suspects.all().get(i);
      int row = dictionary.row(suspect.fault());
      if (first[row] == NONE || suspects.all().get(first[row]).weight() < suspect.weight()) {
        first[row] = i;
      }
    }
  }

  private static int[] changes(FaultDictionary dictionary) {
    int[] changes = new int[dictionary.rows()];
    for (int look = 0; look < dictionary.looks().size(); look++) {
      for (int row = 0; row < changes.length; row++) {
        changes[row] += dictionary.cell(look, row) == FaultDictionary.HEALTHY ? 0 : 1;
      }
    }
    return changes;
  }

  /**
   * The likeliest pairs of which each member explains something that the other does not, likeliest
   * first, one for each two repairs.
   *
   * @param most pairs, 1 or more
   */
  public List<SuspectPair> proposals(int most) {
    List<Proposal> proposals = new ArrayList<>();
    Set<Long> had = new HashSet<>();
    for (int one : proposing()) {
      double alone = together(one, one);
      for (int other = 0; other < first.length; other++) {
        if (other != one && first[other] != NONE && apart(one, other)) {
          double both = together(one, other);
          boolean more = both > alone && both > together(other, other);
          long key = (long) Math.min(one, other) * first.length + Math.max(one, other);
          if (more && had.add(key)) {
            proposals.add(new Proposal(one, other, prior(one) + prior(other) + both));
          }
        }
      }
    }
    proposals.sort(Comparator.comparingDouble(Proposal::log).reversed());
    Set<Set<RepairAction>> repairs = new HashSet<>();
    return proposals.stream()
        .map(p -> new SuspectPair(suspect(p.one), suspect(p.other)))
        .filter(p -> repairs.add(Set.of(p.one().repair(), p.other().repair())))
        .limit(most)
        .toList();
  }

  /** Rows by how well they explain what they change, likeliest first. */
  private List<Integer> proposing() {
    double[] log = new double[first.length];
    List<Integer> rows = new ArrayList<>();
    for (int row = 0; row < first.length; row++) {
      if (first[row] != NONE && row != FaultDictionary.HEALTHY) {
        log[row] = prior(row);
        for (int i = 0; i < likelihoods.weighed().size(); i++) {
          log[row] += likelihoods.differs(i, row) ? likelihoods.of(i, row) : 0;
        }
        if (helps(row)) {
          rows.add(row);
        }
      }
    }
    rows.sort(Comparator.comparingDouble((Integer r) -> -log[r]));
    return rows.subList(0, Math.min(SINGLES, rows.size()));
  }

  /** Whether a row shows something odd that was seen. */
  private boolean helps(int row) {
    for (int i = 0; i < likelihoods.weighed().size(); i++) {
      if (likelihoods.isOdd(i) && likelihoods.matches(i, row)) {
        return true;
      }
    }
    return false;
  }

  private double prior(int row) {
    return StrictMath.log(weightOfRow[row]);
  }

  private Suspect suspect(int row) {
    return suspects.all().get(first[row]);
  }

  /** Whether no repair surely cures both: else it is one job. */
  private boolean apart(int one, int other) {
    return suspect(one).cures().keySet().stream()
        .noneMatch(a -> suspect(one).surelyCuredBy(a) && suspect(other).surelyCuredBy(a));
  }

  /** Logarithm of all that was seen if both rows are on the board, composed. */
  private double together(int one, int other) {
    double sum = 0;
    for (int i = 0; i < likelihoods.weighed().size(); i++) {
      int a = left(one, i);
      int b = left(other, i);
      boolean fromA = likelihoods.differs(i, a);
      boolean fromB = likelihoods.differs(i, b);
      boolean first = fromA == fromB ? changes[a] >= changes[b] : fromA;
      sum += likelihoods.of(i, first ? a : b);
    }
    return sum;
  }

  /** The row, or the healthy one where the i-th observation came after a repair that cured it. */
  private int left(int row, int i) {
    for (int repair = 0; repair < likelihoods.after(i); repair++) {
      if (suspect(row).surelyCuredBy(evidence.done().get(repair))) {
        return FaultDictionary.HEALTHY;
      }
    }
    return row;
  }

  /**
   * How many times as likely a pair is as the likeliest row that is alone.
   *
   * @param stages what the pair was run to show, before the first repair and after each
   */
  public double odds(SuspectPair pair, List<Map<String, String>> stages) {
    double log = StrictMath.log(2 * rates.another());
    log += prior(dictionary.row(pair.one().fault())) + prior(dictionary.row(pair.other().fault()));
    for (int i = 0; i < likelihoods.weighed().size(); i++) {
      log += likelihoods.under(i, stages.get(likelihoods.after(i)));
    }
    return StrictMath.exp(log - StrictMath.log(1 - rates.another()) - bestAlone());
  }

  private double bestAlone() {
    double best = Double.NEGATIVE_INFINITY;
    for (int row = 0; row < first.length; row++) {
      if (first[row] != NONE) {
        best = Math.max(best, prior(row) + noticed.alone(row) + together(row, row));
      }
    }
    return best;
  }
}
