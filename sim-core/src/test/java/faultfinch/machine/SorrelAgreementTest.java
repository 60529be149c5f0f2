package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The fast machine does on Sorrel what the plain one does, healthy and with any fault. */
class SorrelAgreementTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final FaultUniverse ALL = FaultUniverse.of(SORREL);
  private static final long MS = 1_000_000;

  /** Reset lasts 55 ms; by 75 ms memory is sized, by 130 ms the chirp sounds. */
  private static final long BOOT = 75 * MS;

  @Test
  void healthyBoard_toTheWorkingLoop_agrees() {
    agree(List.of(), 1, 330 * MS);
    agree(List.of(), 2, 130 * MS);
  }

  @Test
  void faults_twoOfEveryKind_agreeThroughBoot() {
    for (Fault fault : FaultSpread.ofKinds(ALL, 2, 1)) {
      agree(List.of(fault), 1, BOOT);
    }
  }

  @Test
  void faults_oneOfEveryKind_agreeIntoTheChirp() {
    for (Fault fault : FaultSpread.ofKinds(ALL, 1, 2)) {
      agree(List.of(fault), 3, 130 * MS);
    }
  }

  @Test
  @Tag("sweep")
  void faults_twoAtOnce_agree() {
    List<Fault> some = FaultSpread.ofKinds(ALL, 6, 4);
    for (int i = 0; i < some.size(); i++) {
      Fault other = some.get((i * 7 + 3) % some.size());
      if (!other.equals(some.get(i))) {
        agree(List.of(some.get(i), other), 1, 130 * MS);
      }
    }
  }

  /** In reset, in the working loop, with a key down, and after all keys. */
  private static final List<Long> MARKS = List.of(30 * MS, 420 * MS, 1110 * MS, 1900 * MS);

  private static final long CYCLES = 20_000;

  @Test
  void plainMachine_fromWhereTheFastOneStands_goesOnAlike() {
    Agreement.Outcome outcome = fromMarks(Setup.healthy(SORREL, 1));
    assertEquals(Optional.empty(), outcome.difference());
    // In reset no cycle comes from tables; at the other three marks nearly all of 20,000 do.
    assertTrue(outcome.compared() > 50_000, outcome.compared() + " cycles from tables compared");
  }

  /** Takes a while; see {@link Slice}. */
  @Test
  @Tag("sweep")
  void faults_threeOfEveryKindRoleAndTechnology_agreeFromResetAndFromMarks() {
    List<Fault> drawn = Slice.of(FaultSpread.ofPlaces(ALL, SORREL, 3, 3), Sweep::harm);
    Sweep sweep = new Sweep();
    sweep.run(
        FaultSpread.sorts(SORREL, drawn),
        fault -> {
          Setup setup = Setup.healthy(SORREL, 1).with(List.of(fault));
          return Agreement.ofRuns(setup, 130 * MS).then(() -> fromMarks(setup));
        });
    System.out.println(sweep.table());
    assertEquals(List.of(), sweep.differences());
  }

  private static Agreement.Outcome fromMarks(Setup setup) {
    return Agreement.fromMarks(setup, SORREL.exercise(), MARKS, CYCLES);
  }

  @Test
  void healthyBoard_afterBoot_isPlayedFromTables() {
    Machine machine = new Machine(Setup.healthy(SORREL, 1), Machine.Kind.FAST);
    machine.runTo(400 * MS);
    long cycles = machine.cycles();
    long byPhases = machine.byPhases();
    new Script(SORREL.exercise()).runTo(machine, 2000 * MS);
    double share = 1 - (double) (machine.byPhases() - byPhases) / (machine.cycles() - cycles);
    assertTrue(share > 0.99, "share of cycles from tables: " + share);
  }

  private static void agree(List<Fault> faults, long seed, long nanoseconds) {
    Setup setup = Setup.healthy(SORREL, seed).with(faults);
    assertEquals(
        Optional.empty(), Agreement.ofRuns(setup, nanoseconds).difference(), () -> faults + "");
  }
}
