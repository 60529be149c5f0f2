package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.fault.Harm.RegulatorHarm;
import faultfinch.part.Element;
import faultfinch.part.Join;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Lists the branches of a board's supply: feed, fuses, diodes, regulators, parts, shorts. */
final class SupplyChain {
  private final Board board;
  private final HarmNotes harm;
  private final SupplyNodes nodes;
  private final Trips trips;
  private final long seed;
  private final List<Branch> branches = new ArrayList<>();

  private SupplyChain(Board board, HarmNotes harm, SupplyNodes nodes, Trips trips, long seed) {
    this.board = board;
    this.harm = harm;
    this.nodes = nodes;
    this.trips = trips;
    this.seed = seed;
  }

  /**
   * The branches, what is plugged in first.
   *
   * @param trips fuses that have gone, regulators that are too hot
   * @param seed of the board: regulators differ
   */
  static List<Branch> of(
      Board board, HarmNotes harm, SupplyNodes nodes, Feed feed, Trips trips, long seed) {
    SupplyChain chain = new SupplyChain(board, harm, nodes, trips, seed);
    chain.feed(board.supply().jack(), feed);
    if (feed instanceof Feed.Brick) {
      for (Supply.Pole pole : board.supply().poles()) {
        chain.feed(pole.jack(), new Feed.Brick(pole.noLoadVolts(), pole.ohms()));
      }
    }
    for (PlacedPart part : board.parts()) {
      boolean stands = !harm.absent.contains(part.ref()) && !nodes.broken(part.ref());
      if (stands && part.type().part() instanceof Element element) {
        chain.element(part, element);
      } else if (stands) {
        chain.draw(part);
      }
    }
    chain.shorts();
    return List.copyOf(chain.branches);
  }

  private void feed(String jack, Feed feed) {
    if (!(feed instanceof Feed.Nothing) && !nodes.broken(jack)) {
      int minus = nodes.node(new Pad(jack, "-"), false).orElseThrow();
      int plus = nodes.node(new Pad(jack, "+"), false).orElseThrow();
      branches.add(new Branch.Source(jack, minus, plus, feed));
    }
  }

  private void draw(PlacedPart part) {
    OptionalInt supply = nodes.node(part, Pin.Role.SUPPLY);
    OptionalInt ground = nodes.node(part, Pin.Role.GROUND);
    if (supply.isPresent() && ground.isPresent()) {
      int milliamps = PowerFigures.current(part.type());
      branches.add(new Branch.Draw(part.ref(), supply.getAsInt(), ground.getAsInt(), milliamps));
    }
  }

  private void element(PlacedPart part, Element element) {
    if (element.kind() == Element.Kind.REGULATOR) {
      regulator(part);
      return;
    }
    List<Pin> pins = part.type().part().pinout().pins();
    Integer shorted = harm.elementsShort.get(part.ref());
    if (shorted != null) {
      resistor(part.ref(), pins.get(0).name(), pins.get(1).name(), shorted);
    } else if (!harm.elementsOpen.contains(part.ref()) && !trips.blown().contains(part.ref())) {
      switch (element.kind()) {
        case FUSE -> resistor(part.ref(), "1", "2", figure("fuse.milliohms") / 1000.0);
        case DIODE -> diode(part);
        case RESISTOR -> {
          int percent = harm.elementsDrift.getOrDefault(part.ref(), 100);
          for (Join join : element.joins(part.value(), false)) {
            double ohms = Math.max(1, join.ohms() * percent / 100);
            resistor(part.ref(), join.from(), join.to(), ohms);
          }
        }
        case PACK, POTENTIOMETER, CAPACITOR, SWITCH, SOUNDER, REGULATOR, JACK -> {
          // They pass no direct current from one supply to another.
        }
      }
    }
  }

  private void resistor(String ref, String from, String to, double ohms) {
    OptionalInt a = nodes.node(new Pad(ref, from), false);
    OptionalInt b = nodes.node(new Pad(ref, to), false);
    if (a.isPresent() && b.isPresent()) {
      branches.add(new Branch.Resistor(ref, a.getAsInt(), b.getAsInt(), ohms));
    }
  }

  private void diode(PlacedPart part) {
    OptionalInt a = nodes.node(new Pad(part.ref(), "A"), false);
    OptionalInt k = nodes.node(new Pad(part.ref(), "K"), false);
    if (a.isPresent() && k.isPresent() && part.type() == PartCatalog.DIODE) {
      double ohms = figure("diode.milliohms") / 1000.0;
      branches.add(
          new Branch.OneWay(part.ref(), a.getAsInt(), k.getAsInt(), figure("diode.mv"), ohms));
    }
  }

  private void regulator(PlacedPart part) {
    String ref = part.ref();
    OptionalInt in = nodes.node(new Pad(ref, "IN"), false);
    OptionalInt out = nodes.node(new Pad(ref, "OUT"), false);
    OptionalInt ground = nodes.node(new Pad(ref, "GND"), false);
    OptionalInt groundTrack = nodes.node(new Pad(ref, "GND"), true);
    if (in.isEmpty() || out.isEmpty() || ground.isEmpty()) {
      return;
    }
    Optional<RegulatorHarm> wrong = Optional.ofNullable(harm.regulators.get(ref));
    if (wrong.filter(h -> h == RegulatorHarm.DEAD).isPresent()) {
      return;
    }
    if (wrong.filter(h -> h == RegulatorHarm.SHORTED).isPresent()) {
      double ohms = figure("regulator.shorted.milliohms") / 1000.0;
      branches.add(new Branch.Resistor(ref, in.getAsInt(), out.getAsInt(), ohms));
      return;
    }
    // The reference has drifted: nothing else makes a regulator of this kind stay low.
    boolean low = wrong.filter(h -> h == RegulatorHarm.LOW).isPresent();
    boolean grounded = ground.equals(groundTrack);
    int set = low ? figure("regulator.low.mv") : sound(part);
    branches.add(
        new Branch.Regulator(
            ref,
            in.getAsInt(),
            out.getAsInt(),
            groundTrack.getAsInt(),
            grounded ? set : figure("regulator.highest.mv"),
            figure("regulator.dropout"),
            trips.limits().getOrDefault(ref, figure("regulator.limit"))));
    int quiescent = figure("regulator.quiescent.ohms");
    branches.add(new Branch.Resistor(ref, in.getAsInt(), ground.getAsInt(), quiescent));
  }

  /** A bench may put a regulator in that is trimmed to so many millivolts. */
  private int sound(PlacedPart part) {
    if (part.value().matches("\\d{1,6}mV")) {
      return Integer.parseInt(part.value().replace("mV", ""));
    }
    int spread = figure("regulator.spread");
    int off = Chance.below(2 * spread + 1, seed, Chance.of(part.ref()), Chance.of("volts"));
    return figure("regulator." + part.type().type() + ".mv") - spread + off;
  }

  private void shorts() {
    for (HarmNotes.Load load : harm.loads) {
      OptionalInt at = nodes.node(load.pin(), false);
      if (at.isPresent()) {
        branches.add(
            new Branch.OneWay(load.pin().ref(), at.getAsInt(), 0, load.millivolts(), load.ohms()));
      }
    }
    for (HarmNotes.Bridge bridge : harm.bridges) {
      OptionalInt a = nodes.node(bridge.one(), true);
      OptionalInt b = nodes.node(bridge.other(), true);
      if (a.isPresent() && b.isPresent() && a.getAsInt() != b.getAsInt()) {
        branches.add(new Branch.Resistor("", a.getAsInt(), b.getAsInt(), bridge.ohms()));
      }
    }
  }

  private static int figure(String key) {
    return PowerFigures.figure(key);
  }
}
