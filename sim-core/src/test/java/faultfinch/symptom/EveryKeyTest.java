package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Rows of keys as they stand on the case; U30 leads the matrix row, U31 reads the columns. Between
 * keys without a sign letters are typed from Q on: of {@code q ERASE w UP e STOP r DOWN t SHIFT+y
 * ALT u SPACE i} a healthy board keeps {@code wertYU I}.
 */
class EveryKeyTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final List<String> ALL =
      List.of("1234567890-+=", "qwertyuiop*/", "asdfghjkl;:'", "zxcvbnm,.()", "wertYU I");

  private static String says(String... faults) {
    Machine machine = new Machine(TamariskRun.setup(faults), Watching.KIND);
    return new EveryKey(TAMARISK).says(machine, Frames.NONE);
  }

  /** What was typed, line by line: behind the mark of the prompt, a hash, as the cursor is. */
  private static List<String> typed(String... faults) {
    String glass = says(faults).replaceAll("^'(.*)' in .*$", "$1");
    return Arrays.stream(glass.split(" \\| "))
        .filter(row -> row.startsWith("# "))
        .map(row -> row.substring(2).replaceAll("#$", ""))
        .toList();
  }

  private static Map<String, Integer> otherwise(String... faults) {
    return new EveryKey(TAMARISK).otherwise(says(), says(faults));
  }

  /** K30 is W, K49 the semicolon, which is marked with its name; W is typed twice. */
  @Test
  void otherwise_ofADeadKey_isThatKey() {
    assertEquals(Map.of("K30", 2), otherwise("K30: open"));
    assertEquals(Map.of("K49", 1), otherwise("K49: open"));
    assertEquals(Map.of(), otherwise());
  }

  /** Z comes between all others; of what it hides nothing is meant. */
  @Test
  void otherwise_ofAKeyThatSticks_isThatKeyAboveAll() {
    Map<String, Integer> otherwise = otherwise("K23: stuck closed");
    int most = otherwise.values().stream().mapToInt(Integer::intValue).max().orElseThrow();
    assertEquals(most, otherwise.get("K23"));
    assertFalse(otherwise.containsKey("K30"));
  }

  /** K5 takes back what is typed: nothing is left, and it is one of the eight without a sign. */
  @Test
  void otherwise_whereNoSignStays_isAKeyWithoutSign() {
    assertEquals(
        Set.of("K1", "K2", "K3", "K4", "K5", "K6", "K7", "K8"),
        otherwise("K5: stuck closed").keySet());
  }

  /** Nothing came of the first row, so no key was tried. */
  @Test
  void otherwise_ofABoardThatHearsNoKey_isNone() {
    assertEquals(Map.of(), otherwise("K3: stuck closed"));
  }

  @Test
  void healthy_everyKey_standsWhereItWasTyped() {
    assertEquals(ALL, typed());
  }

  /** W is K30; it is typed twice. */
  @Test
  void keyOpen_itsSign_isMissing() {
    List<String> typed = typed("K30: open");
    assertEquals("qertyuiop*/", typed.get(1));
    assertEquals("ertYU I", typed.get(4));
  }

  /** Each key without a sign leaves another line when it is dead. */
  @Test
  void keyWithoutSignOpen_lastLine_isWithoutWhatItDoes() {
    assertEquals("wertyU I", typed("K1: open").get(4), "SHIFT");
    assertEquals("wertYu i", typed("K2: open").get(4), "ALT");
    assertEquals("wertYUI", typed("K3: open").get(4), "SPACE");
    assertEquals("qwertYU I", typed("K5: open").get(4), "ERASE");
  }

  /** Nothing ends a line, which takes 32 signs, to J; of q, ERASE, w the last two change it. */
  @Test
  void keyThatEndsLinesOpen_allSigns_standInOneLine() {
    assertEquals(List.of("1234567890-+=qwertyuiop*/asdfghw"), typed("K4: open"));
  }

  /** K30 is found before whatever lies behind it in the matrix: 3 and 4 lie before, 5 behind. */
  @Test
  void keyStuckClosed_keysBehindItInTheMatrix_doNotCome() {
    String digits = typed("K30: stuck closed").get(0);
    assertTrue(digits.contains("3") && digits.contains("4") && digits.contains("w"), digits);
    assertFalse(digits.contains("5") || digits.contains("6") || digits.contains("7"), digits);
  }

  /** SPACE is found before all of the first row. */
  @Test
  void firstKeyOfTheMatrixStuck_nothingComes() {
    assertEquals(EveryKey.NOTHING, says("K3: stuck closed"));
  }

  /** The processor without its clock: nobody starts the picture. */
  @Test
  void noPicture_nothingIsTyped() {
    assertEquals(EveryKey.BLIND, says("X1: dead"));
  }

  @Test
  void offered_boardWhoseExercisePressesAllKeys_isNot() {
    assertTrue(EveryKey.offered(TAMARISK));
    assertFalse(EveryKey.offered(BoardReader.shipped("sorrel")));
  }
}
