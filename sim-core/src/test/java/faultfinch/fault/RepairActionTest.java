package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.fault.RepairAction.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepairActionTest {
  private static final Board BOARD = TestBoards.small();

  @ParameterizedTest
  @CsvSource({
    "EXCHANGE,U2,U2: dead,100",
    "EXCHANGE,U2,U2.D0: open pin,100",
    "EXCHANGE,U2,U2.D0: bent leg,100",
    "EXCHANGE,U2,U2.D0: open contact,50",
    "EXCHANGE,U2,U2.D0: open joint,0",
    "EXCHANGE,U2,U3: dead,0",
    "RESEAT,U2,U2.D0: open contact,50",
    "RESEAT,U2,U2: badly seated at pins 1 to 14,100",
    "RESEAT,U2,U2.D0: open pin,0",
    "NEW_SOCKET,U2,U2.D0: open contact,100",
    "NEW_SOCKET,U2,U2.D0: open joint,100",
    "NEW_SOCKET,U2,U2.A1-U2.A0: bridge,100",
    "EXCHANGE,U2,U2.A1-U2.A0: bridge,0",
    "NEW_SOCKET,U2,U2: dead,0",
    "DESOLDER_AND_SOCKET,U4,U4.Y0/: drives low,100",
    "DESOLDER_AND_SOCKET,U4,U4.Y0/: open joint,100",
    "DESOLDER_AND_SOCKET,U4,U4.A-U4.B: bridge,100",
    "DESOLDER_AND_SOCKET,U4,track U4.Y0/-U3.CE/: open,0",
    "REFLOW,U4.A,U4.A: open joint,100",
    "REFLOW,U4.A,U4.B: open joint,0",
    "REFLOW,U4.A,U4.A: open pin,0",
    "LINK_TRACK,U4.Y0/-U3.CE/,track U4.Y0/-U3.CE/: open,100",
    "LINK_TRACK,U4.Y0/-U3.CE/,U4.Y0/: open joint,100",
    "LINK_TRACK,U4.Y0/-U3.CE/,U3.CE/: open joint,100",
    "LINK_TRACK,U4.Y0/-U3.CE/,U4.Y1/: open joint,0",
    "EXCHANGE_SMALL,R2,R2: open,100",
    "EXCHANGE_SMALL,R2,R2.1: open joint,100",
    "STRAIGHTEN_LEG,U2.D0,U2.D0: bent leg,100",
    "STRAIGHTEN_LEG,U2.D0,U2.D0: open leg,0",
    "CLEAN,U2.D0,U2.D0: leaks to ground through 1k,100",
    "SET_LINK,J2,J2: closed,100",
    "SWAP_BACK,U2-U8,U2: in the socket of U8,100",
    "SUPPLY,brick,brick: sags,100",
    "SUPPLY,brick,lead: open,0"
  })
  void cureChance_actionAndFault_isAsOnPaper(Kind kind, String place, String text, int percent) {
    assertEquals(percent, new RepairAction(kind, place).cureChance(FaultKinds.parse(text, BOARD)));
  }

  @Test
  void cureChance_conditionalFault_isThatOfItsBase() {
    Fault warm = FaultKinds.parse("U2: dead when warm", BOARD);
    assertEquals(100, new RepairAction(Kind.EXCHANGE, "U2").cureChance(warm));
  }

  @ParameterizedTest
  @CsvSource({
    "U2: dead,exchange U2",
    "U4: dead,'desolder, fit a socket and a new chip at U4'",
    "R2: open,unsolder and exchange R2",
    "F1.1: open joint,reflow the joint of F1.1",
    "U2.D0: open contact,fit a new socket at U2",
    "lead: open,exchange the lead"
  })
  void curing_fault_isTheLeastSureAction(String text, String action) {
    assertEquals(action, RepairAction.curing(FaultKinds.parse(text, BOARD), BOARD).text());
  }
}
