package faultfinch.board;

import java.util.ArrayList;
import java.util.List;

/**
 * Who keeps whom away from which point of the grid. Three kinds of copper, signal tracks, wide
 * tracks and holes from side to side, each keep the middles of every kind out of a circle around
 * them; a point counts how many keep a kind out of it.
 */
final class Copper {
  static final double GRID = 0.635;
  static final int SIGNAL = 0;
  static final int WIDE = 1;
  static final int HOLE = 2;
  static final double PAD = 1.2;

  private final int[] widthHundredths;
  private final int[][] keepsOut;
  private final int[][][] around = new int[3][3][];
  private final int[] near;
  private final int[] ring;
  final int columns;
  final int rows;
  final int cells;

  /**
   * @param widths of signal tracks, wide tracks and holes, in millimetres
   * @param clear millimetres of bare board between any two of them
   */
  Copper(double width, double height, List<Double> widths, double clear) {
    columns = (int) Math.floor(width / GRID) + 1;
    rows = (int) Math.floor(height / GRID) + 1;
    cells = columns * rows;
    keepsOut = new int[3][2 * cells];
    near = new int[2 * cells];
    widthHundredths = widths.stream().mapToInt(w -> (int) Math.round(100 * w)).toArray();
    for (int of = 0; of < 3; of++) {
      for (int other = 0; other < 3; other++) {
        around[of][other] = circle((widths.get(of) + widths.get(other)) / 2 + clear);
      }
    }
    ring = circle(widths.get(SIGNAL) + TrackNeighbours.CLOSE);
  }

  double width(int kind) {
    return widthHundredths[kind] / 100.0;
  }

  /** Steps to the points less than so many millimetres away. */
  private int[] circle(double radius) {
    List<Integer> steps = new ArrayList<>();
    int reach = (int) Math.ceil(radius / GRID);
    for (int y = -reach; y <= reach; y++) {
      for (int x = -reach; x <= reach; x++) {
        if (StrictMath.sqrt(x * x + y * y) * GRID < radius - 1e-6) {
          steps.add(y * columns + x);
        }
      }
    }
    return steps.stream().mapToInt(Integer::intValue).toArray();
  }

  int cell(double x, double y) {
    int column = Math.max(1, Math.min(columns - 2, (int) Math.round(x / GRID)));
    int row = Math.max(1, Math.min(rows - 2, (int) Math.round(y / GRID)));
    return row * columns + column;
  }

  double x(int cell) {
    return cell % columns * GRID;
  }

  double y(int cell) {
    return cell / columns * GRID;
  }

  /** Adds copper of a kind at a point of one side, or takes it away with -1. */
  void put(int kind, int side, int cell, int sign) {
    for (int other = 0; other < 3; other++) {
      for (int step : around[kind][other]) {
        int at = cell + step;
        if (at >= 0 && at < cells) {
          keepsOut[other][side * cells + at] += sign;
        }
      }
    }
    for (int step : ring) {
      int at = cell + step;
      if (at >= 0 && at < cells) {
        near[side * cells + at] += sign;
      }
    }
  }

  /** How many keep a kind out of a point of a side. */
  int keepsOut(int kind, int at) {
    return keepsOut[kind][at];
  }

  /** How many are so near a signal track there that solder could join them. */
  int near(int at) {
    return near[at];
  }
}
