package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Track;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Millivolts and milliohms along tracks, by Ohm's law. */
class AlongTrackTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");

  private static Bench bench(String... faults) {
    List<Fault> all = Arrays.stream(faults).map(f -> FaultKinds.parse(f, SORREL)).toList();
    return new Bench(new Job(SORREL, all, 1, Intake.none(), Prices.shipped()));
  }

  private static String does(Bench bench, String move) {
    return bench.perform(Move.parse(move)).reading().text();
  }

  private static double millivolts(Bench bench, String way) {
    return Double.parseDouble(does(bench, "millivolts: " + way).split(" ")[0]);
  }

  private static double milliohms(String way) {
    return Double.parseDouble(does(bench(), "milliohms: " + way).split(" ")[0]);
  }

  /** Copper of 17.2 nanoohm metres and 35 um is 0.491 milliohms a square of track as it is laid. */
  @Test
  void milliohms_pieceOfSignalTrack_isItsLengthInSquares() {
    Track laid =
        SORREL.tracks().stream()
            .filter(t -> t.segment().text().equals("U6.1Y-U1.RES/"))
            .findFirst()
            .orElseThrow();
    double squares = 0;
    for (Track.Leg leg : laid.legs()) {
      squares += Math.hypot(leg.toX() - leg.fromX(), leg.toY() - leg.fromY()) / laid.width();
    }
    assertTrue(squares > 10, "found " + squares);
    assertEquals(0.4914 * squares, milliohms("U6.1Y-U1.RES/"), 0.1 + 0.001 * squares);
  }

  @Test
  void milliohms_twoPiecesInARow_addUp() {
    assertEquals(
        milliohms("U6.1Y-U1.RES/") + milliohms("U1.RES/-U8.RES/"), milliohms("U6.1Y-U8.RES/"), 0.2);
  }

  @Test
  void milliohms_cutTrack_isNoWay() {
    Bench bench = bench("track U6.1Y-U1.RES/: open");
    assertEquals("no way", does(bench, "milliohms: U6.1Y-U1.RES/"));
    assertFalse(bench.can(Move.parse("milliohms: U6.1Y-U1.D0")));
  }

  /**
   * The inverter drives 3.4 V behind 100 ohms against 22 ohms to ground: 27.9 mA, which flow to the
   * processor's pin and no further.
   */
  @Test
  void millivolts_clampedResetLine_tellWhereTheCurrentGoes() {
    Bench bench = bench("U1.RES/: clamps to ground through 22");
    does(bench, "power on");
    double expected = 3.4 / 122 * milliohms("U6.1Y-U1.RES/");
    assertEquals(expected, millivolts(bench, "U6.1Y-U1.RES/"), 0.02 * expected);
    assertEquals(-expected, millivolts(bench, "U1.RES/-U6.1Y"), 0.02 * expected);
    assertEquals("0.00 mV", does(bench, "millivolts: U1.RES/-U8.RES/"));
  }

  /** The last piece of a branch carries what the part at its end draws: 180 mA at 5 V. */
  @Test
  void millivolts_endOfASupplyBranch_isTheCurrentOfThePartThere() {
    Bench bench = bench();
    does(bench, "power on");
    double expected = 0.180 * milliohms("U8.CS-U9.VCC");
    assertEquals(expected, millivolts(bench, "U8.CS-U9.VCC"), 0.05 * expected + 0.005);
  }

  /**
   * The fuse goes before anything can be measured; a supply with a limit goes on feeding the short,
   * and nearly all of its current takes the way to it.
   */
  @Test
  void millivolts_shortedCapacitorOnTheBenchSupply_areThereOnTheWayToItOnly() {
    Bench bench = bench("C4: short");
    does(bench, "power on");
    assertEquals(0, millivolts(bench, "U1.SO-C4.1"));
    does(bench, "bench supply");
    does(bench, "power on");
    double there = millivolts(bench, "U1.SO-C4.1");
    double past = millivolts(bench, "U1.SO-U2.VPP");
    assertTrue(there > 10 * Math.abs(past) && there > 0.1, there + " and " + past);
  }

  @Test
  void millivolts_groundOfAPart_flowTowardsTheJack() {
    Bench bench = bench();
    does(bench, "power on");
    assertTrue(does(bench, "millivolts: U6.GND-U6.4A").contains("flows U6.GND-U6.4A"));
  }

  @Test
  void unpowered_nothingFlowsAndOhmsWithPowerMeanNothing() {
    Bench bench = bench();
    assertEquals("0.00 mV", does(bench, "millivolts: U1.D0-U2.D0"));
    does(bench, "swap the supply");
    does(bench, "power on");
    Outcome outcome = bench.perform(Move.parse("milliohms: U1.D0-U2.D0"));
    assertEquals("nothing", outcome.reading().feature());
    assertEquals("ohms with the power on", outcome.breaches().get(0).name());
  }
}
