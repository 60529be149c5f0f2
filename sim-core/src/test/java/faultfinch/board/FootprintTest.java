package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.part.PartCatalog;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Places worked out by hand from the boards' README: 0.1 inch is 2.54 mm. */
class FootprintTest {

  @Test
  void dualInLine_upright_hasPinOneTopLeftAndTheLastPinOppositeIt() {
    Footprint gate = at(PartCatalog.LS_00, 0);
    assertPad(gate, 1, 100, 50);
    assertPad(gate, 7, 100, 65.24); // 6 x 2.54 down
    assertPad(gate, 8, 107.62, 65.24);
    assertPad(gate, 14, 107.62, 50);
  }

  @Test
  void dualInLine_of24PinsAndMore_isTwiceAsWide() {
    assertPad(at(PartCatalog.SRAM_6116, 0), 24, 115.24, 50);
    assertPad(at(PartCatalog.LS_244, 0), 20, 107.62, 50);
  }

  @Test
  void can_withNumbersLeftOut_keepsTheirPlaces() {
    // Pins 1, 4, 5, 8 of 8: 4 is three steps below 1, 5 opposite 4.
    Footprint can = at(PartCatalog.OSCILLATOR, 0);
    assertEquals(4, can.pads().size());
    assertPad(can, 4, 100, 57.62);
    assertPad(can, 5, 107.62, 57.62);
    assertPad(can, 8, 107.62, 50);
  }

  @Test
  void turned_aQuarterClockwise_whatWasRightLiesBelow() {
    // Pin 14 was 7.62 to the right, pin 7 15.24 below.
    Footprint gate = at(PartCatalog.LS_00, 90);
    assertPad(gate, 14, 100, 57.62);
    assertPad(gate, 7, 84.76, 50);
  }

  @Test
  void turned_half_whatWasRightLiesLeft() {
    Footprint gate = at(PartCatalog.LS_00, 180);
    assertPad(gate, 14, 92.38, 50);
    assertPad(gate, 7, 100, 34.76);
  }

  @Test
  void turned_threeQuarters_whatWasRightLiesAbove() {
    Footprint gate = at(PartCatalog.LS_00, 270);
    assertPad(gate, 14, 100, 42.38);
    assertPad(gate, 7, 115.24, 50);
  }

  @Test
  void row_upright_goesRightInStepsOfATenthOfAnInch() {
    Footprint pack = at(PartCatalog.RESISTOR_PACK, 0);
    assertPad(pack, 1, 100, 50);
    assertPad(pack, 9, 120.32, 50); // 8 x 2.54
    assertPad(at(PartCatalog.REGULATOR_7805, 0), 3, 105.08, 50);
  }

  @Test
  void twoPins_upright_areAsFarApartAsTheReadmeSays() {
    assertPad(at(PartCatalog.RESISTOR, 0), 2, 110.16, 50);
    assertPad(at(PartCatalog.DIODE, 0), 2, 110.16, 50);
    assertPad(at(PartCatalog.CAPACITOR, 0), 2, 105.08, 50);
    assertPad(at(PartCatalog.ELECTROLYTIC, 0), 2, 105.08, 50);
    assertPad(at(PartCatalog.JACK, 0), 2, 105.08, 50);
    assertPad(at(PartCatalog.LED, 0), 2, 102.54, 50);
    assertPad(at(PartCatalog.LINK, 0), 2, 102.54, 50);
    assertPad(at(PartCatalog.FUSE, 0), 2, 122.86, 50);
    assertPad(at(PartCatalog.KEY, 0), 2, 112.7, 50);
    assertPad(at(PartCatalog.BEEPER, 0), 2, 107.62, 50);
  }

  @Test
  void neighbours_ofADualInLine_areThoseNextToEachOtherInARow() {
    // 7 pins a side: 6 steps each; the rows are too far apart.
    List<Footprint.Neighbours> found = at(PartCatalog.LS_00, 90).neighbours();
    assertEquals(12, found.size());
    assertTrue(found.stream().allMatch(n -> n.other().number() == n.one().number() + 1));
    assertTrue(found.stream().noneMatch(n -> n.one().number() == 7));
  }

  @Test
  void neighbours_ofAResistor_areNone() {
    assertEquals(List.of(), at(PartCatalog.RESISTOR, 0).neighbours());
    assertEquals(1, at(PartCatalog.LINK, 0).neighbours().size());
  }

  @Test
  void footprint_anyPartOfTheCatalogue_hasOnePadAPin() {
    for (PartCatalog type : PartCatalog.values()) {
      Footprint footprint = at(type, 0);
      assertEquals(type.part().pinout().pins().size(), footprint.pads().size(), type.type());
      assertEquals(1, footprint.pads().get(0).number(), type.type());
      assertTrue(footprint.body().left() < footprint.body().right(), type.type());
      assertTrue(footprint.body().top() < footprint.body().bottom(), type.type());
    }
  }

  @Test
  void body_ofADualInLine_liesBetweenTheRows() {
    // A quarter pitch inside the rows, half a pitch beyond the ends; turned about pin 1.
    assertEquals(new Footprint.Body(100.64, 48.73, 106.99, 66.51), at(PartCatalog.LS_00, 0).body());
  }

  @Test
  void shippedBoards_allParts_lieInsideTheOutlineAndClearOfEachOther() {
    for (String name : BoardReader.shippedNames()) {
      Board board = BoardReader.shipped(name);
      for (PlacedPart part : board.parts()) {
        Footprint.Body body = Footprint.of(part).body();
        assertTrue(body.left() >= 0 && body.right() <= board.width(), part.ref());
        assertTrue(body.top() >= 0 && body.bottom() <= board.height(), part.ref());
        for (PlacedPart other : board.parts()) {
          boolean same = other.ref().equals(part.ref());
          assertFalse(!same && body.overlaps(Footprint.of(other).body()), part.ref() + other.ref());
        }
      }
    }
  }

  private static Footprint at(PartCatalog type, int turn) {
    return Footprint.of(new PlacedPart("U1", type, "any", 100, 50, turn, false, "", "LS"));
  }

  private static void assertPad(Footprint footprint, int number, double x, double y) {
    PadPlace pad =
        footprint.pads().stream().filter(p -> p.number() == number).findFirst().orElseThrow();
    assertEquals(x, pad.x(), 0.001, "x of " + number);
    assertEquals(y, pad.y(), 0.001, "y of " + number);
  }
}
