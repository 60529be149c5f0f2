package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.machine.Feed;
import faultfinch.machine.Power;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which pin of a supply net takes more than it should: with nothing plugged in, a bench supply is
 * joined to the net, set to the volts a good board has there and to a current that harms no track,
 * and millivolts are read from pad to pad.
 */
public final class RailPaths {
  /** Of a net at which every pin takes what it takes on a good board, or less. */
  public static final String AS_IT_SHOULD = "no pin takes more than it should";

  private static final String MOST = "too much goes to ";

  private static final int LIMIT_MILLIAMPS = 2000;

  /** Two millivolts along a piece of track of 20 milliohms. */
  private static final double LEAST_MILLIAMPS = 100;

  private RailPaths() {}

  /** The names of the nets that are followed so. */
  static List<String> nets(Board board) {
    return Power.nets(board).stream().map(Net::name).toList();
  }

  /** What is found on some of them, by their names. */
  static SortedMap<String, String> of(Setup setup, Power sick, List<String> nets) {
    Board board = setup.board();
    Power good = Power.of(Setup.healthy(board, setup.seed()));
    boolean alike = sick.wiredLike(good);
    SortedMap<String, String> found = new TreeMap<>();
    for (String name : nets) {
      Net net = board.net(name).orElseThrow();
      found.put(name, alike ? AS_IT_SHOULD : says(net, sick, good));
    }
    return found;
  }

  private static String says(Net net, Power sick, Power good) {
    Pad at = joined(net);
    Feed.Bench bench = new Feed.Bench(good.millivolts(at, true).orElseThrow(), LIMIT_MILLIAMPS);
    Map<Pad, Double> should = good.taken(at, bench);
    String says = AS_IT_SHOULD;
    double over = LEAST_MILLIAMPS;
    for (Map.Entry<Pad, Double> pin : sick.taken(at, bench).entrySet()) {
      double more = pin.getValue() - should.get(pin.getKey());
      if (more >= over) {
        over = more;
        says = MOST + pin.getKey().text();
      }
    }
    return says;
  }

  /** Where it is joined: at a regulator's output, a plus, or else at the first pad of the net. */
  private static Pad joined(Net net) {
    List<Pad> pads = net.pads();
    return pads.stream()
        .filter(pad -> pad.pin().equals("OUT") || pad.pin().equals("+"))
        .findFirst()
        .orElse(pads.get(0));
  }
}
