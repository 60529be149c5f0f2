package faultfinch.judging;

import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Lot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Boards that fail otherwise than the advisor takes them to: each fault up to twice as often or
 * half as often, evenly on the logarithm, and one fault in ten is not in the advisor's list.
 *
 * @param faults as they really are
 * @param hidden those the advisor does not know
 * @param listed those it knows, as often as it takes them to be
 */
record OtherWorld(Suspects faults, Set<String> hidden, Suspects listed) {
  private static final double HIDDEN = 0.1;
  private static final int WEIGHT = 91;
  private static final int HIDE = 92;

  static OtherWorld of(Suspects suspects, long seed) {
    List<Suspect> faults = new ArrayList<>();
    List<Suspect> listed = new ArrayList<>();
    Set<String> hidden = new LinkedHashSet<>();
    for (Suspect s : suspects.all()) {
      long which = Lot.of(s.fault());
      double times = StrictMath.pow(2, 2 * Lot.share(seed, WEIGHT, which) - 1);
      faults.add(new Suspect(s.fault(), s.place(), s.weight() * times, s.repair(), s.cures()));
      if (Lot.share(seed, HIDE, which) < HIDDEN) {
        hidden.add(s.fault());
      } else {
        listed.add(s);
      }
    }
    return new OtherWorld(new Suspects(faults), hidden, new Suspects(listed));
  }
}
