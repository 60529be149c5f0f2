package faultfinch.board;

import faultfinch.part.Element;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays the tracks of a board on two sides: the tool that writes the routes of the shipped boards.
 *
 * <p>How: every piece of track looks for its cheapest way on a grid of a quarter of the pin pitch.
 * At first ways may share a place and pay for it; round after round sharing gets dearer, and the
 * places fought over get dearer for good, until every piece has copper of its own. The part side
 * likes to run across, the solder side down. Pieces that end at one pad may touch close to it, for
 * there they are one piece of copper anyway; a piece never touches a pad that is not its end.
 */
final class Router {
  static final double SIGNAL_WIDTH = 0.3;
  static final double POWER_WIDTH = 0.8;
  static final double HOLE_WIDTH = 0.8;

  /** Bare board around a pad at the points of the grid; between two of them 0.06 less. */
  static final double PAD_CLEAR = 0.2;

  /** So close to a pad the pieces that end at it may touch, in millimetres. */
  static final double AT_THE_PAD = 2.6;

  private static final int ROUNDS = 60;
  private static final int STEP = 10;
  private static final int AGAINST = 8;
  private static final int HOLE = 60;
  private static final int NEAR = 9;
  private static final int FOUGHT = 12;
  private static final int AROUND = 8;
  private static final int CALM = 1;
  private static final int NOBODY = -1;

  /** So often those who fight with nobody look for a better way too. */
  private static final int EVERYBODY = 5;

  private static final int DEAREST = 3000;
  private static final int POLISHES = 3;

  private static final class Piece {
    final int number;
    final String net;
    final Net.Segment segment;
    final int kind;
    final PadPlace from;
    final PadPlace to;
    final int start;
    final int goal;
    int[] way = {};

    Piece(int number, String net, Net.Segment segment, int kind, PadPlace[] ends, int[] cells) {
      this.number = number;
      this.net = net;
      this.segment = segment;
      this.kind = kind;
      from = ends[0];
      to = ends[1];
      start = cells[0];
      goal = cells[1];
    }
  }

  private final Copper copper;
  private final int cells;
  private final List<Piece> pieces = new ArrayList<>();
  private final Map<Pad, List<Piece>> endingAt = new HashMap<>();
  private final Map<Pad, Integer> numbers = new HashMap<>();
  private final int[][][] claims = new int[3][2][];
  private final boolean[][] crowded = new boolean[3][];
  private final int[] fought;
  private final int[] cost;
  private final int[] back;
  private final int[] seen;
  private int search;
  private int sharing = 4;
  private final Frontier frontier = new Frontier();

  /**
   * @param clear millimetres of bare board between tracks of different pieces, at least
   */
  Router(Board board, double clear) {
    copper =
        new Copper(
            board.width(), board.height(), List.of(SIGNAL_WIDTH, POWER_WIDTH, HOLE_WIDTH), clear);
    cells = copper.cells;
    fought = new int[2 * cells];
    cost = new int[2 * cells];
    back = new int[2 * cells];
    seen = new int[2 * cells];
    Map<Pad, PadPlace> places = new LinkedHashMap<>();
    for (PlacedPart part : board.parts()) {
      for (PadPlace place : Footprint.of(part).pads()) {
        places.put(place.pad(), place);
        numbers.put(place.pad(), numbers.size());
      }
    }
    for (int kind = 0; kind < 3; kind++) {
      claim(kind, places, board, clear);
    }
    for (Net net : board.nets()) {
      int kind = kind(board, net);
      for (Net.Segment s : net.segments()) {
        PadPlace[] ends = {places.get(s.from()), places.get(s.to())};
        int[] cells = {
          copper.cell(ends[0].x(), ends[0].y()), copper.cell(ends[1].x(), ends[1].y())
        };
        Piece piece = new Piece(pieces.size(), net.name(), s, kind, ends, cells);
        pieces.add(piece);
        endingAt.computeIfAbsent(s.from(), p -> new ArrayList<>()).add(piece);
        endingAt.computeIfAbsent(s.to(), p -> new ArrayList<>()).add(piece);
      }
    }
  }

  private static int kind(Board board, Net net) {
    return net.pads().stream().anyMatch(p -> feeds(board, p)) ? Copper.WIDE : Copper.SIGNAL;
  }

  private static boolean feeds(Board board, Pad pad) {
    PlacedPart part = board.part(pad.ref()).orElseThrow();
    Pin.Role role = part.type().part().pinout().find(pad.pin()).orElseThrow().role();
    boolean source =
        part.type().part() instanceof Element e
            && (e.kind() == Element.Kind.JACK || e.kind() == Element.Kind.REGULATOR);
    return source || role == Pin.Role.SUPPLY || role == Pin.Role.GROUND;
  }

  /** Points too close to a pad for anything but a piece that ends there. */
  private void claim(int kind, Map<Pad, PadPlace> places, Board board, double clear) {
    int[] first = new int[cells];
    int[] second = new int[cells];
    boolean[] full = new boolean[cells];
    Arrays.fill(first, NOBODY);
    Arrays.fill(second, NOBODY);
    Map<Pad, Net> nets = board.netOfPad();
    for (PadPlace place : places.values()) {
      Net net = nets.get(place.pad());
      double track = net == null ? 0 : copper.width(kind(board, net)) / 2 + clear;
      double radius = Math.max(Copper.PAD / 2 + PAD_CLEAR, track) + copper.width(kind) / 2;
      int reach = (int) Math.ceil(radius / Copper.GRID) + 1;
      int number = numbers.get(place.pad());
      int middle = copper.cell(place.x(), place.y());
      for (int y = -reach; y <= reach; y++) {
        for (int x = -reach; x <= reach; x++) {
          int cell = middle + y * copper.columns + x;
          if (cell >= 0 && cell < cells && far(place, cell) < radius - 1e-6) {
            if (first[cell] == NOBODY) {
              first[cell] = number;
            } else if (second[cell] == NOBODY) {
              second[cell] = number;
            } else {
              full[cell] = true;
            }
          }
        }
      }
    }
    claims[kind] = new int[][] {first, second};
    crowded[kind] = full;
  }

  private double far(PadPlace place, int cell) {
    double x = place.x() - copper.x(cell);
    double y = place.y() - copper.y(cell);
    return StrictMath.sqrt(x * x + y * y);
  }

  /** The tracks, in the order of the nets and their segments; what found no way is missing. */
  List<Track> lay() {
    List<Piece> order = new ArrayList<>(pieces);
    order.sort(
        Comparator.<Piece>comparingInt(p -> -p.kind)
            .thenComparingDouble(p -> p.from.distance(p.to))
            .thenComparingInt(p -> p.number));
    List<Piece> left = order;
    for (int round = 0; round < ROUNDS && !left.isEmpty(); round++) {
      List<Piece> next = new ArrayList<>();
      for (Piece piece : order) {
        lift(piece, -1);
        boolean fights = fights(piece, true);
        if (fights || round % EVERYBODY == 0) {
          piece.way = way(piece);
          next.add(piece);
        }
        lift(piece, 1);
      }
      left = next;
      sharing = Math.min(DEAREST, sharing + 2 + sharing / 3);
    }
    Arrays.fill(fought, 0);
    for (int round = 0; round < POLISHES; round++) {
      order.forEach(this::shorten);
    }
    List<Track> tracks = new ArrayList<>();
    for (Piece piece : pieces) {
      lift(piece, -1);
      if (piece.way.length > 0 && !fights(piece, false)) {
        tracks.add(track(piece));
        lift(piece, 1);
      } else {
        around(piece, 1);
      }
    }
    return tracks;
  }

  /**
   * Looks for a better way now that nobody fights and no place is dear for having been fought over.
   */
  private void shorten(Piece piece) {
    lift(piece, -1);
    int[] before = piece.way;
    piece.way = way(piece);
    if (fights(piece, false)) {
      piece.way = before;
    }
    lift(piece, 1);
  }

  /** Takes away a piece and what its siblings have close to their common pads, or puts it back. */
  private void lift(Piece piece, int sign) {
    put(piece, sign, null);
    around(piece, sign);
  }

  private void around(Piece piece, int sign) {
    for (PadPlace end : List.of(piece.from, piece.to)) {
      for (Piece sibling : endingAt.get(end.pad())) {
        if (sibling != piece) {
          put(sibling, sign, end);
        }
      }
    }
  }

  private void put(Piece piece, int sign, PadPlace near) {
    for (int i = 0; i < piece.way.length; i++) {
      int at = piece.way[i];
      if (near == null || far(near, at % cells) <= AT_THE_PAD) {
        copper.put(piece.kind, at / cells, at % cells, sign);
        boolean hole = i > 0 && piece.way[i - 1] % cells == at % cells;
        if (hole) {
          copper.put(Copper.HOLE, 0, at % cells, sign);
          copper.put(Copper.HOLE, 1, at % cells, sign);
        }
      }
    }
  }

  /** Whether a piece that was lifted lies where others are; such places get dearer. */
  private boolean fights(Piece piece, boolean note) {
    boolean fights = piece.way.length == 0;
    for (int i = 0; i < piece.way.length; i++) {
      int at = piece.way[i];
      boolean hole = i > 0 && piece.way[i - 1] % cells == at % cells;
      boolean taken =
          copper.keepsOut(piece.kind, at) > 0
              || hole
                  && (copper.keepsOut(Copper.HOLE, at) > 0
                      || copper.keepsOut(Copper.HOLE, piece.way[i - 1]) > 0);
      if (taken) {
        fights = true;
        if (note) {
          note(at);
        }
      }
    }
    return fights;
  }

  /** Around a place fought over it gets a little dearer too, so that others make room. */
  private void note(int at) {
    fought[at] += FOUGHT;
    int cell = at % cells;
    for (int y = -AROUND; y <= AROUND; y++) {
      for (int x = -AROUND; x <= AROUND; x++) {
        int there = cell + y * copper.columns + x;
        if (there >= 0 && there < cells) {
          fought[at - cell + there] += CALM;
        }
      }
    }
  }

  private int[] way(Piece piece) {
    search++;
    frontier.clear();
    int one = numbers.get(piece.from.pad());
    int other = numbers.get(piece.to.pad());
    for (int side = 0; side < 2; side++) {
      int at = side * cells + piece.start;
      seen[at] = search;
      cost[at] = 0;
      back[at] = -1;
      frontier.add(0, at);
    }
    while (!frontier.isEmpty()) {
      int here = frontier.take();
      int cell = here % cells;
      if (cell == piece.goal) {
        return walked(here);
      }
      int side = here / cells;
      int column = cell % copper.columns;
      int row = cell / copper.columns;
      int across = STEP + side * AGAINST;
      int down = STEP + (1 - side) * AGAINST;
      if (column > 2) {
        reach(piece, here, here - 1, across, one, other);
      }
      if (column < copper.columns - 3) {
        reach(piece, here, here + 1, across, one, other);
      }
      if (row > 2) {
        reach(piece, here, here - copper.columns, down, one, other);
      }
      if (row < copper.rows - 3) {
        reach(piece, here, here + copper.columns, down, one, other);
      }
      if (open(Copper.HOLE, cell, NOBODY - 1, NOBODY - 1)) {
        int both = copper.keepsOut(Copper.HOLE, cell) + copper.keepsOut(Copper.HOLE, cells + cell);
        reach(piece, here, (1 - side) * cells + cell, HOLE + both * sharing * STEP, one, other);
      }
    }
    return new int[0];
  }

  private boolean open(int kind, int cell, int one, int other) {
    int first = claims[kind][0][cell];
    int second = claims[kind][1][cell];
    return !crowded[kind][cell]
        && (first == NOBODY || first == one || first == other)
        && (second == NOBODY || second == one || second == other);
  }

  private void reach(Piece piece, int here, int there, int step, int one, int other) {
    int cell = there % cells;
    if (!open(piece.kind, cell, one, other)) {
      return;
    }
    int sum =
        cost[here]
            + step
            + fought[there]
            + NEAR * Math.min(2, copper.near(there))
            + copper.keepsOut(piece.kind, there) * sharing * STEP;
    if (seen[there] != search || sum < cost[there]) {
      seen[there] = search;
      cost[there] = sum;
      back[there] = here;
      int left =
          Math.abs(cell % copper.columns - piece.goal % copper.columns)
              + Math.abs(cell / copper.columns - piece.goal / copper.columns);
      frontier.add(sum + left * STEP, there);
    }
  }

  private int[] walked(int end) {
    List<Integer> way = new ArrayList<>();
    for (int at = end; at >= 0; at = back[at]) {
      way.add(at);
    }
    int[] forward = new int[way.size()];
    for (int i = 0; i < forward.length; i++) {
      forward[i] = way.get(forward.length - 1 - i);
    }
    return forward;
  }

  private Track track(Piece piece) {
    List<Track.Leg> legs = new ArrayList<>();
    double x = piece.from.x();
    double y = piece.from.y();
    int[] way = piece.way;
    for (int i = 0; i < way.length; i++) {
      boolean last = i == way.length - 1;
      boolean bend = i == 0 || last || way[i] - way[i - 1] != way[i + 1] - way[i];
      if (bend) {
        double toX = hundredths(copper.x(way[i] % cells));
        double toY = hundredths(copper.y(way[i] % cells));
        add(legs, way[i] / cells, x, y, toX, toY);
        x = toX;
        y = toY;
      }
    }
    add(legs, way[way.length - 1] / cells, x, y, piece.to.x(), piece.to.y());
    return new Track(piece.net, piece.segment, copper.width(piece.kind), legs);
  }

  private static void add(
      List<Track.Leg> legs, int side, double x, double y, double toX, double toY) {
    if (x != toX || y != toY) {
      legs.add(new Track.Leg(Track.Side.values()[side], x, y, toX, toY));
    }
  }

  /** Grid points are multiples of 0.635, so that this rounds by 5 micrometres at most. */
  private static double hundredths(double millimetres) {
    return Math.round(millimetres * 100) / 100.0;
  }
}
