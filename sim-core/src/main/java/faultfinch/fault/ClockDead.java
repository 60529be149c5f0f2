package faultfinch.fault;

import java.util.List;
import java.util.Optional;

/** The oscillator gives no clock. */
public record ClockDead(String ref) implements Fault {

  static Optional<Fault> read(Words words) {
    return sites(words.anatomy()).stream()
        .filter(f -> f.place().equals(words.part().ref()))
        .findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .filter(p -> anatomy.isClock(p))
        .<Fault>map(p -> new ClockDead(p.ref()))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": dead";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.CLOCK_DEAD;
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
    harm.clockDead();
  }
}
