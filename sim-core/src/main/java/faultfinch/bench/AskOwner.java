package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import java.util.List;

/** One question to the owner. */
final class AskOwner implements Act {

  @Override
  public List<String> places(Patient patient) {
    return List.copyOf(patient.job.intake().answers().keySet());
  }

  @Override
  public Reading perform(Patient patient, String question) {
    String answer = patient.job.intake().answers().get(question);
    return new Words(answer, answer);
  }
}
