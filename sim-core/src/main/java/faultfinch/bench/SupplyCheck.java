package faultfinch.bench;

import faultfinch.board.Supply;
import faultfinch.fault.BrickFault;
import faultfinch.fault.Fault;
import faultfinch.fault.Seat;
import java.util.List;

/**
 * The board's own supply measured away from the board, with nothing on it or on a resistor that
 * draws about half an ampere.
 */
record SupplyCheck(boolean onDummy) implements Act {
  private static final int DUMMY_MILLIOHMS = 18_000;

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
    Supply supply = patient.board.supply();
    long millivolts = supply.noLoadVolts();
    long milliohms = supply.ohms();
    for (Fault f : patient.faults()) {
      if (f.base() instanceof BrickFault brick) {
        millivolts = brick.noLoadMillivolts();
        milliohms = brick.milliohms();
      } else if (f.seat() == Seat.SUPPLY) {
        millivolts = 0;
      }
    }
    return Dial.volts(
        (int)
            (onDummy ? millivolts * DUMMY_MILLIOHMS / (DUMMY_MILLIOHMS + milliohms) : millivolts));
  }
}
