package faultfinch.fault;

import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A socketed chip that has crept out at one side, so that several contacts are open at once.
 *
 * @param first number of the first pin that hangs, from 1
 * @param last number of the last, above {@code first}
 * @param pads the pads of those pins
 */
public record BadlySeated(String ref, int first, int last, List<Pad> pads) implements Fault {
  public BadlySeated {
    pads = List.copyOf(pads);
    if (first < 1 || last <= first) {
      throw new IllegalArgumentException(
          "found pins " + first + " to " + last + ", right would be an upward range from 1");
    }
  }

  static Optional<Fault> read(Words words) {
    PlacedPart part = words.part();
    Anatomy anatomy = words.anatomy();
    if (!anatomy.isChip(part)) {
      return Optional.empty();
    }
    if (!part.socketed()) {
      throw words.unfit(FaultKinds.BADLY_SEATED, "which is soldered");
    }
    int first = Integer.parseInt(words.said(1));
    int last = Integer.parseInt(words.said(2));
    int count = anatomy.pinCount(part);
    if (first < 1 || last <= first || last > count) {
      throw words.refuse(
          1, "pins " + first + " to " + last, "an upward range within 1 to " + count);
    }
    return Optional.of(of(anatomy, part, first, last));
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.chips().stream()
        .filter(PlacedPart::socketed)
        .flatMap(p -> rows(anatomy, p))
        .toList();
  }

  private static Stream<Fault> rows(Anatomy anatomy, PlacedPart part) {
    int count = anatomy.pinCount(part);
    return Stream.of(of(anatomy, part, 1, count / 2), of(anatomy, part, count / 2 + 1, count));
  }

  private static BadlySeated of(Anatomy anatomy, PlacedPart part, int first, int last) {
    List<Pad> pads =
        anatomy.pads(part).stream()
            .filter(p -> anatomy.pin(p).number() >= first && anatomy.pin(p).number() <= last)
            .toList();
    return new BadlySeated(part.ref(), first, last, pads);
  }

  @Override
  public String text() {
    return ref + ": badly seated at pins " + first + " to " + last;
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.BADLY_SEATED;
  }

  @Override
  public Seat seat() {
    return Seat.SEATING;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("how " + ref + " sits");
  }

  @Override
  public void applyTo(Harm harm) {
    pads.forEach(harm::open);
  }
}
