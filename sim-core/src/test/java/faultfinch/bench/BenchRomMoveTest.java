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

/** The bench ROM in Tamarisk's expansion port: what it says is read off the running board. */
class BenchRomMoveTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  private static Bench bench(String... faults) {
    List<Fault> all = Arrays.stream(faults).map(f -> FaultKinds.parse(f, TAMARISK)).toList();
    return new Bench(new Job(TAMARISK, all, 1, Intake.none(), Prices.shipped()));
  }

  private static List<String> says(Bench bench) {
    return ((Reading.Report) bench.perform(Move.parse("bench ROM")).reading()).lines();
  }

  @Test
  void round_healthyWithReturnLeads_nothingDiffersAndNoPulse() {
    Bench bench = bench();
    bench.perform(Move.parse("return leads"));
    List<String> lines = says(bench);
    assertEquals(12, lines.size());
    for (String line : lines.subList(0, 10)) {
      assertTrue(line.contains(": 000 of ") && line.endsWith("========"), line);
    }
    // Page 2 of the memory: 02 ^ 5A = 58.
    assertEquals(
        "Station 04 wrote 58, read 58 at page 02: 000 of 252 differ. ========", lines.get(3));
    assertEquals("lamp no pulse", lines.get(10));
    assertTrue(bench.powered());
    assertFalse(bench.asItCame());
  }

  /** Side port lines that nobody drives are pulled up: 00 out on 0-3 comes back as F0. */
  @Test
  void round_noReturnLeads_stationNineTellsTheRestLevels() {
    List<String> lines = says(bench());
    assertEquals(
        "Station 09 wrote 00, read F0 at page A1: 006 of 011 differ. ========",
        lines.get(8).replaceAll("[=.]{8}$", "========"));
    // Station 9, less one, is 8: a quarter and one more is three; the rest, 0, and one is one.
    assertEquals("lamp pulses 3, then 1", lines.get(10));
  }

  /**
   * The low bank bit stays 0, so that pages A0-BF go to 80-9F and E0-FF to C0-DF: page 80 holds A0
   * ^ 5A = FA where 80 ^ 5A = DA was written. Two cells in each of 64 pages differ, all in bit 5.
   */
  @Test
  void round_bankBitStuck_stationFiveTellsTwoBanks() {
    Bench bench = bench("U29.Q2: drives low");
    bench.perform(Move.parse("return leads"));
    List<String> lines = says(bench);
    assertEquals(
        "Station 05 wrote DA, read FA at page 80: 128 of 256 differ. ==.=====", lines.get(4));
    assertEquals("lamp pulses 2, then 1", lines.get(10));
  }

  /** The plug meets the pin, and the pin does not meet its track. */
  @Test
  void round_jointOfTheExpansionPortOpen_moduleSaysNothingThatCanBeRead() {
    List<String> lines = says(bench("EX1.D3: open joint"));
    assertFalse(lines.stream().anyMatch(l -> l.startsWith("Station 01")), lines.toString());
  }

  /** A board that cannot say a word of its own: ROM 0 is out, and the module takes its place. */
  @Test
  void round_rom0Out_saysTheSameAsWithIt() {
    Bench bench = bench();
    bench.perform(Move.parse("take out: U2"));
    bench.perform(Move.parse("return leads"));
    assertTrue(says(bench).get(3).startsWith("Station 04 wrote 58, read 58"));
  }

  @Test
  void takeOff_afterARound_leavesTheBoardAsItCame() {
    Bench bench = bench();
    bench.perform(Move.parse("return leads"));
    assertFalse(bench.can(Move.parse("retest all")));
    bench.perform(Move.parse("take off the return leads"));
    assertTrue(bench.asItCame());
    assertTrue(bench.can(Move.parse("retest all")));
  }

  @Test
  void plug_powerOnAndSupplyUnchecked_breaksARule() {
    Bench bench = bench();
    assertEquals(
        List.of("supply not checked"),
        bench.breaches(Move.parse("bench ROM")).stream().map(Breach::name).toList());
    bench.perform(Move.parse("swap the supply"));
    bench.perform(Move.parse("power on"));
    assertEquals(
        List.of("plug with the power on"),
        bench.breaches(Move.parse("return leads")).stream().map(Breach::name).toList());
  }

  @Test
  void possible_boardWithoutABenchRom_offersNone() {
    Board sorrel = BoardReader.shipped("sorrel");
    Bench bench = new Bench(new Job(sorrel, List.of(), 1, Intake.none(), Prices.shipped()));
    assertFalse(bench.can(Move.parse("bench ROM")));
    assertFalse(bench.can(Move.parse("return leads")));
  }
}
