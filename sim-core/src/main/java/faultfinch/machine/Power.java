package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.fault.Fault;
import faultfinch.fault.SupplyBreak;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What the supply makes of a board at rest: volts at its nodes, current at the jack, heat in each
 * part, fuses blown and parts killed. Whole millivolts, milliamperes and milliwatts.
 *
 * <p>What a meter shows are means; ripple stands beside them as what each millisecond of its period
 * brings; of a regulator that shuts down for heat and comes back, too, the mean. Not modelled: the
 * slow fall of a warm brick, signal currents (see {@link Heat}). What a marginal rail does to parts
 * is told by {@link Margins}.
 */
public final class Power {

  /** Bands of a rail, lowest first. */
  public enum Band {
    /** Below 4.0 V: nothing works. */
    DEAD,
    /** From 4.0 V: memories and clock are the first to suffer. */
    MARGINAL,
    /** From 4.75 to 5.25 V. */
    NORMAL,
    /** To 6 V. */
    HOT,
    /** Above 6 V. */
    DAMAGE;

    /** The band of so many millivolts. */
    public static Band of(int millivolts) {
      if (millivolts < PowerFigures.figure("band.dead.below")) {
        return DEAD;
      }
      if (millivolts < PowerFigures.figure("band.marginal.below")) {
        return MARGINAL;
      }
      if (millivolts <= PowerFigures.figure("band.normal.to")) {
        return NORMAL;
      }
      return millivolts <= PowerFigures.figure("band.hot.to") ? HOT : DAMAGE;
    }
  }

  /** More than this a meter on a board shows as no way at all. */
  private static final double MOST_OHMS = 1e6;

  /** Milliwatts by which a regulator may be above what it can stand; below it is at rest. */
  private static final int TOO_HOT = 50;

  private final Board board;
  private final HarmNotes harm;
  private final SupplyNodes nodes;
  private final Trips trips = new Trips();
  private final Set<String> killed = new LinkedHashSet<>();
  private final Map<String, Integer> strained = new LinkedHashMap<>();
  private final Map<String, Integer> milliwatts = new LinkedHashMap<>();
  private final long seed;
  private final double[] volts;

  /** Volts at the end of each millisecond of the ripple, the last the lowest; or none. */
  private final List<double[]> swing;

  private final int milliamps;

  private Power(Setup setup, HarmNotes harm, Feed feed) {
    this.board = setup.board();
    this.harm = harm;
    this.seed = setup.seed();
    this.nodes = new SupplyNodes(board, harm, breaks(setup.faults()));
    List<Branch> branches;
    SupplySolver solved;
    do {
      branches = SupplyChain.of(board, harm, nodes, feed, trips, setup.seed());
      solved = new SupplySolver(branches, nodes.count());
    } while (blows(branches, solved) || throttles(branches, solved));
    volts = solved.volts;
    milliamps = throughJack(branches, solved);
    swing = swing(setup.seed(), feed);
    heat(branches, solved);
    kill(branches, setup);
  }

  /** What the other poles of a brick bring in comes in elsewhere. */
  private int throughJack(List<Branch> branches, SupplySolver solved) {
    for (int b = 0; b < branches.size(); b++) {
      if (branches.get(b) instanceof Branch.Source source
          && source.ref().equals(board.supply().jack())) {
        return whole(solved.currents[b]);
      }
    }
    return 0;
  }

  /** The board on its own brick. */
  public static Power of(Setup setup) {
    return new Power(setup, notes(setup), brick(setup));
  }

  /** The board with something else plugged in; its own lead and brick then do not matter. */
  public static Power of(Setup setup, Feed feed) {
    return new Power(setup, notes(setup), feed);
  }

  /** What the board's own brick brings to the end of its lead. */
  public static Feed brick(Setup setup) {
    HarmNotes harm = notes(setup);
    boolean lead =
        harm.supplyOpen || breaks(setup.faults()).stream().anyMatch(b -> b.spot().equals("lead"));
    if (lead) {
      return new Feed.Nothing();
    }
    Supply supply = setup.board().supply();
    return harm.brick
        .map(b -> new Feed.Brick(b.noLoadMillivolts(), b.milliohms()))
        .orElse(new Feed.Brick(supply.noLoadVolts(), supply.ohms()));
  }

  /** Breaks of the feed are placed by {@link SupplyNodes}, each at its spot. */
  private static HarmNotes notes(Setup setup) {
    List<Fault> others =
        setup.faults().stream().filter(f -> !(f.base() instanceof SupplyBreak)).toList();
    HarmNotes harm = new HarmNotes(setup.board(), others);
    setup.out().forEach(harm::absent);
    return harm;
  }

  private static List<SupplyBreak> breaks(List<Fault> faults) {
    return faults.stream()
        .map(Fault::base)
        .filter(SupplyBreak.class::isInstance)
        .map(SupplyBreak.class::cast)
        .toList();
  }

  private List<double[]> swing(long seed, Feed feed) {
    Ripple ripple = Ripple.of(board, harm, nodes, milliamps);
    if (!(feed instanceof Feed.Brick brick) || !ripple.any()) {
      return List.of();
    }
    double[] lowest = at(ripple.offset(Ripple.PERIOD_MS - 1), brick, seed);
    boolean reachesParts =
        board.supply().rails().stream()
            .map(r -> nodes.node(new Pad(r.regulator(), "OUT"), true))
            .flatMapToInt(OptionalInt::stream)
            .anyMatch(n -> whole(lowest[n]) != whole(volts[n]));
    if (!reachesParts) {
      return List.of();
    }
    List<double[]> all = new ArrayList<>();
    for (int ms = 0; ms < Ripple.PERIOD_MS - 1; ms++) {
      all.add(at(ripple.offset(ms), brick, seed));
    }
    all.add(lowest);
    return all;
  }

  private double[] at(int offset, Feed.Brick brick, long seed) {
    int millivolts = Math.max(0, brick.noLoadMillivolts() + offset);
    Feed then = new Feed.Brick(millivolts, brick.milliohms());
    return new SupplySolver(SupplyChain.of(board, harm, nodes, then, trips, seed), nodes.count())
        .volts;
  }

  private boolean blows(List<Branch> branches, SupplySolver solved) {
    for (int b = 0; b < branches.size(); b++) {
      String ref = branches.get(b).ref();
      boolean sound =
          board.part(ref).filter(p -> p.type() == PartCatalog.FUSE).isPresent()
              && !harm.elementsShort.containsKey(ref);
      if (sound) {
        int rating = rating(board.part(ref).orElseThrow());
        int most = rating * PowerFigures.figure("fuse.blows.percent") / 100;
        if (Math.abs(solved.currents[b]) > most) {
          return trips.blown().add(ref);
        }
      }
    }
    return false;
  }

  /**
   * A regulator that gets too hot shuts down until it has cooled, and comes back: in the mean it
   * gives what keeps it just at that heat. By then a fuse has seen what it gave cold.
   */
  private boolean throttles(List<Branch> branches, SupplySolver solved) {
    for (int b = 0; b < branches.size(); b++) {
      if (branches.get(b) instanceof Branch.Regulator regulator) {
        double across = solved.volts[regulator.from()] - solved.volts[regulator.to()];
        double most = hottest(regulator.ref());
        if (across * solved.currents[b] / 1000 > most + TOO_HOT) {
          trips.limits().put(regulator.ref(), (int) (1000 * most / across));
          return true;
        }
      }
    }
    return false;
  }

  /** Milliwatts at which a part is as hot as it can get. */
  private double hottest(String ref) {
    int perWatt = PowerFigures.orNone("per-watt", board.part(ref).orElseThrow().type());
    return 1000.0 * PowerFigures.figure("rise.most") / perWatt;
  }

  /** Milliamperes printed on a fuse, such as {@code 1A} or {@code 500mA}. */
  private static int rating(PlacedPart fuse) {
    if (!fuse.value().matches("\\d{1,4}(mA|A)")) {
      throw new IllegalArgumentException(
          "found value '" + fuse.value() + "' of " + fuse.ref() + ", right would be 1A or 500mA");
    }
    int figure = Integer.parseInt(fuse.value().replaceAll("\\D", ""));
    return fuse.value().endsWith("mA") ? figure : 1000 * figure;
  }

  private void heat(List<Branch> branches, SupplySolver solved) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int b = 0; b < branches.size(); b++) {
      Branch branch = branches.get(b);
      boolean inside = !(branch instanceof Branch.Source) && !branch.ref().isEmpty();
      if (inside) {
        double across = volts[branch.from()] - volts[branch.to()];
        sums.merge(branch.ref(), across * solved.currents[b] / 1000, Double::sum);
      }
    }
    sums.forEach((ref, sum) -> milliwatts.put(ref, whole(sum)));
  }

  /** Who dies is this board's chance, the same at every power-on. */
  private void kill(List<Branch> branches, Setup setup) {
    long seed = setup.seed();
    for (Branch branch : branches) {
      if (branch instanceof Branch.Draw) {
        wear(branch, setup);
      }
      double over = volts[branch.from()] - volts[branch.to()] - above(branch.ref());
      if (branch instanceof Branch.Draw && over > 0) {
        PlacedPart part = board.part(branch.ref()).orElseThrow();
        double chance =
            PowerFigures.figure("dies." + Wear.frailty(part))
                + over / 1000 * PowerFigures.figure("dies.per-volt");
        int drawn = Chance.below(100, seed, Chance.of(part.ref()), Chance.of("overvolted"));
        if (drawn < chance) {
          killed.add(part.ref());
        }
      }
    }
  }

  /** Parts on a pole of the brick stand as much more as the pole has. */
  private int above(String ref) {
    int above = PowerFigures.figure("dies.above");
    for (Supply.Pole pole : board.supply().poles()) {
      boolean fed =
          board.net(pole.net()).orElseThrow().pads().stream().anyMatch(p -> p.ref().equals(ref));
      above = fed ? Math.max(above, 2 * pole.noLoadVolts()) : above;
    }
    return above;
  }

  /** Between 6 and 7 V a part ages with every minute. */
  private void wear(Branch branch, Setup setup) {
    int most = PowerFigures.figure("wear.above");
    int above = above(branch.ref());
    int from = (int) ((long) above * most / PowerFigures.figure("dies.above"));
    int over = whole(volts[branch.from()] - volts[branch.to()]) - from;
    if (over > 0) {
      strained.put(branch.ref(), over);
      PlacedPart part = board.part(branch.ref()).orElseThrow();
      if (Wear.killed(part, setup.seed(), (long) over * setup.surroundings().minutes())) {
        killed.add(part.ref());
      }
    }
  }

  private static int whole(double figure) {
    return (int) StrictMath.floor(figure + 0.5);
  }

  /** Millivolts at the jack's plus track. */
  public int jackMillivolts() {
    return between(new Pad(board.supply().jack(), "+"), new Pad(board.supply().jack(), "-"));
  }

  /** Millivolts at the regulator's input track, which is after fuse and diode. */
  public int afterDiodeMillivolts() {
    String regulator = board.supply().regulator();
    return between(new Pad(regulator, "IN"), new Pad(regulator, "GND"));
  }

  /** Millivolts at the regulator's output track. */
  public int railMillivolts() {
    String regulator = board.supply().regulator();
    return between(new Pad(regulator, "OUT"), new Pad(regulator, "GND"));
  }

  private int between(Pad one, Pad other) {
    OptionalInt a = nodes.node(one, true);
    OptionalInt b = nodes.node(other, true);
    return a.isPresent() && b.isPresent() ? whole(volts[a.getAsInt()] - volts[b.getAsInt()]) : 0;
  }

  /**
   * Millivolts of any pad of the supply against the jack's ground; empty if the pad is no part of
   * it.
   *
   * @param atPad on the track, else at the pin itself
   */
  public OptionalInt millivolts(Pad pad, boolean atPad) {
    OptionalInt node = nodes.node(pad, atPad);
    return node.isPresent() ? OptionalInt.of(whole(volts[node.getAsInt()])) : node;
  }

  /** Milliamperes that come in through the jack, without signal currents. */
  public int currentMilliamps() {
    return milliamps;
  }

  /**
   * Ohms that a meter reads from a track of the supply to the jack's ground with nothing plugged
   * in: it drives so little that neither a silicon junction nor a chip conducts. Empty where
   * nothing leads to ground, or the pad is no part of the supply.
   */
  public OptionalInt ohmsToGround(Pad pad) {
    return ohms(nodes.node(pad, true), OptionalInt.of(0));
  }

  /** The same from one pin to another; empty where nothing leads there. */
  public OptionalInt ohms(Pad one, Pad other) {
    return ohms(nodes.node(one, false), nodes.node(other, false));
  }

  private OptionalInt ohms(OptionalInt one, OptionalInt other) {
    if (one.isEmpty() || other.isEmpty()) {
      return OptionalInt.empty();
    }
    if (one.getAsInt() == other.getAsInt()) {
      return OptionalInt.of(0);
    }
    int drives = PowerFigures.figure("ohmmeter.mv");
    Feed meter = new Feed.Brick(drives, PowerFigures.figure("ohmmeter.milliohms"));
    List<Branch> branches = new ArrayList<>();
    branches.add(new Branch.Source("", other.getAsInt(), one.getAsInt(), meter));
    for (Branch branch : unplugged()) {
      boolean conducts =
          branch instanceof Branch.Resistor
              || branch instanceof Branch.OneWay way && way.dropMillivolts() < drives;
      if (conducts) {
        branches.add(branch);
      } else if (branch instanceof Branch.Draw part && part.milliamps() > 0) {
        branches.add(new Branch.Resistor(part.ref(), part.from(), part.to(), unpowered(part)));
      }
    }
    SupplySolver solved = new SupplySolver(branches, nodes.count());
    double across = solved.volts[one.getAsInt()] - solved.volts[other.getAsInt()];
    double ohms = across / solved.currents[0];
    return ohms < MOST_OHMS ? OptionalInt.of(whole(ohms)) : OptionalInt.empty();
  }

  private List<Branch> unplugged() {
    return SupplyChain.of(board, harm, nodes, new Feed.Nothing(), trips, seed);
  }

  /**
   * Milliamperes that each pin and each bridge takes out of a net of the supply while nothing is
   * plugged in and a bench supply is joined to one of its pads; what it gives counts negative.
   *
   * @param at pad of that net
   * @throws IllegalArgumentException if the pad is no part of the supply
   */
  public Map<Pad, Double> taken(Pad at, Feed.Bench bench) {
    OptionalInt node = nodes.node(at, true);
    if (node.isEmpty()) {
      throw new IllegalArgumentException(
          "found " + at.text() + ", right would be a pad of the supply, such as its jack's");
    }
    List<Branch> branches = new ArrayList<>();
    branches.add(new Branch.Source("", 0, node.getAsInt(), bench));
    branches.addAll(unplugged());
    return RailCurrents.of(board.netOfPad().get(at), nodes, harm, branches);
  }

  /** Whether current finds the same ways through both, whatever is plugged in. */
  public boolean wiredLike(Power other) {
    return nodes.count() == other.nodes.count() && unplugged().equals(other.unplugged());
  }

  /** The nets that carry a board's supply: all between its jacks and its chips, ground left out. */
  public static List<Net> nets(Board board) {
    return SupplyNodes.nets(board).stream()
        .filter(net -> !net.name().equals(board.supply().groundNet()))
        .toList();
  }

  /** Ohms that an ohmmeter finds in a part without power, between its supply and ground. */
  private static double unpowered(Branch.Draw part) {
    double working = (double) Branch.Draw.NOMINAL_MILLIVOLTS / part.milliamps();
    return PowerFigures.figure("unpowered.times") * working;
  }

  /** The band the mean of the logic rail is in. */
  public Band band() {
    return Band.of(railMillivolts());
  }

  /** Whether parts on the logic rail can work. */
  public boolean railUp() {
    return up().contains(board.supply().railNet());
  }

  /**
   * Names of the nets from which parts can be fed: rails and poles that are not dead. A rail that
   * falls below with every ripple is dead: nothing comes out of reset in ten milliseconds.
   */
  public Set<String> up() {
    Set<String> up = new LinkedHashSet<>();
    for (Supply.Rail rail : board.supply().rails()) {
      String ref = rail.regulator();
      if (Band.of(lowest(new Pad(ref, "OUT"), new Pad(ref, "GND"))) != Band.DEAD) {
        up.add(rail.net());
      }
    }
    for (Supply.Pole pole : board.supply().poles()) {
      int share = PowerFigures.figure("pole.dead.below.percent");
      int volts = between(new Pad(pole.jack(), "+"), new Pad(pole.jack(), "-"));
      if (100L * volts >= (long) share * pole.noLoadVolts()) {
        up.add(pole.net());
      }
    }
    return up;
  }

  /** References of fuses that have blown, in the order they went. */
  public Set<String> blown() {
    return Collections.unmodifiableSet(trips.blown());
  }

  /** References of parts that stand above 6 V, with the millivolts more that each ages by. */
  public Map<String, Integer> strained() {
    return Collections.unmodifiableMap(strained);
  }

  /** The lowest millivolts between a part's supply and ground; empty where it has neither. */
  OptionalInt least(String ref) {
    int[] steps = milliseconds(ref);
    return steps.length == 0 ? OptionalInt.empty() : OptionalInt.of(steps[steps.length - 1]);
  }

  /**
   * Millivolts between a part's supply and ground at the end of each millisecond of the ripple, the
   * first after a charge; one figure where nothing ripples, none for a part without supply.
   */
  public int[] milliseconds(String ref) {
    Optional<PlacedPart> part = board.part(ref);
    OptionalInt supply = part.map(p -> nodes.node(p, Pin.Role.SUPPLY)).orElse(OptionalInt.empty());
    OptionalInt ground = part.map(p -> nodes.node(p, Pin.Role.GROUND)).orElse(OptionalInt.empty());
    if (supply.isEmpty() || ground.isEmpty()) {
      return new int[0];
    }
    List<double[]> all = swing.isEmpty() ? List.of(volts) : swing;
    return all.stream().mapToInt(v -> whole(v[supply.getAsInt()] - v[ground.getAsInt()])).toArray();
  }

  private int lowest(Pad one, Pad other) {
    OptionalInt a = nodes.node(one, true);
    OptionalInt b = nodes.node(other, true);
    double[] v = swing.isEmpty() ? volts : swing.get(swing.size() - 1);
    return a.isPresent() && b.isPresent() ? whole(v[a.getAsInt()] - v[b.getAsInt()]) : 0;
  }

  /** References of parts that more than 7 V killed soon after power-on, or minutes above 6 V. */
  public Set<String> killed() {
    return Collections.unmodifiableSet(killed);
  }

  /** Milliwatts a part turns into heat, without signal currents; 0 for one that gets nothing. */
  public int milliwatts(String ref) {
    return milliwatts.getOrDefault(ref, 0);
  }
}
