package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Both machines agree on boards that were not drawn with either in mind. */
class GeneratedAgreementTest {

  /** Reset takes 55 ms; what is left is 15 to 20 thousand cycles. */
  private static final long RUN = 72_000_000;

  private static final int FAULTS = 4;

  static LongStream few() {
    return LongStream.rangeClosed(1, 20);
  }

  static LongStream many() {
    return LongStream.rangeClosed(21, 120);
  }

  @ParameterizedTest
  @MethodSource("few")
  void generatedBoard_healthyAndFaulty_agrees(long seed) {
    agree(seed, FAULTS);
  }

  @ParameterizedTest
  @MethodSource("many")
  @Tag("sweep")
  void generatedBoard_withMoreFaults_agrees(long seed) {
    agree(seed, 5 * FAULTS);
  }

  private static void agree(long seed, int faults) {
    Board board = GeneratedBoards.board(seed);
    Setup setup = Setup.healthy(board, seed);
    List<String> differences = new ArrayList<>();
    differences(setup, differences);
    for (Fault fault : new Draw(FaultUniverse.of(board), seed).overKinds(faults)) {
      differences(setup.with(List.of(fault)), differences);
    }
    assertEquals(List.of(), differences);
  }

  private static void differences(Setup setup, List<String> differences) {
    Agreement.ofRuns(setup, RUN)
        .difference()
        .ifPresent(text -> differences.add(setup.faults() + " " + text));
  }
}
