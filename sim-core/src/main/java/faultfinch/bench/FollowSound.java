package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Pad;
import faultfinch.symptom.Tracer;
import java.util.List;

/** What a sound tracer lets hear at a pad on the way of the sound. */
final class FollowSound implements Act {

  @Override
  public List<String> places(Patient patient) {
    return Tracer.pads(patient.board).stream()
        .filter(p -> !patient.isOut(p.ref()))
        .map(Pad::text)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    List<String> heard =
        patient.powered ? Tracer.hears(patient.setup(), Looks.pad(place)) : List.of();
    String says = heard.isEmpty() ? "silent" : String.join(", ", heard);
    return new Words(says, says);
  }
}
