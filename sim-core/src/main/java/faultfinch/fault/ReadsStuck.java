package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** An input that misjudges its net and always reads one level; the net itself is sound. */
public record ReadsStuck(Pad pin, boolean high) implements Fault {

  static Optional<Fault> read(Words words) {
    if (!words.anatomy().receives(words.pad())) {
      throw words.unfit(FaultKinds.READS_STUCK, "which reads nothing");
    }
    return Optional.of(new ReadsStuck(words.pad(), words.said(1).equals("high")));
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.chipPads().stream()
        .filter(anatomy::receives)
        .<Fault>flatMap(p -> Stream.of(new ReadsStuck(p, false), new ReadsStuck(p, true)))
        .toList();
  }

  @Override
  public String text() {
    return pin.text() + ": reads " + (high ? "high" : "low");
  }

  @Override
  public String place() {
    return pin.ref();
  }

  @Override
  public String spot() {
    return pin.text();
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.READS_STUCK;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("what " + pin.text() + " reads");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.reads(pin, high);
  }
}
