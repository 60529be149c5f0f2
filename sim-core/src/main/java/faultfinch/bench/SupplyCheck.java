package faultfinch.bench;

import faultfinch.machine.Feed;
import faultfinch.machine.Power;
import java.util.List;

/** The board's own supply measured away from the board, with nothing on it or on a resistor. */
record SupplyCheck(boolean onDummy) implements Act {

  @Override
  public List<String> places(Patient patient) {
    boolean beside = !patient.powered || patient.source != Patient.Source.OWN;
    return beside ? List.of("") : List.of();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    if (onDummy) {
      patient.checkedOnDummy = true;
    } else {
      patient.checkedOffLoad = true;
    }
    Feed own = Power.brick(patient.asItCame());
    return Dial.volts(onDummy ? own.onDummyLoad() : own.noLoadMillivolts());
  }
}
