package faultfinch.fault;

import faultfinch.board.PlacedPart;
import faultfinch.part.Defect;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** One of the defects that the page of the part lists. */
public record DefectInside(String ref, String name) implements Fault {

  static Optional<Fault> read(Words words) {
    PlacedPart part = words.part();
    List<Defect> defects = part.type().part().defects();
    if (defects.isEmpty()) {
      return Optional.empty();
    }
    if (defects.stream().noneMatch(d -> d.name().equals(words.said(1)))) {
      String names = defects.stream().map(Defect::name).collect(Collectors.joining(", "));
      throw words.refuse(1, "defect '" + words.said(1) + "'", "one of " + names);
    }
    return Optional.of(new DefectInside(part.ref(), words.said(1)));
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .flatMap(
            p ->
                p.type().part().defects().stream()
                    .map(d -> (Fault) new DefectInside(p.ref(), d.name())))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": defect " + name;
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.DEFECT_INSIDE;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.defect(ref, name);
  }
}
