package faultfinch.fault;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Harm.RegulatorHarm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A break anywhere on the one way from the brick through the regulator: lead, jack, fuse, diode,
 * their joints and tracks. Written like the same break elsewhere; what it does differs.
 *
 * @param spot lead, reference, pad, or pads of the piece of track
 * @param place lead, reference or net that a repair touches
 * @param effect what the regulator lacks
 */
public record SupplyBreak(String spot, String place, Seat seat, Lack effect) implements Fault {

  /** What the regulator lacks through the break. */
  public enum Lack {
    INPUT,
    OUTPUT,
    GROUND
  }

  static Optional<Fault> read(Words words) {
    String text = words.normal();
    return sites(words.anatomy()).stream().filter(f -> f.text().equals(text)).findFirst();
  }

  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    faults.add(new SupplyBreak("lead", "lead", Seat.SUPPLY, Lack.INPUT));
    String regulator = anatomy.board().supply().regulator();
    for (PlacedPart part : anatomy.board().parts()) {
      if (anatomy.feedsBoard(part)) {
        if (!part.ref().equals(regulator)) {
          faults.add(new SupplyBreak(part.ref(), part.ref(), Seat.INSIDE, Lack.INPUT));
        }
        for (Pad pad : anatomy.pads(part)) {
          Lack lack = part.ref().equals(regulator) ? lack(pad) : Lack.INPUT;
          faults.add(new SupplyBreak(pad.text(), pad.ref(), Seat.JOINT, lack));
        }
      }
    }
    for (Net net : anatomy.board().nets()) {
      for (Net.Segment s : net.segments()) {
        if (anatomy.feedsThrough(net, s)) {
          faults.add(new SupplyBreak(s.text(), net.name(), Seat.TRACK, Lack.INPUT));
        }
      }
    }
    return faults;
  }

  private static Lack lack(Pad pad) {
    return switch (pad.pin()) {
      case "OUT" -> Lack.OUTPUT;
      case "GND" -> Lack.GROUND;
      default -> Lack.INPUT;
    };
  }

  @Override
  public String text() {
    String track = seat == Seat.TRACK ? "track " : "";
    return track + spot + (seat == Seat.JOINT ? ": open joint" : ": open");
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.SUPPLY_BREAK;
  }

  @Override
  public Optional<String> decides() {
    return seat == Seat.INSIDE ? Optional.of("what " + place + " is") : Optional.empty();
  }

  @Override
  public void applyTo(Harm harm) {
    switch (effect) {
      case INPUT -> harm.supplyOpen();
      case OUTPUT -> harm.regulator(place, RegulatorHarm.DEAD);
      // Without its ground the regulator has nothing to compare with and passes its input on.
      case GROUND -> harm.regulator(place, RegulatorHarm.SHORTED);
    }
  }
}
