package faultfinch.machine;

import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What lies between the sum of a tone generator and the speaker, faults included, as it acts on
 * sound: resistances, capacitors, amplifiers between nodes. Whatever holds a net still is ground.
 *
 * <p>It is the wiring the levels are solved on, so opens, shorts, bridges, leaks and clamps need
 * nothing of their own here. Capacitors and the amplifiers at work are added.
 *
 * <p>Not modelled: an amplifier driven to its ends, digital outputs that reach these nets (they
 * load them, but their levels are not heard), diodes.
 *
 * @param nodes how many, numbered from 0; ground is {@link #GROUND}
 * @param source what the sum drives; empty if nothing does
 * @param speaker resistance at whose ends is heard; empty if it is open or missing
 */
public record SoundNet(
    int nodes,
    List<Resistance> resistances,
    List<Capacity> capacities,
    List<Amplifier> amplifiers,
    Optional<Source> source,
    Optional<Resistance> speaker) {

  /** The node all levels are against. */
  public static final int GROUND = -1;

  /** What a sound tracer loads the path with. */
  private static final double TRACER_OHMS = 1e6;

  private static final String SPEAKER_OHMS = "64";
  private static final String SUM = "SUM";
  private static final String OUT = "OUT1";

  /** A resistance between two nodes. */
  public record Resistance(int from, int to, double ohms) {}

  /** A capacitor between two nodes. */
  public record Capacity(int from, int to, double farads) {}

  /** An amplifier: what it puts out behind so many ohms rises with plus and falls with minus. */
  public record Amplifier(int plus, int minus, int out, double ohms) {}

  /** The sum behind so many ohms. */
  public record Source(int node, double ohms) {}

  public SoundNet {
    resistances = List.copyOf(resistances);
    capacities = List.copyOf(capacities);
    amplifiers = List.copyOf(amplifiers);
  }

  /** The net as the board stands now. */
  public static SoundNet of(Machine machine) {
    machine.rest();
    return new Drawing(machine.plain().circuit, machine.plain().levels).net();
  }

  /**
   * The same with a tracer's input at a pad in the place of the speaker's ends; empty if no sound
   * can get there.
   */
  public static Optional<SoundNet> heardAt(Machine machine, Pad pad) {
    machine.rest();
    Drawing drawing = new Drawing(machine.plain().circuit, machine.plain().levels);
    SoundNet net = drawing.net();
    Integer node = drawing.nodes.get(machine.point(pad, true));
    if (node == null || net.source.isEmpty()) {
      return Optional.empty();
    }
    Resistance input = new Resistance(node, GROUND, TRACER_OHMS);
    List<Resistance> resistances = new ArrayList<>(net.resistances);
    resistances.add(input);
    return Optional.of(
        new SoundNet(
            net.nodes,
            resistances,
            net.capacities,
            net.amplifiers,
            net.source,
            Optional.of(input)));
  }

  /** Goes from the sum and the speaker to all that hangs together with them. */
  private static final class Drawing {
    private final Circuit c;
    private final Levels levels;
    private final Map<Integer, Integer> nodes = new LinkedHashMap<>();
    private final Deque<Integer> open = new ArrayDeque<>();
    private final List<Resistance> resistances = new ArrayList<>();
    private final List<Capacity> capacities = new ArrayList<>();
    private final List<Amplifier> amplifiers = new ArrayList<>();
    private final List<Coupling> drawn = new ArrayList<>();
    private final Set<Integer> fitted = new LinkedHashSet<>();
    private Optional<Source> source = Optional.empty();
    private Optional<Resistance> speaker = Optional.empty();

    Drawing(Circuit circuit, Levels levels) {
      this.c = circuit;
      this.levels = levels;
    }

    SoundNet net() {
      List<PlacedPart> parts = c.board.parts();
      for (int p = 0; p < parts.size(); p++) {
        PartCatalog type = parts.get(p).type();
        if (type == PartCatalog.SPEAKER && conducts(p)) {
          String value = parts.get(p).value();
          double ohms = Element.ohms(value.isEmpty() ? SPEAKER_OHMS : value);
          Resistance coil = new Resistance(node(end(p, 0)), node(end(p, 1)), ohms);
          resistances.add(coil);
          speaker = Optional.of(coil);
        } else if (type == PartCatalog.TONE_GENERATOR) {
          node(net(p, SUM));
        } else if (type == PartCatalog.DUAL_AMPLIFIER && rests(p, OUT)) {
          int g = c.pin(c.refs[p], OUT);
          amplifiers.add(
              new Amplifier(
                  node(net(p, "IN1")), node(net(p, "INV1")), node(net(p, OUT)), c.highOhm[g]));
        }
      }
      while (!open.isEmpty()) {
        from(open.remove());
      }
      for (int p = 0; p < parts.size(); p++) {
        if (parts.get(p).type() == PartCatalog.TONE_GENERATOR && rests(p, SUM)) {
          int g = c.pin(c.refs[p], SUM);
          int at = node(net(p, SUM));
          source = at == GROUND ? source : Optional.of(new Source(at, c.highOhm[g]));
        }
      }
      return new SoundNet(nodes.size(), resistances, capacities, amplifiers, source, speaker);
    }

    /** Number of a net's node; a net seen for the first time is gone on from. */
    private int node(int net) {
      if (c.source[net] != Circuit.NO_SOURCE) {
        return GROUND;
      }
      Integer known = nodes.get(net);
      if (known == null) {
        known = nodes.size();
        nodes.put(net, known);
        open.add(net);
      }
      return known;
    }

    private void from(int net) {
      int here = node(net);
      for (int i = 0; i < c.loadOhm[net].length; i++) {
        if (levels.loads(net, i)) {
          resistances.add(new Resistance(here, GROUND, c.loadOhm[net][i]));
        }
      }
      for (int g : c.drivers[net]) {
        driver(here, g);
      }
      if (c.groupOf[net] >= 0) {
        coupled(c.groups[c.groupOf[net]]);
      }
      for (int p = 0; p < c.parts.length; p++) {
        if (c.parts[p] instanceof Element e && e.kind() == Element.Kind.CAPACITOR && conducts(p)) {
          capacitor(p, net);
        }
      }
    }

    private void driver(int here, int g) {
      int p = c.partOf[g];
      String pin = c.parts[p].pinout().pins().get(c.bitOf[g]).name();
      PartCatalog type = c.board.parts().get(p).type();
      boolean sounds =
          type == PartCatalog.TONE_GENERATOR && pin.equals(SUM)
              || type == PartCatalog.DUAL_AMPLIFIER && pin.equals(OUT);
      boolean high = (levels.bits[p] >>> c.bitOf[g] & 1) != 0;
      boolean drives = (levels.driven[p] >>> c.bitOf[g] & 1) != 0;
      if (drives && !(c.collector[g] && high) && !(sounds && rests(p, pin))) {
        resistances.add(new Resistance(here, GROUND, high ? c.highOhm[g] : c.lowOhm[g]));
      }
    }

    private void coupled(Coupling group) {
      if (drawn.contains(group)) {
        return;
      }
      drawn.add(group);
      boolean[] closed = levels.closed(group);
      for (int e = 0; e < group.ohms().length; e++) {
        if (!group.diode()[e] && closed[e]) {
          resistances.add(
              new Resistance(
                  end(group, group.from()[e]), end(group, group.to()[e]), group.ohms()[e]));
        }
      }
    }

    private int end(Coupling group, int end) {
      return end < 0 ? GROUND : node(group.nets()[end]);
    }

    private void capacitor(int p, int net) {
      int one = end(p, 0);
      int other = end(p, 1);
      String value = c.board.parts().get(p).value();
      boolean here = one == net || other == net;
      if (here && one != other && !value.isEmpty() && fitted.add(p)) {
        capacities.add(new Capacity(node(one), node(other), Element.farads(value)));
      }
    }

    private int end(int p, int bit) {
      return c.netOf[c.pinBase[p] + bit];
    }

    private int net(int p, String pin) {
      return c.netOf[c.pin(c.refs[p], pin)];
    }

    private boolean conducts(int p) {
      return !c.harm.absent.contains(c.refs[p]) && !c.harm.elementsOpen.contains(c.refs[p]);
    }

    /** Whether an analogue output is alive and stands where it can swing both ways. */
    private boolean rests(int p, String pin) {
      int bit = c.bitOf[c.pin(c.refs[p], pin)];
      boolean forced = (c.forceMask[p] >>> bit & 1) != 0;
      return c.alive[p] && !forced && (levels.driven[p] & levels.bits[p] & 1L << bit) != 0;
    }
  }
}
