package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Every fault a Tamarisk can have runs through boot without an exception. */
class EveryFaultRunsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final FaultUniverse ALL = FaultUniverse.of(TAMARISK);

  /** The prompt is due after 143 ms. */
  private static final long BOOT = 200_000_000;

  @Test
  void faults_oneOfEveryKind_runThroughBoot() {
    assertEquals(List.of(), failures(FaultSpread.ofKinds(ALL, 1, 8)));
  }

  /** All 14,000 in some 6,000 runs, an hour and more; see {@link Slice}. */
  @Test
  @Tag("sweep")
  @Timeout(value = 4, unit = TimeUnit.HOURS)
  void faults_all_runThroughBoot() {
    List<Fault> slice = Slice.of(ALL.representatives(), Fault::text);
    List<String> failures = failures(slice);
    System.out.println(slice.size() + " faults ran through boot, " + failures.size() + " did not");
    assertEquals(List.of(), failures);
  }

  private static List<String> failures(List<Fault> faults) {
    List<String> failures = new ArrayList<>();
    for (Fault fault : faults) {
      try {
        Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(fault));
        new Machine(setup, Machine.Kind.FAST).runTo(BOOT);
      } catch (RuntimeException e) {
        failures.add(fault.text() + ": " + e);
      }
    }
    return failures;
  }
}
