package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults that do not look like it, and yet hardly need a cycle played: fast and alike. */
class TabledFaultsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long MS = 1_000_000;
  private static final long SIZING = 66 * MS;
  private static final boolean SWEEP = Boolean.getBoolean("faultfinch.sweep");
  private static final List<Long> MARKS = every(2, List.of(100 * MS, 190 * MS, 455 * MS));
  private static final int CYCLES = 14_000;

  /** As two keys go down and up, and in between. */
  private static final List<Long> PRESSED =
      every(
          3,
          List.of(799 * MS, 815 * MS, 850 * MS, 879 * MS, 900 * MS, 918 * MS, 935 * MS, 999 * MS));

  /** Of a run of 300 ms, which is 412,500 cycles and begins with 55 ms of reset. */
  private static final int MOST_PLAYED = 10_000;

  /**
   * Where the frame has to be known: while the controller is told its spans there is none, and the
   * next is looked for 20,000 cycles later.
   */
  private static final int MOST_PLAYED_WITH_A_FRAME = 30_000;

  /** The picture strobes half of the rows, each in its turn in the frame, the counter the rest. */
  @ParameterizedTest
  @ValueSource(strings = {"U19.1A4: open leg"})
  void rowsStrobedByThePictureAlone_areTabled(String fault) {
    assertTabled(fault, MOST_PLAYED_WITH_A_FRAME);
  }

  /** A key that is pressed is another wiring, and the frame that was written down goes on in it. */
  @ParameterizedTest
  @ValueSource(strings = {"U14.1Q3: drives low"})
  void rowsStrobedByThePictureAlone_whileKeysArePressed_agree(String fault) {
    assertAgreesWhilePressed(fault);
  }

  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(strings = {"track U8.A1-U9.A1 and U8.A5-U9.A5: bridge"})
  void theLike_whileKeysArePressed_agrees(String fault) {
    assertAgreesWhilePressed(fault);
  }

  private static void assertAgreesWhilePressed(String fault) {
    Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse(fault, TAMARISK)));
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(setup, TAMARISK.exercise(), PRESSED, CYCLES).difference());
  }

  /** The counter stands still; nobody outside the picture half reads the clock it does not see. */
  @ParameterizedTest
  @ValueSource(strings = {"U22.CLK: open leg"})
  void partThatNoClockReaches_readsNothing(String fault) {
    assertTabled(fault, MOST_PLAYED_WITH_A_FRAME);
  }

  /** The shifter is never clocked, and shows its one word by the phases: nobody else's business. */
  @ParameterizedTest
  @ValueSource(strings = {"U25.CK: reads low"})
  void shifterThatIsNotClocked_goesByThePhasesAlone(String fault) {
    assertTabled(fault);
  }

  /** Two parts on one line, a line that tells of a latch, two data lines in one. */
  @ParameterizedTest
  @ValueSource(strings = {"U42.4A-U42.4B: bridge"})
  void lockedProcessor_readsTheSameAgain(String fault) {
    assertTabled(fault);
  }

  /** A latch's output on the port's line it is addressed by: both move by a write only. */
  @ParameterizedTest
  @ValueSource(strings = {"U29.A2-U29.Q0: bridge"})
  void loopOverALineThatOnlyWritesMove_isTabled(String fault) {
    assertTabled(fault);
  }

  /** A gate that holds its own input low, once it is, against all that drives it otherwise. */
  @ParameterizedTest
  @ValueSource(strings = {"U27.2B-U27.2Y: bridge"})
  void loopThatCannotLeaveItsLevel_isTabled(String fault) {
    assertTabled(fault);
  }

  /** What the picture half left on a row line is strobed as a row, and every row is strobed. */
  @ParameterizedTest
  @ValueSource(strings = {"U15.1Y: open leg"})
  void rowLineThatFloatsInTheProcessorsHalf_mattersToMemoryAlone(String fault) {
    assertTabled(fault);
  }

  /** What two lines in one carry depends on both bits; so it is known byte by byte. */
  @ParameterizedTest
  @ValueSource(strings = {"U21.D1-U21.D2: bridge"})
  void dataLinesBridged_areTabledByValue(String fault) {
    assertTabled(fault);
  }

  /** Memory drives its own lines all the time, also while another is read beyond a shut buffer. */
  @ParameterizedTest
  @ValueSource(strings = {"U42.2Y: drives low"})
  void memoryThatDrivesBehindAShutBuffer_isNotHeard(String fault) {
    assertTabled(fault);
  }

  /** The like of those above, which the sweep runs. */
  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(
      strings = {
        "U44.Y2/: clamps to ground through 1 ohm",
        "U32.D6-U32.D7: bridge",
        "U16.G/: reads high",
        "U1.D5-U1.D4: bridge"
      })
  void theLike_isTabled(String fault) {
    assertTabled(fault);
  }

  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(strings = {"U14.1Q3: drives low", "U14.1CP/: reads low"})
  void theLikeWithAFrame_isTabled(String fault) {
    assertTabled(fault, MOST_PLAYED_WITH_A_FRAME);
  }

  /** Of marks the first and every so many after it; all of them in the sweep. */
  private static List<Long> every(int step, List<Long> marks) {
    return IntStream.range(0, marks.size())
        .filter(i -> SWEEP || i % step == 0)
        .mapToObj(marks::get)
        .toList();
  }

  private static void assertTabled(String text) {
    assertTabled(text, MOST_PLAYED);
  }

  private static void assertTabled(String text, int mostPlayed) {
    Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse(text, TAMARISK)));
    assertEquals(Optional.empty(), Agreement.ofRuns(setup, SIZING).difference());
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(setup, TAMARISK.exercise(), MARKS, CYCLES).difference());
    Machine machine = new Machine(setup, Machine.Kind.FAST);
    machine.runTo(300 * MS);
    assertTrue(machine.byPhases() < mostPlayed, machine.byPhases() + " cycles played");
  }
}
