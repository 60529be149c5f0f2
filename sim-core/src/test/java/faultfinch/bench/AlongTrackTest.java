package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
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

  /**
   * Copper of 17.2 nanoohm metres and 35 um is 0.491 milliohms a square. The inverter's output at
   * (x, y) and the processor's pin are as far apart as their pads along the edges; 0.4 mm wide.
   */
  @Test
  void milliohms_pieceOfSignalTrack_isItsLengthInSquares() {
    double length = distance("U6", "1Y", "U1", "RES/");
    assertEquals(0.491 * length / 0.4, milliohms("U6.1Y-U1.RES/"), 0.01 * length);
  }

  private static double distance(String from, String pin, String to, String other) {
    double[] a = at(from, pin);
    double[] b = at(to, other);
    return Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]);
  }

  private static double[] at(String ref, String pin) {
    return faultfinch.board.Footprint.of(SORREL.part(ref).orElseThrow()).pads().stream()
        .filter(p -> p.pad().pin().equals(pin))
        .map(p -> new double[] {p.x(), p.y()})
        .findFirst()
        .orElseThrow();
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
