package faultfinch.fault;

import java.util.List;
import java.util.Optional;

/** A two-terminal part, outside the supply's way in, that joins nothing any more. */
public record ElementOpen(String ref) implements Fault {

  static Optional<Fault> read(Words words) {
    return sites(words.anatomy()).stream()
        .filter(f -> f.place().equals(words.part().ref()))
        .findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .filter(p -> anatomy.opens(p))
        .<Fault>map(p -> new ElementOpen(p.ref()))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": open";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.ELEMENT_OPEN;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("what " + ref + " is");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.elementOpen(ref);
  }
}
