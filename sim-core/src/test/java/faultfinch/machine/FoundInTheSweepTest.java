package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Where a sweep found that the machines differ, one test each, as small as the difference allows.
 */
class FoundInTheSweepTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long MS = 1_000_000;

  /** A timer's output can be read through a buffer, and is, one cycle after it moved. */
  @Test
  void timerOutput_readThroughABuffer_isReadAsItIsThen() {
    assertAgrees(Setup.healthy(GeneratedBoards.board(52), 52), 60 * MS);
  }

  /** Of three timers the output of one, and only in fetch cycles, pulls the interrupt line low. */
  @Test
  void timerOutput_gatedOntoAnInterrupt_interrupts() {
    assertAgrees(Setup.healthy(GeneratedBoards.board(107), 107), 60 * MS);
  }

  /** Parts without ground hold the data lines high; what nobody drives next stays high. */
  @Test
  void linesThatFloatBehindAnOverruledWrite_keepWhatTheyCarriedAndNotWhatWasWritten() {
    assertAgrees(sorrel("track U11.GND-U1.VSS2: open"), 60 * MS);
  }

  /** The key pulls down a line that moves with the address. Its first press is at 400 ms. */
  @Test
  void keyOnALineThatMovesWithTheAddress_changesWhatIsRead() {
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(
                sorrel("U10.1G/-U10.1A1: bridge"), SORREL.exercise(), List.of(420 * MS), 1000)
            .difference());
  }

  /** A port whose pin is bridged onto an address line becomes an output: what was known is void. */
  @Test
  void portOnAnAddressLine_turnedToOutput_changesWhatIsRead() {
    Board board = GeneratedBoards.board(79);
    Fault bridge = FaultKinds.parse("U13.1A-U13.1B: bridge", board);
    assertAgrees(Setup.healthy(board, 79).with(List.of(bridge)), 60 * MS);
  }

  /** The picture's strobes make a memory store, bit by bit, that is always told to. */
  @Test
  void memoryThatStoresWhileTheProcessorIsHeld_isNotLeftOut() {
    Setup setup =
        Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse("U8.WE/: open joint", TAMARISK)));
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(setup, List.of(), List.of(30 * MS), 500).difference());
  }

  /** Nothing drives the reset line but a key; let go, it holds its level for a millisecond. */
  @Test
  void lineThatOnlyAKeyDrove_losesItsLevelAfterItIsLetGo() {
    Board board = GeneratedBoards.board(28);
    Fault misplaced = FaultKinds.parse("U3: in the socket of U7", board);
    assertAgrees(Setup.healthy(board, 28).with(List.of(misplaced)), 60 * MS);
  }

  /** A way found at the end of a cycle begins with the next, and something in it shows. */
  @Test
  void wayThatShows_isFollowedFromTheCycleItWasFoundIn() {
    Setup slow =
        Setup.healthy(TAMARISK, 1)
            .with(List.of(FaultKinds.parse("X1: off frequency at 900 per mille", TAMARISK)));
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(slow, TAMARISK.exercise(), List.of(925 * MS), 500).difference());
  }

  /** Held in reset: when rows were last strobed is told to the cycle. */
  @Test
  void rowsOfABoardInReset_areAsOldAsTheyAre() {
    String held = "track U26.GND-U21.GND and U21.RES/-EX1.RES/: bridge";
    assertAgrees(
        Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse(held, TAMARISK))), 60 * MS);
  }

  /**
   * A controller that was never told its lines: one latch is not clocked for 190 cycles of each.
   */
  @Test
  void latchThatIsNotClockedInALongGap_keepsWhatItTookBefore() {
    String wild = "track U1.RES/-U28.RES/ and U2.VPP-U1.SO: bridge";
    assertAgrees(
        Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse(wild, TAMARISK))), 66 * MS);
  }

  /** Nobody puts a refresh row on the lines: what is strobed is what an access left there. */
  @Test
  void rowLinesThatFloatInThePictureHalf_strobeWhatTheyKeep() {
    Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse("U41: dead", TAMARISK)));
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(setup, List.of(), List.of(70 * MS), 1000).difference());
  }

  /** Instructions end after the cycle asked for, and a way may be found there. */
  @Test
  void runsOfACycleEach_fromWhereResetIsLetGo_goOn() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    for (long at = 54 * MS; at < 57 * MS; at += 700) {
      machine.runTo(at);
    }
    assertEquals(Standing.RUNS, machine.standing());
  }

  /**
   * A processor that disturbs the frame in every instruction: writing it down takes a third of a
   * second, and lasts for two cycles. Looked for each time, this would take some five minutes.
   */
  @Test
  @Timeout(60)
  void frameThatIsLostAtOnce_isNotWrittenDownAgainAndAgain() {
    Machine machine =
        new Machine(
            Setup.healthy(TAMARISK, 1)
                .with(List.of(FaultKinds.parse("U41.3B-U41.4Y: bridge", TAMARISK))),
            Machine.Kind.FAST);
    machine.runTo(76 * MS);
    assertEquals(Standing.RUNS, machine.standing());
  }

  private static Setup sorrel(String fault) {
    return Setup.healthy(SORREL, 1).with(List.of(FaultKinds.parse(fault, SORREL)));
  }

  private static void assertAgrees(Setup setup, long nanoseconds) {
    assertEquals(Optional.empty(), Agreement.ofRuns(setup, nanoseconds).difference());
  }
}
