package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import java.util.List;

/** A piece of track cut through; linking it joins it again. */
final class CutTrack implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.board.nets().stream()
        .flatMap(n -> n.segments().stream())
        .map(s -> s.text())
        .filter(s -> !patient.isCut(s))
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String segment) {
    patient.cut(segment);
    String says = segment + " is cut";
    return new Words(says, says);
  }
}
