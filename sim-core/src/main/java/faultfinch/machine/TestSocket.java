package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Firmware;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Level;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One chip in a socket with a switch to supply and one to ground at every pin: what a chip tester
 * and a ROM reader work on. It is a board like any other, without a processor, so that a chip
 * behaves here as it does where it came from.
 */
public final class TestSocket {
  /** The chip's reference in the socket. */
  public static final String CHIP = "U1";

  private static final String RAIL = "5V";
  private static final String GROUND = "GND";
  private static final int LOW_BELOW_MV = 800;
  private static final int HIGH_ABOVE_MV = 2000;
  private static final int CYCLE_NS = 1000;

  private final Machine machine;
  private final Levels levels;
  private final BitSet closed = new BitSet();
  private final Map<String, Line> lines = new LinkedHashMap<>();

  /** A pin's net and its two switches. */
  private record Line(int net, int toSupply, int toGround) {}

  /**
   * A chip by itself.
   *
   * @param inside what is wrong with it, written for {@link #CHIP}
   * @param contents of a programmed memory, else empty
   */
  public record Chip(PartCatalog type, List<String> inside, byte[] contents) {
    public Chip {
      inside = List.copyOf(inside);
      contents = contents.clone();
    }

    /** One of the kind with nothing wrong. */
    public Chip sound() {
      return new Chip(type, List.of(), contents);
    }
  }

  /**
   * What it is exposed to.
   *
   * @param railMillivolts what it is fed with
   * @param seed of the chip's own spread
   * @param powerOn number of this power-on
   */
  public record Bed(int railMillivolts, Surroundings surroundings, long seed, int powerOn) {}

  /** Puts a chip in and switches on. */
  public TestSocket(Chip chip, Bed bed) {
    PartCatalog type = chip.type;
    Board board = board(type, chip.contents, bed.railMillivolts);
    List<Fault> faults = chip.inside.stream().map(f -> FaultKinds.parse(f, board)).toList();
    machine =
        new Machine(
            new Setup(board, faults, Set.of(), bed.seed, bed.powerOn, bed.surroundings),
            Machine.Kind.PLAIN);
    levels = machine.plain().levels;
    Circuit circuit = machine.plain().circuit;
    for (Pin pin : type.part().pinout().pins()) {
      if (signal(pin)) {
        lines.put(
            pin.name(),
            new Line(
                machine.point(new Pad(CHIP, pin.name()), true),
                circuit.railSwitch(key(pin, true)),
                circuit.railSwitch(key(pin, false))));
      }
    }
  }

  private static boolean signal(Pin pin) {
    return pin.role() != Pin.Role.SUPPLY
        && pin.role() != Pin.Role.GROUND
        && pin.role() != Pin.Role.UNCONNECTED;
  }

  private static String key(Pin pin, boolean toSupply) {
    return (toSupply ? "KS" : "KG") + pin.number();
  }

  private static Board board(PartCatalog type, byte[] contents, int railMillivolts) {
    List<PlacedPart> parts = new ArrayList<>();
    parts.add(part(CHIP, type, ""));
    parts.add(part("J1", PartCatalog.JACK, ""));
    parts.add(part("VR1", PartCatalog.REGULATOR_7805, railMillivolts + "mV"));
    Map<String, List<Pad>> nets = new LinkedHashMap<>();
    nets.put("RAW", pads("J1.+", "VR1.IN"));
    nets.put(RAIL, pads("VR1.OUT"));
    nets.put(GROUND, pads("J1.-", "VR1.GND"));
    for (Pin pin : type.part().pinout().pins()) {
      Pad pad = new Pad(CHIP, pin.name());
      if (pin.role() == Pin.Role.SUPPLY) {
        nets.get(RAIL).add(pad);
      } else if (pin.role() == Pin.Role.GROUND) {
        nets.get(GROUND).add(pad);
      } else if (signal(pin)) {
        String supply = key(pin, true);
        String ground = key(pin, false);
        parts.add(part(supply, PartCatalog.KEY, ""));
        parts.add(part(ground, PartCatalog.KEY, ""));
        nets.get(RAIL).add(new Pad(supply, "1"));
        nets.get(GROUND).add(new Pad(ground, "1"));
        List<Pad> line = pads(supply + ".2", ground + ".2");
        line.add(0, pad);
        nets.put("P" + pin.number(), line);
      }
    }
    List<Firmware> firmware =
        contents.length == 0 ? List.of() : List.of(new Firmware(CHIP, contents, Map.of()));
    return new Board(
        "test socket",
        "test socket",
        "",
        "",
        1,
        "",
        List.of(167, 167, 166, 167, 167, 166),
        100,
        100,
        parts,
        nets.entrySet().stream().map(e -> net(e.getKey(), e.getValue())).toList(),
        new Supply(9000, 100, "RAW", "J1", RAIL, "VR1", GROUND),
        firmware,
        List.of(),
        List.of(),
        "",
        List.of());
  }

  private static PlacedPart part(String ref, PartCatalog type, String value) {
    return new PlacedPart(ref, type, "", 0, 0, 0, true, value, "");
  }

  private static List<Pad> pads(String... names) {
    List<Pad> pads = new ArrayList<>();
    for (String name : names) {
      int dot = name.indexOf('.');
      pads.add(new Pad(name.substring(0, dot), name.substring(dot + 1)));
    }
    return pads;
  }

  private static Net net(String name, List<Pad> pads) {
    List<Net.Segment> track = new ArrayList<>();
    for (int i = 1; i < pads.size(); i++) {
      track.add(new Net.Segment(pads.get(0), pads.get(i)));
    }
    return new Net(name, pads, track);
  }

  /** Pins that carry signals, in the order of the package's drawing. */
  public List<String> pins() {
    return List.copyOf(lines.keySet());
  }

  /** Drives a pin; what it does shows after {@link #rest} or {@link #cycle}. */
  public void drive(String pin, boolean high) {
    Line line = lines.get(pin);
    set(high ? line.toGround : line.toSupply, false);
    set(high ? line.toSupply : line.toGround, true);
  }

  /** Lets go of a pin. */
  public void release(String pin) {
    Line line = lines.get(pin);
    set(line.toSupply, false);
    set(line.toGround, false);
  }

  private void set(int gate, boolean close) {
    if (closed.get(gate) != close) {
      closed.set(gate, close);
      levels.close(gate, close);
    }
  }

  /** Brings the chip to rest, without time going on. */
  public void rest() {
    levels.settle();
  }

  /** What is done to the pins within a cycle, phase by phase. */
  @FunctionalInterface
  public interface Hand {

    /** The phase has settled and nothing is stored in it yet. */
    void at(Phase phase);
  }

  /** Plays six phases of 167 ns; what the hand does in one counts in that one. */
  public void cycle(Hand hand) {
    machine
        .plain()
        .watchPhases(
            (phase, nanoseconds) -> {
              hand.at(phase);
              levels.settle();
            });
    machine.plain().turn();
  }

  /** Leaves the chip alone. */
  public void leave(int milliseconds) {
    levels.now += milliseconds * 1_000_000L / CYCLE_NS;
  }

  /** What a pin carries. */
  public Level level(String pin) {
    int net = lines.get(pin).net;
    if (machine.floating(net)) {
      return Level.FLOATING;
    }
    int mv = machine.millivolts(net);
    return mv < LOW_BELOW_MV ? Level.LOW : mv > HIGH_ABOVE_MV ? Level.HIGH : Level.MID;
  }
}
