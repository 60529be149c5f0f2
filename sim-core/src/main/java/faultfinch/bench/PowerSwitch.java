package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import java.util.List;

/** Switching the board on, off, or off and on. */
record PowerSwitch(Way way) implements Act {

  enum Way {
    ON,
    OFF,
    CYCLE
  }

  @Override
  public List<String> places(Patient patient) {
    return patient.powered == (way != Way.ON) ? List.of("") : List.of();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    if (way != Way.ON) {
      patient.switchOff();
    }
    if (way != Way.OFF) {
      patient.switchOn();
    }
    String says = patient.powered ? "the board is on" : "the board is off";
    return new Words(says, says);
  }
}
