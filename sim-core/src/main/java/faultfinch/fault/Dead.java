package faultfinch.fault;

import java.util.List;
import java.util.Optional;

/** A chip that does nothing: its outputs let go and what it stores does not change. */
public record Dead(String ref) implements Fault {

  static Optional<Fault> read(Words words) {
    boolean fits = words.anatomy().isChip(words.part()) && !words.anatomy().isClock(words.part());
    return fits ? Optional.of(new Dead(words.part().ref())) : Optional.empty();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.chips().stream()
        .filter(p -> !anatomy.isClock(p))
        .<Fault>map(p -> new Dead(p.ref()))
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
    return FaultKinds.DEAD;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("whether " + ref + " works");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.dead(ref);
  }
}
