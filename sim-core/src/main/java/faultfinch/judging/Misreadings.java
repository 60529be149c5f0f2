package faultfinch.judging;

import faultfinch.diagnosis.ErrorRates;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.fault.Lot;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings of which some are wrong, as the instrument confuses things; wrong once is wrong each
 * time. An owner whose mistakes would leave nothing to complain of makes none.
 *
 * @param right readings
 * @param bench chance that a look shows something else, 0 to 1
 * @param told chance that something told is something else, 0 to 1
 */
record Misreadings(
    Readings right,
    FaultDictionary dictionary,
    ErrorRates rates,
    double bench,
    double told,
    long seed)
    implements Readings {
  private static final int SEEN = 81;
  private static final int TOLD = 82;

  @Override
  public String shows(Job job, String look) {
    return taken(job, look, right.shows(job, look), bench, SEEN);
  }

  @Override
  public Complaint complaint(Job job) {
    Complaint so = right.complaint(job);
    List<Complaint.Told> taken = new ArrayList<>();
    boolean wrong = false;
    for (Complaint.Told t : so.told()) {
      String outcome = taken(job, t.look(), t.outcome(), told, TOLD);
      taken.add(new Complaint.Told(t.look(), outcome));
      wrong |= !outcome.equals(outcomes(t.look()).get(FaultDictionary.HEALTHY));
    }
    return wrong == so.retest().isEmpty() ? new Complaint(taken, so.retest()) : so;
  }

  private String taken(Job job, String look, String shown, double error, int what) {
    long which = Lot.of(look);
    if (Lot.share(seed, what, job.number(), which, 0) >= error) {
      return shown;
    }
    List<String> others = outcomes(look).stream().filter(o -> !o.equals(shown)).toList();
    List<String> near = rates.confusions(look, shown, outcomes(look));
    boolean nearly =
        Lot.share(seed, what, job.number(), which, 1) < rates.confusionShare() && !near.isEmpty();
    List<String> from = nearly ? near : others;
    return from.isEmpty()
        ? shown
        : from.get(Lot.below(from.size(), seed, what, job.number(), which, 2));
  }

  private List<String> outcomes(String look) {
    return dictionary.outcomes(dictionary.look(look).getAsInt());
  }
}
