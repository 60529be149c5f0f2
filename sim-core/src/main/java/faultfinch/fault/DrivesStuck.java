package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An output whose driver is always on at one level, in its class, selected or not. */
public record DrivesStuck(Pad pin, boolean high) implements Fault {

  static Optional<Fault> read(Words words) {
    Pad pad = words.pad();
    boolean high = words.said(1).equals("high");
    if (!words.anatomy().drives(pad)) {
      throw words.unfit(FaultKinds.DRIVES_STUCK, "which drives nothing");
    }
    if (high && words.anatomy().pin(pad).openCollector()) {
      throw words.unfit(FaultKinds.DRIVES_STUCK, "which can only pull low");
    }
    return Optional.of(new DrivesStuck(pad, high));
  }

  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    for (Pad pad : anatomy.chipPads()) {
      if (anatomy.drives(pad)) {
        faults.add(new DrivesStuck(pad, false));
        if (!anatomy.pin(pad).openCollector()) {
          faults.add(new DrivesStuck(pad, true));
        }
      }
    }
    return faults;
  }

  @Override
  public String text() {
    return pin.text() + ": drives " + (high ? "high" : "low");
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
    return FaultKinds.DRIVES_STUCK;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of("what " + pin.text() + " drives");
  }

  @Override
  public void applyTo(Harm harm) {
    harm.drives(pin, high);
  }
}
