package faultfinch.fault;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.part.Element;
import faultfinch.signal.DriveClass;
import faultfinch.signal.Electrical;
import faultfinch.signal.Pin;
import faultfinch.signal.Technology;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A net that one output drives at all times and only inputs listen to. What a load does there can
 * be told on paper: nothing, or the same as an output that always drives one level, or neither.
 *
 * <p>Nothing means: nothing that an input could tell. A meter can, and the current flows.
 *
 * @param inputs all of them digital
 */
record PlainNet(Pad output, List<Pad> inputs) {
  private static final Set<DriveClass> DIGITAL =
      EnumSet.complementOf(
          EnumSet.of(DriveClass.ANALOGUE, DriveClass.AMPLIFIER, DriveClass.TAPE_HEAD));

  private static final int RAIL_MILLIVOLTS = 5000;

  /** Kept away from every threshold, beside the spread of the pins: rails differ a little. */
  private static final int MARGIN = 60;

  /** The net as a plain one, if it is. */
  static Optional<PlainNet> of(Net net, Anatomy anatomy) {
    List<Pad> outputs = net.pads().stream().filter(p -> always(p, anatomy)).toList();
    List<Pad> inputs = net.pads().stream().filter(p -> listens(p, anatomy)).toList();
    long away = net.pads().stream().filter(p -> leadsAway(p, anatomy)).count();
    boolean plain =
        outputs.size() == 1
            && !inputs.isEmpty()
            && inputs.size() + 1 + away == net.pads().size()
            && anatomy.carriesSignal(outputs.get(0));
    return plain ? Optional.of(new PlainNet(outputs.get(0), inputs)) : Optional.empty();
  }

  private static boolean always(Pad pad, Anatomy anatomy) {
    PlacedPart part = anatomy.part(pad);
    Pin pin = anatomy.pin(pad);
    return !anatomy.isClock(part)
        && (part.type().part().pinout().alwaysDriven() & pin.mask()) != 0
        && pin.pullOhms() == 0
        && pin.drive().filter(DIGITAL::contains).isPresent();
  }

  /** Contacts that lead off the board join nothing as long as nothing is plugged in. */
  private static boolean leadsAway(Pad pad, Anatomy anatomy) {
    return anatomy.is(anatomy.part(pad), Element.Kind.CONNECTOR);
  }

  private static boolean listens(Pad pad, Anatomy anatomy) {
    return anatomy.isChip(anatomy.part(pad))
        && anatomy.pin(pad).direction() == Pin.Direction.IN
        && anatomy.pin(pad).role() != Pin.Role.LEVEL
        && anatomy.pin(pad).pullOhms() == 0
        && anatomy.pin(pad).technology() != Technology.PASSIVE;
  }

  /**
   * The trace of a load on the net.
   *
   * @param millivolts what it pulls to
   * @return empty if some input may read one level as another, and not all the same
   */
  Optional<String> trace(int millivolts, int ohms, Anatomy anatomy) {
    boolean low = all(false, millivolts, ohms, false, anatomy);
    boolean high = all(true, millivolts, ohms, true, anatomy);
    if (low && high) {
      return Optional.of(Traces.NOTHING);
    }
    if (low && all(true, millivolts, ohms, false, anatomy)) {
      return Optional.of(Traces.drivesTrace(output.text(), false));
    }
    if (high && all(false, millivolts, ohms, true, anatomy)) {
      return Optional.of(Traces.drivesTrace(output.text(), true));
    }
    return Optional.empty();
  }

  /** Whether all inputs surely read one level while the output drives another. */
  private boolean all(boolean drives, int millivolts, int ohms, boolean reads, Anatomy anatomy) {
    DriveClass drive = anatomy.pin(output).drive().orElseThrow();
    double siemens = 1.0 / drive.ohms(drives) + 1.0 / ohms;
    double amperes = (double) drive.millivolts(drives) / drive.ohms(drives);
    double alone = (amperes + (double) millivolts / ohms) / siemens;
    double sourced = alone;
    double own = Electrical.figure("ls-input.mv");
    if (alone < own) {
      long sources =
          inputs.stream().filter(p -> anatomy.pin(p).technology() == Technology.LS).count();
      double each = 1.0 / Electrical.figure("ls-input.ohm");
      sourced =
          (amperes + (double) millivolts / ohms + sources * own * each)
              / (siemens + sources * each);
    }
    double least = Math.min(alone, sourced) - MARGIN;
    double most = Math.max(alone, sourced) + MARGIN;
    return inputs.stream()
        .map(p -> anatomy.pin(p).technology())
        .allMatch(t -> reads ? least > rising(t) : most < falling(t));
  }

  private static int rising(Technology technology) {
    return technology.threshold(RAIL_MILLIVOLTS) + technology.spread();
  }

  private static int falling(Technology technology) {
    int threshold =
        technology == Technology.SCHMITT
            ? Electrical.figure("threshold.schmitt.falling")
            : technology.threshold(RAIL_MILLIVOLTS);
    return threshold - technology.spread();
  }
}
