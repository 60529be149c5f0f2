package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Tick;
import faultfinch.board.Variants;
import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Two boards: one with the parts of Tamarisk, one with a bank latch beside them. U29 is the latch
 * of page and bank bits on both, U45 the bank latch of the second.
 */
class OwnBoardTest {
  private static final double EXACT = 1e-12;
  private static final Board PLAIN = BoardReader.shipped("tamarisk");
  private static final Board LATCHED = BoardReader.shipped("tamarisk+bank-latch");
  private static final Tick BANKS =
      new Tick("banks", "Where?", List.of("among others", "own"), List.of("bank-gates"));
  private static final Tick WIDTH =
      new Tick("width", "How wide?", List.of("one", "four"), List.of("ram"));
  private static final ErrorRates RATES = ErrorRates.ownBoard();

  private static OwnBoard.Relative relative(Board board, String banks, Toy toy, Evidence seen) {
    return relative(board, banks, toy, seen, 1);
  }

  private static OwnBoard.Relative relative(
      Board board, String banks, Toy toy, Evidence seen, double run) {
    Belief belief = new Belief(toy.dictionary(), toy.suspects(), RATES, seen);
    Variants.Variant variant =
        new Variants.Variant(board.name(), "", "", Map.of("banks", banks, "width", "one"));
    return new OwnBoard.Relative(board, variant, toy.suspects(), belief, belief, run);
  }

  private static Toy first() {
    return new Toy()
        .look("screen", 1)
        .fault("a", "U29", 1, "screen", "dark")
        .fault("b", "U4", 1, "screen", "garbage");
  }

  private static Toy second() {
    return new Toy()
        .look("screen", 1)
        .fault("a", "U29", 1, "screen", "garbage")
        .fault("b", "U4", 1, "screen", "garbage")
        .fault("c", "U45", 2, "screen", "dark");
  }

  private static OwnBoard own(Map<String, String> answers, Evidence seen) {
    return new OwnBoard(
        List.of(
            relative(PLAIN, "among others", first(), seen),
            relative(LATCHED, "own", second(), seen)),
        List.of(BANKS, WIDTH),
        answers,
        RATES);
  }

  private static OwnBoard.Role role(OwnBoard board, String duty) {
    return board.roles().stream().filter(r -> r.duty().equals(duty)).findFirst().orElseThrow();
  }

  @Test
  void weights_nothingSeenNothingTicked_areEqual() {
    OwnBoard board = own(Map.of(), Evidence.NONE);
    assertEquals(0.5, board.weight(board.relatives().get(0)), EXACT);
    assertEquals(0.25, board.outside(), EXACT);
  }

  @Test
  void weights_aTickThatDiffers_countsFourFifths() {
    OwnBoard board = own(Map.of("banks", "own", "width", "one"), Evidence.NONE);
    assertEquals(0.8 / 1.8, board.weight(board.relatives().get(0)), EXACT);
    assertEquals(List.of(BANKS), board.differs(board.relatives().get(0)));
    assertEquals(List.of(), board.differs(board.relatives().get(1)));
  }

  /**
   * With nothing seen a part has its prior: 0.75 x 1/2 of the first board, 0.75 x 1/4 of the other.
   */
  @Test
  void role_thatBothBoardsHave_isAveragedOverBoth() {
    OwnBoard board = own(Map.of(), Evidence.NONE);
    OwnBoard.Role latch = role(board, "latch");
    assertEquals((0.375 + 0.1875) / 2, latch.belief(), EXACT);
    assertEquals(latch.belief(), latch.fitted(), EXACT);
    assertEquals(
        Map.of("tamarisk", List.of("U29"), "tamarisk+bank-latch", List.of("U29")), latch.parts());
  }

  @Test
  void role_thatOneBoardHas_isAveragedOverThatOne() {
    OwnBoard.Role latch = role(own(Map.of(), Evidence.NONE), "bank-latch");
    assertEquals(0.75 / 2 / 2, latch.belief(), EXACT);
    assertEquals(0.75 / 2, latch.fitted(), EXACT);
    assertEquals(Map.of("tamarisk+bank-latch", List.of("U45")), latch.parts());
    assertEquals(List.of(RepairAction.Kind.EXCHANGE), List.copyOf(latch.repairs().keySet()));
  }

  /**
   * Of the second board no RAM was run: latch 0.75 / 3, bank latch 0.75 x 2 / 3. Averages: latch
   * (0.375 + 0.25) / 2, RAM 0.375 of the first alone, though both have it, bank latch 0.5, which
   * one in two has: 0.3125 + 0.375 + 0.25 = 0.9375, and they must come to 0.75.
   */
  @Test
  void role_thatWasNotRunOnABoardThatHasIt_isAveragedOverTheOthers() {
    Toy half =
        new Toy()
            .look("screen", 1)
            .fault("a", "U29", 1, "screen", "garbage")
            .fault("c", "U45", 2, "screen", "dark");
    OwnBoard board =
        new OwnBoard(
            List.of(
                relative(PLAIN, "among others", first(), Evidence.NONE),
                relative(LATCHED, "own", half, Evidence.NONE)),
            List.of(BANKS, WIDTH),
            Map.of(),
            RATES);
    double scale = 0.75 / 0.9375;
    assertEquals(0.3125 * scale, role(board, "latch").belief(), EXACT);
    assertEquals(0.375 * scale, role(board, "ram").belief(), EXACT);
    assertEquals(0.375 * scale, role(board, "ram").fitted(), EXACT);
    assertEquals(0.25 * scale, role(board, "bank-latch").belief(), EXACT);
    assertEquals(0.5 * scale, role(board, "bank-latch").fitted(), EXACT);
  }

  @Test
  void beliefs_ofAllRolesWithTheOutside_areOne() {
    OwnBoard board = own(Map.of(), Evidence.of(Observation.bench("screen", "dark")));
    double sum = board.roles().stream().mapToDouble(OwnBoard.Role::belief).sum();
    assertEquals(1, sum + board.outside(), EXACT);
  }

  /**
   * Dark: of the first board half of the list shows it, of the second half too (weight 2 of 4), so
   * evidence parts them by the smoothing of what is outside alone: (1/2 + 1/6) / (7/6) of three
   * rows on both, since a and b share a row on the second.
   */
  @Test
  void weights_evidenceThatBothExplainAlike_areAsBefore() {
    OwnBoard board = own(Map.of(), Evidence.of(Observation.bench("screen", "dark")));
    assertEquals(0.5, board.weight(board.relatives().get(0)), EXACT);
    assertEquals(
        "bank-latch",
        board.roles().stream()
            .limit(2)
            .map(OwnBoard.Role::duty)
            .filter(d -> !d.equals("latch"))
            .findFirst()
            .orElseThrow());
  }

  /**
   * A latch that is dark's cause on one board and not on the other rests on where the banks are.
   */
  @Test
  void mayDiffer_tickNotAnswered_isNamedWhereBeliefHangsOnItOrItConcernsTheDuty() {
    OwnBoard board = own(Map.of(), Evidence.of(Observation.bench("screen", "dark")));
    assertEquals(List.of(BANKS), role(board, "latch").mayDiffer());
    assertEquals(List.of(WIDTH), role(board, "ram").mayDiffer());
  }

  @Test
  void mayDiffer_tickAnswered_isNamedOnlyIfNoBoardIsSo() {
    Evidence dark = Evidence.of(Observation.bench("screen", "dark"));
    OwnBoard ticked = own(Map.of("banks", "own", "width", "one"), dark);
    assertEquals(List.of(), role(ticked, "latch").mayDiffer());
    assertEquals(List.of(), role(ticked, "ram").mayDiffer());
    OwnBoard four = own(Map.of("banks", "own", "width", "four"), dark);
    assertEquals(List.of(WIDTH), role(four, "ram").mayDiffer());
  }

  @Test
  void roles_ofEveryShippedBoard_haveWords() {
    Variants variants = BoardReader.variants("tamarisk");
    for (Variants.Variant variant : variants.boards()) {
      Board board = BoardReader.shipped(variant.name());
      board
          .parts()
          .forEach(
              p -> assertTrue(variants.duties().containsKey(board.duties().get(p.ref())), p.ref()));
    }
    assertTrue(variants.duties().keySet().containsAll(List.of("track", "brick", "lead")));
  }
}
