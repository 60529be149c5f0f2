package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.machine.Power;
import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import faultfinch.symptom.Screen;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which looks a board offers. */
public final class Looks {
  private static final String AT_THE_PIN = " at the pin";
  private static final String AT_THE_PAD = " at the pad";

  private Looks() {}

  /** All looks that change nothing, by instrument, then in board order. */
  public static List<Look> passive(Board board) {
    List<Look> looks = new ArrayList<>();
    looks.add(new Look(Instruments.SCREEN, ""));
    looks.add(new Look(Instruments.LISTEN, ""));
    looks.add(new Look(Instruments.LAMP, ""));
    board.exercise().stream()
        .map(KeyPress::ref)
        .distinct()
        .forEach(ref -> looks.add(new Look(Instruments.KEY, ref)));
    if (Screen.of(board).isPresent() && !board.exercise().isEmpty()) {
      looks.add(new Look(Instruments.TYPED, ""));
    }
    looks.add(new Look(Instruments.CURRENT, ""));
    warm(board).forEach(p -> looks.add(new Look(Instruments.FINGER, p.ref())));
    List<Pad> wired = wired(board);
    wired.forEach(p -> looks.add(new Look(Instruments.METER, p.text())));
    List<Pad> chips = wired.stream().filter(p -> chip(board.part(p.ref()).orElseThrow())).toList();
    for (Pad pad : chips) {
      looks.add(probe(pad, false));
      looks.add(probe(pad, true));
    }
    Set<Pad> supplied = supplied(board);
    Set<Pad> clocked = clocked(board, supplied);
    chips.stream()
        .filter(clocked::contains)
        .forEach(p -> looks.add(new Look(Instruments.COUNTER, p.text())));
    wired.forEach(p -> looks.add(new Look(Instruments.CONTINUITY, p.text())));
    board.parts().stream()
        .filter(p -> p.type() == PartCatalog.FUSE)
        .forEach(
            p -> looks.add(new Look(Instruments.CONTINUITY, p.ref() + ".1-" + p.ref() + ".2")));
    for (Net net : board.nets()) {
      net.segments().forEach(s -> looks.add(new Look(Instruments.CONTINUITY, s.text())));
    }
    chips.stream()
        .filter(p -> !supplied.contains(p))
        .forEach(p -> looks.add(new Look(Instruments.OHMS, p.text())));
    feeds(board).forEach(p -> looks.add(new Look(Instruments.OHMS, p.text())));
    return List.copyOf(looks);
  }

  /** One pad of each net that brings power to the board or from it to parts. */
  private static List<Pad> feeds(Board board) {
    Supply supply = board.supply();
    List<Pad> feeds = new ArrayList<>();
    feeds.add(new Pad(supply.jack(), "+"));
    feeds.add(new Pad(supply.regulator(), "IN"));
    supply.rails().forEach(r -> feeds.add(new Pad(r.regulator(), "OUT")));
    supply.poles().forEach(p -> feeds.add(new Pad(p.jack(), "+")));
    return feeds;
  }

  /** The logic probe on a pin's leg, or on the pad it ought to meet. */
  public static Look probe(Pad pad, boolean atPad) {
    return new Look(Instruments.PROBE, pad.text() + (atPad ? AT_THE_PAD : AT_THE_PIN));
  }

  /** Whether a place of the probe is the pad rather than the pin. */
  static boolean atPad(String place) {
    return place.endsWith(AT_THE_PAD);
  }

  /** The pad a place begins with. */
  static Pad pad(String place) {
    String written = place.split(" ", 2)[0];
    int dot = written.indexOf('.');
    if (dot < 1) {
      throw new IllegalArgumentException(
          "found '" + place + "', right would be a part and its pin, such as U9.D0");
    }
    return new Pad(written.substring(0, dot), written.substring(dot + 1));
  }

  /** The dash between the two pads of a piece of track; below 0 in the name of one pad. */
  static int dash(String track) {
    // A pin may itself be called "-": then the dash of the track follows it.
    return track.indexOf('-', track.indexOf('.') + 2);
  }

  /** Whether a part has supply pins or outputs of its own. */
  static boolean chip(PlacedPart part) {
    return !(part.type().part() instanceof Element);
  }

  /** Chips, and what the current of a supply goes through, or would if it were shorted. */
  private static List<PlacedPart> warm(Board board) {
    Set<Pad> signals = new HashSet<>(board.netOfPad().keySet());
    Power.nets(board).forEach(net -> signals.removeAll(net.pads()));
    board.net(board.supply().groundNet()).ifPresent(net -> signals.removeAll(net.pads()));
    return board.parts().stream().filter(part -> warms(part, signals)).toList();
  }

  private static boolean warms(PlacedPart part, Set<Pad> signals) {
    if (!(part.type().part() instanceof Element element)) {
      return true;
    }
    return switch (element.kind()) {
      case REGULATOR -> true;
      case FUSE, DIODE, CAPACITOR ->
          part.type().part().pinout().pins().stream()
              .noneMatch(pin -> signals.contains(new Pad(part.ref(), pin.name())));
      default -> false;
    };
  }

  /** Clock inputs, and whatever is joined to one, to the oscillator or to a processor's clock. */
  private static Set<Pad> clocked(Board board, Set<Pad> supplied) {
    Set<Pad> clocked = new HashSet<>();
    for (Net net : board.nets()) {
      if (net.pads().stream().anyMatch(p -> isClock(board, p, supplied))) {
        clocked.addAll(net.pads());
      }
    }
    return clocked;
  }

  private static boolean isClock(Board board, Pad pad, Set<Pad> supplied) {
    PlacedPart part = board.part(pad.ref()).orElseThrow();
    Pin pin = part.type().part().pinout().find(pad.pin()).orElseThrow();
    boolean oscillator = pad.ref().equals(board.crystal()) && pin.drives();
    boolean processor = part.type() == PartCatalog.M6502 && pin.name().startsWith("PHI");
    boolean edge = pin.role() == Pin.Role.CLOCK_FALLS || pin.role() == Pin.Role.CLOCK_RISES;
    return (edge && !supplied.contains(pad)) || oscillator || processor;
  }

  /** Pads on nets that feed parts, or that bring power or take it back. */
  private static Set<Pad> supplied(Board board) {
    Supply supply = board.supply();
    Set<String> returns = Set.of(supply.groundNet(), supply.jackNet());
    Set<Pad> supplied = new HashSet<>();
    for (Net net : board.nets()) {
      if (returns.contains(net.name()) || supply.feeds(net.name())) {
        supplied.addAll(net.pads());
      }
    }
    return supplied;
  }

  private static List<Pad> wired(Board board) {
    Set<Pad> nets = board.netOfPad().keySet();
    return board.parts().stream()
        .flatMap(
            part ->
                part.type().part().pinout().pins().stream()
                    .map(pin -> new Pad(part.ref(), pin.name())))
        .filter(nets::contains)
        .toList();
  }
}
