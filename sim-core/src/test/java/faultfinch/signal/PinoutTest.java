package faultfinch.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** A drawing read, and every way in which one can be wrong. */
class PinoutTest {

  /** An invented device that uses every role line. */
  private static final String DRAWN =
      """
             +----v----+
      D1   <>|1      20|--  VCC
      D0   <>|2      19|<-  CS/
      A0   ->|3      18|<-  RW
      A1   ->|4      17|<-  PHI2
      WE/  ->|5      16|<-  CK
      OE/  ->|6      15|<-  LE
      Q0   <-|7      14|->  IRQ/
      Q1   <-|8      13|<>  P0
      T    --|9      12|<-  I
      GND  --|10     11|--  NC
             +---------+
      NMOS; select CS/; register A; direction RW; data D; clock PHI2 falls; clock CK rises;
      write WE/; latch LE; input I P0; schmitt I; terminal T; unconnected NC; supply VCC;
      ground GND; D drives NMOS LSI; Q drives LS gate; P0 drives NMOS LSI; P0 pulled up;
      IRQ/ drives NMOS LSI open collector; enable OE/ of Q; enable CS/ RW of D;
      each Q follows D, LE; D follows A
      Not modelled: everything,
      and more.""";

  private static final Pinout PINOUT = Pinout.drawn(DRAWN);

  private static Pin pin(String name) {
    return PINOUT.find(name).orElseThrow();
  }

  private static long mask(String... names) {
    long mask = 0;
    for (String name : names) {
      mask |= PINOUT.pin(name);
    }
    return mask;
  }

  @Test
  void pins_drawn_haveNumbersAndArrows() {
    assertEquals(20, PINOUT.pins().size());
    assertEquals(2, pin("D0").number());
    assertEquals(14, pin("IRQ/").number());
    assertEquals("NC", PINOUT.numbered(11).orElseThrow().name());
    assertEquals(Optional.empty(), PINOUT.numbered(21));
    assertEquals(Pin.Direction.BOTH, pin("D0").direction());
    assertEquals(Pin.Direction.IN, pin("A0").direction());
    assertEquals(Pin.Direction.IN, pin("CS/").direction());
    assertEquals(Pin.Direction.OUT, pin("Q0").direction());
    assertEquals(Pin.Direction.OUT, pin("IRQ/").direction());
    assertEquals(Pin.Direction.NONE, pin("VCC").direction());
  }

  @Test
  void pins_roleLines_giveEachItsRole() {
    assertEquals(mask("CS/"), PINOUT.role(Pin.Role.SELECT));
    assertEquals(mask("A0", "A1"), PINOUT.role(Pin.Role.REGISTER));
    assertEquals(mask("RW"), PINOUT.role(Pin.Role.DIRECTION));
    assertEquals(mask("D0", "D1"), PINOUT.role(Pin.Role.DATA));
    assertEquals(mask("PHI2"), PINOUT.role(Pin.Role.CLOCK_FALLS));
    assertEquals(mask("CK"), PINOUT.role(Pin.Role.CLOCK_RISES));
    assertEquals(mask("WE/"), PINOUT.role(Pin.Role.WRITE));
    assertEquals(mask("OE/"), PINOUT.role(Pin.Role.ENABLE));
    assertEquals(mask("LE"), PINOUT.role(Pin.Role.LATCH));
    assertEquals(mask("I", "P0"), PINOUT.role(Pin.Role.INPUT));
    assertEquals(mask("Q0", "Q1", "IRQ/"), PINOUT.role(Pin.Role.OUTPUT));
    assertEquals(mask("T"), PINOUT.role(Pin.Role.TERMINAL));
    assertEquals(mask("NC"), PINOUT.role(Pin.Role.UNCONNECTED));
    assertEquals(mask("VCC"), PINOUT.role(Pin.Role.SUPPLY));
    assertEquals(mask("GND"), PINOUT.role(Pin.Role.GROUND));
  }

  @Test
  void pins_driveLines_giveClassCollectorAndPullUp() {
    assertEquals(Optional.of(DriveClass.LS_GATE), pin("Q1").drive());
    assertEquals(Optional.of(DriveClass.NMOS_LSI), pin("IRQ/").drive());
    assertEquals(Optional.empty(), pin("A0").drive());
    assertTrue(pin("IRQ/").openCollector());
    assertFalse(pin("Q0").openCollector());
    assertEquals(5000, pin("P0").pullOhms());
    assertEquals(0, pin("D0").pullOhms());
  }

  @Test
  void technology_drawn_isEveryPinsButTheSchmittOnes() {
    assertEquals(Technology.NMOS, PINOUT.technology());
    assertEquals(Technology.NMOS, pin("A0").technology());
    assertEquals(Technology.SCHMITT, pin("I").technology());
  }

  @Test
  void pins_slashInTheName_areActiveLow() {
    assertTrue(pin("CS/").activeLow());
    assertFalse(pin("RW").activeLow());
  }

  @Test
  void bus_drawnInAnyOrder_standsSideBySideInLineOrder() {
    Bus d = PINOUT.bus("D");
    assertEquals(2, d.width());
    assertEquals(pin("D0").mask(), d.at(1));
    assertEquals(pin("D1").mask(), d.at(2));
    assertEquals(2, d.of(pin("D1").mask() | pin("A0").mask()));
    assertEquals(mask("D0", "D1"), d.mask());
  }

  @Test
  void outputs_sameDependence_standTogether() {
    assertEquals(
        List.of(
            new Output(mask("D0", "D1"), mask("A0", "A1", "CS/", "RW"), mask("CS/", "RW")),
            new Output(mask("IRQ/", "P0"), 0, 0),
            new Output(mask("Q0"), mask("D0", "LE", "OE/"), mask("OE/")),
            new Output(mask("Q1"), mask("D1", "LE", "OE/"), mask("OE/"))),
        PINOUT.outputs());
  }

  @Test
  void page_read_keepsDrawingAndWhatIsLeftOut() {
    assertEquals(DRAWN, PINOUT.drawing());
    assertEquals("everything, and more.", PINOUT.notModelled());
  }

  @Test
  void state_declared_hasItsPlaceAmongItsKind() {
    Pinout pinout = Pinout.drawn("A ->|1 2|-> Y\nLS; input A; Y drives LS gate");
    assertEquals(new State("first", 8, 1, 0), pinout.state("first", 8));
    assertEquals(new State("second", 1, 1, 1), pinout.state("second", 1));
    assertEquals(new State("ram", 8, 16, 0), pinout.cells("ram", 8, 16));
    assertEquals(new State("more", 1, 4, 16), pinout.cells("more", 1, 4));
    assertEquals(2, pinout.words().size());
    assertEquals(20, pinout.cellCount());
  }

  @Test
  void pin_unknown_isRefused() {
    assertEquals(Optional.empty(), PINOUT.find("D7"));
    assertEquals("no pin 'D7' in this drawing", refused(() -> PINOUT.pin("D7")));
    assertEquals("no bus 'Z' in this drawing", refused(() -> PINOUT.bus("Z")));
  }

  @Test
  void drawing_rowWithoutAnArrow_isRefused() {
    assertEquals(
        "drawing: found row 'A = |1 2| = Y', right would be NAME ->|1 14|<- NAME",
        refused("A = |1 2| = Y\nLS; input A"));
  }

  @Test
  void drawing_nameTwice_isRefused() {
    assertEquals(
        "drawing: found pin 'A' number 2 twice, right would be each name and number once",
        refused("A ->|1 2|<- A\nLS; input A"));
  }

  @Test
  void drawing_numberTwice_isRefused() {
    assertEquals(
        "drawing: found pin 'B' number 1 twice, right would be each name and number once",
        refused("A ->|1 1|<- B\nLS; input A B"));
  }

  @Test
  void drawing_unknownTechnology_isRefused() {
    assertEquals(
        "drawing: found technology 'ECL', right would be LS, NMOS, MOS memory, CMOS or passive",
        refused("A ->|1 2|-- NC\nECL; input A"));
  }

  @Test
  void drawing_noRoleLines_isRefused() {
    assertEquals(
        "drawing: found no technology, right would be LS, NMOS, MOS memory, CMOS or passive",
        refused("A ->|1 2|-- NC"));
  }

  @Test
  void drawing_pinWithoutARole_isRefused() {
    assertEquals(
        "drawing: found pin 'B' without a role, right would be a role line that names it",
        refused("A ->|1 2|<- B\nLS; input A"));
  }

  @Test
  void drawing_roleLineOfAnUnknownPin_isRefused() {
    assertEquals(
        "drawing: found 'B' in a role line, right would be a pin or bus of the drawing",
        refused("A ->|1 2|-- NC\nLS; input A B; unconnected NC"));
  }

  @Test
  void drawing_unknownRoleLine_isRefused() {
    assertEquals(
        "drawing: found role line 'A likes NC', right would be 'follows', 'drives' or 'pulled up'",
        refused("A ->|1 2|-- NC\nLS; A likes NC"));
    assertEquals(
        "drawing: found role line 'A', right would be for example 'select CE/' or 'Q drives LS"
            + " gate'",
        refused("A ->|1 2|-- NC\nLS; A"));
  }

  @Test
  void drawing_clockWithoutAnEdge_isRefused() {
    assertEquals(
        "drawing: found role line 'clock A B', right would be 'clock CK rises' or 'clock CK falls'",
        refused("A ->|1 2|<- B\nLS; clock A B"));
  }

  @Test
  void drawing_unknownDriveClass_isRefused() {
    assertEquals(
        "drawing: found drive class 'ECL gate', right would be LS gate, LS buffer, NMOS LSI, MOS"
            + " memory, analogue, tape head or amplifier",
        refused("A ->|1 2|-> Y\nLS; input A; Y drives ECL gate"));
  }

  @Test
  void drawing_lanesThatDoNotMatch_areRefused() {
    String drawn = "D0 ->|1 4|-> Q0\nD1 ->|2 3|-- NC\nLS; input D; unconnected NC; ";
    assertEquals(
        "drawing: found lanes of 'each Q follows D', right would be as many lines on either side",
        refused(drawn + "Q drives LS gate; each Q follows D"));
    assertEquals(
        "drawing: found role line 'each Q', right would be 'each Q follows D, LE'",
        refused(drawn + "Q drives LS gate; each Q"));
  }

  @Test
  void drawing_moreThan64Pins_isRefused() {
    StringBuilder drawn = new StringBuilder();
    for (int i = 1; i <= 65; i++) {
      drawn.append("A").append(i).append(" ->|").append(i).append(" |\n");
    }
    assertEquals(
        "drawing: found 65 pins, right would be 64 at most", refused(drawn + "LS; input A"));
  }

  private static String refused(String drawing) {
    return refused(() -> Pinout.drawn(drawing));
  }

  private static String refused(Executable reading) {
    return assertThrows(IllegalArgumentException.class, reading).getMessage();
  }
}
