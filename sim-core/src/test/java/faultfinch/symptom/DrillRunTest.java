package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Drill;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sticks: first one up and left with its level turned over while two is down, right and firing,
 * then the other way round. K61 to K65 are up, down, left, right and fire of the first, D10 to D14
 * their diodes, K66 to K70 those of the second.
 */
class DrillRunTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final String LOADED = "Heard 0030 bytes.";
  private static final String KEPT = "Hummed 0008 bytes.";
  private static final String AGAIN = "Heard 0008 bytes.";
  private static final String SILENT = "The tape is silent.";

  private static String says(Board board, String drill, String... faults) {
    Machine machine = new Machine(TamariskRun.setup(faults), Watching.KIND);
    return HandsOn.of(board).stream()
        .filter(h -> h.name().equals(drill))
        .findFirst()
        .orElseThrow()
        .says(machine, Frames.NONE);
  }

  /** What the board answered, line by line. */
  private static List<String> answers(String drill, String... faults) {
    String glass = says(TAMARISK, drill, faults).replaceAll("^'(.*)' in .*$", "$1");
    return Arrays.stream(glass.split(" \\| ")).skip(2).filter(row -> !row.startsWith("#")).toList();
  }

  /**
   * In the middle the converter sees half its reference, 32 of 64; turned over, all but 1 %: 63.
   */
  @Test
  void sticks_healthy_areToldAsTheyArePushed() {
    assertEquals(
        List.of(
            "Stick 1 U - L - -  level 3F",
            "Stick 2 - D - R F  level 20",
            "Stick 1 - D - R F  level 20",
            "Stick 2 U - L - -  level 3F"),
        answers("sticks"));
  }

  @ParameterizedTest
  @CsvSource({
    "K61: open, 0, Stick 1 - - L - -  level 3F",
    "D12: open, 0, Stick 1 U - - - -  level 3F",
    "K70: open, 1, Stick 2 - D - R -  level 20"
  })
  void sticks_switchOrDiodeOpen_oneWayIsMissing(String fault, int line, String says) {
    List<String> expected = new ArrayList<>(answers("sticks"));
    expected.set(line, says);
    assertEquals(expected, answers("sticks", fault));
  }

  /** The converter's input is pulled to ground where no wiper holds it. */
  @Test
  void sticks_wayFromTheWiperOpen_levelOfThatStickIsNought() {
    assertEquals(
        List.of(
            "Stick 1 U - L - -  level 00",
            "Stick 2 - D - R F  level 20",
            "Stick 1 - D - R F  level 00",
            "Stick 2 U - L - -  level 3F"),
        answers("sticks", "R17: open"));
  }

  /** Both levels are measured against the analogue side's rail. */
  @Test
  void sticks_analogueRailMissing_bothLevelsAreNought() {
    assertTrue(answers("sticks", "VR3: dead").stream().allMatch(s -> s.endsWith("level 00")));
  }

  /**
   * Through a shorted diode a pushed stick joins its column to the row of the sticks both ways, so
   * that keys of that column come as keys of others: the second command is no word.
   */
  @Test
  void sticks_diodeShorted_keysComeAsOthersWhileItIsPushed() {
    List<String> answers = answers("sticks", "D14: short");
    assertEquals("Stick 1 U - L - -  level 3F", answers.get(0));
    assertEquals("That word is not known here.", answers.get(2));
  }

  @Test
  void tape_healthy_isLoadedAndWrittenAndNothingIsSaidOfItsMotor() {
    assertEquals(List.of(LOADED, KEPT, AGAIN), answers("tape"));
    assertTrue(says(TAMARISK, "tape").endsWith("white"));
  }

  /** Behind the divider nothing goes onto the tape; the tape that came with the board is heard. */
  @ParameterizedTest
  @CsvSource({"R15: open", "K57: open"})
  void tape_wayToItBroken_isLoadedButNotWritten(String fault) {
    assertEquals(List.of(LOADED, KEPT, SILENT), answers("tape", fault));
  }

  @Test
  void tape_wayFromItBroken_isSilent() {
    assertEquals(List.of(SILENT, KEPT, SILENT), answers("tape", "C24: open"));
  }

  /** U33.6Y pulls the motor's line low until the tape is asked for; without, the recorder goes. */
  @Test
  void tape_motorLine_tellsWhetherItRunsWhenItShould() {
    assertTrue(
        says(TAMARISK, "tape", "U33.6Y: open pin").endsWith(", the tape runs from the start"));
    assertTrue(says(TAMARISK, "tape", "U33.6Y: drives low").endsWith(", the tape never runs"));
  }

  /** The processor without its clock: nobody starts the picture. SPACE stuck hides every letter. */
  @Test
  void nothingToTypeOn_isSaid() {
    assertEquals(HandsOn.BLIND, says(TAMARISK, "tape", "X1: dead"));
    assertEquals(DrillRun.NOTHING, says(TAMARISK, "tape", "K3: stuck closed"));
  }

  @Test
  void drills_boardFile_areReadWithTheKeysOfTheirLines() {
    Drill tape = TAMARISK.drills().get(1);
    assertEquals(Optional.of("TP1"), tape.recorder());
    assertEquals(
        new Drill.Line(List.of("K34", "K10", "K9", "K21", "K3", "K9", "K44", "K44", "K4")),
        tape.steps().get(0));
    assertEquals(List.of(), BoardReader.shipped("sorrel").drills());
  }
}
