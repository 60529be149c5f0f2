package faultfinch.fault;

import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Solder or a whisker between two neighbouring pins of one package that are on different nets.
 *
 * @param one the pin of the lower number
 */
public record Bridge(Pad one, Pad other) implements Fault {

  static Optional<Fault> read(Words words) {
    Anatomy anatomy = words.anatomy();
    Pad a = words.pads().get(0);
    Pad b = words.pads().get(1);
    boolean ordered = anatomy.pin(a).number() < anatomy.pin(b).number();
    Bridge bridge = ordered ? new Bridge(a, b) : new Bridge(b, a);
    if (!sites(anatomy, anatomy.part(a)).contains(bridge)) {
      boolean sameNet = anatomy.net(a).equals(anatomy.net(b));
      String because = sameNet ? "which are on one net" : "which are no neighbours of one package";
      throw words.unfit(FaultKinds.BRIDGE, because);
    }
    return Optional.of(bridge);
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream().flatMap(p -> sites(anatomy, p).stream()).toList();
  }

  private static List<Fault> sites(Anatomy anatomy, PlacedPart part) {
    List<Fault> faults = new ArrayList<>();
    List<Pad> pads = anatomy.pads(part);
    for (int i = 1; i < pads.size(); i++) {
      Pad a = pads.get(i - 1);
      Pad b = pads.get(i);
      if (anatomy.neighbours(a, b) && !anatomy.net(a).equals(anatomy.net(b))) {
        faults.add(new Bridge(a, b));
      }
    }
    return faults;
  }

  @Override
  public String text() {
    return spot() + ": bridge";
  }

  @Override
  public String place() {
    return one.ref();
  }

  @Override
  public String spot() {
    return one.text() + "-" + other.text();
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.BRIDGE;
  }

  @Override
  public Seat seat() {
    return Seat.BETWEEN_PADS;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.bridge(one, other, Figures.number("bridge.ohms"));
  }
}
