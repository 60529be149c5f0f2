package faultfinch.bench;

import faultfinch.board.PlacedPart;
import faultfinch.machine.Setup;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A pulled chip in a board known to be good, of the same kind: whether that board still works. */
final class ReferenceBoard implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.board.parts().stream().map(PlacedPart::ref).filter(patient::liesAside).toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    // Another board of its kind has thresholds of its own.
    long seed = patient.job.seed() + 1;
    Setup with = new Setup(patient.board, patient.insideOfPulled(ref), Set.of(), seed, 0);
    Map<String, String> right = shown(Setup.healthy(patient.board, seed));
    Map<String, String> now = shown(with);
    List<String> wrong = new ArrayList<>();
    right.forEach(
        (what, should) -> {
          if (!should.equals(now.get(what))) {
            wrong.add(what + ": " + now.get(what) + ", should be " + should);
          }
        });
    return new Reading.Check(wrong.isEmpty(), wrong);
  }

  private static Map<String, String> shown(Setup setup) {
    return Watching.of(setup).symptoms().features();
  }
}
