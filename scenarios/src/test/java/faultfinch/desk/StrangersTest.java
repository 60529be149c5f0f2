package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.ShippedDictionaries;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tamarisk's last chip is U44, its last resistor R22; a 6502 has forty pins. */
class StrangersTest {
  private static Board board;
  private static Lookbook lookbook;

  @BeforeAll
  static void read() {
    board = BoardReader.shipped("tamarisk");
    lookbook = Lookbook.of(ShippedDictionaries.of(board).orElseThrow());
  }

  private static List<Statement> noted(String says) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    return desk.statements();
  }

  @ParameterizedTest
  @CsvSource({
    "U99 is hot, NO_SUCH_PART, U99",
    "u99 is hot, NO_SUCH_PART, U99",
    "swapped U77 and U3, NO_SUCH_PART, U77",
    "R999 reads 40k, NO_SUCH_PART, R999",
    "pin 45 of U1 is low, NO_SUCH_PIN, U1.45",
    "U1.Q9 is low, NO_SUCH_PIN, U1.Q9",
  })
  void partOrPin_thatIsNotThere_isNamed(String says, Statement.Why why, String about) {
    Statement.Kept kept = (Statement.Kept) noted(says).get(0);
    assertEquals(why, kept.why());
    assertEquals(about, kept.about());
    assertEquals(3, kept.nearest().size());
  }

  @Test
  void numbersNearest_areProposed() {
    Statement.Kept kept = (Statement.Kept) noted("U46 is hot").get(0);
    assertEquals(List.of("U44", "U43", "U42"), kept.nearest());
  }

  /** What looks like a part and is a byte, an address, a line, or on the screen. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "reads C3 at D800",
        "D7 is stuck low",
        "U29.Q2 is low",
        "changed the LS32",
        "it prints 'a R99 HOT'"
      })
  void otherNames_areNoStrangers(String says) {
    assertEquals(
        0,
        noted(says).stream()
            .filter(s -> s instanceof Statement.Kept k && k.why().name().startsWith("NO_SUCH"))
            .count());
  }
}
