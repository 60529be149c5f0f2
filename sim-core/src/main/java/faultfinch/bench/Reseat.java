package faultfinch.bench;

import faultfinch.bench.Prices.Chances;
import faultfinch.bench.Reading.Words;
import faultfinch.board.PlacedPart;
import java.util.List;

/** A chip moved in its socket, with or without cleaning its contacts. */
record Reseat(Chances cures) implements Act {

  @Override
  public List<String> places(Patient patient) {
    return patient.board.parts().stream()
        .map(PlacedPart::ref)
        .filter(ref -> patient.isSocketed(ref) && !patient.isOut(ref))
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    patient.disturb(ref, cures);
    patient.changed();
    return new Words(ref + " sits again", ref + " sits again");
  }
}
