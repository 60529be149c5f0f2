package faultfinch.board;

import faultfinch.part.Element;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where the pads and the body of a placed part lie on its board, for drawing it and for what a
 * splash of solder can join.
 *
 * <p>Not modelled: the true outline of a package; the body is a rectangle of about its size.
 *
 * @param pads by pin number
 */
public record Footprint(List<PadPlace> pads, Body body) {
  private static final double PITCH = 2.54;
  private static final double NARROW = 7.62;
  private static final double WIDE = 15.24;
  private static final int WIDE_FROM_PINS = 24;

  /** A row of pins is less than this from its next; a hair over 0.1 inch, in millimetres. */
  private static final double TOUCHING = 2.6;

  /** A rectangle in millimetres from the left and from the back edge of the board. */
  public record Body(double left, double top, double right, double bottom) {

    /** Whether two bodies share more than an edge. */
    public boolean overlaps(Body other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  /** Two pads of one part that a splash of solder can join. */
  public record Neighbours(PadPlace one, PadPlace other) {}

  /**
   * Pins in one row, unturned.
   *
   * @param pitch from one pin to the next
   * @param beyond of the body beyond the middle of the first and last pin; below zero if within
   * @param half of the body's depth
   */
  private record Row(double pitch, double beyond, double half) {}

  public Footprint {
    pads = List.copyOf(pads);
  }

  /** The footprint of a part where it is placed. */
  public static Footprint of(PlacedPart part) {
    return part.type().part() instanceof Element ? row(part, row(part.type().type())) : dual(part);
  }

  /** Pads 0.1 inch apart, in the order of their numbers. */
  public List<Neighbours> neighbours() {
    List<Neighbours> found = new ArrayList<>();
    for (int i = 0; i < pads.size(); i++) {
      for (PadPlace other : pads.subList(i + 1, pads.size())) {
        if (pads.get(i).distance(other) < TOUCHING) {
          found.add(new Neighbours(pads.get(i), other));
        }
      }
    }
    return List.copyOf(found);
  }

  /** Pin distances are those of the boards' README; bodies are common sizes. */
  private static Row row(String type) {
    return switch (type) {
      case "R" -> new Row(10.16, -1.9, 1.25);
      case "D" -> new Row(10.16, -2.5, 1.35);
      case "C" -> new Row(5.08, 0.5, 1.25);
      case "CPOL" -> new Row(5.08, 2.46, 5);
      case "JACK" -> new Row(5.08, 2, 5);
      case "LED" -> new Row(2.54, 1.23, 2.5);
      case "LINK" -> new Row(2.54, 1.27, 1.27);
      case "FUSE" -> new Row(22.86, 1, 3);
      case "KEY" -> new Row(12.7, -0.35, 6);
      case "BEEPER", "SPEAKER" -> new Row(7.62, 2.19, 6);
      case "7805" -> new Row(PITCH, 2.5, 2.3);
      default -> new Row(PITCH, 1.27, 1.27);
    };
  }

  private static Footprint row(PlacedPart part, Row row) {
    List<PadPlace> pads = new ArrayList<>();
    List<Pin> pins = numbered(part);
    pins.forEach(p -> pads.add(pad(part, p, (p.number() - 1) * row.pitch(), 0)));
    double last = (pins.get(pins.size() - 1).number() - 1) * row.pitch();
    return new Footprint(
        pads, body(part, -row.beyond(), -row.half(), last + row.beyond(), row.half()));
  }

  /** The highest number is the pin opposite pin 1; numbers may be left out, as on a can. */
  private static Footprint dual(PlacedPart part) {
    List<Pin> pins = numbered(part);
    int count = pins.get(pins.size() - 1).number();
    int side = count / 2;
    double across = count >= WIDE_FROM_PINS ? WIDE : NARROW;
    List<PadPlace> pads = new ArrayList<>();
    for (Pin pin : pins) {
      boolean left = pin.number() <= side;
      int down = left ? pin.number() - 1 : count - pin.number();
      pads.add(pad(part, pin, left ? 0 : across, down * PITCH));
    }
    double end = (side - 1) * PITCH;
    return new Footprint(
        pads, body(part, PITCH / 4, -PITCH / 2, across - PITCH / 4, end + PITCH / 2));
  }

  private static List<Pin> numbered(PlacedPart part) {
    return part.type().part().pinout().pins().stream()
        .sorted(Comparator.comparingInt(Pin::number))
        .toList();
  }

  private static PadPlace pad(PlacedPart part, Pin pin, double right, double down) {
    return new PadPlace(
        new Pad(part.ref(), pin.name()), pin.number(), x(part, right, down), y(part, right, down));
  }

  private static Body body(PlacedPart part, double left, double top, double right, double bottom) {
    double oneX = x(part, left, top);
    double oneY = y(part, left, top);
    double otherX = x(part, right, bottom);
    double otherY = y(part, right, bottom);
    return new Body(
        Math.min(oneX, otherX),
        Math.min(oneY, otherY),
        Math.max(oneX, otherX),
        Math.max(oneY, otherY));
  }

  /** Turned clockwise, what lay to the right of pin 1 lies below it. */
  private static double x(PlacedPart part, double right, double down) {
    return hundredths(
        part.x()
            + switch (part.turn()) {
              case 90 -> -down;
              case 180 -> -right;
              case 270 -> down;
              default -> right;
            });
  }

  private static double y(PlacedPart part, double right, double down) {
    return hundredths(
        part.y()
            + switch (part.turn()) {
              case 90 -> right;
              case 180 -> -down;
              case 270 -> -right;
              default -> down;
            });
  }

  /** So that sums of 2.54 read as they are written, and the same everywhere. */
  private static double hundredths(double millimetres) {
    return Math.round(millimetres * 100) / 100.0;
  }
}
