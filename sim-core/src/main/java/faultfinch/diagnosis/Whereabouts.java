package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.fault.RepairAction;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where on a board a step is: which looks are of one net, which repairs need a custom part. */
public final class Whereabouts {

  /** Of no board: every look is at a point of its own, no part is custom. */
  public static final Whereabouts UNKNOWN = new Whereabouts(Map.of(), Set.of(), net -> false);

  private final Map<String, String> netOfPad;
  private final Set<String> customParts;

  /** By pad and by part, without rails. */
  private final Map<String, Set<String>> netsOfPlace = new HashMap<>();

  private final Map<RepairAction, Set<String>> partsOf = new ConcurrentHashMap<>();
  private final Map<RepairAction, Set<String>> netsOf = new ConcurrentHashMap<>();

  private Whereabouts(
      Map<String, String> netOfPad, Set<String> customParts, Predicate<String> rail) {
    this.netOfPad = netOfPad;
    this.customParts = customParts;
    netOfPad.forEach(
        (pad, net) -> {
          if (!rail.test(net)) {
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
    Supply supply = board.supply();
    Set<String> jack = Set.of(supply.jackNet(), supply.groundNet());
    return new Whereabouts(nets, custom, net -> supply.feeds(net) || jack.contains(net));
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

  /** Whether two repairs have to do with one net; rails join everything and do not count. */
  boolean sameNet(RepairAction one, RepairAction other) {
    return !Collections.disjoint(nets(one), nets(other));
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
