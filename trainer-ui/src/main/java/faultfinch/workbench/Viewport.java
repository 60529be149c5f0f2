package faultfinch.workbench;

/**
 * Which part of the drawing is in sight.
 *
 * @param scale dots for each millimetre
 * @param left dots from the window's edge to the board's left edge
 * @param top dots from the window's edge to the board's back edge
 */
record Viewport(double scale, double left, double top) {
  static final double CLOSEST = 40;
  static final double FARTHEST = 1.5;

  /** Shows a rectangle of the drawing, in millimetres, as large as it will go. */
  static Viewport showing(
      double fromX, double fromY, double toX, double toY, double width, double height) {
    double scale = Math.max(0.1, Math.min(width / (toX - fromX), height / (toY - fromY)));
    return new Viewport(
        scale,
        (width - (toX - fromX) * scale) / 2 - fromX * scale,
        (height - (toY - fromY) * scale) / 2 - fromY * scale);
  }

  /** Nearer or farther, while the point at these dots stays where it is. */
  Viewport zoomed(double factor, double atX, double atY) {
    double to = Math.max(FARTHEST, Math.min(CLOSEST, scale * factor));
    double by = to / scale;
    return new Viewport(to, atX - (atX - left) * by, atY - (atY - top) * by);
  }

  Viewport moved(double x, double y) {
    return new Viewport(scale, left + x, top + y);
  }

  double toX(double millimetres) {
    return left + millimetres * scale;
  }

  double toY(double millimetres) {
    return top + millimetres * scale;
  }

  double fromX(double dots) {
    return (dots - left) / scale;
  }

  double fromY(double dots) {
    return (dots - top) / scale;
  }
}
