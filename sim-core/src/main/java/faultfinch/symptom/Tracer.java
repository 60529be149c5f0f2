package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.machine.SoundNet;
import faultfinch.machine.Trace;
import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A small amplifier with a probe: what an ear hears at a pad of a board's sound, from power-on to
 * the end of the watch. Where the sound is a level that goes up and down it is the changes that are
 * heard; in an analogue path, the volts against ground.
 */
public final class Tracer {
  private static final long MILLISECOND = 1_000_000;

  /** Half of what a gate swings. */
  private static final int LEVEL_MV = 1300;

  private Tracer() {}

  /** Pads that sound can pass: from the sounder back through passive parts and amplifiers. */
  public static List<Pad> pads(Board board) {
    Map<Pad, Net> netOf = board.netOfPad();
    Set<Net> nets = new LinkedHashSet<>();
    Deque<Net> open = new ArrayDeque<>();
    for (PlacedPart part : board.parts()) {
      if (part.type() == PartCatalog.SPEAKER || part.type() == PartCatalog.BEEPER) {
        ends(part, netOf).forEach(open::add);
      }
    }
    while (!open.isEmpty()) {
      Net net = open.remove();
      if (!supplies(board, net) && nets.add(net)) {
        for (Pad pad : net.pads()) {
          PlacedPart part = board.part(pad.ref()).orElseThrow();
          if (passes(part)) {
            open.addAll(ends(part, netOf));
          } else if (part.type() == PartCatalog.DUAL_AMPLIFIER) {
            open.addAll(sameAmplifier(part, pad, netOf));
          }
        }
      }
    }
    return nets.stream().flatMap(n -> n.pads().stream()).toList();
  }

  private static boolean passes(PlacedPart part) {
    return part.type().part() instanceof Element e
        && (e.kind() == Element.Kind.RESISTOR || e.kind() == Element.Kind.CAPACITOR);
  }

  private static List<Net> ends(PlacedPart part, Map<Pad, Net> netOf) {
    return part.type().part().pinout().pins().stream()
        .map(p -> new Pad(part.ref(), p.name()))
        .filter(netOf::containsKey)
        .map(netOf::get)
        .toList();
  }

  private static List<Net> sameAmplifier(PlacedPart part, Pad pad, Map<Pad, Net> netOf) {
    String number = pad.pin().replaceAll("\\D", "");
    return part.type().part().pinout().pins().stream()
        .filter(p -> !number.isEmpty() && p.name().endsWith(number))
        .map(p -> netOf.get(new Pad(part.ref(), p.name())))
        .toList();
  }

  private static boolean supplies(Board board, Net net) {
    return board.supply().feeds(net.name())
        || net.name().equals(board.supply().groundNet())
        || net.name().equals(board.supply().jackNet());
  }

  /** What is heard there, in an ear's words; empty for silence. */
  public static List<String> hears(Setup setup, Pad pad) {
    int end = Watching.endMilliseconds(setup.board());
    List<Trace> traces = new ArrayList<>();
    List<SoundNet> paths = new ArrayList<>();
    Map<Long, Consumer<Machine>> stops = new LinkedHashMap<>();
    stops.put(0L, m -> traces.add(m.watch(pad, LEVEL_MV)));
    stops.put(end * MILLISECOND, m -> SoundNet.heardAt(m, pad).ifPresent(paths::add));
    Watching seen = Watching.of(setup, stops);
    if (seen.speaker().isEmpty()) {
      return Tones.heard(traces.get(0), 0, end * MILLISECOND).stream().map(Tone::says).toList();
    }
    if (paths.isEmpty()) {
      return List.of();
    }
    Sound sound = seen.speaker().get().sound(paths.get(0), 0, end * MILLISECOND, Ear.RATE);
    return Ear.hears(sound, 0).stream().map(Heard::says).toList();
  }
}
