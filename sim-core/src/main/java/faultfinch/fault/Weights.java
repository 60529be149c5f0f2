package faultfinch.fault;

import faultfinch.board.PlacedPart;
import faultfinch.part.Element;
import faultfinch.part.Memory;
import faultfinch.part.PartCatalog;
import faultfinch.part.RowMemory;
import faultfinch.signal.Technology;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * How likely each fault of a board is before anybody has looked: share of the part, times share of
 * the mode, divided by the sites of that mode. What has no site drops out and the rest is scaled,
 * so that the whole is 1.
 */
final class Weights {
  private final Anatomy anatomy;
  private final Map<Fault, Double> weights = new LinkedHashMap<>();
  private final Map<String, Double> gaps = new LinkedHashMap<>();

  private Weights(Anatomy anatomy, List<Fault> faults) {
    this.anatomy = anatomy;
    anatomy.neighbours().forEach(n -> gaps.put(n.text(), n.gap()));
    faults.forEach(f -> weights.put(f, 0.0));
    Map<String, List<Fault>> byPlace = new LinkedHashMap<>();
    faults.forEach(f -> byPlace.computeIfAbsent(f.place(), k -> new ArrayList<>()).add(f));
    for (PlacedPart part : anatomy.board().parts()) {
      List<Fault> here = byPlace.getOrDefault(part.ref(), List.of());
      share("share." + part.share(), 1, make(part), here);
      if (part.socketed()) {
        share("share.socket", 1, "socket", here);
      }
    }
    share("share.track", anatomy.pads().size(), "track", faults);
    share("share.brick", 1, "brick", faults);
    int sockets = (int) anatomy.chips().stream().filter(PlacedPart::socketed).count();
    share("share.hands", sockets, "hands", faults);
  }

  /** Weight by fault, in the order given; together 1. */
  static Map<Fault, Double> of(Anatomy anatomy, List<Fault> faults) {
    Map<Fault, Double> raw = new Weights(anatomy, faults).weights;
    double sum = raw.values().stream().mapToDouble(Double::doubleValue).sum();
    raw.replaceAll((f, w) -> w / sum);
    return raw;
  }

  private void share(String key, int count, String make, List<Fault> faults) {
    String[] line = Figures.text(key).split(" of ");
    double share = Double.parseDouble(line[0]) / Double.parseDouble(line[1]) * count;
    Map<List<Fault>, Double> pools = new LinkedHashMap<>();
    Figures.weights("modes." + make)
        .forEach((name, percent) -> pool(Mode.named(name), percent, faults, pools));
    double sum = pools.values().stream().mapToDouble(Double::doubleValue).sum();
    pools.forEach(
        (pool, percent) -> {
          double near = pool.stream().mapToDouble(this::nearness).sum();
          double each = share * percent / sum / near;
          pool.forEach(f -> weights.merge(f, each * nearness(f), Double::sum));
        });
  }

  /** Solder joins what lies close together sooner; against two pins of a chip side by side. */
  private double nearness(Fault fault) {
    return fault instanceof TrackBridge
        ? Figures.number("gap.pins.um") / (1000 * gaps.getOrDefault(fault.spot(), 1.0))
        : 1;
  }

  private void pool(Mode mode, double percent, List<Fault> all, Map<List<Fault>, Double> pools) {
    List<Fault> faults = all.stream().filter(f -> mode.counts(anatomy, f)).toList();
    Predicate<Fault> rarer = f -> f instanceof Clamp || f.seat() == Seat.LEG;
    double rare = percent * mode.rarer() / 100;
    put(faults, rarer, rare, pools);
    put(faults, rarer.negate(), percent - rare, pools);
  }

  private static void put(
      List<Fault> faults, Predicate<Fault> which, double percent, Map<List<Fault>, Double> pools) {
    List<Fault> pool = faults.stream().filter(which).toList();
    if (!pool.isEmpty()) {
      pools.merge(pool, percent, Double::sum);
    }
  }

  /** The line of the figures that says how such a part fails. */
  private String make(PlacedPart part) {
    if (part.type().part() instanceof Element e) {
      return switch (e.kind()) {
        case RESISTOR -> "resistor";
        case PACK -> "pack";
        case POTENTIOMETER -> "potentiometer";
        case CAPACITOR -> part.type() == PartCatalog.ELECTROLYTIC ? "electrolytic" : "ceramic";
        case DIODE -> "diode";
        case FUSE -> "fuse";
        case SWITCH -> "switch";
        case SOUNDER -> "sounder";
        case REGULATOR -> "regulator";
        case JACK, CONNECTOR -> "jack";
      };
    }
    if (anatomy.isClock(part)) {
      return "oscillator";
    }
    if (part.type().part() instanceof Memory || part.type().part() instanceof RowMemory) {
      return "memory";
    }
    if (part.type().part() instanceof RowMemory) {
      return "dram";
    }
    boolean bipolar = part.type().part().pinout().technology() == Technology.LS;
    return bipolar ? "bipolar" : "lsi";
  }
}
