package faultfinch.bench;

import faultfinch.board.Pad;
import faultfinch.fault.Clamp;
import java.util.List;
import java.util.stream.Stream;

/** A line held with 1 k to ground or supply while the board starts; then let go. */
final class HoldLine implements Act {
  private static final int OHMS = 1000;
  private static final String TO_GROUND = " to ground";
  private static final String TO_SUPPLY = " to supply";

  @Override
  public List<String> places(Patient patient) {
    return lines(patient).stream()
        .flatMap(line -> Stream.of(line + TO_GROUND, line + TO_SUPPLY))
        .toList();
  }

  /** Pins of chips whose lines are no supplies. */
  static List<String> lines(Patient patient) {
    return patient.looks.stream()
        .filter(l -> l.kind() == Instruments.OHMS)
        .map(Look::place)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.switchOff();
    patient.switchOn();
    Pad pad = Looks.pad(place);
    Reading shown = Shown.of(patient.setup(new Clamp(pad, place.endsWith(TO_SUPPLY), OHMS)));
    patient.switchOff();
    patient.switchOn();
    return shown;
  }
}
