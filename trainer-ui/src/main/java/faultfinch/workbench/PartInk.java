package faultfinch.workbench;

import faultfinch.board.Footprint;
import faultfinch.board.PadPlace;
import faultfinch.board.PlacedPart;
import faultfinch.fx.Skin.Inks;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.ArcType;

/**
 * Draws the silhouette of a part in ink: its real outline, pin 1 marked, a socket as a double line.
 * Works in millimetres about pin 1, unturned; the caller turns and scales.
 */
final class PartInk {
  private static final double FINE = 0.22;
  private static final double BOLD = 0.4;

  private final GraphicsContext gc;
  private final Inks inks;

  PartInk(GraphicsContext gc, Inks inks) {
    this.gc = gc;
    this.inks = inks;
  }

  /**
   * @param out whether the part is out of its socket
   */
  void draw(PlacedPart part, Footprint footprint, boolean out) {
    Footprint.Body b = unturned(part, footprint.body());
    double wide = b.right() - b.left();
    double high = b.bottom() - b.top();
    gc.setStroke(inks.ink());
    gc.setFill(inks.part());
    gc.setLineDashes();
    gc.setLineWidth(BOLD);
    switch (part.type().type()) {
      case "R" -> resistor(b, wide, high);
      case "D" -> diode(b, wide, high);
      case "C" -> lens(b, wide, high);
      case "CPOL" -> can(b, wide);
      case "LED" -> lamp(b, wide);
      case "FUSE" -> fuse(b, wide, high);
      case "KEY" -> key(b, wide, high);
      case "LINK" -> link(b, wide, high);
      case "BEEPER" -> beeper(b, wide, high);
      case "7805" -> tab(b, wide, high);
      case "JACK" -> jack(b, wide, high);
      case "RPACK8" -> comb(b, wide, high);
      case "OSC" -> metal(b, wide, high);
      default -> chip(part, footprint, b, out);
    }
  }

  /** The body as it lies before the part is turned, about pin 1. */
  private static Footprint.Body unturned(PlacedPart part, Footprint.Body body) {
    double left = body.left() - part.x();
    double right = body.right() - part.x();
    double top = body.top() - part.y();
    double bottom = body.bottom() - part.y();
    return switch (part.turn()) {
      case 90 -> new Footprint.Body(top, -right, bottom, -left);
      case 180 -> new Footprint.Body(-right, -bottom, -left, -top);
      case 270 -> new Footprint.Body(-bottom, left, -top, right);
      default -> new Footprint.Body(left, top, right, bottom);
    };
  }

  private void box(double x, double y, double wide, double high, double round) {
    gc.fillRoundRect(x, y, wide, high, round, round);
    gc.strokeRoundRect(x, y, wide, high, round, round);
  }

  private void leads(Footprint.Body b, double to) {
    gc.setLineWidth(BOLD);
    gc.strokeLine(0, 0, b.left(), 0);
    gc.strokeLine(b.right(), 0, to, 0);
  }

  private void chip(PlacedPart part, Footprint footprint, Footprint.Body b, boolean out) {
    double wide = b.right() - b.left();
    double high = b.bottom() - b.top();
    gc.setLineWidth(FINE);
    for (PadPlace pad : footprint.pads()) {
      double[] at = local(part, pad);
      double edge = at[0] < (b.left() + b.right()) / 2 ? b.left() : b.right();
      gc.setStroke(inks.ink());
      gc.strokeLine(at[0], at[1] - 0.35, edge, at[1] - 0.35);
      gc.strokeLine(at[0], at[1] + 0.35, edge, at[1] + 0.35);
    }
    if (part.socketed()) {
      gc.setLineWidth(FINE);
      gc.strokeRoundRect(b.left() - 1.7, b.top() - 0.8, wide + 3.4, high + 1.6, 1, 1);
      gc.strokeRoundRect(b.left() - 1.2, b.top() - 0.3, wide + 2.4, high + 0.6, 1, 1);
    }
    if (out) {
      gc.setLineDashes(0.8, 0.8);
      gc.strokeRect(b.left(), b.top(), wide, high);
      gc.setLineDashes();
      return;
    }
    gc.setLineWidth(BOLD);
    box(b.left(), b.top(), wide, high, 0.8);
    double middle = (b.left() + b.right()) / 2;
    gc.setFill(inks.board());
    gc.fillArc(middle - 1, b.top() - 1, 2, 2, 180, 180, ArcType.CHORD);
    gc.strokeArc(middle - 1, b.top() - 1, 2, 2, 180, 180, ArcType.OPEN);
    gc.setFill(inks.ink());
    gc.fillOval(b.left() + 0.5, b.top() + 0.75, 0.9, 0.9);
    if (part.type().type().equals("DISPLAY")) {
      glass(b, wide, high);
    }
  }

  /** Sixteen cells in a window, drawn along the body. */
  private void glass(Footprint.Body b, double wide, double high) {
    gc.setLineWidth(FINE);
    gc.setFill(inks.board());
    double left = b.left() + wide * 0.56;
    gc.fillRect(left, b.top() + 1.4, wide * 0.32, high - 2.8);
    gc.strokeRect(left, b.top() + 1.4, wide * 0.32, high - 2.8);
    for (int i = 1; i < 16; i++) {
      double y = b.top() + 1.4 + i * (high - 2.8) / 16;
      gc.strokeLine(left, y, left + wide * 0.32, y);
    }
  }

  private void resistor(Footprint.Body b, double wide, double high) {
    leads(b, 10.16);
    box(b.left(), b.top(), wide, high, high * 0.8);
    gc.setLineWidth(FINE);
    for (double at : new double[] {0.18, 0.26, 0.82}) {
      gc.strokeLine(b.left() + wide * at, b.top() + 0.1, b.left() + wide * at, b.bottom() - 0.1);
    }
  }

  private void diode(Footprint.Body b, double wide, double high) {
    leads(b, 10.16);
    box(b.left(), b.top(), wide, high, 0.4);
    gc.setFill(inks.ink());
    gc.fillRect(b.right() - 1.5, b.top(), 0.8, high);
  }

  private void lens(Footprint.Body b, double wide, double high) {
    gc.fillOval(b.left(), b.top(), wide, high);
    gc.strokeOval(b.left(), b.top(), wide, high);
  }

  private void can(Footprint.Body b, double wide) {
    gc.fillOval(b.left(), b.top(), wide, b.bottom() - b.top());
    gc.strokeOval(b.left(), b.top(), wide, b.bottom() - b.top());
    gc.setLineWidth(FINE);
    gc.strokeOval(b.left() + 0.9, b.top() + 0.9, wide - 1.8, b.bottom() - b.top() - 1.8);
    gc.setFill(inks.faint().deriveColor(0, 1, 1, 0.35));
    gc.fillArc(b.left() + 0.9, b.top() + 0.9, wide - 1.8, wide - 1.8, -38, 76, ArcType.CHORD);
    gc.setLineWidth(BOLD);
    gc.strokeLine(b.left() + 1.5, b.top() + 0.2, b.left() + 1.5, b.top() + 2);
    gc.strokeLine(b.left() + 0.6, b.top() + 1.1, b.left() + 2.4, b.top() + 1.1);
  }

  private void lamp(Footprint.Body b, double wide) {
    gc.fillOval(b.left(), b.top(), wide, wide);
    gc.strokeArc(b.left(), b.top(), wide, wide, 40, 280, ArcType.CHORD);
    gc.setLineWidth(FINE);
    gc.strokeOval(b.left() + 0.8, b.top() + 0.8, wide - 1.6, wide - 1.6);
  }

  private void fuse(Footprint.Body b, double wide, double high) {
    box(b.left(), b.top() + 0.4, wide, high - 0.8, high * 0.5);
    gc.setLineWidth(FINE);
    gc.strokeLine(b.left() + 5, 0, b.right() - 5, 0);
    gc.setFill(inks.board());
    gc.setLineWidth(BOLD);
    box(b.left(), b.top(), 5, high, 0.6);
    box(b.right() - 5, b.top(), 5, high, 0.6);
  }

  private void key(Footprint.Body b, double wide, double high) {
    box(b.left(), b.top(), wide, high, 2);
    gc.setFill(inks.board());
    box(b.left() + 1.6, b.top() + 1.6, wide - 3.2, high - 3.2, 3);
  }

  private void link(Footprint.Body b, double wide, double high) {
    box(b.left(), b.top(), wide, high, 0.2);
    gc.setLineWidth(FINE);
    gc.strokeLine((b.left() + b.right()) / 2, b.top(), (b.left() + b.right()) / 2, b.bottom());
  }

  private void beeper(Footprint.Body b, double wide, double high) {
    gc.fillOval(b.left(), b.top(), wide, high);
    gc.strokeOval(b.left(), b.top(), wide, high);
    gc.setFill(inks.ink());
    gc.fillOval((b.left() + b.right()) / 2 - 0.8, (b.top() + b.bottom()) / 2 - 0.8, 1.6, 1.6);
    gc.setLineWidth(FINE);
    gc.strokeOval(b.left() + 1, b.top() + 1, wide - 2, high - 2);
  }

  private void tab(Footprint.Body b, double wide, double high) {
    box(b.left(), b.top(), wide, high, 0.2);
    gc.setFill(inks.faint().deriveColor(0, 1, 1, 0.45));
    gc.fillRect(b.left(), b.top(), wide, 1.3);
    gc.strokeRect(b.left(), b.top(), wide, 1.3);
  }

  private void jack(Footprint.Body b, double wide, double high) {
    box(b.left(), b.top(), wide, high, 0.5);
    gc.setLineWidth(FINE);
    gc.strokeRect(b.left() + 1, b.bottom() - 5, wide - 2, 4);
  }

  private void comb(Footprint.Body b, double wide, double high) {
    box(b.left(), b.top(), wide, high, 0.8);
    gc.setFill(inks.ink());
    gc.fillOval(b.left() + 0.4, b.top() + 0.4, 0.8, 0.8);
  }

  private void metal(Footprint.Body b, double wide, double high) {
    box(b.left(), b.top(), wide, high, 2.4);
    gc.strokeLine(b.left(), b.top() + 1.6, b.left(), b.top());
    gc.strokeLine(b.left(), b.top(), b.left() + 1.6, b.top());
    gc.setLineWidth(FINE);
    gc.strokeRoundRect(b.left() + 0.8, b.top() + 0.8, wide - 1.6, high - 1.6, 1.6, 1.6);
    gc.setFill(inks.ink());
    gc.fillOval(b.left() + 1.3, b.top() + 1.3, 0.9, 0.9);
  }

  private static double[] local(PlacedPart part, PadPlace pad) {
    double x = pad.x() - part.x();
    double y = pad.y() - part.y();
    return switch (part.turn()) {
      case 90 -> new double[] {y, -x};
      case 180 -> new double[] {-x, -y};
      case 270 -> new double[] {-y, x};
      default -> new double[] {x, y};
    };
  }

  /** A pad with its hole; in millimetres from the board's corner. */
  static void pad(GraphicsContext gc, Inks inks, PadPlace pad, Color ring) {
    gc.setFill(ring);
    if (pad.number() == 1) {
      gc.fillRect(pad.x() - 0.75, pad.y() - 0.75, 1.5, 1.5);
    } else {
      gc.fillOval(pad.x() - 0.75, pad.y() - 0.75, 1.5, 1.5);
    }
    gc.setFill(inks.board());
    gc.fillOval(pad.x() - 0.35, pad.y() - 0.35, 0.7, 0.7);
  }
}
