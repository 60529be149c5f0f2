package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Dirt or damp on the board between a pad and a rail; it stays when the part comes out.
 *
 * @param rail the pad of the rail it reaches
 * @param ohms 1 or more
 */
public record Leak(Pad pad, Pad rail, boolean toSupply, int ohms) implements Fault {
  public Leak {
    Ohms.checked(ohms);
  }

  static Optional<Fault> read(Words words) {
    Anatomy anatomy = words.anatomy();
    boolean up = words.said(1).equals("supply");
    if (!anatomy.carriesSignal(words.pad())) {
      throw words.unfit(FaultKinds.LEAK, "which is on a supply net");
    }
    Pad rail = anatomy.railPad(words.part(), up);
    return Optional.of(new Leak(words.pad(), rail, up, Ohms.said(words, 2)));
  }

  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    for (Pad pad : anatomy.chipPads()) {
      if (anatomy.carriesSignal(pad)) {
        for (boolean up : new boolean[] {false, true}) {
          Pad rail = anatomy.railPad(anatomy.part(pad), up);
          Figures.numbers("grid.leak.ohms").forEach(n -> faults.add(new Leak(pad, rail, up, n)));
        }
      }
    }
    return faults;
  }

  @Override
  public String text() {
    String to = toSupply ? "supply" : "ground";
    return pad.text() + ": leaks to " + to + " through " + Ohms.text(ohms);
  }

  @Override
  public String place() {
    return pad.ref();
  }

  @Override
  public String spot() {
    return pad.text();
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.LEAK;
  }

  @Override
  public Seat seat() {
    return Seat.DIRT;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.bridge(pad, rail, ohms);
  }
}
