package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Contact;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.TrackOhms;
import faultfinch.part.Element;
import faultfinch.part.Join;
import faultfinch.signal.Electrical;
import faultfinch.signal.Pin;
import faultfinch.signal.Technology;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is one net to the levels, as the copper it is: pads joined by pieces of track with ohms, for
 * looks in milliohms and millivolts. The currents come from the levels, which need no ohms of the
 * track: these are small against everything that drives.
 *
 * <p>Not modelled: what signals draw from supply tracks, the way from the jack to the regulators.
 */
public final class TrackMesh {
  /** A soldered joint, a leg in its socket, or pins that meet. */
  private static final double JOINT_OHMS = 0.002;

  private static final int JOINS_BELOW_OHMS = 200;
  private static final int LS_MV = Electrical.figure("ls-input.mv");
  private static final double LS_OHMS = Electrical.figure("ls-input.ohm");
  private static final int PULL_MV = Electrical.figure("port.pullup.mv");

  /** A pin's own side, or the track at its pad. */
  private record Point(Pad pad, boolean onTrack) {}

  private record Edge(Point from, Point to, double ohms) {}

  private final Machine machine;
  private final Power power;
  private final Circuit circuit;
  private final int net;
  private final Map<Point, List<Edge>> edges = new LinkedHashMap<>();
  private final Map<Point, Integer> nodes = new LinkedHashMap<>();
  private final double[][] conductance;

  /** Milliamperes into each node. */
  private final double[] currents;

  private TrackMesh(Machine machine, Power power, Pad start) {
    this.machine = machine;
    this.power = power;
    this.circuit = machine.plain().circuit;
    this.net = machine.point(start, true);
    copper();
    Deque<Point> open = new ArrayDeque<>(List.of(new Point(start, true)));
    while (!open.isEmpty()) {
      Point point = open.remove();
      if (nodes.putIfAbsent(point, nodes.size()) == null) {
        edges.getOrDefault(point, List.of()).forEach(e -> open.add(e.to));
      }
    }
    conductance = new double[nodes.size()][nodes.size()];
    currents = new double[nodes.size()];
    nodes.forEach(
        (point, at) -> {
          for (Edge e : edges.getOrDefault(point, List.of())) {
            conductance[at][at] += 1 / e.ohms;
            conductance[at][nodes.get(e.to)] -= 1 / e.ohms;
          }
        });
  }

  /**
   * The copper that hangs together with a pad.
   *
   * @param power of the board on whatever feeds it
   */
  public static TrackMesh of(Machine machine, Power power, Pad pad) {
    machine.rest();
    return new TrackMesh(machine, power, pad);
  }

  private void copper() {
    Board board = machine.board();
    TrackOhms tracks = new TrackOhms(board);
    for (Net n : board.nets()) {
      for (Net.Segment s : n.segments()) {
        if (!circuit.harm.cuts.contains(Set.of(s.from(), s.to()))) {
          join(new Point(s.from(), true), new Point(s.to(), true), tracks.of(n, s));
        }
      }
      for (Pad pad : n.pads()) {
        boolean open = circuit.harm.opens.contains(pad) || circuit.harm.absent.contains(pad.ref());
        if (!open) {
          join(new Point(pad, true), new Point(pad, false), JOINT_OHMS);
        }
      }
    }
    for (Contact c : board.contacts()) {
      join(new Point(c.one(), c.onTrack()), new Point(c.other(), false), JOINT_OHMS);
    }
    for (HarmNotes.Bridge b : circuit.harm.bridges) {
      if (b.ohms() < JOINS_BELOW_OHMS) {
        join(new Point(b.one(), true), new Point(b.other(), true), b.ohms());
      }
    }
    for (PlacedPart part : board.parts()) {
      for (Join j : joins(part)) {
        if (j.ohms() < JOINS_BELOW_OHMS && !j.diode()) {
          join(end(part, j.from()), end(part, j.to()), j.ohms());
        }
      }
    }
  }

  private static Point end(PlacedPart part, String pin) {
    return new Point(new Pad(part.ref(), pin), false);
  }

  /** What an element joins as it stands; nothing if it is open or not there. */
  private List<Join> joins(PlacedPart part) {
    HarmNotes harm = circuit.harm;
    if (!(part.type().part() instanceof Element element)
        || harm.absent.contains(part.ref())
        || harm.elementsOpen.contains(part.ref())) {
      return List.of();
    }
    Integer shorted = harm.elementsShort.get(part.ref());
    if (shorted != null) {
      List<Pin> pins = element.pinout().pins();
      return List.of(new Join(pins.get(0).name(), pins.get(1).name(), shorted, false));
    }
    return element.joins(part.value(), machine.closed(part.ref()));
  }

  // Where the levels keep two nets apart, a supply and a signal, what joins them is a current.
  private void join(Point one, Point other, double ohms) {
    if (here(one) && here(other)) {
      edges.computeIfAbsent(one, k -> new ArrayList<>()).add(new Edge(one, other, ohms));
      edges.computeIfAbsent(other, k -> new ArrayList<>()).add(new Edge(other, one, ohms));
    }
  }

  private boolean here(Point point) {
    return machine.point(point.pad, point.onTrack) == net;
  }

  /** Ohms between two pads of it; empty if nothing leads from one to the other. */
  public OptionalDouble ohms(Pad one, Pad other) {
    Integer from = nodes.get(new Point(one, true));
    Integer to = nodes.get(new Point(other, true));
    if (from == null || to == null) {
      return OptionalDouble.empty();
    }
    double[] into = new double[nodes.size()];
    into[from] = 1;
    return OptionalDouble.of(solve(into, to)[from]);
  }

  /** Adds the currents that flow now, for so many nanoseconds; see {@link #millivolts}. */
  public void sample(double nanoseconds) {
    if (circuit.source[net] == Circuit.NO_SOURCE) {
      signals(nanoseconds);
    } else {
      supplies(nanoseconds);
    }
    across(nanoseconds);
  }

  /**
   * Mean millivolts from one pad to another over what was sampled; above 0 if current flows that
   * way. Empty if nothing leads from one to the other.
   *
   * @param nanoseconds that were sampled in all
   */
  public OptionalDouble millivolts(Pad one, Pad other, double nanoseconds) {
    Integer from = nodes.get(new Point(one, true));
    Integer to = nodes.get(new Point(other, true));
    if (from == null || to == null) {
      return OptionalDouble.empty();
    }
    double[] mean = new double[nodes.size()];
    for (int i = 0; i < mean.length; i++) {
      mean[i] = currents[i] / nanoseconds;
    }
    double[] volts = solve(mean, feed());
    return OptionalDouble.of(volts[from] - volts[to]);
  }

  /** Where what the other currents leave over comes from or goes to. */
  private int feed() {
    List<Pad> feeds = new ArrayList<>();
    machine.board().supply().rails().forEach(r -> feeds.add(new Pad(r.regulator(), "OUT")));
    machine.board().supply().poles().forEach(p -> feeds.add(new Pad(p.jack(), "+")));
    feeds.add(new Pad(machine.board().supply().jack(), "-"));
    return feeds.stream()
        .map(p -> nodes.get(new Point(p, true)))
        .filter(n -> n != null)
        .findFirst()
        .orElse(0);
  }

  private void into(Pad pin, double milliamps, double nanoseconds) {
    Integer node = nodes.get(new Point(pin, false));
    if (node != null) {
      currents[node] += milliamps * nanoseconds;
    }
  }

  private void signals(double nanoseconds) {
    Levels levels = machine.plain().levels;
    int mv = levels.mv[net];
    for (int g : circuit.drivers[net]) {
      int p = circuit.partOf[g];
      boolean high = (levels.bits[p] >>> circuit.bitOf[g] & 1) != 0;
      boolean drives = (levels.driven[p] >>> circuit.bitOf[g] & 1) != 0;
      if (drives && !(circuit.collector[g] && high)) {
        double volts = high ? circuit.highMv[g] : circuit.lowMv[g];
        double ohms = high ? circuit.highOhm[g] : circuit.lowOhm[g];
        into(pad(g), (volts - mv) / ohms, nanoseconds);
      }
    }
    for (int g : circuit.receivers[net]) {
      boolean ls = circuit.technology[g] == Technology.LS.ordinal();
      if (ls && circuit.powered[circuit.partOf[g]] && mv < LS_MV) {
        into(pad(g), (LS_MV - mv) / LS_OHMS, nanoseconds);
      }
    }
    for (Point point : nodes.keySet()) {
      int p = circuit.index(point.pad.ref());
      int ohms = circuit.parts[p].pinout().find(point.pad.pin()).map(Pin::pullOhms).orElse(0);
      if (!point.onTrack && ohms > 0 && circuit.railUp) {
        into(point.pad, (PULL_MV - mv) / (double) ohms, nanoseconds);
      }
    }
  }

  private Pad pad(int g) {
    int p = circuit.partOf[g];
    return new Pad(
        circuit.refs[p],
        circuit.parts[p].pinout().pins().stream()
            .filter(pin -> pin.bit() == circuit.bitOf[g])
            .findFirst()
            .orElseThrow()
            .name());
  }

  /** What every part takes from its supply and gives back to ground. */
  private void supplies(double nanoseconds) {
    for (PlacedPart part : machine.board().parts()) {
      if (!(part.type().part() instanceof Element) && !circuit.harm.absent.contains(part.ref())) {
        Pad supply = first(part, Pin.Role.SUPPLY);
        Pad ground = first(part, Pin.Role.GROUND);
        double across = millivolts(supply) - millivolts(ground);
        double share = Math.min(1, across / Branch.Draw.NOMINAL_MILLIVOLTS);
        double milliamps = PowerFigures.current(part.type()) * Math.max(0, share);
        into(supply, -milliamps, nanoseconds);
        into(ground, milliamps, nanoseconds);
      }
    }
  }

  private static Pad first(PlacedPart part, Pin.Role role) {
    return part.type().part().pinout().pins().stream()
        .filter(p -> p.role() == role)
        .findFirst()
        .map(p -> new Pad(part.ref(), p.name()))
        .orElse(new Pad(part.ref(), ""));
  }

  /** What flows to other nets: through resistors, diodes, shorts, bridges, leaks and clamps. */
  private void across(double nanoseconds) {
    for (PlacedPart part : machine.board().parts()) {
      for (Join j : joins(part)) {
        flow(end(part, j.from()), end(part, j.to()), j.ohms(), j.diode(), nanoseconds);
      }
    }
    for (HarmNotes.Bridge b : circuit.harm.bridges) {
      flow(new Point(b.one(), true), new Point(b.other(), true), b.ohms(), false, nanoseconds);
    }
    for (HarmNotes.Load l : circuit.harm.loads) {
      Integer node = nodes.get(new Point(l.pin(), false));
      if (node != null) {
        currents[node] += (l.millivolts() - millivolts(l.pin())) / l.ohms() * nanoseconds;
      }
    }
  }

  private void flow(Point from, Point to, int ohms, boolean diode, double nanoseconds) {
    if (here(from) == here(to)) {
      return;
    }
    double across = millivolts(from) - millivolts(to);
    double milliamps =
        diode ? Math.max(0, across - NetSolver.DIODE_MV) / ohms : across / (double) ohms;
    Integer a = nodes.get(from);
    Integer b = nodes.get(to);
    if (a != null) {
      currents[a] -= milliamps * nanoseconds;
    }
    if (b != null) {
      currents[b] += milliamps * nanoseconds;
    }
  }

  private double millivolts(Pad pin) {
    return pin.pin().isEmpty() ? 0 : millivolts(new Point(pin, false));
  }

  private double millivolts(Point point) {
    if (circuit.pin(point.pad.ref(), point.pad.pin()) < 0) {
      return 0;
    }
    return power
        .millivolts(point.pad, point.onTrack)
        .orElseGet(() -> machine.millivolts(point.pad, point.onTrack));
  }

  /** Millivolts of the nodes for so many milliamperes into each; one node is held at 0. */
  private double[] solve(double[] into, int ground) {
    int n = into.length;
    double[][] m = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      System.arraycopy(conductance[i], 0, m[i], 0, n);
      m[i][n] = into[i];
    }
    Arrays.fill(m[ground], 0);
    m[ground][ground] = 1;
    for (int column = 0; column < n; column++) {
      int best = column;
      for (int row = column + 1; row < n; row++) {
        best = Math.abs(m[row][column]) > Math.abs(m[best][column]) ? row : best;
      }
      double[] swap = m[column];
      m[column] = m[best];
      m[best] = swap;
      for (int row = column + 1; row < n; row++) {
        double factor = m[row][column] / m[column][column];
        if (factor != 0) {
          for (int k = column; k <= n; k++) {
            m[row][k] -= factor * m[column][k];
          }
        }
      }
    }
    double[] volts = new double[n];
    for (int row = n - 1; row >= 0; row--) {
      double sum = m[row][n];
      for (int k = row + 1; k < n; k++) {
        sum -= m[row][k] * volts[k];
      }
      volts[row] = sum / m[row][row];
    }
    return volts;
  }
}
