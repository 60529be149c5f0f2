package faultfinch.bench;

import java.util.ArrayList;
import java.util.List;

/** Switched off until it is cold and on again, five times; it stays on. */
final class ColdStarts implements Act {
  private static final int TIMES = 5;

  @Override
  public List<String> places(Patient patient) {
    return List.of("");
  }

  @Override
  public Reading perform(Patient patient, String place) {
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < TIMES; i++) {
      patient.switchOff();
      patient.switchOn();
      runs.add(Shown.says(patient.setup()));
    }
    return Shown.tally(runs);
  }
}
