package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Located;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stays wrong after the cause is gone, and what a repair itself brings. */
class OverstressTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  private static Bench bench(Board board, Prices prices, String... faults) {
    List<Fault> all = List.of(faults).stream().map(f -> FaultKinds.parse(f, board)).toList();
    return new Bench(new Job(board, all, 1, Intake.none(), prices));
  }

  private static Bench bench(String... faults) {
    return bench(SORREL, Prices.shipped(), faults);
  }

  private static void does(Bench bench, String move) {
    bench.perform(Move.parse(move));
  }

  private static List<String> remaining(Bench bench) {
    return bench.remaining().stream().map(Fault::text).toList();
  }

  /**
   * Without its ground the regulator gives 6.93 V (see PowerTest): 932 mV too many. Every LS part
   * bears less than 20,000 millivolt-minutes, which are 22 minutes, and none less than 2000.
   */
  @Test
  void sevenVoltsNearly_halfAnHour_killsLogicThatStaysDeadWhenTheRailIsRight() {
    Bench bench = bench("VR1.GND: open joint");
    does(bench, "power on");
    // So far a minute or two.
    assertEquals(List.of("VR1.GND: open joint"), remaining(bench));
    does(bench, "soak");
    for (String ref : List.of("U4", "U5", "U6", "U10", "U11", "U12")) {
      assertTrue(remaining(bench).contains(ref + ": dead"), ref);
    }
    does(bench, "power off");
    does(bench, "reflow: VR1.GND");
    does(bench, "power on");
    assertTrue(remaining(bench).contains("U4: dead"));
    does(bench, "desolder and socket: U4");
    assertFalse(remaining(bench).contains("U4: dead"));
  }

  /** Above 7 V parts die at once, before anybody can look. */
  @Test
  void regulatorShorted_powerOn_leavesPartsDeadBehindTheRepair() {
    Bench bench = bench("VR1: shorted");
    does(bench, "power on");
    does(bench, "power off");
    does(bench, "exchange small part: VR1");
    assertFalse(remaining(bench).isEmpty());
    assertFalse(remaining(bench).contains("VR1: shorted"));
  }

  /** Somebody soldered a socket in and left a bridge under it. */
  @Test
  void bridgeUnderAChip_newChipLeavesIt_newSocketCuresIt() {
    Bench bench = bench("U2.A1-U2.A0: bridge");
    does(bench, "exchange: U2");
    assertEquals(List.of("U2.A1-U2.A0: bridge"), remaining(bench));
    does(bench, "new socket: U2");
    assertEquals(List.of(), remaining(bench));
  }

  /** A sound ROM changed for one of a slower grade: worse than before, once it is warm. */
  @Test
  void exchangeOfAGoodPart_byOneTooSlow_leavesTheBoardWorse() throws IOException {
    Bench bench = bench(TAMARISK, sure("a new part is of too slow a grade"));
    does(bench, "exchange: U2");
    assertEquals(List.of("U2: slow at 350 ns"), remaining(bench));
  }

  /** Cases settle in four minutes: from then on a slow part is looked at as warm as it gets. */
  @Test
  void slowPart_afterFourMinutesOn_isRunWarm() {
    List<Fault> slow = List.of(FaultKinds.parse("U2: slow at 350 ns", TAMARISK));
    Patient patient = new Patient(new Job(TAMARISK, slow, 1, Intake.none(), Prices.shipped()));
    patient.switchOn();
    patient.pass(3);
    assertEquals(0, patient.setup().surroundings().minutes());
    patient.pass(1);
    assertEquals(4, patient.setup().surroundings().minutes());
    patient.switchOff();
    assertEquals(0, patient.setup().surroundings().minutes());
  }

  /** Sorrel leaves time enough for the slower grade: there it is no fault. */
  @Test
  void exchangeOnASlowBoard_bySlowerGrade_isAsGood() throws IOException {
    Bench bench = bench(SORREL, sure("a new part is of too slow a grade"));
    does(bench, "exchange: U2");
    assertEquals(List.of(), remaining(bench));
  }

  /** The shipped prices with one chance made certain. */
  private static Prices sure(String chance) throws IOException {
    try (InputStream in = Prices.class.getResourceAsStream("prices.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      String certain = text.replaceAll("(\"" + chance + "\": )\\d+", "$1100");
      return Prices.of(Located.read("prices.json", certain.getBytes(StandardCharsets.UTF_8)));
    }
  }
}
