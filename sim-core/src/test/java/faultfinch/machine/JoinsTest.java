package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.Joins;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class JoinsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final int NEXT_TO_NOTHING = 10;
  private static final Map<Pad, Net> NETS = TAMARISK.netOfPad();

  /** Whatever kind of fault it is: what it does to a board is what counts. */
  @Test
  void are_everyFaultThatBridgesTwoNets_joinsJustThose() {
    Joins joins = new Joins(TAMARISK);
    int bridging = 0;
    for (Fault fault : FaultUniverse.of(TAMARISK).faults()) {
      HarmNotes notes = new HarmNotes(TAMARISK, List.of(fault));
      for (HarmNotes.Bridge bridge : notes.bridges) {
        Set<String> nets = new HashSet<>();
        nets.add(NETS.get(bridge.one()).name());
        nets.add(NETS.get(bridge.other()).name());
        // A leak is no next to nothing.
        if (bridge.ohms() >= NEXT_TO_NOTHING) {
          continue;
        }
        assertEquals(nets.size() == 2, joins.are(fault, nets), fault.text());
        bridging += nets.size() - 1;
      }
    }
    assertTrue(bridging > 0);
  }

  @Test
  void are_linesThatAreFarApart_joinedByNothing() {
    Joins joins = new Joins(TAMARISK);
    assertFalse(
        FaultUniverse.of(TAMARISK).faults().stream()
            .anyMatch(fault -> joins.are(fault, Set.of("COL0", "VS/"))));
  }
}
