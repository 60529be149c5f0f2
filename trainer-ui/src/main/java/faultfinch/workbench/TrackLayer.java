package faultfinch.workbench;

import faultfinch.board.Board;
import faultfinch.board.Footprint;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PadPlace;
import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays the tracks of a board, which its description gives only as pad to pad.
 *
 * <p>How: a search for the cheapest way on a grid of a quarter of the pin pitch and two sides. The
 * part side likes to run across, the solder side down; a hole from side to side costs four steps; a
 * cell that another track has taken costs so much that tracks cross one another only where no way
 * is left. Short pieces are laid first.
 */
final class TrackLayer {
  private static final double GRID = 0.635;
  private static final int STEP = 10;
  private static final int AGAINST = 9;
  private static final int HOLE = 45;
  private static final int TAKEN = 300;
  private static final int OWN = 60;
  private static final int PAD = 900;
  private static final int BESIDE_PAD = 25;

  private final int columns;
  private final int rows;
  private final int cells;
  private final int[] track;
  private final int[] pad;
  private final boolean[] besidePad;
  private final int[] cost;
  private final int[] from;
  private final Map<Pad, PadPlace> places = new HashMap<>();

  private TrackLayer(Board board) {
    columns = (int) Math.ceil(board.width() / GRID);
    rows = (int) Math.ceil(board.height() / GRID);
    cells = columns * rows;
    track = new int[2 * cells];
    pad = new int[cells];
    besidePad = new boolean[cells];
    cost = new int[2 * cells];
    from = new int[2 * cells];
    Map<Pad, Net> nets = board.netOfPad();
    for (PlacedPart part : board.parts()) {
      for (PadPlace place : Footprint.of(part).pads()) {
        places.put(place.pad(), place);
        Net net = nets.get(place.pad());
        int cell = cell(place);
        pad[cell] = net == null ? -1 : board.nets().indexOf(net) + 1;
        for (int side : new int[] {1, -1, columns, -columns}) {
          besidePad[Math.max(0, Math.min(cells - 1, cell + side))] = true;
        }
      }
    }
  }

  /** All tracks of a board, in the order of its nets and their segments. */
  static List<Track> lay(Board board) {
    TrackLayer layer = new TrackLayer(board);
    record Wanted(int net, Net.Segment segment, double length) {}
    List<Wanted> wanted = new ArrayList<>();
    for (int n = 0; n < board.nets().size(); n++) {
      for (Net.Segment s : board.nets().get(n).segments()) {
        wanted.add(new Wanted(n, s, layer.places.get(s.from()).distance(layer.places.get(s.to()))));
      }
    }
    wanted.sort(Comparator.comparingDouble(Wanted::length));
    Map<Net.Segment, Track> laid = new HashMap<>();
    for (Wanted w : wanted) {
      String net = board.nets().get(w.net).name();
      laid.put(w.segment, new Track(net, w.segment, layer.way(w.net + 1, w.segment)));
    }
    return board.nets().stream().flatMap(n -> n.segments().stream()).map(laid::get).toList();
  }

  private int cell(PadPlace place) {
    int column = Math.max(0, Math.min(columns - 1, (int) Math.round(place.x() / GRID)));
    int row = Math.max(0, Math.min(rows - 1, (int) Math.round(place.y() / GRID)));
    return row * columns + column;
  }

  private List<Track.Leg> way(int net, Net.Segment segment) {
    PadPlace one = places.get(segment.from());
    PadPlace other = places.get(segment.to());
    int start = cell(one);
    int goal = cell(other);
    Arrays.fill(cost, Integer.MAX_VALUE);
    Frontier frontier = new Frontier();
    for (int side = 0; side < 2; side++) {
      cost[side * cells + start] = 0;
      from[side * cells + start] = -1;
      frontier.add(0, side * cells + start);
    }
    int reached = -1;
    while (reached < 0) {
      int here = frontier.take();
      if (here % cells == goal) {
        reached = here;
      } else {
        spread(net, here, goal, frontier);
      }
    }
    List<Integer> way = new ArrayList<>();
    for (int at = reached; at >= 0; at = from[at]) {
      way.add(0, at);
      if (at % cells != start && at % cells != goal) {
        track[at] = net;
      }
    }
    return legs(one, other, way);
  }

  private void spread(int net, int here, int goal, Frontier frontier) {
    int side = here / cells;
    int cell = here % cells;
    int column = cell % columns;
    int row = cell / columns;
    if (column > 1) {
      reach(net, here, here - 1, STEP + side * AGAINST, goal, frontier);
    }
    if (column < columns - 2) {
      reach(net, here, here + 1, STEP + side * AGAINST, goal, frontier);
    }
    if (row > 1) {
      reach(net, here, here - columns, STEP + (1 - side) * AGAINST, goal, frontier);
    }
    if (row < rows - 2) {
      reach(net, here, here + columns, STEP + (1 - side) * AGAINST, goal, frontier);
    }
    if (pad[cell] == 0) {
      reach(net, here, (1 - side) * cells + cell, HOLE, goal, frontier);
    }
  }

  private void reach(int net, int here, int there, int step, int goal, Frontier frontier) {
    int cell = there % cells;
    int sum = cost[here] + step;
    if (cell != goal) {
      if (track[there] != 0) {
        sum += track[there] == net ? OWN : TAKEN;
      }
      if (pad[cell] != 0) {
        sum += pad[cell] == net ? OWN : PAD;
      } else if (besidePad[cell]) {
        sum += BESIDE_PAD;
      }
    }
    if (sum < cost[there]) {
      cost[there] = sum;
      from[there] = here;
      int left =
          Math.abs(cell % columns - goal % columns) + Math.abs(cell / columns - goal / columns);
      frontier.add(sum + left * STEP, there);
    }
  }

  private List<Track.Leg> legs(PadPlace one, PadPlace other, List<Integer> way) {
    List<Track.Leg> legs = new ArrayList<>();
    double x = one.x();
    double y = one.y();
    for (int i = 0; i < way.size(); i++) {
      boolean last = i == way.size() - 1;
      boolean bend = i == 0 || last || way.get(i) - way.get(i - 1) != way.get(i + 1) - way.get(i);
      if (bend) {
        int cell = way.get(i) % cells;
        double toX = cell % columns * GRID;
        double toY = cell / columns * GRID;
        add(legs, way.get(i) / cells, x, y, toX, toY);
        x = toX;
        y = toY;
      }
    }
    add(legs, way.get(way.size() - 1) / cells, x, y, other.x(), other.y());
    return legs;
  }

  private static void add(
      List<Track.Leg> legs, int side, double x, double y, double toX, double toY) {
    if (x != toX || y != toY) {
      legs.add(new Track.Leg(Track.Side.values()[side], x, y, toX, toY));
    }
  }

  /** Cells still to be looked at, the most promising first; a heap of longs, to spare boxes. */
  private static final class Frontier {
    private long[] heap = new long[1024];
    private int size;

    void add(int promise, int cell) {
      if (size == heap.length) {
        heap = Arrays.copyOf(heap, 2 * size);
      }
      long entry = (long) promise << 32 | cell;
      int at = size++;
      while (at > 0 && heap[(at - 1) / 2] > entry) {
        heap[at] = heap[(at - 1) / 2];
        at = (at - 1) / 2;
      }
      heap[at] = entry;
    }

    int take() {
      long first = heap[0];
      long entry = heap[--size];
      int at = 0;
      while (2 * at + 1 < size) {
        int child = 2 * at + 1;
        if (child + 1 < size && heap[child + 1] < heap[child]) {
          child++;
        }
        if (heap[child] >= entry) {
          break;
        }
        heap[at] = heap[child];
        at = child;
      }
      heap[at] = entry;
      return (int) first;
    }
  }
}
