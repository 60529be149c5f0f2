package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Pad;
import java.util.List;

/** One pin lifted off its pad; reflowing it puts it back. */
final class LiftPin implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.looks.stream()
        .filter(l -> l.kind() == Instruments.OHMS)
        .map(l -> Looks.pad(l.place()))
        .filter(p -> !patient.isOut(p.ref()) && !patient.lifted().contains(p))
        .map(Pad::text)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.lift(Looks.pad(place));
    String says = place + " is off its pad";
    return new Words(says, says);
  }
}
