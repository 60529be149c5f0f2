package faultfinch.fault;

import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two chips of one size in each other's sockets: at both places the right part is missing.
 *
 * <p>Not modelled: what the pins of the wrong part do there.
 *
 * @param ref the one that stands first on the board's list
 */
public record Misplaced(String ref, String other) implements Fault {

  static Optional<Fault> read(Words words) {
    if (!words.anatomy().isChip(words.part())) {
      return Optional.empty();
    }
    PlacedPart second = words.partSaid(1);
    if (!words.part().socketed() || !second.socketed()) {
      String soldered = words.part().socketed() ? second.ref() : words.part().ref();
      throw words.unfit(FaultKinds.MISPLACED, "but " + soldered + " is soldered");
    }
    Anatomy anatomy = words.anatomy();
    Misplaced one = new Misplaced(words.part().ref(), second.ref());
    Misplaced two = new Misplaced(second.ref(), words.part().ref());
    List<Fault> sites = sites(anatomy);
    if (!sites.contains(one) && !sites.contains(two)) {
      throw words.refuse(1, "'" + second.ref() + "'", "another socketed chip with as many pins");
    }
    return Optional.of(sites.contains(one) ? one : two);
  }

  static List<Fault> sites(Anatomy anatomy) {
    List<PlacedPart> sitting = anatomy.chips().stream().filter(PlacedPart::socketed).toList();
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < sitting.size(); i++) {
      for (int j = i + 1; j < sitting.size(); j++) {
        boolean fits = anatomy.pinCount(sitting.get(i)) == anatomy.pinCount(sitting.get(j));
        if (fits && sitting.get(i).type() != sitting.get(j).type()) {
          faults.add(new Misplaced(sitting.get(i).ref(), sitting.get(j).ref()));
        }
      }
    }
    return faults;
  }

  @Override
  public String text() {
    return ref + ": in the socket of " + other;
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public String spot() {
    return ref + "-" + other;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.MISPLACED;
  }

  @Override
  public Seat seat() {
    return Seat.SOCKET_OF_ANOTHER;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("whether " + ref + " works");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.absent(ref);
    harm.absent(other);
  }
}
