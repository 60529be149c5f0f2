package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which two nets a fault joins, so that an ohmmeter across them reads next to nothing. */
public final class Joins {
  private final Board board;
  private final Map<Pad, Net> netOfPad;

  /** Of faults of a board. */
  public Joins(Board board) {
    this.board = board;
    netOfPad = board.netOfPad();
  }

  /** Whether a fault, or what is behind its conditions, joins these nets, by their names. */
  public boolean are(Fault fault, Set<String> nets) {
    return of(fault.base()).equals(nets);
  }

  private Set<String> of(Fault fault) {
    if (fault instanceof Bridge bridge) {
      return nets(Stream.of(bridge.one(), bridge.other()));
    }
    if (fault instanceof TrackBridge bridge) {
      return nets(Stream.of(bridge.one().from(), bridge.other().from()));
    }
    return fault instanceof ElementShort shorted
        ? board.part(shorted.ref()).map(this::nets).orElse(Set.of())
        : Set.of();
  }

  private Set<String> nets(PlacedPart part) {
    return nets(
        part.type().part().pinout().pins().stream().map(pin -> new Pad(part.ref(), pin.name())));
  }

  private Set<String> nets(Stream<Pad> pads) {
    return pads.filter(netOfPad::containsKey)
        .map(pad -> netOfPad.get(pad).name())
        .collect(Collectors.toUnmodifiableSet());
  }
}
