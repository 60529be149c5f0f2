package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The drive and the link controller hand each other bit after bit, one answering the other, while
 * the processor waits: nearly nothing of it is played, and all is as if it were.
 */
class ChatterTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long MS = 1_000_000;

  /** The exercise's last line has been ended, and the drive is asked for its names. */
  private static final long ASKED = 1_440 * MS;

  private static final List<Long> MARKS =
      LongStream.range(0, 8).mapToObj(i -> ASKED + 5 * i * MS / 2).toList();

  /** Less than lie between two marks. */
  private static final int CYCLES = 3_000;

  @Test
  void healthyBoard_whileTheDriveIsAsked_isPlayedFromTables() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    Script script = new Script(TAMARISK.exercise());
    script.runTo(machine, ASKED);
    long played = machine.byPhases();
    long cycles = machine.cycles();
    long[] drive = words(machine, "DRV1");
    script.runTo(machine, ASKED + 20 * MS);
    assertFalse(Arrays.equals(drive, words(machine, "DRV1")), "the drive has heard and answered");
    // Ten bytes and more, each of sixteen answers: played, they would be some five cycles each.
    assertTrue(machine.cycles() - cycles > 20_000);
    assertTrue(machine.byPhases() - played < 400, machine.byPhases() - played + " cycles played");
  }

  @Test
  void healthyBoard_whileTheDriveIsAsked_agrees() {
    Agreement.Outcome outcome = fromMarks(List.of());
    assertEquals(Optional.empty(), outcome.difference());
    assertTrue(outcome.compared() > 20_000, outcome.compared() + "");
  }

  /** Lines that never answer, answer always, are joined, are heard by nobody. */
  @ParameterizedTest
  @ValueSource(strings = {"U32.DAT/: reads low", "U33.1Y: drives low", "DRV1: defect deaf"})
  void faultyBoard_whileTheDriveIsAsked_agrees(String fault) {
    assertEquals(Optional.empty(), fromMarks(List.of(fault)).difference());
  }

  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(
      strings = {
        "U32.PHI2: open pin",
        "U32.ACK/: reads low",
        "U32.SP0: clamps to ground through 1 ohm"
      })
  void theLike_whileTheDriveIsAsked_agrees(String fault) {
    faultyBoard_whileTheDriveIsAsked_agrees(fault);
  }

  private static long[] words(Machine machine, String ref) {
    Circuit c = machine.plain().circuit;
    int part = List.of(c.refs).indexOf(ref);
    int from = c.wordBase[part];
    int size = c.parts[part].pinout().words().size();
    return Arrays.copyOfRange(machine.store().words(), from, from + size);
  }

  private static Agreement.Outcome fromMarks(List<String> faults) {
    Setup setup =
        Setup.healthy(TAMARISK, 1)
            .with(faults.stream().map(text -> FaultKinds.parse(text, TAMARISK)).toList());
    return Agreement.fromMarks(setup, TAMARISK.exercise(), MARKS, CYCLES);
  }
}
