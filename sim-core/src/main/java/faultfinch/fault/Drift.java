package faultfinch.fault;

import faultfinch.part.Element;
import java.util.List;
import java.util.Optional;

/**
 * A resistor or pack whose value is off.
 *
 * @param percent of what is printed on it, 1 to 1000, not 100
 */
public record Drift(String ref, int percent) implements Fault {
  public Drift {
    if (!right(percent)) {
      throw new IllegalArgumentException(
          "found " + percent + " per cent, right would be 1 to 1000 and not 100");
    }
  }

  static Optional<Fault> read(Words words) {
    if (!fits(words.anatomy(), words)) {
      return Optional.empty();
    }
    int percent = Integer.parseInt(words.said(1));
    if (!right(percent)) {
      throw words.refuse(1, "'" + words.said(1) + "'", "1 to 1000 and not 100");
    }
    return Optional.of(new Drift(words.part().ref(), percent));
  }

  private static boolean fits(Anatomy anatomy, Words words) {
    return anatomy.is(words.part(), Element.Kind.RESISTOR)
        || anatomy.is(words.part(), Element.Kind.PACK);
  }

  private static boolean right(int percent) {
    return percent >= 1 && percent <= 1000 && percent != 100;
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .filter(p -> anatomy.is(p, Element.Kind.RESISTOR) || anatomy.is(p, Element.Kind.PACK))
        .flatMap(
            p ->
                Figures.numbers("grid.drift.percent").stream()
                    .map(n -> (Fault) new Drift(p.ref(), n)))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": drifts to " + percent + " per cent";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.DRIFT;
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
    harm.elementDrift(ref, percent);
  }
}
