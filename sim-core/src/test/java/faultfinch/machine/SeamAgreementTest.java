package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.fault.Bridge;
import faultfinch.fault.DrivesStuck;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.Open;
import faultfinch.fault.ReadsStuck;
import faultfinch.part.Sram6116;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Both machines agree on a board with a picture half, dynamic memory and two buses. */
class SeamAgreementTest {
  private static final Board SEAM = SeamBoard.board();
  private static final Board APART = SeamBoard.apart();

  /** Reset lasts 55 ms; a round of the program about 20. */
  private static final long RUN = 72_000_000;

  private static final int SAMPLED = 5;

  @Test
  void healthyBoard_runsItsProgram_withoutAnError() {
    Machine machine = new Machine(Setup.healthy(SEAM, 1), Machine.Kind.PLAIN);
    machine.runTo(120_000_000);
    // 11 counts wrong bits of picture memory, 13 the rounds; RAM wakes up anyhow, so look twice.
    int wrong = machine.cell("U3", Sram6116.CELLS, 0x11);
    int rounds = machine.cell("U3", Sram6116.CELLS, 0x13);
    machine.runTo(200_000_000);
    assertEquals(wrong, machine.cell("U3", Sram6116.CELLS, 0x11));
    assertTrue(rounds != machine.cell("U3", Sram6116.CELLS, 0x13));
  }

  @Test
  void healthyBoard_bothMachines_agree() {
    agree(SEAM, List.of(), 2 * RUN);
  }

  @Test
  void pictureHalfOnItsOwn_bothMachines_agree() {
    agree(APART, List.of(), 2 * RUN);
  }

  @Test
  void pictureHalfOnItsOwn_isLeftToItself() {
    Machine machine = new Machine(Setup.healthy(APART, 1), Machine.Kind.FAST);
    machine.runTo(RUN);
    long cycles = machine.cycles();
    long byPhases = machine.byPhases();
    machine.runTo(2 * RUN);
    double share = 1 - (double) (machine.byPhases() - byPhases) / (machine.cycles() - cycles);
    assertTrue(share > 0.8, "share of cycles from tables: " + share);
  }

  @Test
  void pictureHalfOnItsOwn_somePinFaults_agree() {
    List<Fault> all = pinFaults(APART);
    for (int i = 0; i < SAMPLED; i++) {
      agree(APART, List.of(all.get(Chance.below(all.size(), 2, i))), RUN);
    }
  }

  @Test
  @Tag("sweep")
  void pictureHalfOnItsOwn_allPinFaults_agree() {
    sweep(APART);
  }

  @Test
  void addressLineOnDataLine_bothMachines_agree() {
    agree(SEAM, List.of(FaultKinds.parse("U1.A15-U1.D7: bridge", SEAM)), RUN);
  }

  @Test
  void pinFaults_some_agree() {
    List<Fault> all = pinFaults(SEAM);
    for (int i = 0; i < SAMPLED; i++) {
      agree(SEAM, List.of(all.get(Chance.below(all.size(), 1, i))), RUN);
    }
  }

  /** Takes an hour; see {@link Slice}. */
  @Test
  @Tag("sweep")
  void pinFaults_all_agree() {
    sweep(SEAM);
  }

  private static List<Fault> pinFaults(Board board) {
    return FaultUniverse.of(board).faults().stream()
        .filter(
            f ->
                f instanceof ReadsStuck
                    || f instanceof DrivesStuck
                    || f instanceof Open
                    || f instanceof Bridge)
        .toList();
  }

  private static void sweep(Board board) {
    Map<Fault, FaultSpread.Sort> sorts =
        FaultSpread.sorts(board, Slice.of(pinFaults(board), Sweep::harm));
    Sweep sweep = new Sweep();
    sweep.run(sorts, f -> Agreement.ofRuns(Setup.healthy(board, 1).with(List.of(f)), RUN));
    System.out.println(sweep.table());
    assertEquals(List.of(), sweep.differences());
  }

  private static void agree(Board board, List<Fault> faults, long nanoseconds) {
    Setup setup = Setup.healthy(board, 1).with(faults);
    assertEquals(
        Optional.empty(), Agreement.ofRuns(setup, nanoseconds).difference(), () -> faults + "");
  }
}
