package faultfinch.workbench;

import faultfinch.board.Board;
import faultfinch.board.Footprint;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PadPlace;
import faultfinch.board.PlacedPart;
import faultfinch.board.Track;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where everything of a board lies on the drawing, and what a point or a sentence means there. */
final class BoardPlan {
  /** The brick stands left of the board; millimetres. */
  static final Footprint.Body BRICK = new Footprint.Body(-28, 5, -9, 37);

  private static final double PIN_REACH = 1.3;
  private static final double TRACK_REACH = 0.7;
  private static final double STRAIGHT_WIDTH = 0.2;
  private static final Pattern PIN_NUMBER =
      Pattern.compile("(?:pin )?(\\d+) (?:of|on) (\\w+)|(\\w+) pin (\\d+)");

  /** A part with its place worked out. */
  record Laid(PlacedPart part, Footprint footprint) {}

  private final Board board;
  private final List<Laid> parts;
  private final Map<Pad, PadPlace> pads = new HashMap<>();
  private final Map<Pad, Net> nets;
  private final List<Track> tracks;

  BoardPlan(Board board) {
    this.board = board;
    parts = board.parts().stream().map(p -> new Laid(p, Footprint.of(p))).toList();
    parts.forEach(l -> l.footprint().pads().forEach(p -> pads.put(p.pad(), p)));
    nets = board.netOfPad();
    tracks = board.tracks().isEmpty() ? straight(board) : board.tracks();
  }

  /** The tracks of a board; where nobody laid them, straight from pad to pad. */
  List<Track> tracks() {
    return tracks;
  }

  private List<Track> straight(Board board) {
    List<Track> straight = new ArrayList<>();
    for (Net net : board.nets()) {
      for (Net.Segment s : net.segments()) {
        PadPlace from = pads.get(s.from());
        PadPlace to = pads.get(s.to());
        Track.Leg leg = new Track.Leg(Track.Side.SOLDER, from.x(), from.y(), to.x(), to.y());
        straight.add(new Track(net.name(), s, STRAIGHT_WIDTH, List.of(leg)));
      }
    }
    return List.copyOf(straight);
  }

  Board board() {
    return board;
  }

  List<Laid> parts() {
    return parts;
  }

  Laid laid(String ref) {
    return parts.stream().filter(l -> l.part().ref().equals(ref)).findFirst().orElseThrow();
  }

  PadPlace place(Pad pad) {
    return pads.get(pad);
  }

  /** The name of the net a pad is on; empty if the board leaves it unconnected. */
  String net(Pad pad) {
    Net net = nets.get(pad);
    return net == null ? "" : net.name();
  }

  /** The net of what is under the hand; empty if it has none. */
  String net(Spot spot) {
    if (spot instanceof Spot.OnPin pin) {
      return net(pin.place().pad());
    }
    return spot instanceof Spot.OnTrack track ? track.net() : "";
  }

  /**
   * What lies at a point, in millimetres: a pin before a body, a body before a track.
   *
   * @param reach how far a pin may lie from the point at least
   */
  Spot at(double x, double y, double reach) {
    Optional<PadPlace> pad = nearest(x, y, Math.max(PIN_REACH, Math.min(reach, 3)));
    if (pad.isPresent()) {
      return new Spot.OnPin(pad.get());
    }
    for (Laid l : parts) {
      if (inside(l.footprint().body(), x, y)) {
        return new Spot.OnPart(l.part().ref());
      }
    }
    if (inside(BRICK, x, y)) {
      return new Spot.OnBrick();
    }
    if (x < 0 || y < 0 || x > board.width() || y > board.height()) {
      return new Spot.Nowhere();
    }
    return tracks.stream()
        .filter(t -> t.distance(x, y) < TRACK_REACH)
        .min((a, b) -> Double.compare(a.distance(x, y), b.distance(x, y)))
        .<Spot>map(t -> new Spot.OnTrack(t.net(), t.segment()))
        .orElseGet(Spot.OnBoard::new);
  }

  private static boolean inside(Footprint.Body body, double x, double y) {
    return x >= body.left() && x <= body.right() && y >= body.top() && y <= body.bottom();
  }

  private Optional<PadPlace> nearest(double x, double y, double reach) {
    PadPlace best = null;
    double least = reach;
    for (PadPlace p : pads.values()) {
      double far = Math.hypot(p.x() - x, p.y() - y);
      if (far < least) {
        least = far;
        best = p;
      }
    }
    return Optional.ofNullable(best);
  }

  /** The pin next to a point in a direction; what lies off the direction counts as farther. */
  Optional<PadPlace> next(double x, double y, int right, int down) {
    PadPlace best = null;
    double least = Double.MAX_VALUE;
    for (Laid l : parts) {
      for (PadPlace p : l.footprint().pads()) {
        double along = (p.x() - x) * right + (p.y() - y) * down;
        double off = Math.abs((p.x() - x) * down) + Math.abs((p.y() - y) * right);
        if (along > 0.2 && off <= along * 2 && along + 2 * off < least) {
          least = along + 2 * off;
          best = p;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** The middle of a spot, in millimetres; the middle of the board where a spot has none. */
  double[] middle(Spot spot) {
    if (spot instanceof Spot.OnPin pin) {
      return new double[] {pin.place().x(), pin.place().y()};
    }
    if (spot instanceof Spot.OnTrack track) {
      PadPlace from = pads.get(track.segment().from());
      PadPlace to = pads.get(track.segment().to());
      return new double[] {(from.x() + to.x()) / 2, (from.y() + to.y()) / 2};
    }
    Footprint.Body body =
        spot instanceof Spot.OnPart part
            ? laid(part.ref()).footprint().body()
            : spot instanceof Spot.OnBrick
                ? BRICK
                : new Footprint.Body(0, 0, board.width(), board.height());
    return new double[] {(body.left() + body.right()) / 2, (body.top() + body.bottom()) / 2};
  }

  /** What a sentence points at: {@code pin 12 of U7}, {@code U7.D0}, {@code net D0}, {@code U7}. */
  Optional<Spot> find(String sentence) {
    String said = sentence.strip().replaceAll("\\s+", " ").replaceFirst("(?i)^(the|net) ", "");
    Matcher pin = PIN_NUMBER.matcher(said.toLowerCase(Locale.ROOT));
    if (pin.matches()) {
      int number = Integer.parseInt(pin.group(1) == null ? pin.group(4) : pin.group(1));
      String ref = pin.group(2) == null ? pin.group(3) : pin.group(2);
      return parts.stream()
          .filter(l -> l.part().ref().equalsIgnoreCase(ref))
          .flatMap(l -> l.footprint().pads().stream())
          .filter(p -> p.number() == number)
          .<Spot>map(Spot.OnPin::new)
          .findFirst();
    }
    for (Laid l : parts) {
      if (l.part().ref().equalsIgnoreCase(said)) {
        return Optional.of(new Spot.OnPart(l.part().ref()));
      }
      for (PadPlace p : l.footprint().pads()) {
        if (p.pad().text().equalsIgnoreCase(said)) {
          return Optional.of(new Spot.OnPin(p));
        }
      }
    }
    return board.nets().stream()
        .filter(n -> n.name().equalsIgnoreCase(said) && !n.segments().isEmpty())
        .<Spot>map(n -> new Spot.OnTrack(n.name(), n.segments().get(0)))
        .findFirst();
  }
}
