package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.List;
import java.util.Optional;

/**
 * A chip fitted the wrong way round: it does nothing and its diodes hold the rail down.
 *
 * <p>Not modelled: what its other pins do to the nets they now meet.
 *
 * @param supply the pad that brings the rail to it
 */
public record Reversed(String ref, Pad supply) implements Fault {

  static Optional<Fault> read(Words words) {
    return sites(words.anatomy()).stream()
        .filter(f -> f.place().equals(words.part().ref()))
        .findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.chips().stream()
        .filter(p -> !anatomy.isClock(p))
        .flatMap(p -> anatomy.supplyPad(p).stream().map(pad -> (Fault) new Reversed(p.ref(), pad)))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": reversed";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.REVERSED;
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
    harm.load(supply, Figures.number("reversed.mv"), Figures.number("reversed.ohms"));
  }
}
