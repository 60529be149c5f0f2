package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.fault.RepairAction;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhereaboutsTest {
  private static final Board BOARD = BoardReader.shipped("sorrel");
  private static final Whereabouts WHERE = Whereabouts.of(BOARD);

  private static RepairAction reflow(Pad pad) {
    return new RepairAction(RepairAction.Kind.REFLOW, pad.text());
  }

  private static RepairAction exchange(Pad pad) {
    return new RepairAction(RepairAction.Kind.EXCHANGE, pad.ref());
  }

  private static List<Pad> pads(String net) {
    return BOARD.nets().stream()
        .filter((Net n) -> n.name().equals(net))
        .findFirst()
        .orElseThrow()
        .pads();
  }

  @Test
  void sameNet_ofTwoPadsOfASignal_isSo_andOfThePartsToo() {
    List<Pad> data = pads("D0");
    assertTrue(WHERE.sameNet(reflow(data.get(0)), reflow(data.get(1))));
    assertTrue(WHERE.sameNet(exchange(data.get(0)), reflow(data.get(1))));
  }

  @Test
  void sameNet_ofTwoPadsOfARail_isNotSo() {
    List<Pad> ground = pads(BOARD.supply().groundNet());
    assertFalse(WHERE.sameNet(reflow(ground.get(0)), reflow(ground.get(1))));
  }

  /**
   * Of the rail the regulator makes, its capacitors are one with it, the chips it feeds are not.
   */
  @Test
  void sameNet_onARail_isOfWhatMakesItOrBuffersIt() {
    Board board = BoardReader.shipped("tamarisk");
    Whereabouts where = Whereabouts.of(board);
    RepairAction regulator = new RepairAction(RepairAction.Kind.EXCHANGE_SMALL, "VR1");
    assertTrue(where.sameNet(regulator, new RepairAction(RepairAction.Kind.EXCHANGE_SMALL, "C2")));
    assertFalse(where.sameNet(regulator, new RepairAction(RepairAction.Kind.EXCHANGE, "U1")));
  }

  @Test
  void samePart_ofABridgeBetweenTwo_isSoOfBoth() {
    List<Pad> data = pads("D0");
    String place = data.get(0).text() + "-" + data.get(1).text();
    RepairAction bridge = new RepairAction(RepairAction.Kind.CLEAR_BRIDGE, place);
    assertTrue(WHERE.samePart(bridge, exchange(data.get(0))));
    assertTrue(WHERE.samePart(bridge, exchange(data.get(1))));
    assertFalse(WHERE.samePart(exchange(data.get(0)), exchange(data.get(1))));
  }
}
