package faultfinch.workbench;

import faultfinch.board.Net;
import java.util.List;

/**
 * A piece of track as it is laid on the drawing.
 *
 * @param legs in the order they run, end to end
 */
record Track(String net, Net.Segment segment, List<Leg> legs) {

  /** Which side of the board a leg runs on. */
  enum Side {
    PARTS,
    SOLDER
  }

  /** A straight run; millimetres from the left and the back edge. */
  record Leg(Side side, double fromX, double fromY, double toX, double toY) {

    /** Millimetres from a point to the nearest point of the leg. */
    double distance(double x, double y) {
      double dx = toX - fromX;
      double dy = toY - fromY;
      double square = dx * dx + dy * dy;
      double along = square == 0 ? 0 : ((x - fromX) * dx + (y - fromY) * dy) / square;
      double held = Math.max(0, Math.min(1, along));
      return Math.hypot(x - fromX - held * dx, y - fromY - held * dy);
    }
  }

  Track {
    legs = List.copyOf(legs);
  }

  /** Millimetres from a point to the nearest point of the track. */
  double distance(double x, double y) {
    return legs.stream().mapToDouble(l -> l.distance(x, y)).min().orElse(Double.MAX_VALUE);
  }
}
