package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.part.Element;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Finds the parts in series from the jack to the regulator: a break in any starves the board. */
final class FeedPath {
  private record Step(String fromNet, String through) {}

  private FeedPath() {}

  /** References of jack, regulator and what lies between, the regulator first. */
  static Set<String> of(Board board) {
    Supply supply = board.supply();
    Map<Pad, Net> nets = board.netOfPad();
    Map<String, Step> reached = reach(board, nets);
    Set<String> path = new LinkedHashSet<>();
    if (board.part(supply.regulator()).isPresent()) {
      path.add(supply.regulator());
    }
    Net input = nets.get(new Pad(supply.regulator(), "IN"));
    String at = input == null ? "" : input.name();
    while (reached.containsKey(at) && !at.equals(supply.jackNet())) {
      Step step = reached.get(at);
      path.add(step.through());
      at = step.fromNet();
    }
    if (board.part(supply.jack()).isPresent()) {
      path.add(supply.jack());
    }
    return path;
  }

  private static Map<String, Step> reach(Board board, Map<Pad, Net> nets) {
    String start = board.supply().jackNet();
    Map<String, Step> reached = new LinkedHashMap<>();
    reached.put(start, new Step(start, board.supply().jack()));
    Deque<String> open = new ArrayDeque<>();
    open.add(start);
    while (!open.isEmpty()) {
      String net = open.remove();
      for (PlacedPart part : board.parts()) {
        String other = across(part, net, nets);
        boolean ground = other.equals(board.supply().groundNet());
        if (!other.isEmpty() && !ground && !reached.containsKey(other)) {
          reached.put(other, new Step(net, part.ref()));
          open.add(other);
        }
      }
    }
    return reached;
  }

  /** The net at the far end of a part that passes current, or empty. */
  private static String across(PlacedPart part, String net, Map<Pad, Net> nets) {
    boolean passes =
        part.type().part() instanceof Element e
            && switch (e.kind()) {
              case FUSE, DIODE, SWITCH, RESISTOR -> true;
              case PACK, POTENTIOMETER, CAPACITOR, SOUNDER, REGULATOR, JACK, CONNECTOR -> false;
            };
    if (!passes) {
      return "";
    }
    var ends =
        part.type().part().pinout().pins().stream()
            .map(p -> nets.get(new Pad(part.ref(), p.name())))
            .map(n -> n == null ? "" : n.name())
            .toList();
    int here = ends.indexOf(net);
    return here < 0 ? "" : ends.get(1 - here);
  }
}
