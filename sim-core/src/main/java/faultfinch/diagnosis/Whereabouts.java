package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.RepairAction;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Where on a board a step is: which looks are of one net, which repairs need a custom part. */
public final class Whereabouts {

  /** Of no board: every look is at a point of its own, no part is custom. */
  public static final Whereabouts UNKNOWN = new Whereabouts(Map.of(), Set.of());

  private final Map<String, String> netOfPad;
  private final Set<String> customParts;

  private Whereabouts(Map<String, String> netOfPad, Set<String> customParts) {
    this.netOfPad = netOfPad;
    this.customParts = customParts;
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
    return new Whereabouts(nets, custom);
  }

  /** The same for steps of which one is enough: looks at one net, each repair for itself. */
  String point(Step step) {
    if (step instanceof Step.Observe observe) {
      String[] words = observe.look().split(" ", 3);
      return words.length < 2 ? observe.look() : netOfPad.getOrDefault(words[1], observe.look());
    }
    return step.text();
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
