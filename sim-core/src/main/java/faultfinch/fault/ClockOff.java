package faultfinch.fault;

import java.util.List;
import java.util.Optional;

/**
 * An oscillator that runs, but not at what is printed on it.
 *
 * @param perMille of its frequency, 500 to 2000, not 1000
 */
public record ClockOff(String ref, int perMille) implements Fault {
  public ClockOff {
    if (!right(perMille)) {
      throw new IllegalArgumentException(
          "found " + perMille + " per mille, right would be 500 to 2000 and not 1000");
    }
  }

  static Optional<Fault> read(Words words) {
    if (!words.anatomy().isClock(words.part())) {
      return Optional.empty();
    }
    int perMille = Integer.parseInt(words.said(1));
    if (!right(perMille)) {
      throw words.refuse(1, "'" + words.said(1) + "'", "500 to 2000 and not 1000");
    }
    return Optional.of(new ClockOff(words.part().ref(), perMille));
  }

  private static boolean right(int perMille) {
    return perMille >= 500 && perMille <= 2000 && perMille != 1000;
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.board().parts().stream()
        .filter(anatomy::isClock)
        .flatMap(
            p ->
                Figures.numbers("grid.clock.per-mille").stream()
                    .map(n -> (Fault) new ClockOff(p.ref(), n)))
        .toList();
  }

  @Override
  public String text() {
    return ref + ": off frequency at " + perMille + " per mille";
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.CLOCK_OFF;
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
    harm.clockOff(perMille);
  }
}
