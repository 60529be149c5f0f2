package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Surroundings;
import faultfinch.machine.TestSocket;
import faultfinch.machine.TestSocket.Bed;
import faultfinch.machine.TestSocket.Chip;
import faultfinch.part.PartCatalog;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What can be learnt of a chip that is out of its place. */
class PulledChipTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Bed BED = new Bed(5000, Surroundings.BENCH, 1, 0);

  private static Bench pulled(String ref, String... faults) {
    List<Fault> all = Arrays.stream(faults).map(f -> FaultKinds.parse(f, SORREL)).toList();
    Bench bench = new Bench(new Job(SORREL, all, 1, Intake.none(), Prices.shipped()));
    bench.perform(Move.parse("take out: " + ref));
    return bench;
  }

  private static String does(Bench bench, String move) {
    return bench.perform(Move.parse(move)).reading().text();
  }

  private static List<String> tested(PartCatalog type, String... inside) {
    Chip chip = new Chip(type, List.of(inside), new byte[0]);
    return TesterProgram.of(type)
        .orElseThrow()
        .differences(new TestSocket(chip, BED), () -> new TestSocket(chip.sound(), BED), 4);
  }

  /** Every kind of chip a tester knows, sound, and with its first output open and held low. */
  @ParameterizedTest
  @EnumSource(PartCatalog.class)
  void tester_anyKindItKnows_passesASoundOneAndTellsAnOutputThatDrivesLow(PartCatalog type) {
    if (TesterProgram.of(type).isEmpty()) {
      return;
    }
    assertEquals(List.of(), tested(type));
    String out =
        type.part().pinout().pins().stream()
            .filter(p -> p.drives())
            .map(p -> p.name())
            .findFirst()
            .orElseThrow();
    List<String> wrong = tested(type, "U1." + out + ": drives low");
    assertTrue(wrong.stream().anyMatch(l -> l.startsWith(out + " was wrong")), wrong.toString());
  }

  @Test
  void chipTester_stuckCellOfTheMemory_isWrongOnceInTwoPasses() {
    // 2048 bytes, twice; the stuck bit is right in one of the two opposite contents.
    Bench bench = pulled("U3", "U3: cell 0100 bit 2 stuck low");
    assertEquals("failed: D2 was wrong in 1 of 4096", does(bench, "chip tester: U3"));
  }

  @Test
  void chipTester_soundMemory_passesAndIsNotOfferedForTheProcessor() {
    assertEquals("passed", does(pulled("U3"), "chip tester: U3"));
    Bench bench = pulled("U1");
    assertFalse(bench.can(Move.parse("chip tester: U1")));
    assertTrue(bench.can(Move.parse("reference board: U1")));
  }

  @Test
  void chipTester_faultWhenWarm_passesOnceAndFailsLooping() {
    Bench bench = pulled("U3", "U3.D0: drives low when warm");
    assertEquals("passed", does(bench, "chip tester: U3"));
    assertTrue(does(bench, "chip tester looping: U3").startsWith("failed: D0 was wrong"));
  }

  @Test
  void chipTester_contactOfTheSocket_isNotInTheChip() {
    assertEquals("passed", does(pulled("U3", "U3.D0: open contact"), "chip tester: U3"));
  }

  @Test
  void readOut_oneByteWrong_namesItAndWhatTheListingSays() {
    int right = SORREL.firmware().get(0).image()[0x123] & 0xFF;
    String wrong = String.format("%02X", right ^ 1);
    Bench bench = pulled("U2", "U2: mis-programmed at 0123 as " + wrong);
    assertEquals(
        "failed: 1 bytes differ from the listing; the first, byte 0123 reads "
            + wrong
            + String.format(", the listing says %02X", right),
        does(bench, "ROM read-out: U2"));
    assertEquals("passed", does(pulled("U2"), "ROM read-out: U2"));
  }

  @Test
  void referenceBoard_chipWithAndWithoutAFault_tells() {
    assertTrue(
        does(pulled("U9", "U9.D0: reads low"), "reference board: U9")
            .startsWith("failed: display: reads 'RNRRDL', should be reads 'SORREL'"));
    assertEquals("passed", does(pulled("U9", "U9.D0: open contact"), "reference board: U9"));
  }
}
