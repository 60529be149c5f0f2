package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.List;
import java.util.Optional;

/**
 * A capacitor that has become a wire.
 *
 * @param live its pad away from ground
 */
public record CapacitorShort(String ref, Pad live) implements Fault {

  static Optional<Fault> read(Words words) {
    return sites(words.anatomy()).stream()
        .filter(f -> f.place().equals(words.part().ref()))
        .findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.shuntCapacitors().entrySet().stream()
        .<Fault>map(e -> new CapacitorShort(e.getKey(), e.getValue()))
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
    return FaultKinds.CAPACITOR_SHORT;
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
    harm.load(live, 0, Figures.number("short.ohms"));
  }
}
