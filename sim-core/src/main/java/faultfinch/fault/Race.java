package faultfinch.fault;

import faultfinch.part.RowMemory;
import java.util.List;
import java.util.Optional;

/**
 * A memory whose column strobe comes only so many nanoseconds after its row strobe, at 25 degrees
 * and 5 V, where the turn of the address takes almost as long: what makes it quicker lets it take
 * the row for the column.
 *
 * @param nanoseconds 1 to 2000
 */
public record Race(String ref, int nanoseconds) implements Fault {
  private static final int MOST = 2000;

  public Race {
    if (!right(nanoseconds)) {
      throw new IllegalArgumentException(
          "found " + nanoseconds + " ns, right would be 1 to " + MOST);
    }
  }

  static Optional<Fault> read(Words words) {
    if (!(words.part().type().part() instanceof RowMemory)) {
      return Optional.empty();
    }
    int nanoseconds = Integer.parseInt(words.said(1));
    if (!right(nanoseconds)) {
      throw words.refuse(1, "'" + words.said(1) + "'", "1 to " + MOST);
    }
    return Optional.of(new Race(words.part().ref(), nanoseconds));
  }

  private static boolean right(int nanoseconds) {
    return nanoseconds >= 1 && nanoseconds <= MOST;
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.chips().stream()
        .filter(p -> p.type().part() instanceof RowMemory)
        .<Fault>map(p -> new Race(p.ref(), Figures.number("race.ns")))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": races at " + nanoseconds + " ns";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.RACE;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("when " + ref + " takes its column");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.race(ref, nanoseconds);
  }
}
