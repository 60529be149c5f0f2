package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Milestone;
import faultfinch.board.Pad;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.PinDifference;
import faultfinch.machine.Setup;
import faultfinch.machine.Standing;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The chain from a fault to what shows, link by link, on Tamarisk. */
class WhyTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  private static Why why(String... faults) {
    return Inquest.of(setup(faults));
  }

  private static Setup setup(String... faults) {
    return Setup.healthy(TAMARISK, 1)
        .with(Arrays.stream(faults).map(f -> FaultKinds.parse(f, TAMARISK)).toList());
  }

  /**
   * From the board's drawing and its listing. The net is the one the faulty pin is on, or that its
   * part drives; the reader the first pin on it that takes another bit.
   *
   * <ul>
   *   <li>D2 held low: of the bytes from the reset vector on (FFFC 00, FFFD E0, E000 78 D8 B8 A2
   *       FF) the first with a bit 2 is the operand of LDX #$FF at E004. 1Y3 drives D2.
   *   <li>MD5 open at its driver: LS inputs hang on it, which read high. Page 0 is compared first;
   *       its first byte is C6, bit 5 low.
   *   <li>Y3/ high: the controller is first asked in M_PORTS, where VIDEO_HOW is stored; only reads
   *       can differ on the bus, and the first of those is VIDEO_SAYS in M_VIDEO.
   *   <li>CS/ of the port held high: the first access is the store to PORT in M_PORTS, the first
   *       read TIMER_SAYS at its end.
   *   <li>The interrupt line low: taken as soon as M_INTERRUPTS has run CLI and one instruction
   *       more, which is the first of M_CHORD.
   *   <li>The picture's interrupt open: the working loop waits in get_key as the frame ends.
   * </ul>
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "U31.1Y3: drives low | D2 | U1.D2 | M_STACK | M_STACK | M_SIZING",
        "U9.Q: open pin | MD5 | U22.D5 | M_SIZING | M_SIZING | M_STACK_GOOD",
        "U28.IRQ/: clamps to ground through 1 ohm | IRQ/ | U1.IRQ/ | M_CHORD | M_CHORD | M_TICK",
        "U21.IRQ/: open pin | IRQ/ | U1.IRQ/ | get_key | M_TICK | M_FRAME"
      })
  void faultOnTheBus_why_namesPinRoutineAndStep(
      String fault, String net, String reader, String routine, String last, String missed) {
    Why why = why(fault);
    Why.Act act = why.reads().orElseThrow();
    assertEquals(net, act.net());
    assertEquals(reader, act.readers().get(0).pad().text());
    assertEquals(routine, why.place().orElseThrow().label());
    assertEquals(last, why.lastStep().map(Milestone::label).orElseThrow());
    assertEquals(missed, missed(why).get(0));
    assertTrue(why.bus().isPresent());
  }

  private static List<String> missed(Why why) {
    return why.steps().stream()
        .filter(s -> s.had().isEmpty())
        .map(s -> s.milestone().label())
        .toList();
  }

  /** C6 is 1100 0110; with bit 5 high E6. U9 is the chip of bit 5. */
  @Test
  void memoryOutputOpen_firstCycle_namesTheByteAndTheSilentChip() {
    Why why = why("U9.Q: open pin");
    Why.OtherCycle bus = why.bus().orElseThrow();
    assertEquals(0x0000, bus.had().orElseThrow().address());
    assertEquals(0xC6, bus.expected().orElseThrow().value());
    assertEquals(0xE6, bus.had().orElseThrow().value());
    assertTrue(bus.shouldAnswer().contains("U9"));
    assertFalse(bus.answers().contains("U9"));
    assertEquals("memory_bad", why.strays().orElseThrow().had().label());
  }

  /** LDX #$FF with bit 2 low is FB; the ROM is asked, the key columns drive too. */
  @Test
  void keyColumnHoldsADataLine_firstCycle_namesWhoAnswersUnasked() {
    Why.OtherCycle bus = why("U31.1Y3: drives low").bus().orElseThrow();
    assertEquals(0xE004, bus.had().orElseThrow().address());
    assertEquals(0xFF, bus.expected().orElseThrow().value());
    assertEquals(0xFB, bus.had().orElseThrow().value());
    assertEquals(List.of("U2"), bus.shouldAnswer());
    assertEquals(List.of("U2", "U31"), bus.answers());
  }

  /** The latch rests at 0 from power-on; with Q0 high the picture comes from the page above. */
  @Test
  void pageBitHigh_why_beginsAtPowerOnAndLeavesTheProcessorAlone() {
    Why why = why("U29.Q0: drives high");
    Why.Act act = why.stands().orElseThrow();
    assertEquals(0, act.moment().cycle());
    assertEquals(new Pad("U29", "Q0"), act.source().pad());
    assertEquals(List.of("U17.3B"), readers(act));
    assertTrue(why.bus().isEmpty() && why.strays().isEmpty() && why.steps().isEmpty());
    assertEquals(List.of("display"), why.shows().stream().map(Why.OtherFeature::name).toList());
  }

  private static List<String> readers(Why.Act act) {
    return act.readers().stream().map(PinDifference::pad).map(Pad::text).toList();
  }

  /** The timer lets go of START 55 ms after power-on: 1.1 x 100k x 500n. */
  @Test
  void resetTimerStuck_why_beginsWhereResetShouldEnd() {
    Why why = why("U36.OUT: drives high");
    Why.Act act = why.reads().orElseThrow();
    assertEquals("START", act.net());
    assertEquals(55, act.moment().nanoseconds() / 1_000_000);
    assertEquals(List.of("U37.3A"), readers(act));
    assertEquals(Standing.IN_RESET, why.end().standing());
    assertTrue(why.end().since().isEmpty());
    assertTrue(why.lastStep().isEmpty());
    assertEquals("M_RESET", missed(why).get(0));
  }

  /** 11 MHz by 8; the second stage of four of the divider is the processor's clock. */
  @Test
  void dividerStuck_why_beginsWithTheClock() {
    Why why = why("U13.1Q2: drives low");
    Why.OtherClock clock = why.clock().orElseThrow();
    assertEquals("PHI0", clock.net());
    assertEquals(1_375_000, clock.expectedHertz());
    assertEquals(0, clock.hadHertz());
    assertEquals(Standing.NO_CLOCK, why.end().standing());
  }

  /** Ten parts stand on the picture side's rail; the first of them in the file is U21. */
  @Test
  void pictureRegulatorDead_why_beginsWithTheRail() {
    Why why = why("VR2: dead");
    Why.OtherSupply rail = why.supplies().get(0);
    assertEquals("5VP", rail.net());
    assertEquals("U21", rail.ref());
    assertEquals(0, rail.hadMv());
    assertEquals(5000, rail.expectedMv(), 150);
    assertEquals(List.of("M_FRAME"), missed(why));
    assertEquals(List.of("U21"), why.bus().orElseThrow().shouldAnswer());
    assertEquals(List.of(), why.bus().orElseThrow().answers());
  }

  /** Boot asks nothing of the tone generator. */
  @Test
  void analogueRegulatorDead_why_tellsTheRailAndTheSilenceOnly() {
    Why why = why("VR3: dead");
    assertEquals("5VS", why.supplies().get(0).net());
    assertTrue(why.bus().isEmpty() && why.steps().isEmpty());
    assertEquals(List.of("sound"), why.shows().stream().map(Why.OtherFeature::name).toList());
  }

  /** The strobe to the drive is first pulled when names are asked for; the selector in sizing. */
  @Tag("sweep")
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "U33.1Y: open pin | STB/ | DRV1.STB/ | await_link | M_FILES | M_LISTED",
        "U16.S: reads high | MA5 | U4.A5 | M_SIZING | M_SIZING | M_STACK_GOOD",
        "U44.Y3/: drives high | Y3/ | U21.CS/ | M_VIDEO | M_VIDEO | M_FRAME",
        "U28.CS/: clamps to supply through 1 ohm | PA5 | U33.4A | M_PORTS | M_PORTS | M_TICK"
      })
  void laterFault_why_namesPinRoutineAndStep(
      String fault, String net, String reader, String routine, String last, String missed) {
    faultOnTheBus_why_namesPinRoutineAndStep(fault, net, reader, routine, last, missed);
  }

  /** Open inputs of MOS fall low: FFFD is read from FFDD, where the ROM holds 00. */
  @Tag("sweep")
  @Test
  void romAddressOpen_why_comesOutOfResetElsewhere() {
    Why why = why("U2.A5: open pin");
    assertEquals(0xFFFD, why.bus().orElseThrow().had().orElseThrow().address());
    assertEquals(0x0000, why.strays().orElseThrow().had().address());
    assertEquals("M_RESET", why.strays().orElseThrow().expected().label());
    assertEquals("M_RESET", missed(why).get(0));
  }

  /** Nothing is stored in that cell by the start, nor by the exercise. */
  @Tag("sweep")
  @Test
  void cellNobodyUses_why_saysThatNothingDiffers() {
    assertTrue(why("U9: cell 79C3 short-lived").nothing());
  }
}
