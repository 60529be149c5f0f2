package faultfinch.fault;

import faultfinch.board.Pad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pin that loads its net from inside the part, towards ground or supply; it goes when the part
 * comes out.
 *
 * @param ohms 1 or more
 */
public record Clamp(Pad pin, boolean toSupply, int ohms) implements Fault {
  public Clamp {
    Ohms.checked(ohms);
  }

  static Optional<Fault> read(Words words) {
    Anatomy anatomy = words.anatomy();
    boolean up = words.said(1).equals("supply");
    if (!anatomy.isChip(words.part())) {
      throw words.unfit(FaultKinds.CLAMP, "which is no pin of a chip");
    }
    if (!pulls(anatomy, words.pad(), up)) {
      throw words.unfit(FaultKinds.CLAMP, "which is on that rail or is its return");
    }
    return Optional.of(new Clamp(words.pad(), up, Ohms.said(words, 2)));
  }

  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    for (Pad pad : anatomy.chipPads()) {
      for (boolean up : new boolean[] {false, true}) {
        if (pulls(anatomy, pad, up)) {
          Figures.numbers("grid.clamp.ohms").forEach(n -> faults.add(new Clamp(pad, up, n)));
        }
      }
    }
    return faults;
  }

  private static boolean pulls(Anatomy anatomy, Pad pad, boolean up) {
    return !anatomy.onGround(pad) && !(up && anatomy.onRail(pad));
  }

  @Override
  public String text() {
    String rail = toSupply ? "supply" : "ground";
    return pin.text() + ": clamps to " + rail + " through " + Ohms.text(ohms);
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
    return FaultKinds.CLAMP;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.load(pin, toSupply ? Figures.number("supply.mv") : 0, ohms);
  }
}
