package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.KeyPress;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.TrackBridge;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The fast machine does on Tamarisk what the plain one does: a picture half that steps by itself,
 * dynamic memory with multiplexers and its own refresh, two buses, devices that interrupt.
 */
class TamariskAgreementTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long MS = 1_000_000;

  /** Reset lasts 55 ms; by 66 ms memory is being sized. */
  private static final long SIZING = 66 * MS;

  @Test
  void healthyBoard_untilThePictureIsProgrammed_agrees() {
    agree(List.of(), 110 * MS);
  }

  /** Each once told a way in which the machines can part. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "U4.CAS/: open pin",
        "U34.D4: reads high",
        "U28.RW: clamps to supply through 1 ohm",
        "U14.2Q0: drives low",
        "U9.A3: open pin",
        // Of address 0000, and of what lies beside it.
        "U6: cell 0000 bit 0 stuck high",
        "U6: cell 0000 disturbed",
        "U6: cell 0001 disturbed",
        "U6: cell 0000 short-lived",
        // A strobe falls no more: the columns of all memories, the rows of one.
        "U42.2Y: drives low",
        "U4.RAS/: open pin",
        // With nobody to hold it the tape runs from power-on.
        "U33.6Y: open pin"
      })
  void faultyBoard_whileMemoryIsSized_agrees(String fault) {
    agree(List.of(FaultKinds.parse(fault, TAMARISK)), SIZING);
  }

  /** The same of the columns of one memory, of those the processor asks for, of all rows. */
  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(
      strings = {
        "U9.CAS/: reads low",
        "U12.CCAS/: drives low",
        "U12.RAS/: drives low",
        "track U9.RAS/-U10.RAS/: open",
        "U12.RAS/: clamps to ground through 470 ohms"
      })
  void strobeThatDoesNotFall_whileMemoryIsSized_agrees(String fault) {
    faultyBoard_whileMemoryIsSized_agrees(fault);
  }

  /** Processor on picture, and two lines of the memories' own; whichever lie side by side. */
  @ParameterizedTest
  @CsvSource({"A\\d, VA\\d", "MA\\d, MA\\d"})
  void tracksBridged_whileMemoryIsSized_agrees(String one, String other) {
    Fault bridge =
        FaultUniverse.of(TAMARISK).byKind().get(FaultKinds.TRACK_BRIDGE).stream()
            .filter(f -> nets(f).get(0).matches(one) && nets(f).get(1).matches(other))
            .findFirst()
            .orElseThrow();
    agree(List.of(bridge), SIZING);
  }

  private static List<String> nets(Fault bridge) {
    TrackBridge b = (TrackBridge) bridge;
    return Stream.of(b.one(), b.other()).map(s -> TAMARISK.track(s).orElseThrow().net()).toList();
  }

  @Test
  void healthyBoard_atItsPrompt_isPlayedFromTables() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    machine.runTo(300 * MS);
    long cycles = machine.cycles();
    long byPhases = machine.byPhases();
    machine.runTo(1000 * MS);
    double share = 1 - (double) (machine.byPhases() - byPhases) / (machine.cycles() - cycles);
    assertTrue(share > 0.99, "share of cycles from tables: " + share);
  }

  /**
   * In reset, while memory is sized, while it is cleared, with a key down, with the tape running
   * and the timer ticking, and while tones are sent with interrupts off.
   */
  private static final List<Long> MARKS =
      List.of(30 * MS, 70 * MS, 120 * MS, 330 * MS, 1950 * MS, 2400 * MS);

  private static final int FIRST_KEY = 200;
  private static final long CYCLES = 20_000;
  private static final FaultUniverse ALL = FaultUniverse.of(TAMARISK);

  @Test
  void plainMachine_fromWhereTheFastOneStands_goesOnAlike() {
    Agreement.Outcome outcome = fromMarks(Setup.healthy(TAMARISK, 1), MARKS, CYCLES / 2);
    assertEquals(Optional.empty(), outcome.difference());
    // In reset no cycle comes from tables; at the other marks nearly all of 10,000 do.
    assertTrue(outcome.compared() > 40_000, outcome.compared() + " cycles from tables compared");
  }

  @Test
  void faults_oneOfEveryKind_agreeFromMarks() {
    for (Fault fault : FaultSpread.ofKinds(ALL, 1, 5)) {
      Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(fault));
      List<Long> sizing = MARKS.subList(1, 2);
      assertEquals(
          Optional.empty(), fromMarks(setup, sizing, 2_000).difference(), () -> fault.text());
    }
  }

  /** Takes a while; see {@link Slice}. */
  @Test
  @Tag("sweep")
  void faults_threeOfEveryKindRoleAndTechnology_agreeFromResetAndFromMarks() {
    List<Fault> drawn = Slice.of(FaultSpread.ofPlaces(ALL, TAMARISK, 3, 3), Sweep::harm);
    Sweep sweep = new Sweep();
    sweep.run(
        FaultSpread.sorts(TAMARISK, drawn),
        fault -> {
          Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(fault));
          return Agreement.ofRuns(setup, SIZING).then(() -> fromMarks(setup, MARKS, CYCLES));
        });
    System.out.println(sweep.table());
    assertEquals(List.of(), sweep.differences());
  }

  private static Agreement.Outcome fromMarks(Setup setup, List<Long> marks, long cycles) {
    return Agreement.fromMarks(setup, typed("hum 4000 008"), marks, cycles);
  }

  /** A line typed at the prompt, a key every 120 ms, and ENTER. */
  private static List<KeyPress> typed(String line) {
    List<KeyPress> presses = new ArrayList<>();
    for (char c : (line + "\n").toCharArray()) {
      String key = c == ' ' ? "SPACE" : c == '\n' ? "ENTER" : ("" + c).toUpperCase(Locale.ROOT);
      String ref =
          TAMARISK.parts().stream()
              .filter(p -> p.role().equals("key " + key))
              .map(PlacedPart::ref)
              .findFirst()
              .orElseThrow();
      presses.add(new KeyPress(ref, FIRST_KEY + 120 * presses.size(), 70));
    }
    return presses;
  }

  private static void agree(List<Fault> faults, long nanoseconds) {
    Setup setup = Setup.healthy(TAMARISK, 1).with(faults);
    assertEquals(
        Optional.empty(), Agreement.ofRuns(setup, nanoseconds).difference(), () -> faults + "");
  }
}
