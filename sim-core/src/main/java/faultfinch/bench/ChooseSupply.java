package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.machine.Power;
import java.util.List;

/**
 * What feeds the board from now on; a change switches it off. The bench supply first tells what the
 * board takes, and cannot give more than its limit.
 */
record ChooseSupply(Patient.Source source) implements Act {
  @Override
  public List<String> places(Patient patient) {
    return patient.source == source ? List.of() : List.of("");
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.switchOff();
    patient.source = source;
    if (source == Patient.Source.BENCH) {
      return Dial.current(
          Math.min(
              Patient.LIMIT_MILLIAMPS,
              Power.of(patient.setup(), patient.limited()).currentMilliamps()));
    }
    String says =
        switch (source) {
          case OWN -> "the board's own supply is connected";
          case BENCH, BORROWED -> "a supply known to be good is connected";
        };
    return new Words(says, says);
  }
}
