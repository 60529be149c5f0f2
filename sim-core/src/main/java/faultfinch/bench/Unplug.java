package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.part.PartCatalog;
import java.util.List;
import java.util.Set;

/** A thing with a lead of its own, unplugged from the board or plugged in again. */
record Unplug(boolean off) implements Act {
  private static final Set<PartCatalog> THINGS = Set.of(PartCatalog.MONITOR, PartCatalog.DRIVE);

  @Override
  public List<String> places(Patient patient) {
    return patient.board.parts().stream()
        .filter(p -> THINGS.contains(p.type()))
        .map(p -> p.ref())
        .filter(ref -> patient.isUnplugged(ref) != off)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    patient.unplug(ref, off);
    String says = ref + (off ? " is unplugged" : " is plugged in");
    return new Words(says, says);
  }
}
