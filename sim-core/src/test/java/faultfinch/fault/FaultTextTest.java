package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading a fault: what is taken, and what is said about what is not. */
class FaultTextTest {
  private static final Board BOARD = TestBoards.small();

  @Test
  void parse_pinNumber_becomesItsName() {
    // Pin 15 of a 74LS138 is Y0/.
    assertEquals(
        new DrivesStuck(new Pad("U4", "Y0/"), false), FaultKinds.parse("U4.15: drives low", BOARD));
  }

  @Test
  void parse_nameThatIsANumber_staysTheName() {
    assertEquals("R2.1: open joint", FaultKinds.parse("R2.1: open joint", BOARD).text());
  }

  @Test
  void parse_zeroOhms_isOneOhm() {
    assertEquals(
        "U2.D1: clamps to ground through 1 ohm",
        FaultKinds.parse("U2.D1: clamps to ground through 0", BOARD).text());
  }

  @ParameterizedTest
  @CsvSource({"470,470 ohms", "1000,1k", "4700,4k7", "1250,1250 ohms", "1,1 ohm", "10000,10k"})
  void text_ohms_readBack(int ohms, String text) {
    Fault fault = new Clamp(new Pad("U2", "D1"), true, ohms);
    assertTrue(fault.text().endsWith(text), fault.text());
    assertEquals(fault, FaultKinds.parse(fault.text(), BOARD));
  }

  @Test
  void parse_trackBackwards_isTheSamePiece() {
    assertEquals(
        FaultKinds.parse("track U1.D0-U2.D0: open", BOARD),
        FaultKinds.parse("track U2.D0-U1.D0: open", BOARD));
  }

  @Test
  void parse_trackBetweenPinsCalledMinus_isRead() {
    Fault fault = FaultKinds.parse("track J1.--C1.-: open", BOARD);
    assertEquals(FaultKinds.SUPPLY_BREAK, fault.kind());
  }

  @Test
  void parse_bridgeOfTracksBackwards_isTheSame() {
    assertEquals(
        "track U1.A0-U2.A0 and U1.A1-U2.A1: bridge",
        FaultKinds.parse("track U2.A1-U1.A1 and track U1.A0-U2.A0: bridge", BOARD).text());
  }

  @Test
  void parse_bridgeBackwards_isTheSame() {
    assertEquals("U2.A1-U2.A0: bridge", FaultKinds.parse("U2.A0-U2.A1: bridge", BOARD).text());
  }

  @Test
  void parse_swappedChips_areOneFaultFromBothSides() {
    assertEquals(
        FaultKinds.parse("U2: in the socket of U8", BOARD),
        FaultKinds.parse("U8: in the socket of U2", BOARD));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "U44: dead | 1 | part 'U44' | U4",
        "fridge: dead | 1 | 'fridge' | J1",
        "U3.D9: open pin | 4 | pin 'D9' | D0",
        "U2.NC: open pin | 4 | U2.NC, which is on no net | U2.",
        "U4.A: drives low | 1 | U4.A, which drives nothing | U4.Y7/: drives low",
        "U4.Y0/: reads low | 1 | U4.Y0/, which reads nothing | U4.A: reads low",
        "U8.IRQ/: drives high | 1 | U8.IRQ/, which can only pull low | drives low",
        "U4.A: open contact | 1 | U4.A, which is soldered | U1.",
        "R2.1: open leg | 1 | R2.1, whose part has no such place | open leg",
        "U4: badly seated at pins 1 to 8 | 1 | U4, which is soldered | U1: badly seated",
        "U2: badly seated at pins 9 to 4 | 26 | pins 9 to 4 | within 1 to 28",
        "U2: in the socket of U3 | 22 | 'U3' | as many pins",
        "U2: in the socket of U4 | 1 | U4 is soldered | in the socket of U8",
        "U3: cell 0800 bit 1 stuck low | 10 | cell '0800' | 0000 to 07FF",
        "U2: mis-programmed at 2000 as 00 | 23 | address '2000' | 0000 to 1FFF",
        "U8: defect sulks | 12 | defect 'sulks' | timer-dead",
        "U5: defect timer-dead | 5 | 'defect timer-dead' for U5 | dead; reversed",
        "R2: glows | 5 | 'glows' for R2 | open; short; drifts to N per cent",
        "U2.A0-U2.D1: bridge | 1 | no neighbours | U2.",
        "U5.1A-U5.1B: bridge | 1 | on one net | U5.",
        "track U1.A0-U2.A0 and U1.D0-U2.D0: bridge | 1 | nobody laid | U1.A1",
        "track U1.A0-U2.A0 and U1.D9-U2.D0: bridge | 26 | pin 'D9' | D",
        "track U1.D0-U3.D0: open | 7 | no piece of track | U1.D0-U2.D0",
        "track U1.D0: open | 7 | 'U1.D0' | U1.D0-U3.D0",
        "U4.A: reads low when blue | 17 | 'when blue' | when warm",
        "U4.A: reads low after 999 minutes | 17 | 'after 999 minutes' | 1 to 120",
        "R2: drifts to 100 per cent | 15 | '100' | not 100",
        "X1: off frequency at 9 per mille | 22 | '9' | 500 to 2000",
        "R2.1: clamps to ground through 470 | 1 | no pin of a chip | X1.OUT",
        "U4.G1: clamps to supply through 470 | 1 | on that rail | U4.",
        "U4.VCC: leaks to ground through 1k | 1 | on a supply net | U4.",
        "U4.A: clamps to ground through 99M | 32 | '99M' | 10M",
        "U4 dead | 1 | no place with a colon | U9.D0: reads low",
        "brick: shy | 8 | 'shy' for brick | sags",
        "U4:  | 1 | | "
      })
  void parse_wrongText_namesColumnFoundAndRight(
      String text, int column, String found, String right) {
    UnknownFault e = assertThrows(UnknownFault.class, () -> FaultKinds.parse(text, BOARD));
    assertEquals(column, e.column(), e.getMessage());
    String[] halves = e.getMessage().split(", right would be ", 2);
    assertTrue(halves[0].contains(found == null ? "" : found), e.getMessage());
    assertTrue(halves[1].contains(right == null ? "" : right), e.getMessage());
    assertFalse(e.getMessage().contains("\n"));
  }
}
