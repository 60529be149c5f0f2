package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.fault.RepairAction;
import faultfinch.signal.Pin;
import faultfinch.symptom.HandsOn;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where on a board a step is: which looks are of one net, which repairs need a custom part. */
public final class Whereabouts {

  /** Of no board: every look is at a point of its own, no part is custom. */
  public static final Whereabouts UNKNOWN = new Whereabouts(Map.of(), Set.of(), Set.of(), List::of);

  private final Map<String, String> netOfPad;
  private final Set<String> customParts;

  /** By pad and by part; of rails only what makes or passes them on, not the parts they feed. */
  private final Map<String, Set<String>> netsOfPlace = new HashMap<>();

  /** Asked for only where nothing of the list fits. */
  private final Supplier<List<HandsOn>> trials;

  private final Map<RepairAction, Set<String>> partsOf = new ConcurrentHashMap<>();
  private final Map<RepairAction, Set<String>> netsOf = new ConcurrentHashMap<>();

  private Whereabouts(
      Map<String, String> netOfPad,
      Set<String> customParts,
      Set<String> fed,
      Supplier<List<HandsOn>> trials) {
    this.netOfPad = netOfPad;
    this.customParts = customParts;
    this.trials = trials;
    netOfPad.forEach(
        (pad, net) -> {
          if (!fed.contains(pad)) {
            netsOfPlace.computeIfAbsent(pad, k -> new HashSet<>()).add(net);
            netsOfPlace.computeIfAbsent(part(pad), k -> new HashSet<>()).add(net);
          }
        });
  }

  /** Of a board. */
  public static Whereabouts of(Board board) {
    Map<String, String> nets = new LinkedHashMap<>();
    for (Map.Entry<Pad, Net> entry : board.netOfPad().entrySet()) {
      nets.put(entry.getKey().text(), entry.getValue().name());
    }
    Set<String> custom = new LinkedHashSet<>();
    for (PlacedPart part : board.parts()) {
      if (part.type().custom()) {
        custom.add(part.ref());
      }
    }
    return new Whereabouts(nets, custom, fed(board, nets), () -> HandsOn.of(board));
  }

  /** Pads of the ground, and of rails those of parts that are fed from them. */
  private static Set<String> fed(Board board, Map<String, String> nets) {
    Supply supply = board.supply();
    Set<String> fed = new HashSet<>();
    for (PlacedPart part : board.parts()) {
      for (Pin pin : part.type().part().pinout().pins()) {
        String pad = new Pad(part.ref(), pin.name()).text();
        String net = nets.getOrDefault(pad, "");
        boolean rail = supply.feeds(net) || net.equals(supply.jackNet());
        if (rail && pin.role() != Pin.Role.TERMINAL || net.equals(supply.groundNet())) {
          fed.add(pad);
        }
      }
    }
    return fed;
  }

  /** The same for steps of which one is enough: looks at one net, each repair for itself. */
  String point(Step step) {
    if (step instanceof Step.Observe observe) {
      String[] words = observe.look().split(" ", 3);
      return words.length < 2 ? observe.look() : netOfPad.getOrDefault(words[1], observe.look());
    }
    return step.text();
  }

  /** Whether two repairs have to do with one part, the places of their pads and joints included. */
  boolean samePart(RepairAction one, RepairAction other) {
    return !Collections.disjoint(parts(one), parts(other));
  }

  /** Whether two repairs have to do with one net; a rail joins what makes it or passes it on. */
  boolean sameNet(RepairAction one, RepairAction other) {
    return !Collections.disjoint(nets(one), nets(other));
  }

  /** Whether a repair has to do with a part. */
  boolean at(RepairAction action, String part) {
    return parts(action).contains(part);
  }

  /** Parts that a look by hand says did otherwise, with how much; see {@link HandsOn#otherwise}. */
  Map<String, Integer> otherwise(String look, String usual, String seen) {
    return trials.get().stream()
        .filter(t -> t.name().equals(look))
        .findFirst()
        .map(t -> t.otherwise(usual, seen))
        .orElse(Map.of());
  }

  private Set<String> parts(RepairAction action) {
    return partsOf.computeIfAbsent(
        action, a -> places(a).map(Whereabouts::part).collect(Collectors.toSet()));
  }

  private Set<String> nets(RepairAction action) {
    return netsOf.computeIfAbsent(
        action,
        a ->
            places(a)
                .flatMap(p -> netsOfPlace.getOrDefault(p, Set.of()).stream())
                .collect(Collectors.toSet()));
  }

  /** A repair is done at a part, at a pad, or at two pads with a dash between them. */
  private static Stream<String> places(RepairAction action) {
    return Arrays.stream(action.place().split("&|-(?=[A-Z])"));
  }

  private static String part(String place) {
    int dot = place.indexOf('.');
    return dot < 0 ? place : place.substring(0, dot);
  }

  /** Whether it fits a new part of a kind made for this board only. */
  boolean custom(RepairAction action) {
    return switch (action.kind()) {
      case EXCHANGE, DESOLDER_AND_SOCKET, EXCHANGE_SMALL -> customParts.contains(action.place());
      case NEW_SOCKET,
          SUPPLY,
          LINK_TRACK,
          REFLOW,
          CLEAR_BRIDGE,
          CLEAN,
          STRAIGHTEN_LEG,
          SWAP_BACK,
          SET_LINK,
          RESEAT ->
          false;
    };
  }
}
