package faultfinch.fault;

import faultfinch.part.PartCatalog;
import java.util.List;
import java.util.Optional;

/**
 * A key that never opens, or a link that somebody closed.
 *
 * @param link whether it is a link, which is set by hand and not broken
 */
public record StuckClosed(String ref, boolean link) implements Fault {

  static Optional<Fault> read(Words words) {
    return sites(words.anatomy()).stream().filter(f -> f.text().equals(words.normal())).findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .filter(p -> p.type() == PartCatalog.KEY || p.type() == PartCatalog.LINK)
        .<Fault>map(p -> new StuckClosed(p.ref(), p.type() == PartCatalog.LINK))
        .toList();
  }

  @Override
  public String text() {
    return ref + (link ? ": closed" : ": stuck closed");
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.STUCK_CLOSED;
  }

  @Override
  public Seat seat() {
    return link ? Seat.SETTING : Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("what " + ref + " is");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.elementShort(ref, Figures.number("closed.ohms"));
  }
}
