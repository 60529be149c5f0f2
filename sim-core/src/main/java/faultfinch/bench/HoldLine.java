package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Pad;
import faultfinch.fault.Clamp;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/** A line held with 1 k to ground or supply while the board starts; then let go. */
final class HoldLine implements Act {
  private static final int OHMS = 1000;
  private static final String TO_GROUND = " to ground";
  private static final String TO_SUPPLY = " to supply";

  @Override
  public List<String> places(Patient patient) {
    List<String> places = new ArrayList<>();
    for (Look look : patient.looks) {
      if (look.kind() == Instruments.OHMS) {
        places.add(look.place() + TO_GROUND);
        places.add(look.place() + TO_SUPPLY);
      }
    }
    return List.copyOf(places);
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.switchOff();
    patient.switchOn();
    Pad pad = Looks.pad(place);
    SortedMap<Look, Reading> held =
        patient.survey().readings(patient.setup(new Clamp(pad, place.endsWith(TO_SUPPLY), OHMS)));
    patient.switchOff();
    patient.switchOn();
    String says =
        "display "
            + held.get(new Look(Instruments.SCREEN, "")).text()
            + "; sound "
            + held.get(new Look(Instruments.LISTEN, "")).text()
            + "; lamp "
            + held.get(new Look(Instruments.LAMP, "")).text();
    return new Words(says, says);
  }
}
