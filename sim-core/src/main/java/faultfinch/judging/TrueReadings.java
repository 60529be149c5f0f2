package faultfinch.judging;

import faultfinch.diagnosis.FaultDictionary;

/**
 * Readings without a mistake.
 *
 * @param dictionary of all that can be wrong
 */
record TrueReadings(FaultDictionary dictionary) implements Readings {

  @Override
  public String shows(Job job, String look) {
    int row = dictionary.row(job.truth().suspect().fault());
    return dictionary.outcome(dictionary.look(look).getAsInt(), row);
  }

  @Override
  public Complaint complaint(Job job) {
    return job.complaint();
  }
}
