package faultfinch.desk;

import faultfinch.bench.BenchRom;
import java.util.List;
import java.util.Set;

/**
 * What can be weighed while the return leads are on: a round of the bench ROM is that with them.
 */
record RoundWithLeads(Lookbook complete) implements Lookbook {
  private static final String LOOK = BenchRom.WITH_LEADS.look();

  /** What the look at a round is called longer than without the leads. */
  static final String SUFFIX = LOOK.substring(BenchWords.LOOK.length());

  /** Whether such a round was run at all. */
  static boolean isKnown(Lookbook complete) {
    return complete.looks().contains(LOOK);
  }

  @Override
  public Set<String> looks() {
    return complete.looks();
  }

  @Override
  public List<String> outcomes(String look) {
    return complete.outcomes(look.equals(BenchWords.LOOK) ? LOOK : look);
  }

  @Override
  public Set<String> differing() {
    return complete.differing();
  }
}
