package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Contact;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.SupplyBreak;
import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The nodes of the supply: what current reaches without resistance from jack, regulators, fuses,
 * diodes and supply pins, with joints, tracks and sockets as the faults leave them. Node 0 is the
 * ground at the jack.
 */
final class SupplyNodes {
  private final Board board;
  private final HarmNotes harm;
  private final Set<String> breaks = new LinkedHashSet<>();

  /** Per pad of a supply net its place: the track's point is twice that, the pin's one more. */
  private final Map<Pad, Integer> places = new LinkedHashMap<>();

  private final Map<Pad, Net> netOf;
  private final int[] parent;
  private final Map<Integer, Integer> nodeOfRoot = new LinkedHashMap<>();

  /**
   * Finds them.
   *
   * @param broken breaks on the way to the regulator, each at its own spot
   */
  SupplyNodes(Board board, HarmNotes harm, List<SupplyBreak> broken) {
    this.board = board;
    this.harm = harm;
    broken.forEach(b -> breaks.add(b.spot()));
    netOf = board.netOfPad();
    List<Net> nets = nets(board);
    for (Net net : nets) {
      for (Pad pad : net.pads()) {
        places.put(pad, places.size());
      }
    }
    parent = new int[2 * places.size()];
    Arrays.setAll(parent, i -> i);
    places.forEach((pad, at) -> joint(pad, at));
    nets.forEach(this::tracks);
    board.contacts().forEach(this::contact);
    for (PlacedPart part : board.parts()) {
      if (!(part.type().part() instanceof Element) && !harm.absent.contains(part.ref())) {
        inside(part, Pin.Role.SUPPLY);
        inside(part, Pin.Role.GROUND);
      }
    }
    number(2 * places.get(new Pad(board.supply().jack(), "-")));
    for (int point = 0; point < parent.length; point++) {
      number(point);
    }
  }

  /** The nets that carry the supply of a board, and its ground. */
  static List<Net> nets(Board board) {
    Map<Pad, Net> netOf = board.netOfPad();
    Set<Net> nets = new LinkedHashSet<>();
    for (PlacedPart part : board.parts()) {
      for (Pin pin : part.type().part().pinout().pins()) {
        boolean supplies =
            part.type().part() instanceof Element e
                ? e.kind() == Element.Kind.JACK || e.kind() == Element.Kind.REGULATOR
                : pin.role() == Pin.Role.SUPPLY || pin.role() == Pin.Role.GROUND;
        if (supplies) {
          Optional.ofNullable(netOf.get(new Pad(part.ref(), pin.name()))).ifPresent(nets::add);
        }
      }
    }
    for (boolean more = true; more; ) {
      more = false;
      for (PlacedPart part : board.parts()) {
        if (inSeries(part)) {
          List<Net> ends = ends(part, netOf);
          if (ends.stream().anyMatch(nets::contains)) {
            more |= nets.addAll(ends);
          }
        }
      }
    }
    return List.copyOf(nets);
  }

  private static boolean inSeries(PlacedPart part) {
    return part.type() == PartCatalog.FUSE || part.type() == PartCatalog.DIODE;
  }

  private static List<Net> ends(PlacedPart part, Map<Pad, Net> netOf) {
    return part.type().part().pinout().pins().stream()
        .map(p -> Optional.ofNullable(netOf.get(new Pad(part.ref(), p.name()))))
        .flatMap(Optional::stream)
        .toList();
  }

  private void joint(Pad pad, int at) {
    boolean open =
        harm.opens.contains(pad) || harm.absent.contains(pad.ref()) || breaks.contains(pad.text());
    if (!open) {
      unite(2 * at, 2 * at + 1);
    }
  }

  private void tracks(Net net) {
    for (Net.Segment s : net.segments()) {
      if (!harm.cuts.contains(Set.of(s.from(), s.to())) && !breaks.contains(s.text())) {
        unite(2 * places.get(s.from()), 2 * places.get(s.to()));
      }
    }
  }

  private void contact(Contact contact) {
    Integer one = places.get(contact.one());
    Integer other = places.get(contact.other());
    if (one != null && other != null) {
      unite(2 * one + (contact.onTrack() ? 0 : 1), 2 * other + 1);
    }
  }

  // A chip's pins of one supply are one inside; those of different rails are not.
  private void inside(PlacedPart part, Pin.Role role) {
    Map<Net, Integer> first = new LinkedHashMap<>();
    for (Pin pin : part.type().part().pinout().pins()) {
      Pad pad = new Pad(part.ref(), pin.name());
      Integer at = places.get(pad);
      if (pin.role() == role && at != null) {
        Integer other = first.putIfAbsent(netOf.get(pad), at);
        if (other != null) {
          unite(2 * other + 1, 2 * at + 1);
        }
      }
    }
  }

  private int root(int i) {
    int r = i;
    while (parent[r] != r) {
      parent[r] = parent[parent[r]];
      r = parent[r];
    }
    return r;
  }

  private void unite(int a, int b) {
    int x = root(a);
    int y = root(b);
    parent[Math.max(x, y)] = Math.min(x, y);
  }

  private void number(int point) {
    nodeOfRoot.putIfAbsent(root(point), nodeOfRoot.size());
  }

  /** Whether the part itself is broken on the way to the regulator. */
  boolean broken(String ref) {
    return breaks.contains(ref);
  }

  int count() {
    return nodeOfRoot.size();
  }

  /**
   * The node at a pad, if it is one of the supply.
   *
   * @param atPad on the track, else at the pin itself
   */
  OptionalInt node(Pad pad, boolean atPad) {
    Integer at = places.get(pad);
    return at == null
        ? OptionalInt.empty()
        : OptionalInt.of(nodeOfRoot.get(root(2 * at + (atPad ? 0 : 1))));
  }

  /** The node at a part's first pin of this role, inside the part. */
  OptionalInt node(PlacedPart part, Pin.Role role) {
    return part.type().part().pinout().pins().stream()
        .filter(p -> p.role() == role)
        .map(p -> node(new Pad(part.ref(), p.name()), false))
        .flatMapToInt(OptionalInt::stream)
        .findFirst();
  }
}
