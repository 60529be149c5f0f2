package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import java.util.List;

/** The strap that keeps a hand at the board's own potential. */
final class WristStrap implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.strapped ? List.of() : List.of("");
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.strapped = true;
    return new Words("the strap is on", "the strap is on");
  }
}
