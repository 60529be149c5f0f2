package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.List;
import java.util.Optional;

/**
 * A capacitor that passes direct current to ground.
 *
 * @param live its pad away from ground
 * @param ohms 1 or more
 */
public record CapacitorLeak(String ref, Pad live, int ohms) implements Fault {
  public CapacitorLeak {
    Ohms.checked(ohms);
  }

  static Optional<Fault> read(Words words) {
    String ref = words.part().ref();
    return Optional.ofNullable(words.anatomy().shuntCapacitors().get(ref))
        .map(live -> new CapacitorLeak(ref, live, Ohms.said(words, 1)));
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.shuntCapacitors().entrySet().stream()
        .flatMap(
            e ->
                Figures.numbers("grid.capacitor-leak.ohms").stream()
                    .map(n -> (Fault) new CapacitorLeak(e.getKey(), e.getValue(), n)))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": leaks through " + Ohms.text(ohms);
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.CAPACITOR_LEAK;
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
    harm.load(live, 0, ohms);
  }
}
