package faultfinch.fault;

import java.util.List;
import java.util.Optional;

/** A resistor or diode that joins its terminals through next to nothing. */
public record ElementShort(String ref) implements Fault {

  static Optional<Fault> read(Words words) {
    return sites(words.anatomy()).stream()
        .filter(f -> f.place().equals(words.part().ref()))
        .findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .filter(p -> anatomy.shorts(p))
        .<Fault>map(p -> new ElementShort(p.ref()))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": short";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.ELEMENT_SHORT;
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
    harm.elementShort(ref, Figures.number("short.ohms"));
  }
}
