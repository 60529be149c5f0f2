package faultfinch.fault;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Technology;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Groups faults that one run stands for: every pin of every part sees the same levels.
 *
 * <p>Three things make traces of harm the same. The last piece of track to a pad cut, or that pad's
 * pin open; so the two pads of a two-pad net too. A two-terminal part open, or either terminal. A
 * gate's input that reads its deciding level, or its output that always drives the result. An
 * output with one listener that drives one level, or the listener reading it. Loads on a net whose
 * one output always drives it are sorted by what the listeners read: see {@link PlainNet}.
 *
 * <p>What a probe, a millivoltmeter or a finger finds at the break or load itself differs within a
 * group.
 */
final class Collapse {
  private final Map<String, String> parent = new LinkedHashMap<>();

  private Collapse(Anatomy anatomy) {
    anatomy.board().nets().forEach(this::joinLeaves);
    anatomy
        .board()
        .nets()
        .forEach(n -> anatomy.plain(n.name()).ifPresent(p -> joinEnds(p, anatomy)));
    for (PlacedPart part : anatomy.board().parts()) {
      if (anatomy.opens(part)) {
        for (Pad pad : anatomy.pads(part)) {
          unite(Traces.elementOpenTrace(part.ref()), Traces.openTrace(pad.text()));
        }
      }
      joinGates(part);
    }
  }

  /** Groups in the order of their first members; together all the faults, each once. */
  static List<List<Fault>> groups(Anatomy anatomy, List<Fault> faults) {
    Collapse collapse = new Collapse(anatomy);
    Map<Set<String>, List<Fault>> groups = new LinkedHashMap<>();
    for (Fault fault : faults) {
      Set<String> key = new TreeSet<>();
      Traces.of(fault, anatomy).forEach(t -> key.add(collapse.root(t)));
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(fault);
    }
    return groups.values().stream().map(List::copyOf).toList();
  }

  private void joinLeaves(Net net) {
    for (Pad pad : net.pads()) {
      List<Net.Segment> at =
          net.segments().stream().filter(s -> s.from().equals(pad) || s.to().equals(pad)).toList();
      if (at.size() == 1) {
        unite(Traces.openTrace(pad.text()), Traces.cutTrace(at.get(0).text()));
      }
    }
  }

  /**
   * Where one input alone listens, what it misjudges is what the output drives wrong. An LS input
   * that nothing drives reads high, and so does all that hangs on it but a 4000 series input.
   */
  private void joinEnds(PlainNet net, Anatomy anatomy) {
    String output = net.output().text();
    if (net.inputs().size() == 1) {
      String input = net.inputs().get(0).text();
      unite(Traces.readsTrace(input, false), Traces.drivesTrace(output, false));
      unite(Traces.readsTrace(input, true), Traces.drivesTrace(output, true));
    }
    List<Technology> listeners =
        net.inputs().stream().map(p -> anatomy.pin(p).technology()).toList();
    if (listeners.contains(Technology.LS) && !listeners.contains(Technology.CMOS)) {
      unite(Traces.openTrace(output), Traces.drivesTrace(output, true));
    }
    for (Pad input : net.inputs()) {
      if (anatomy.pin(input).technology() == Technology.LS) {
        unite(Traces.openTrace(input.text()), Traces.readsTrace(input.text(), true));
      }
    }
  }

  private void joinGates(PlacedPart part) {
    PartCatalog type = part.type();
    boolean nand = type == PartCatalog.LS_00;
    boolean inverter = type == PartCatalog.LS_04;
    boolean and = type == PartCatalog.LS_08;
    boolean or = type == PartCatalog.LS_32;
    if (nand || inverter || and || or) {
      for (int gate = 1; gate <= (inverter ? 6 : 4); gate++) {
        String output = part.ref() + "." + gate + "Y";
        for (String input : inverter ? List.of("A") : List.of("A", "B")) {
          String pin = part.ref() + "." + gate + input;
          unite(Traces.readsTrace(pin, or), Traces.drivesTrace(output, nand || inverter || or));
          if (inverter) {
            unite(Traces.readsTrace(pin, true), Traces.drivesTrace(output, false));
          }
        }
      }
    }
  }

  private String root(String trace) {
    String at = trace;
    while (!parent.getOrDefault(at, at).equals(at)) {
      at = parent.get(at);
    }
    return at;
  }

  private void unite(String a, String b) {
    String x = root(a);
    String y = root(b);
    if (!x.equals(y)) {
      parent.put(y, x);
    }
  }
}
