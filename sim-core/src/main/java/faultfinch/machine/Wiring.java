package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Contact;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.fault.Fault;
import faultfinch.part.BusDevice;
import faultfinch.part.Element;
import faultfinch.part.Join;
import faultfinch.part.Part;
import faultfinch.part.RowMemory;
import faultfinch.part.Switch4066;
import faultfinch.signal.DriveClass;
import faultfinch.signal.Electrical;
import faultfinch.signal.Pin;
import faultfinch.signal.Technology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Crosses from descriptions to arrays: a board, its faults and the switches that are closed become
 * a {@link Circuit}.
 *
 * <p>Every pin has two points: the pad the track meets and the part's own side. A sound pin joins
 * them; an open one does not. Segments of track, bridges and elements below 200 ohms join points;
 * what is joined is one net. Elements of 200 ohms and more, and diodes, couple nets into groups.
 * Outputs are put in the order in which they can settle; what depends on itself is an island.
 */
final class Wiring {
  private static final int JOINS_BELOW_OHMS = 200;

  /** A closed 4066 at 5 V, typical. */
  private static final int SWITCH_OHMS = 80;

  private final Board board;

  /** Nets that a tape head drives. */
  private List<Net> tapeHeads = List.of();

  private final HarmNotes harm;
  private Set<String> closed = Set.of();
  private final long seed;
  private final Set<String> up;
  private Circuit c = new Circuit();

  /**
   * What all circuits of the board begin with: parts and pins, points that tracks join, bridges.
   */
  private final Circuit unwired;

  private final int[] joined;
  private final List<int[]> bridges;
  private int pinCount;
  private int[] parent;
  private boolean[] supplyPins;

  /** Of each fuse asked about the rail it has one end on, or empty. */
  private final Map<String, String> rails = new HashMap<>();

  private final Map<String, Integer> indexOfRef = new HashMap<>();
  private final List<String> railSwitches = new ArrayList<>();
  private final List<int[]> couplings = new ArrayList<>();
  private final Map<Integer, List<int[]>> loads = new LinkedHashMap<>();

  /**
   * All that does not depend on which switches are closed.
   *
   * @param out references of parts taken out
   * @param seed of the board's own spread: thresholds differ by pin and board
   * @param up names of the rails and poles that hold where parts work
   */
  Wiring(Board board, List<Fault> faults, Set<String> out, long seed, Set<String> up) {
    this.board = board;
    this.harm = new HarmNotes(board, faults);
    out.forEach(harm::absent);
    this.seed = seed;
    this.up = up;
    c.railUp = up.contains(board.supply().railNet());
    c.board = board;
    c.harm = harm;
    parts();
    pins();
    join();
    unwired = c;
    joined = parent;
    bridges = List.copyOf(couplings);
  }

  /** A board with all rails and poles up, or none. */
  static Circuit compile(
      Board board,
      List<Fault> faults,
      Set<String> out,
      Set<String> closed,
      long seed,
      boolean railUp) {
    Set<String> all = new LinkedHashSet<>();
    if (railUp) {
      board.supply().rails().forEach(r -> all.add(r.net()));
      board.supply().poles().forEach(p -> all.add(p.net()));
    }
    return new Wiring(board, faults, out, seed, all).circuit(closed);
  }

  /**
   * Compiles.
   *
   * @param held references of switches held closed
   */
  Circuit circuit(Set<String> held) {
    c = unwired.unwired();
    parent = joined.clone();
    closed = held;
    couplings.clear();
    couplings.addAll(bridges);
    railSwitches.clear();
    loads.clear();
    elements();
    analogueSwitches();
    nets();
    loadsAndCouplings();
    drives();
    new NodeOrder(c).arrange();
    BetweenHalves.note(c);
    return c;
  }

  private void parts() {
    List<PlacedPart> placed = board.parts();
    int n = placed.size();
    c.name(placed.stream().map(PlacedPart::ref).toArray(String[]::new));
    c.parts = new Part[n];
    c.alive = new boolean[n];
    c.powered = new boolean[n];
    c.groundOpen = new boolean[n];
    c.readMask = new long[n];
    c.readBits = new long[n];
    c.forceMask = new long[n];
    c.forceBits = new long[n];
    c.risePins = new long[n];
    c.fallPins = new long[n];
    c.wordBase = new int[n];
    c.cellBase = new int[n];
    c.cellMask = new int[n];
    c.cellShift = new int[n];
    c.caseTenths = new int[n];
    Arrays.fill(c.caseTenths, PowerFigures.figure("air.tenths"));
    int shared = -1;
    c.pinBase = new int[n];
    for (int p = 0; p < n; p++) {
      indexOfRef.put(c.refs[p], p);
      c.parts[p] = placed.get(p).type().part();
      c.wordBase[p] = c.wordCount;
      c.cellMask[p] = 0xFF;
      // Eight memories one bit wide, in the order of the board file, lie side by side in one byte.
      boolean single = c.parts[p] instanceof RowMemory;
      if (single && shared >= 0 && c.cellShift[shared] < 7) {
        c.cellBase[p] = c.cellBase[shared];
        c.cellShift[p] = c.cellShift[shared] + 1;
      } else {
        c.cellBase[p] = c.cellCount;
        c.cellCount += c.parts[p].pinout().cellCount();
      }
      if (single) {
        c.cellMask[p] = 1 << c.cellShift[p];
        shared = p;
      }
      c.pinBase[p] = pinCount;
      c.wordCount += c.parts[p].pinout().words().size();
      pinCount += c.parts[p].pinout().pins().size();
      c.risePins[p] = c.parts[p].pinout().role(Pin.Role.CLOCK_RISES);
      c.fallPins[p] =
          c.parts[p] instanceof BusDevice ? 0 : c.parts[p].pinout().role(Pin.Role.CLOCK_FALLS);
      if (c.parts[p] instanceof faultfinch.part.M6502) {
        c.cpu = p;
      }
    }
  }

  private void pins() {
    c.partOf = new int[pinCount];
    c.bitOf = new int[pinCount];
    c.lowMv = new int[pinCount];
    c.lowOhm = new int[pinCount];
    c.highMv = new int[pinCount];
    c.highOhm = new int[pinCount];
    c.collector = new boolean[pinCount];
    c.threshold = new int[pinCount];
    c.technology = new byte[pinCount];
    c.level = new boolean[pinCount];
    for (int p = 0; p < c.parts.length; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        int g = c.pinBase[p] + pin.bit();
        c.partOf[g] = p;
        c.bitOf[g] = pin.bit();
        c.level[g] = pin.role() == Pin.Role.LEVEL;
        c.technology[g] = (byte) pin.technology().ordinal();
        int spread = pin.technology().spread();
        int off = Chance.below(2 * spread + 1, seed, Chance.of(c.refs[p]), pin.bit()) - spread;
        c.threshold[g] = pin.technology().threshold(RAIL_MILLIVOLTS) + off;
        pin.drive()
            .ifPresent(
                d -> {
                  c.lowMv[g] = d.millivolts(false);
                  c.lowOhm[g] = d.ohms(false);
                  c.highMv[g] = d.millivolts(true);
                  c.highOhm[g] = d.ohms(true);
                });
        c.collector[g] = pin.openCollector();
      }
    }
    harm.reads.forEach((pad, high) -> force(pad, high, c.readMask, c.readBits));
    harm.drives.forEach((pad, high) -> force(pad, high, c.forceMask, c.forceBits));
  }

  private void force(Pad pad, boolean high, long[] masks, long[] bits) {
    int g = pin(pad);
    masks[c.partOf[g]] |= 1L << c.bitOf[g];
    if (high) {
      bits[c.partOf[g]] |= 1L << c.bitOf[g];
    }
  }

  private int pin(Pad pad) {
    Integer p = indexOfRef.get(pad.ref());
    return Optional.ofNullable(p)
        .flatMap(i -> c.parts[i].pinout().find(pad.pin()).map(pin -> c.pinBase[i] + pin.bit()))
        .orElseThrow(
            () ->
                new IllegalArgumentException("no pad " + pad.text() + " on board " + board.name()));
  }

  /** The track's point of a pin; the part's own point is the pin's number itself. */
  private int padOf(int pin) {
    return pinCount + pin;
  }

  private void join() {
    supplyPins = new boolean[pinCount];
    Set<String> fuses =
        board.parts().stream()
            .map(PlacedPart::ref)
            .filter(ref -> wholeFuse(ref) && !fedThrough(ref).isEmpty())
            .collect(Collectors.toSet());
    for (Net net : board.nets()) {
      boolean supply =
          board.supply().feeds(net.name())
              || net.name().equals(board.supply().groundNet())
              || net.pads().stream().anyMatch(pad -> fuses.contains(pad.ref()));
      if (supply) {
        net.pads().forEach(pad -> supplyPins[pin(pad)] = true);
      }
    }
    parent = new int[2 * pinCount];
    Arrays.setAll(parent, i -> i);
    for (int p = 0; p < c.parts.length; p++) {
      boolean absent = !present(p);
      for (Pin pin : c.parts[p].pinout().pins()) {
        boolean open =
            absent || !harm.opens.isEmpty() && harm.opens.contains(new Pad(c.refs[p], pin.name()));
        if (!open) {
          unite(c.pinBase[p] + pin.bit(), padOf(c.pinBase[p] + pin.bit()));
        }
      }
    }
    for (Net net : board.nets()) {
      for (Net.Segment s : net.segments()) {
        if (harm.cuts.isEmpty() || !harm.cuts.contains(Set.of(s.from(), s.to()))) {
          unite(padOf(pin(s.from())), padOf(pin(s.to())));
        }
      }
    }
    for (HarmNotes.Bridge b : harm.bridges) {
      couple(padOf(pin(b.one())), padOf(pin(b.other())), b.ohms(), false);
    }
    for (Contact c : board.contacts()) {
      unite(c.onTrack() ? padOf(pin(c.one())) : pin(c.one()), pin(c.other()));
    }
    Set<String> heads =
        board.parts().stream()
            .filter(
                part -> part.type().part().pinout().pins().stream().anyMatch(Wiring::isTapeHead))
            .map(PlacedPart::ref)
            .collect(Collectors.toSet());
    tapeHeads =
        board.nets().stream()
            .filter(n -> n.pads().stream().anyMatch(q -> heads.contains(q.ref()) && isTapeHead(q)))
            .toList();
  }

  private boolean wholeFuse(String ref) {
    boolean fuse =
        c.parts[indexOfRef.get(ref)] instanceof Element e && e.kind() == Element.Kind.FUSE;
    return fuse && !harm.elementsOpen.contains(ref) && !harm.absent.contains(ref);
  }

  /** The rail a fuse has one end on, or empty. */
  private String fedThrough(String fuse) {
    return rails.computeIfAbsent(fuse, this::railAt);
  }

  private String railAt(String fuse) {
    return board.nets().stream()
        .filter(n -> board.supply().feeds(n.name()))
        .filter(n -> n.pads().stream().anyMatch(p -> p.ref().equals(fuse)))
        .map(Net::name)
        .findFirst()
        .orElse("");
  }

  private void elements() {
    for (int p = 0; p < c.parts.length; p++) {
      if (c.parts[p] instanceof Element element && !harm.absent.contains(c.refs[p])) {
        Integer shorted = harm.elementsShort.get(c.refs[p]);
        if (shorted != null) {
          couple(c.pinBase[p], c.pinBase[p] + 1, shorted, false);
        } else if (!harm.elementsOpen.contains(c.refs[p])) {
          if (wholeFuse(c.refs[p]) && !fedThrough(c.refs[p]).isEmpty()) {
            unite(c.pinBase[p], c.pinBase[p] + 1);
            continue;
          }
          if (element.kind() == Element.Kind.SWITCH && onRail(p)) {
            railSwitch(p, element);
            continue;
          }
          if (element.kind() == Element.Kind.CAPACITOR) {
            passTape(p);
          }
          String value = board.parts().get(p).value();
          int percent = harm.elementsDrift.getOrDefault(c.refs[p], 100);
          for (Join j : element.joins(value, closed.contains(c.refs[p]))) {
            int from = pin(new Pad(c.refs[p], j.from()));
            int to = pin(new Pad(c.refs[p], j.to()));
            couple(from, to, Math.max(1, j.ohms() * percent / 100), j.diode());
          }
        }
      }
    }
  }

  /**
   * A capacitor that a tape head works into passes its turns, as a resistance of the size it has at
   * their rate. What the tape says has no direct current in it, so nothing else is told from the
   * levels behind the capacitor.
   */
  private void passTape(int p) {
    String value = board.parts().get(p).value();
    if (!value.isEmpty() && (headAt(p, 0) || headAt(p, 1))) {
      double hertz = Electrical.figure("tape-head.hz");
      double ohms = 1 / (2 * Math.PI * hertz * Element.farads(value));
      couple(c.pinBase[p], c.pinBase[p] + 1, (int) Math.max(1, Math.min(1e9, ohms)), false);
    }
  }

  /** Whether a tape head works into one end of an element. */
  private boolean headAt(int p, int bit) {
    Pad end = new Pad(c.refs[p], c.parts[p].pinout().pins().get(bit).name());
    return tapeHeads.stream().anyMatch(n -> n.pads().contains(end));
  }

  private boolean isTapeHead(Pad pad) {
    return c.parts[indexOfRef.get(pad.ref())]
        .pinout()
        .find(pad.pin())
        .filter(Wiring::isTapeHead)
        .isPresent();
  }

  private static boolean isTapeHead(Pin pin) {
    return pin.drive().filter(DriveClass.TAPE_HEAD::equals).isPresent();
  }

  private void analogueSwitches() {
    for (int p = 0; p < c.parts.length; p++) {
      if (c.parts[p] instanceof Switch4066 four && !harm.absent.contains(c.refs[p])) {
        for (Switch4066.Way way : four.controls()) {
          int a = pin(new Pad(c.refs[p], way.a()));
          int b = pin(new Pad(c.refs[p], way.b()));
          int control = pin(new Pad(c.refs[p], way.control()));
          couplings.add(new int[] {a, b, SWITCH_OHMS, 0, -1, control});
        }
      }
    }
  }

  private boolean onRail(int p) {
    return supplyPins[c.pinBase[p]] != supplyPins[c.pinBase[p] + 1];
  }

  /** A switch to a supply net is a load that comes and goes. */
  private void railSwitch(int p, Element element) {
    Join join = element.joins("", true).get(0);
    int gate = railSwitches.size();
    couplings.add(new int[] {c.pinBase[p], c.pinBase[p] + 1, join.ohms(), 0, gate, -1});
    railSwitches.add(c.refs[p]);
  }

  private void couple(int a, int b, int ohms, boolean diode) {
    if (!diode && ohms < JOINS_BELOW_OHMS && !suppliesDiffer(a, b)) {
      unite(a, b);
    } else {
      couplings.add(new int[] {a, b, ohms, diode ? 1 : 0, -1, -1});
    }
  }

  // A bridge from a signal to a rail pulls the signal; it must not make the rail a signal.
  private boolean suppliesDiffer(int a, int b) {
    return onSupplyNet(a) || onSupplyNet(b);
  }

  private boolean onSupplyNet(int point) {
    return supplyPins[point >= pinCount ? point - pinCount : point];
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

  private void nets() {
    Map<Integer, Integer> index = new LinkedHashMap<>();
    c.netOf = new int[pinCount];
    c.padNetOf = new int[pinCount];
    for (int g = 0; g < pinCount; g++) {
      c.netOf[g] = index.computeIfAbsent(root(g), k -> index.size());
      c.padNetOf[g] = index.computeIfAbsent(root(padOf(g)), k -> index.size());
    }
    c.netCount = index.size();
    c.farads = new double[c.netCount];
    c.netNames = new String[c.netCount];
    Arrays.fill(c.netNames, "");
    for (Net net : board.nets()) {
      for (Pad pad : net.pads()) {
        int at = c.padNetOf[pin(pad)];
        if (c.netNames[at].isEmpty()) {
          c.netNames[at] = net.name();
        }
      }
    }
    c.source = new byte[c.netCount];
    fix(board.supply().groundNet(), new Pad(board.supply().jack(), "-"), Circuit.GROUND);
    c.sourceMv = new int[c.netCount];
    for (Supply.Rail rail : board.supply().rails()) {
      feed(rail.net(), new Pad(rail.regulator(), "OUT"), RAIL_MILLIVOLTS);
    }
    for (Supply.Pole pole : board.supply().poles()) {
      feed(pole.net(), new Pad(pole.jack(), "+"), pole.noLoadVolts());
    }
    fix(board.supply().jackNet(), new Pad(board.supply().jack(), "+"), Circuit.RAW);
    int raw = c.pin(board.supply().jack(), "+");
    if (raw >= 0 && c.railUp) {
      c.sourceMv[c.padNetOf[raw]] = RAIL_MILLIVOLTS;
    }
  }

  private void feed(String name, Pad feed, int millivolts) {
    fix(name, feed, Circuit.RAIL);
    if (up.contains(name) && c.pin(feed.ref(), feed.pin()) >= 0) {
      c.sourceMv[c.padNetOf[pin(feed)]] = millivolts;
    }
  }

  private void fix(String name, Pad feed, byte source) {
    boolean known = board.net(name).isPresent() && c.pin(feed.ref(), feed.pin()) >= 0;
    if (known) {
      c.source[c.padNetOf[pin(feed)]] = source;
    }
  }

  private void loadsAndCouplings() {
    for (int p = 0; p < c.parts.length; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        if (pin.pullOhms() > 0 && c.railUp && present(p)) {
          load(
              c.netOf[c.pinBase[p] + pin.bit()],
              Electrical.figure("port.pullup.mv"),
              pin.pullOhms(),
              -1);
        }
      }
    }
    for (HarmNotes.Load l : harm.loads) {
      load(c.netOf[pin(l.pin())], l.millivolts(), l.ohms(), -1);
    }
    c.groupOf = new int[c.netCount];
    Arrays.fill(c.groupOf, -1);
    List<int[]> between = new ArrayList<>();
    for (int[] e : couplings) {
      int a = netOfPoint(e[0]);
      int b = netOfPoint(e[1]);
      boolean fixedA = c.source[a] != Circuit.NO_SOURCE;
      boolean fixedB = c.source[b] != Circuit.NO_SOURCE;
      if (a != b && e[3] == 0 && e[5] < 0 && fixedA != fixedB) {
        load(fixedA ? b : a, c.sourceMv[fixedA ? a : b], e[2], e[4]);
      } else if (a != b && !(fixedA && fixedB) && e[4] < 0) {
        between.add(new int[] {a, b, e[2], e[3], e[5]});
      }
    }
    c.loadMv = new int[c.netCount][0];
    c.loadOhm = new int[c.netCount][0];
    c.loadSwitch = new int[c.netCount][0];
    c.railSwitches = railSwitches.toArray(String[]::new);
    loads.forEach(
        (net, list) -> {
          c.loadMv[net] = list.stream().mapToInt(l -> l[0]).toArray();
          c.loadSwitch[net] = list.stream().mapToInt(l -> l[2]).toArray();
          c.loadOhm[net] = list.stream().mapToInt(l -> l[1]).toArray();
        });
    c.groups = groups(between);
    c.controls =
        between.stream()
            .filter(e -> e[4] >= 0)
            .map(e -> new int[] {e[4], Math.max(c.groupOf[e[0]], c.groupOf[e[1]])})
            .toArray(int[][]::new);
  }

  /** Pulls are solved at the nominal rail; a rail outside its band stops the part altogether. */
  static final int RAIL_MILLIVOLTS = 5000;

  private void load(int net, int millivolts, int ohms, int gate) {
    loads.computeIfAbsent(net, k -> new ArrayList<>()).add(new int[] {millivolts, ohms, gate});
  }

  private int netOfPoint(int point) {
    return point >= pinCount ? c.padNetOf[point - pinCount] : c.netOf[point];
  }

  private Coupling[] groups(List<int[]> between) {
    List<List<Integer>> members = new ArrayList<>();
    for (int[] e : between) {
      List<Integer> both = new ArrayList<>();
      for (int net : new int[] {e[0], e[1]}) {
        if (c.source[net] == Circuit.NO_SOURCE && !both.contains(net)) {
          both.add(net);
        }
      }
      List<List<Integer>> touching =
          members.stream().filter(m -> both.stream().anyMatch(m::contains)).toList();
      for (List<Integer> m : touching) {
        m.stream().filter(net -> !both.contains(net)).forEach(both::add);
        members.remove(m);
      }
      members.add(both);
    }
    Coupling[] groups = new Coupling[members.size()];
    for (int i = 0; i < groups.length; i++) {
      groups[i] = group(members.get(i), between);
      for (int net : members.get(i)) {
        c.groupOf[net] = i;
      }
    }
    return groups;
  }

  private Coupling group(List<Integer> nets, List<int[]> between) {
    if (nets.size() > Coupling.LARGEST) {
      throw new IllegalArgumentException(
          "found "
              + nets.size()
              + " nets coupled by resistors, right would be at most "
              + Coupling.LARGEST);
    }
    List<int[]> own =
        between.stream().filter(e -> nets.contains(e[0]) || nets.contains(e[1])).toList();
    int n = own.size();
    int[] from = new int[n];
    int[] to = new int[n];
    int[] ohms = new int[n];
    boolean[] diode = new boolean[n];
    int[] control = new int[n];
    for (int i = 0; i < n; i++) {
      from[i] = end(nets, own.get(i)[0]);
      to[i] = end(nets, own.get(i)[1]);
      ohms[i] = own.get(i)[2];
      diode[i] = own.get(i)[3] == 1;
      control[i] = own.get(i)[4];
    }
    return new Coupling(nets.stream().mapToInt(x -> x).toArray(), from, to, ohms, diode, control);
  }

  private int end(List<Integer> nets, int net) {
    return c.source[net] == Circuit.NO_SOURCE ? nets.indexOf(net) : -1 - net;
  }

  private boolean present(int p) {
    return !harm.absent.contains(c.refs[p]);
  }

  private void drives() {
    List<List<Integer>> driving = new ArrayList<>();
    List<List<Integer>> receiving = new ArrayList<>();
    for (int net = 0; net < c.netCount; net++) {
      driving.add(new ArrayList<>());
      receiving.add(new ArrayList<>());
    }
    c.lsInputs = new int[c.netCount];
    c.deadLs = new int[c.netCount];
    for (int p = 0; p < c.parts.length; p++) {
      c.powered[p] = present(p) && supplied(p, Pin.Role.SUPPLY, Circuit.RAIL);
      c.groundOpen[p] = present(p) && !supplied(p, Pin.Role.GROUND, Circuit.GROUND);
      c.alive[p] = c.powered[p] && !harm.dead.contains(c.refs[p]);
      for (Pin pin : c.parts[p].pinout().pins()) {
        int g = c.pinBase[p] + pin.bit();
        if (present(p)) {
          place(p, pin, g, driving, receiving);
        }
      }
    }
    c.drivers = flat(driving);
    c.receivers = flat(receiving);
  }

  private void place(
      int p, Pin pin, int g, List<List<Integer>> driving, List<List<Integer>> receiving) {
    boolean ls = pin.technology() == Technology.LS;
    if (pin.drives() && c.alive[p]) {
      driving.get(c.netOf[g]).add(g);
      if (c.groundOpen[p]) {
        c.lowMv[g] = Electrical.figure("ground-open.low.mv");
        c.lowOhm[g] = Electrical.figure("ground-open.low.ohm");
      }
    } else if (pin.drives() && ls && !c.powered[p]) {
      c.deadLs[c.netOf[g]]++;
    }
    if (pin.receives()) {
      receiving.get(c.netOf[g]).add(g);
      if (ls && c.powered[p]) {
        c.lsInputs[c.netOf[g]]++;
      }
    }
  }

  private boolean supplied(int p, Pin.Role role, byte source) {
    for (Pin pin : c.parts[p].pinout().pins()) {
      int net = c.netOf[c.pinBase[p] + pin.bit()];
      boolean dead = source == Circuit.RAIL && c.sourceMv[net] == 0;
      if (pin.role() == role && (c.source[net] != source || dead)) {
        return false;
      }
    }
    return true;
  }

  private static int[][] flat(List<List<Integer>> lists) {
    int[][] flat = new int[lists.size()][];
    for (int i = 0; i < flat.length; i++) {
      List<Integer> list = lists.get(i);
      flat[i] = new int[list.size()];
      for (int j = 0; j < flat[i].length; j++) {
        flat[i][j] = list.get(j);
      }
    }
    return flat;
  }
}
