package faultfinch.board;

import java.util.List;

/**
 * A piece of track as it is laid on the board, from pad to pad.
 *
 * <p>Not modelled: the barrel of a hole from side to side, corners, pads.
 *
 * @param net name of the net it belongs to
 * @param width in millimetres
 * @param legs in the order they run, end to end
 */
public record Track(String net, Net.Segment segment, double width, List<Leg> legs) {

  /** Copper of 35 micrometres: 17.2 microohms times a millimetre, over 0.035 mm. */
  private static final double MILLIOHMS_PER_SQUARE = 0.0172 / 0.035;

  /** Which side of the board a leg runs on. */
  public enum Side {
    PARTS,
    SOLDER
  }

  /** A straight run; millimetres from the left and the back edge. */
  public record Leg(Side side, double fromX, double fromY, double toX, double toY) {

    /** Millimetres from end to end. */
    public double length() {
      return far(toX - fromX, toY - fromY);
    }

    /** Millimetres from a point to the nearest point of the leg. */
    public double distance(double x, double y) {
      double dx = toX - fromX;
      double dy = toY - fromY;
      double square = dx * dx + dy * dy;
      double along = square == 0 ? 0 : ((x - fromX) * dx + (y - fromY) * dy) / square;
      double held = Math.max(0, Math.min(1, along));
      return far(x - fromX - held * dx, y - fromY - held * dy);
    }

    /** Millimetres from the middle of this leg to the middle of another, wherever nearest. */
    double distance(Leg other) {
      if (crosses(other)) {
        return 0;
      }
      return Math.min(
          Math.min(distance(other.fromX, other.fromY), distance(other.toX, other.toY)),
          Math.min(other.distance(fromX, fromY), other.distance(toX, toY)));
    }

    private boolean crosses(Leg other) {
      return side(other.fromX, other.fromY) * side(other.toX, other.toY) < 0
          && other.side(fromX, fromY) * other.side(toX, toY) < 0;
    }

    /** Above 0 on one side of the leg's line, below 0 on the other. */
    private double side(double x, double y) {
      return (toX - fromX) * (y - fromY) - (toY - fromY) * (x - fromX);
    }

    private static double far(double x, double y) {
      // Rounded the same on every computer, by definition, and not a call.
      return Math.sqrt(x * x + y * y);
    }
  }

  public Track {
    legs = List.copyOf(legs);
    if (legs.isEmpty() || !(width > 0)) {
      throw new IllegalArgumentException(
          "found a track of "
              + legs.size()
              + " legs, "
              + width
              + " mm wide, right would be one"
              + " with legs and width");
    }
  }

  /** Millimetres of copper from pad to pad. */
  public double length() {
    return legs.stream().mapToDouble(Leg::length).sum();
  }

  /** Milliohms from pad to pad at room temperature. */
  public double milliohms() {
    return MILLIOHMS_PER_SQUARE * length() / width;
  }

  /** Millimetres from a point to the nearest point of the track's middle. */
  public double distance(double x, double y) {
    return legs.stream().mapToDouble(l -> l.distance(x, y)).min().orElse(Double.MAX_VALUE);
  }

  /**
   * Millimetres from the copper of this track to that of another where they come nearest on one
   * side of the board; below 0 where they meet.
   */
  public double gap(Track other) {
    double least = Double.MAX_VALUE;
    for (Leg leg : legs) {
      for (Leg theirs : other.legs) {
        if (leg.side() == theirs.side()) {
          least = Math.min(least, leg.distance(theirs));
        }
      }
    }
    return least - (width + other.width) / 2;
  }
}
