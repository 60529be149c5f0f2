package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import java.util.List;

/** What feeds the board from now on; a change switches it off. */
record ChooseSupply(Patient.Source source) implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.source == source ? List.of() : List.of("");
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.switchOff();
    patient.source = source;
    String says =
        switch (source) {
          case OWN -> "the board's own supply is connected";
          case BENCH -> "the bench supply is connected, its current limited";
          case BORROWED -> "a supply known to be good is connected";
        };
    return new Words(says, says);
  }
}
