package faultfinch.board;

import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The nets of a board file: every pin of every part is on one of them or left unconnected. */
final class NetList {
  private static final Pattern NAME = Pattern.compile("[A-Z0-9+-]+/?");

  /** A net as it is written, of the board's file or of the overlay's. */
  private record Drawn(TrackReader track, Net net, boolean ofBoard) {}

  private final PartList parts;
  private final Optional<Overlay> overlay;
  private final Map<String, Net> nets = new LinkedHashMap<>();

  /** By pad as it is written. */
  private final Map<String, String> used = new HashMap<>();

  NetList(Located nets, List<Located> unconnected, PartList parts) {
    this(nets, unconnected, parts, Optional.empty());
  }

  /** The same with an overlay, whose pieces go on from the nets and whose parts taken are gone. */
  NetList(Located nets, List<Located> unconnected, PartList parts, Optional<Overlay> overlay) {
    this.parts = parts;
    this.overlay = overlay;
    if (nets.entries().isEmpty()) {
      throw nets.wrong("an object without nets", "at least one net");
    }
    List<Drawn> drawn = nets.entries().stream().map(this::drawn).toList();
    // The board's own first, so that it is the overlay that is wrong.
    drawn.stream().filter(Drawn::ofBoard).forEach(this::use);
    drawn.stream().filter(d -> !d.ofBoard()).forEach(this::use);
    drawn.forEach(d -> add(d.net()));
    unconnected.forEach(this::leave);
    parts.parts().forEach(this::check);
  }

  List<Net> nets() {
    return List.copyOf(nets.values());
  }

  /** The net of this name. */
  Net named(Located name) {
    Net net = nets.get(name.text());
    if (net == null) {
      throw name.wrong(
          "unknown net '" + name.text() + "'", NearNames.of(name.text(), nets.keySet()));
    }
    return net;
  }

  /** The net of this name, which must be the one that a pin is on. */
  Net named(Located name, Pad pin) {
    Net net = named(name);
    if (!net.pads().contains(pin)) {
      throw name.wrong("net '" + net.name() + "'", "the net of " + pin.text());
    }
    return net;
  }

  private Drawn drawn(Located.Entry entry) {
    String name = entry.key().text(NAME, "a net name such as D0, RES/ or 5V");
    TrackReader track = new TrackReader(entry.value(), parts);
    boolean ofBoard = overlay.isEmpty() || !overlay.get().holds(entry.value());
    return new Drawn(track, track.net(name), ofBoard);
  }

  private void use(Drawn drawn) {
    for (int i = 0; i < drawn.net.pads().size(); i++) {
      if (!drawn.ofBoard || !parts.isTaken(drawn.net.pads().get(i).ref())) {
        use(drawn.net, i, drawn.track);
      }
    }
  }

  private void add(Net drawn) {
    Net net = drawn;
    if (overlay.isPresent()) {
      net = net.without(pad -> parts.isTaken(pad.ref()));
      for (Located join : overlay.get().joins(drawn.name())) {
        net = net.and(joined(join, net));
      }
    }
    if (!net.pads().isEmpty()) {
      nets.put(net.name(), net);
    }
  }

  private Net joined(Located join, Net net) {
    TrackReader track = new TrackReader(join, parts);
    Net more = track.net(net.name());
    if (!net.pads().contains(more.pads().get(0))) {
      throw track.wrong(0, more.pads().get(0).text(), "a pad of net " + net.name());
    }
    for (int i = 1; i < more.pads().size(); i++) {
      use(more, i, track);
    }
    return more;
  }

  private void use(Net net, int number, TrackReader track) {
    Pad pad = net.pads().get(number);
    if (parts.isTaken(pad.ref())) {
      throw track.wrong(
          number, pad.text() + ", of a part taken away", "a pin of a part that stays");
    }
    String other = used.putIfAbsent(pad.text(), net.name());
    if (other != null) {
      throw track.wrong(number, twice(pad, other), "each pin on one net, once");
    }
  }

  private void leave(Located pin) {
    Pad pad = parts.pad(pin, 0, pin.text().length());
    String other = used.putIfAbsent(pad.text(), "no net");
    if (other != null) {
      throw pin.wrong(twice(pad, other), "a pin that is on no net, once");
    }
  }

  private void check(PlacedPart part) {
    List<String> missing = new ArrayList<>();
    for (Pin pin : part.type().part().pinout().pins()) {
      String pad = new Pad(part.ref(), pin.name()).text();
      if (!used.containsKey(pad)) {
        missing.add(pad);
      }
    }
    if (!missing.isEmpty()) {
      throw parts
          .place(part.ref())
          .wrong(
              String.join(" ", missing) + " on no net",
              "every pin on a net or under 'unconnected'");
    }
  }

  private static String twice(Pad pad, String other) {
    return pad.text() + " again, after " + (other.equals("no net") ? other : "net " + other);
  }
}
