package faultfinch.judging;

import faultfinch.bench.Instruments;
import faultfinch.bench.Look;
import faultfinch.bench.Looks;
import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.fault.RepairAction;
import faultfinch.signal.Pin;
import faultfinch.symptom.HandsOn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What somebody with the drawing of a board knows of its nets: where to put the probe, which ones
 * come before others, which repairs have to do with one.
 */
final class Wires {
  private static final String RESET = "RES";

  private final Board board;
  private final FaultDictionary dictionary;
  private final Map<Pad, Net> netOf;

  Wires(Board board, FaultDictionary dictionary) {
    this.board = board;
    this.dictionary = dictionary;
    netOf = board.netOfPad();
  }

  private Pin pin(Pad pad) {
    return board
        .part(pad.ref())
        .flatMap(p -> p.type().part().pinout().find(pad.pin()))
        .orElseThrow();
  }

  private boolean supply(Net net) {
    return board.supply().feeds(net.name())
        || net.name().equals(board.supply().jackNet())
        || net.name().equals(board.supply().groundNet());
  }

  /** What feeds the board and its parts, the ground apart. */
  List<Net> rails() {
    return board.nets().stream()
        .filter(n -> supply(n) && !n.name().equals(board.supply().groundNet()))
        .toList();
  }

  /** The nets one looks at first: rails, clocks, resets, selects. */
  List<Net> vital() {
    Set<Net> vital = new LinkedHashSet<>(rails());
    vital.addAll(signals(this::isClock));
    vital.addAll(signals(p -> p.name().startsWith(RESET)));
    vital.addAll(signals(p -> p.role() == Pin.Role.SELECT));
    return List.copyOf(vital);
  }

  private boolean isClock(Pin pin) {
    return pin.role() == Pin.Role.CLOCK_FALLS || pin.role() == Pin.Role.CLOCK_RISES;
  }

  private List<Net> signals(Predicate<Pin> which) {
    return board.nets().stream()
        .filter(n -> !supply(n) && n.pads().stream().anyMatch(p -> which.test(pin(p))))
        .toList();
  }

  /**
   * Where one looks at a net, at an output first: rails with the meter, clocks with the counter if
   * one can be put there, others with the probe.
   */
  Optional<String> look(Net net) {
    List<Pad> pads = new ArrayList<>();
    net.pads().stream().filter(p -> pin(p).drives()).forEach(pads::add);
    net.pads().stream().filter(p -> !pin(p).drives()).forEach(pads::add);
    return Stream.of(Instruments.COUNTER, Instruments.METER, Instruments.PROBE)
        .filter(i -> supply(net) == (i == Instruments.METER))
        .flatMap(i -> pads.stream().map(p -> look(i, p)))
        .filter(l -> dictionary.look(l).isPresent())
        .findFirst();
  }

  private static String look(Instruments instrument, Pad pad) {
    return instrument == Instruments.PROBE
        ? Looks.probe(pad, false).text()
        : new Look(instrument, pad.text()).text();
  }

  /** The nets that the parts which drive this one listen to. */
  List<Net> before(Net net) {
    Set<Net> before = new LinkedHashSet<>();
    for (Pad pad : net.pads()) {
      if (pin(pad).drives()) {
        for (Pin other : board.part(pad.ref()).orElseThrow().type().part().pinout().pins()) {
          Net its = netOf.get(new Pad(pad.ref(), other.name()));
          if (other.receives() && its != null && !supply(its) && !its.equals(net)) {
            before.add(its);
          }
        }
      }
    }
    return List.copyOf(before);
  }

  /**
   * Whether a repair has to do with one of some nets; of a rail with what makes it or passes it on.
   */
  boolean touches(RepairAction repair, Set<Net> nets) {
    List<String> places = Arrays.asList(repair.place().split("&|-(?=[A-Z])| "));
    return nets.stream()
        .flatMap(n -> n.pads().stream().filter(p -> !supply(n) || makes(pin(p))))
        .anyMatch(p -> places.contains(p.ref()) || places.contains(p.text()));
  }

  /** Where one feels which of the parts that rails feed is too warm. */
  List<String> touches() {
    return rails().stream()
        .flatMap(n -> n.pads().stream())
        .filter(p -> isFed(pin(p)))
        .map(p -> new Look(Instruments.FINGER, p.ref()).text())
        .distinct()
        .filter(l -> dictionary.look(l).isPresent())
        .toList();
  }

  /** Whether a pin on a rail is of what makes it, passes it on or buffers it. */
  private static boolean makes(Pin pin) {
    return pin.role() == Pin.Role.TERMINAL;
  }

  private static boolean isFed(Pin pin) {
    return pin.role() == Pin.Role.SUPPLY || pin.role() == Pin.Role.GROUND;
  }

  /** What the board can be tried with by hand. */
  List<String> trials() {
    return HandsOn.of(board).stream()
        .map(HandsOn::name)
        .filter(l -> dictionary.look(l).isPresent())
        .toList();
  }

  /** Parts that did otherwise when the board was tried by hand, as far as it names them. */
  Set<String> otherwise(String trial, String shown) {
    String usual = dictionary.outcomes(dictionary.look(trial).getAsInt()).get(0);
    return HandsOn.of(board).stream()
        .filter(h -> h.name().equals(trial))
        .flatMap(h -> h.otherwise(usual, shown).keySet().stream())
        .collect(Collectors.toSet());
  }

  /** Nets of some parts, without rails. */
  Set<Net> signalsOf(Set<String> parts) {
    return board.nets().stream()
        .filter(n -> !supply(n) && n.pads().stream().anyMatch(p -> parts.contains(p.ref())))
        .collect(Collectors.toSet());
  }

  /** The nets at which something looked at was not as on a healthy board. */
  Set<Net> wrong(Map<String, String> seen) {
    Set<Net> wrong = new LinkedHashSet<>();
    seen.forEach(
        (look, shown) -> {
          if (wrong(look, shown)) {
            Arrays.stream(look.split(" |-(?=[A-Z])")).flatMap(this::netsOf).forEach(wrong::add);
          }
        });
    return wrong;
  }

  private Stream<Net> netsOf(String word) {
    int dot = word.indexOf('.');
    return dot < 1
        ? Stream.empty()
        : Stream.ofNullable(netOf.get(new Pad(word.substring(0, dot), word.substring(dot + 1))));
  }

  /** Whether what a net shows is not as on a healthy board. */
  boolean wrong(String look, String shown) {
    return !dictionary.outcomes(dictionary.look(look).getAsInt()).get(0).equals(shown);
  }
}
