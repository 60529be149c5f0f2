package faultfinch.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ViewportTest {

  @Test
  void showing_aWideRectangle_fillsTheWidthAndCentresTheHeight() {
    // 100 x 50 mm in 400 x 300 dots: 4 dots a mm by width, 6 by height; so 4, and 100 dots spare.
    Viewport view = Viewport.showing(-10, 0, 90, 50, 400, 300);
    assertEquals(4, view.scale());
    assertEquals(0, view.toX(-10), 1e-9);
    assertEquals(50, view.toY(0), 1e-9);
  }

  @Test
  void zoomed_aboutAPoint_leavesThatPointInPlace() {
    Viewport view = new Viewport(4, 20, 30);
    double x = view.fromX(100);
    Viewport near = view.zoomed(2, 100, 50);
    assertEquals(8, near.scale());
    assertEquals(100, near.toX(x), 1e-9);
  }

  @Test
  void zoomed_beyondItsLimits_staysAtThem() {
    assertEquals(Viewport.CLOSEST, new Viewport(4, 0, 0).zoomed(1000, 0, 0).scale());
    assertEquals(Viewport.FARTHEST, new Viewport(4, 0, 0).zoomed(0.001, 0, 0).scale());
  }
}
