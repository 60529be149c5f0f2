package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Moves by hand. With D0 open at the display each letter reads with bit 0 low: {@code SORREL}
 * becomes {@code RNRRDL} (53 52, 4F 4E, 52, 52, 45 44, 4C).
 */
class HandsOnTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final String RIGHT = "display reads 'SORREL'";
  private static final String WRONG = "display reads 'RNRRDL'";

  private static Bench bench(Board board, String... faults) {
    List<Fault> all = Arrays.stream(faults).map(f -> FaultKinds.parse(f, board)).toList();
    return new Bench(new Job(board, all, 1, Intake.none(), Prices.shipped()));
  }

  private static Bench on(String... faults) {
    Bench bench = bench(SORREL, faults);
    does(bench, "power on");
    return bench;
  }

  private static String does(Bench bench, String move) {
    return bench.perform(Move.parse(move)).reading().text();
  }

  private static void shows(String right, String text) {
    assertTrue(text.startsWith(right), text);
  }

  @Test
  void press_contactThatOpensWhenShaken_showsAtThatChipAndWithTheWholeBoard() {
    Bench bench = on("U9.D0: open contact when shaken");
    shows(WRONG, does(bench, "press: U9"));
    shows(WRONG, does(bench, "press"));
    shows(RIGHT, does(bench, "press: U3"));
    assertEquals("reads 'SORREL'", does(bench, "look: screen"));
  }

  @Test
  void spray_warmFaultOnAWarmBoard_goesAtThatChipOnly() {
    Bench bench = on("U9.D0: open contact when warm");
    while (bench.spent().minutes() < 6) {
      does(bench, "look: current");
    }
    assertEquals("reads 'RNRRDL'", does(bench, "look: screen"));
    shows(WRONG, does(bench, "spray: U3"));
    shows(RIGHT, does(bench, "spray: U9"));
    assertEquals("reads 'RNRRDL'", does(bench, "look: screen"));
  }

  @Test
  void warmAir_warmFaultOnAColdBoard_comesAtThatChipOnly() {
    Bench bench = on("U9.D0: open contact when warm");
    shows(RIGHT, does(bench, "warm air: U3"));
    does(bench, "power cycle");
    shows(WRONG, does(bench, "warm air: U9"));
  }

  @Test
  void coldStarts_healthy_isFiveOfFive() {
    shows("5 of 5: " + RIGHT, does(bench(SORREL), "cold starts"));
  }

  /** One in two, drawn per power-on: five alike have a chance of one in sixteen per seed. */
  @Test
  void coldStarts_faultAtSomePowerOns_countsBoth() {
    boolean both = false;
    for (int seed = 1; seed <= 6; seed++) {
      Fault fault = FaultKinds.parse("U9.D0: open contact one power-on in 2", SORREL);
      Bench bench =
          new Bench(new Job(SORREL, List.of(fault), seed, Intake.none(), Prices.shipped()));
      String text = does(bench, "cold starts");
      both |= text.contains(RIGHT) && text.contains(WRONG);
    }
    assertTrue(both);
  }

  @Test
  void supplyUpAndDown_faultAtLowVolts_showsAtTheLowerOnly() {
    String[] ends = does(on("U9.D0: open contact at low volts"), "supply up and down").split("\\|");
    shows("at 4.70 V: " + WRONG, ends[0].strip());
    shows("at 5.25 V: " + RIGHT, ends[1].strip());
  }

  /** The broken output's leg is on the track, and so is the leg of the chip on top. */
  @Test
  void piggyback_outputOpenInsideThePackage_isTakenOver() {
    String right = does(on(), "look: key K1");
    Bench bench = on("U10.1Y1: open pin");
    String wrong = does(bench, "look: key K1");
    assertNotEquals(right, wrong);
    does(bench, "piggyback: U10");
    assertEquals(right, does(bench, "look: key K1"));
    assertFalse(bench.asItCame());
    does(bench, "take the chip off: U10");
    assertEquals(wrong, does(bench, "look: key K1"));
    assertTrue(bench.asItCame());
  }

  /** The leg floats off its pad, and the chip on top stands on that leg. */
  @Test
  void piggyback_jointOpenUnderThePin_doesNotHelp() {
    Bench bench = on("U10.1Y1: open joint");
    String before = does(bench, "look: key K1");
    does(bench, "piggyback: U10");
    assertEquals(before, does(bench, "look: key K1"));
  }

  /** A second chip draws as much again: 9 mA for a 74LS138. */
  @Test
  void piggyback_anyChip_drawsItsCurrentToo() {
    Bench bench = on();
    int before = milliamps(does(bench, "look: current"));
    does(bench, "piggyback: U4");
    int more = milliamps(does(bench, "look: current")) - before;
    assertTrue(more >= 5 && more <= 12, "found " + more);
  }

  private static int milliamps(String text) {
    return Integer.parseInt(text.replace(" mA", ""));
  }

  @Test
  void cutTrack_branchToTheDisplay_isALostBitUntilLinked() {
    Bench bench = on();
    does(bench, "cut track: U2.D0-U9.D0");
    assertEquals("reads 'RNRRDL'", does(bench, "look: screen"));
    assertEquals("failed: U2.D0-U9.D0 is cut", does(bench, "refit check"));
    does(bench, "link track: U2.D0-U9.D0");
    assertEquals("reads 'SORREL'", does(bench, "look: screen"));
    assertTrue(bench.asItCame());
  }

  @Test
  void exchangeTwo_likeChips_takeWhatIsInsideAlongAndLeaveTheRest() {
    Board board = withSockets(BoardReader.shipped("tamarisk"), Set.of("U4", "U5"));
    Bench bench = bench(board, "U4.Q: open pin", "U5: dead", "U4.A0: open joint");
    does(bench, "exchange two: U4-U5");
    assertEquals(
        Set.of("U5.Q: open pin", "U4: dead", "U4.A0: open joint"),
        bench.remaining().stream().map(Fault::text).collect(Collectors.toSet()));
    assertEquals(2, bench.spent().pulls());
  }

  private static Board withSockets(Board board, Set<String> refs) {
    return board.refitted(
        board.parts().stream()
            .filter(p -> refs.contains(p.ref()))
            .map(
                p ->
                    new PlacedPart(
                        p.ref(), p.type(), p.role(), p.x(), p.y(), p.turn(), true, p.value(),
                        p.share()))
            .toList());
  }

  @Test
  void refitCheck_chipOutAndBackAgain_tellsBoth() {
    Bench bench = bench(SORREL);
    does(bench, "take out: U9");
    assertEquals("failed: U9 is not in its place", does(bench, "refit check"));
    does(bench, "put back: U9");
    assertEquals("passed", does(bench, "refit check"));
  }

  @Test
  void checkLeads_brokenLeadAndClosedLink_namesBoth() {
    assertEquals("passed", does(bench(SORREL), "check leads and switches"));
    assertEquals(
        "failed: the supply's lead passes nothing; J2, option link, is closed",
        does(bench(SORREL, "lead: open", "J2: closed"), "check leads and switches"));
  }

  /** 17 K above 25 degrees for a processor that has settled. */
  @Test
  void infraRed_processor_isWarmWhenOnAndAsTheAirWhenOff() {
    Bench bench = bench(SORREL);
    assertEquals("25 degrees", does(bench, "infra-red: U1"));
    does(bench, "power on");
    assertEquals(
        "40 to 45 degrees", bench.perform(Move.parse("infra-red: U1")).reading().feature());
  }

  /** 100 k against a driven line of a few hundred ohms is nothing. */
  @Test
  void load_drivenLine_changesNothing() {
    shows(RIGHT, does(on(), "load: U1.D0"));
  }

  @Test
  void unplug_monitor_isToldByTheRefitCheckUntilItIsPluggedIn() {
    Bench bench = bench(BoardReader.shipped("tamarisk"));
    does(bench, "unplug: MON1");
    assertEquals("failed: MON1 is unplugged", does(bench, "refit check"));
    does(bench, "plug in: MON1");
    assertTrue(bench.asItCame());
  }
}
