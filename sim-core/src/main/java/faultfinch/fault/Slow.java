package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import java.util.List;
import java.util.Optional;

/**
 * A memory of too slow a grade, or one that has become so: its outputs follow so many nanoseconds
 * after its inputs, at 25 degrees and 5 V.
 *
 * <p>Where a board leaves time enough even for a slow grade that is hot and short of volts, there
 * is no such fault.
 *
 * @param nanoseconds 1 to 2000
 */
public record Slow(String ref, int nanoseconds) implements Fault {
  private static final int MOST = 2000;

  /** The phases of the processor's half: row, column, end. */
  private static final int ROW = 3;

  private static final int COLUMN = 4;
  private static final int END = 6;

  public Slow {
    if (!right(nanoseconds)) {
      throw new IllegalArgumentException(
          "found " + nanoseconds + " ns, right would be 1 to " + MOST);
    }
  }

  static Optional<Fault> read(Words words) {
    if (!remembers(words.part())) {
      return Optional.empty();
    }
    int nanoseconds = Integer.parseInt(words.said(1));
    if (!right(nanoseconds)) {
      throw words.refuse(1, "'" + words.said(1) + "'", "1 to " + MOST);
    }
    return Optional.of(new Slow(words.part().ref(), nanoseconds));
  }

  private static boolean remembers(PlacedPart part) {
    return part.type().part() instanceof Memory || part.type().part() instanceof RowMemory;
  }

  private static boolean right(int nanoseconds) {
    return nanoseconds >= 1 && nanoseconds <= MOST;
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .flatMap(p -> grade(anatomy, p).stream())
        .<Fault>map(f -> f)
        .toList();
  }

  /** The slower grade of a part in which it fails at least hot and short of volts, if any. */
  public static Optional<Slow> grade(Board board, PlacedPart part) {
    return grade(new Anatomy(board), part);
  }

  private static Optional<Slow> grade(Anatomy anatomy, PlacedPart part) {
    if (!remembers(part)) {
      return Optional.empty();
    }
    int from = part.type().part() instanceof RowMemory ? COLUMN : ROW;
    int budget = 0;
    for (int phase = from; phase < END; phase++) {
      budget += anatomy.board().phaseNanoseconds().get(phase);
    }
    int nanoseconds = Figures.number("slow." + part.type().type() + ".ns");
    int worst = nanoseconds * Figures.number("slow.worst.percent") / 100;
    return worst > budget ? Optional.of(new Slow(part.ref(), nanoseconds)) : Optional.empty();
  }

  @Override
  public String text() {
    return ref + ": slow at " + nanoseconds + " ns";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.SLOW;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("how fast " + ref + " is");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.slow(ref, nanoseconds);
  }
}
