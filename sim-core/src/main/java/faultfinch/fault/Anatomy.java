package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Track;
import faultfinch.board.TrackNeighbours;
import faultfinch.part.Element;
import faultfinch.part.Memory;
import faultfinch.part.PartCatalog;
import faultfinch.part.RowMemory;
import faultfinch.signal.Pin;
import faultfinch.signal.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A board as the fault kinds ask about it: what is a chip, what is connected, what feeds it. Looked
 * up once and kept, since every kind asks the same.
 */
final class Anatomy {
  private final Board board;
  private final Map<Pad, Net> nets;
  private final Map<String, PlacedPart> parts = new LinkedHashMap<>();
  private final Map<String, Pad> shunts = new LinkedHashMap<>();
  private final Set<String> feeding;
  private final Map<String, Optional<PlainNet>> plain = new LinkedHashMap<>();
  private Optional<List<TrackNeighbours>> neighbours = Optional.empty();

  Anatomy(Board board) {
    this.board = board;
    this.nets = board.netOfPad();
    board.parts().forEach(p -> parts.put(p.ref(), p));
    this.feeding = FeedPath.of(board);
    board.parts().forEach(this::noteShunt);
  }

  Board board() {
    return board;
  }

  // Parts.

  Optional<PlacedPart> find(String ref) {
    return Optional.ofNullable(parts.get(ref));
  }

  PlacedPart part(Pad pad) {
    return parts.get(pad.ref());
  }

  List<PlacedPart> chips() {
    return board.parts().stream().filter(this::isChip).toList();
  }

  boolean isChip(PlacedPart part) {
    return !(part.type().part() instanceof Element);
  }

  boolean is(PlacedPart part, Element.Kind kind) {
    return part.type().part() instanceof Element e && e.kind() == kind;
  }

  boolean isClock(PlacedPart part) {
    return part.ref().equals(board.crystal());
  }

  /** Whether the part stands on the one way from the jack to the regulator. */
  boolean feedsBoard(PlacedPart part) {
    return feeding.contains(part.ref());
  }

  boolean isProgrammed(PlacedPart part) {
    return part.type().part() instanceof Memory && !isReadWrite(part);
  }

  boolean isReadWrite(PlacedPart part) {
    boolean written =
        part.type().part() instanceof Memory m && m.pinout().role(Pin.Role.WRITE) != 0;
    return written || isDynamic(part);
  }

  boolean isDynamic(PlacedPart part) {
    return part.type().part() instanceof RowMemory;
  }

  int cells(PlacedPart part) {
    return array(part).map(State::count).orElse(0);
  }

  /** Bits of a cell. */
  int cellBits(PlacedPart part) {
    return array(part).map(State::width).orElse(0);
  }

  private static Optional<State> array(PlacedPart part) {
    if (part.type().part() instanceof Memory m) {
      return Optional.of(m.array());
    }
    return part.type().part() instanceof RowMemory m ? Optional.of(m.bits()) : Optional.empty();
  }

  /** Columns of a dynamic memory: as many as its address pins can name. */
  int columns(PlacedPart part) {
    return part.type().part() instanceof RowMemory m ? 1 << m.address().width() : 1;
  }

  int pinCount(PlacedPart part) {
    return part.type().part().pinout().pins().stream().mapToInt(Pin::number).max().orElse(0);
  }

  /** Whether an open of the whole part is a fault of its own and seen through its terminals. */
  boolean opens(PlacedPart part) {
    boolean plain =
        part.type().part() instanceof Element e
            && switch (e.kind()) {
              case RESISTOR, CAPACITOR, DIODE, FUSE, SWITCH, SOUNDER -> true;
              case PACK, POTENTIOMETER, REGULATOR, JACK, CONNECTOR -> false;
            };
    return plain && part.type() != PartCatalog.LINK && !feedsBoard(part);
  }

  boolean shorts(PlacedPart part) {
    return is(part, Element.Kind.RESISTOR) || is(part, Element.Kind.DIODE);
  }

  /** Capacitors with one end on ground, by reference, each with its other pad. */
  Map<String, Pad> shuntCapacitors() {
    return shunts;
  }

  // Pads.

  Pin pin(Pad pad) {
    return part(pad).type().part().pinout().find(pad.pin()).orElseThrow();
  }

  Optional<Net> find(Pad pad) {
    return Optional.ofNullable(nets.get(pad));
  }

  Net net(Pad pad) {
    return nets.get(pad);
  }

  /** The net of this name as a plain one, if it is. */
  Optional<PlainNet> plain(String net) {
    return plain.computeIfAbsent(net, n -> PlainNet.of(board.net(n).orElseThrow(), this));
  }

  /** The connected pads of a part by pin number. */
  List<Pad> pads(PlacedPart part) {
    return part.type().part().pinout().pins().stream()
        .sorted(Comparator.comparingInt(Pin::number))
        .map(p -> new Pad(part.ref(), p.name()))
        .filter(nets::containsKey)
        .toList();
  }

  List<Pad> pads() {
    return board.parts().stream().flatMap(p -> pads(p).stream()).toList();
  }

  List<Pad> chipPads() {
    return chips().stream().flatMap(p -> pads(p).stream()).toList();
  }

  boolean receives(Pad pad) {
    return isChip(part(pad)) && pin(pad).receives();
  }

  boolean drives(Pad pad) {
    return isChip(part(pad)) && pin(pad).drives();
  }

  boolean onGround(Pad pad) {
    return net(pad).name().equals(board.supply().groundNet());
  }

  boolean onRail(Pad pad) {
    return board.supply().feeds(net(pad).name());
  }

  /** Whether the pad's net is neither ground, rail nor part of the way to the regulator. */
  boolean carriesSignal(Pad pad) {
    boolean feeds = net(pad).pads().stream().anyMatch(p -> feedsBoard(part(p)));
    return !onGround(pad) && !onRail(pad) && !feeds;
  }

  Optional<Pad> supplyPad(PlacedPart part) {
    return pads(part).stream().filter(p -> pin(p).role() == Pin.Role.SUPPLY).findFirst();
  }

  /** The part's own pad on a rail, or the first pad of that rail for parts that have none. */
  Pad railPad(PlacedPart part, boolean supply) {
    String name = supply ? board.supply().railNet() : board.supply().groundNet();
    return pads(part).stream()
        .filter(p -> supply ? onRail(p) : onGround(p))
        .findFirst()
        .orElseGet(() -> board.net(name).orElseThrow().pads().get(0));
  }

  /** Whether two pads of one package lie side by side: same row, numbers next to each other. */
  boolean neighbours(Pad a, Pad b) {
    int count = pinCount(part(a));
    boolean twoRows = isChip(part(a));
    int one = Math.min(pin(a).number(), pin(b).number());
    int other = Math.max(pin(a).number(), pin(b).number());
    boolean beside = other - one == 1 && !(twoRows && one == count / 2);
    return a.ref().equals(b.ref()) && beside && count > 2 && !feedsBoard(part(a));
  }

  // Tracks.

  /** Where a piece of track runs, if tracks are laid. */
  Optional<Track> track(Net.Segment segment) {
    return board.track(segment);
  }

  /** Tracks that solder can join; looked for when first asked. */
  List<TrackNeighbours> neighbours() {
    if (neighbours.isEmpty()) {
      neighbours = Optional.of(board.neighbours());
    }
    return neighbours.get();
  }

  /** The pads on one side of a net when a piece of its track is cut: the side of its first pad. */
  static Set<Pad> sideOf(Net net, Net.Segment cut) {
    Set<Pad> side = new LinkedHashSet<>(Set.of(cut.from()));
    List<Net.Segment> left = new ArrayList<>(net.segments());
    left.remove(cut);
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Net.Segment s : left) {
        if (side.contains(s.from()) != side.contains(s.to())) {
          side.add(s.from());
          side.add(s.to());
          grows = true;
        }
      }
    }
    return side;
  }

  /** Whether all the board's current goes through this piece of track before the regulator. */
  boolean feedsThrough(Net net, Net.Segment segment) {
    List<Pad> feeders = net.pads().stream().filter(p -> feedsBoard(part(p))).toList();
    if (feeders.size() < 2) {
      return false;
    }
    Set<Pad> side = sideOf(net, segment);
    return feeders.stream().anyMatch(side::contains) && !side.containsAll(feeders);
  }

  private void noteShunt(PlacedPart part) {
    if (is(part, Element.Kind.CAPACITOR)) {
      List<Pad> live = pads(part).stream().filter(p -> !onGround(p)).toList();
      if (live.size() == 1 && pads(part).size() == 2) {
        shunts.put(part.ref(), live.get(0));
      }
    }
  }
}
