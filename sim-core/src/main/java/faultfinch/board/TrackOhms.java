package faultfinch.board;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Ohms of the pieces of track of a board: as they are laid, or where nobody laid them 35 um of
 * copper, as wide as its net needs and as long as the way from pad to pad along the edges of the
 * board.
 */
public final class TrackOhms {
  /** Copper of 17.2 nanoohm metres, 35 um thick: ohms of a piece as long as it is wide. */
  private static final double OHMS_A_SQUARE = 17.2e-9 / 35e-6;

  private static final double SIGNAL_MM = 0.4;
  private static final double SUPPLY_MM = 2;

  /** No piece is shorter than a pad is wide. */
  private static final double SHORTEST_MM = 1;

  private final Board board;
  private final Map<Pad, PadPlace> places = new LinkedHashMap<>();
  private final Map<Net.Segment, Track> laid = new LinkedHashMap<>();

  /** The tracks of a board. */
  public TrackOhms(Board board) {
    this.board = board;
    for (PlacedPart part : board.parts()) {
      Footprint.of(part).pads().forEach(p -> places.put(p.pad(), p));
    }
    board.tracks().forEach(t -> laid.put(t.segment(), t));
  }

  /** Ohms of a piece of this net. */
  public double of(Net net, Net.Segment segment) {
    if (laid.containsKey(segment)) {
      return laid.get(segment).milliohms() / 1000;
    }
    PadPlace from = places.get(segment.from());
    PadPlace to = places.get(segment.to());
    double length =
        Math.max(SHORTEST_MM, Math.abs(from.x() - to.x()) + Math.abs(from.y() - to.y()));
    return OHMS_A_SQUARE * length / (supplies(net) ? SUPPLY_MM : SIGNAL_MM);
  }

  private boolean supplies(Net net) {
    Supply supply = board.supply();
    return supply.feeds(net.name())
        || net.name().equals(supply.groundNet())
        || net.name().equals(supply.jackNet());
  }
}
