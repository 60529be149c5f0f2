package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.TrackBridge;
import java.util.List;
import java.util.Map;
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
        // With nobody to hold it the tape runs from power-on.
        "U33.6Y: open pin"
      })
  void faultyBoard_whileMemoryIsSized_agrees(String fault) {
    agree(List.of(FaultKinds.parse(fault, TAMARISK)), SIZING);
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

  @Test
  @Tag("sweep")
  void faults_drawnOverTheKinds_agree() {
    Sweep sweep = new Sweep();
    Map<Fault, FaultSpread.Sort> sorts =
        FaultSpread.sorts(
            TAMARISK,
            Slice.of(new Draw(FaultUniverse.of(TAMARISK), 1).overKinds(200), Sweep::harm));
    sweep.run(sorts, f -> Agreement.ofRuns(Setup.healthy(TAMARISK, 1).with(List.of(f)), SIZING));
    System.out.println(sweep.table());
    assertEquals(List.of(), sweep.differences());
  }

  private static void agree(List<Fault> faults, long nanoseconds) {
    Setup setup = Setup.healthy(TAMARISK, 1).with(faults);
    assertEquals(
        Optional.empty(), Agreement.ofRuns(setup, nanoseconds).difference(), () -> faults + "");
  }
}
