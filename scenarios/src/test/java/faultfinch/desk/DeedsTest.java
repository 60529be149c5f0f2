package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.PlacedPart;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Hint;
import faultfinch.diagnosis.History;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.fault.RepairAction;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeedsTest {
  private static Board board;
  private static Lookbook lookbook;

  @BeforeAll
  static void read() {
    board = BoardReader.shipped("sorrel");
    lookbook = Lookbook.of(ShippedDictionaries.of(board).orElseThrow());
  }

  private static Desk noted(String... says) {
    Desk desk = new Desk(board, lookbook);
    for (String text : says) {
      desk.note(Entry.saw(text));
    }
    return desk;
  }

  private static Evidence of(String... says) {
    return noted(says).evidence();
  }

  private static final RepairAction NEW_U9 = new RepairAction(RepairAction.Kind.EXCHANGE, "U9");

  @Test
  void otherPinsOfAPart_areNoOtherPart() {
    assertEquals(List.of(), of("the other Qs of U9 pulse, the same").missed());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "exchanged U9, no change",
        "new U9 makes no difference",
        "U9 replaced, still the same",
        "another U9, no change",
        "no change with a new U9",
        "U9 tested good",
        "U9 works in another board"
      })
  void exchange_inVain_isARepairMissed(String says) {
    Evidence evidence = of("display dark", says);
    assertEquals(List.of(NEW_U9), evidence.missed());
    assertEquals(List.of(), evidence.done());
    assertEquals(1, evidence.seen().size());
  }

  @Test
  void exchanges_severalInOneEntry_areEachWhatCameOfIt() {
    Evidence evidence = of("display dark, exchanged U9, no change, reseated U2, no change");
    assertEquals(
        List.of(NEW_U9, new RepairAction(RepairAction.Kind.RESEAT, "U2")), evidence.missed());
  }

  /** The parts of this board that can be pulled, and no other. */
  @Test
  void everythingInSockets_reseatedInVain_isEachOfThose() {
    List<RepairAction> missed =
        of("display dark", "reseated all socketed chips, no change").missed();
    assertEquals(
        board.parts().stream()
            .filter(PlacedPart::socketed)
            .map(p -> new RepairAction(RepairAction.Kind.RESEAT, p.ref()))
            .toList(),
        missed);
  }

  @Test
  void newSocket_isNoNewChip() {
    RepairAction socket = new RepairAction(RepairAction.Kind.NEW_SOCKET, "U9");
    assertEquals(List.of(socket), of("display dark", "new socket at U9, no change").missed());
  }

  @Test
  void exchange_withoutAResultAndNoSecondLook_wasInVain() {
    Evidence evidence = of("display dark", "exchanged U9", "sound is silent");
    assertEquals(List.of(NEW_U9), evidence.missed());
    assertEquals(List.of(), evidence.done());
    assertEquals(
        List.of(0, 0), evidence.seen().stream().map(o -> o.after()).toList(), "after so many");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "U9 has less to do than my other one",
        "somebody replaced U9",
        "U9 was exchanged by the seller",
        "one of the chips swapped",
        "another evening wasted and no other chip gets warm"
      })
  void whatIsNoDeedOfOurs_isNone(String says) {
    Evidence evidence = of("display dark", says);
    assertEquals(List.of(), evidence.missed());
    assertEquals(List.of(), evidence.done());
  }

  @ParameterizedTest
  @ValueSource(strings = {"U9 new: same", "swapped U9, no joy at all", "put in a new U9, nada"})
  void exchange_inVain_inOtherWords_isARepairMissed(String says) {
    assertEquals(List.of(NEW_U9), of("display dark", says).missed());
  }

  @Test
  void exchange_withoutAResult_isDoneAndWhatFollowsWasSeenAfterIt() {
    Evidence evidence = of("display dark", "exchanged U9", "display shows garbage");
    assertEquals(List.of(NEW_U9), evidence.done());
    assertEquals(
        List.of(0, 1), evidence.seen().stream().map(o -> o.after()).toList(), "after so many");
  }

  @Test
  void exchange_thatCured_leavesWhatWasOddAsOnAHealthyBoard() {
    Evidence evidence = of("display dark", "new U9 cured it");
    assertEquals(List.of(NEW_U9), evidence.done());
    assertEquals(
        lookbook.outcomes("screen").get(0), evidence.seen().get(1).seen(), "after the repair");
  }

  @Test
  void brick_inVain_isTheExchangeOfTheBrick() {
    RepairAction brick = new RepairAction(RepairAction.Kind.SUPPLY, "brick");
    assertEquals(List.of(brick), of("display dark", "another brick, no change").missed());
    assertEquals(List.of(brick), of("display dark", "brick good").missed());
  }

  @Test
  void deedOfAMoment_isAHint() {
    assertEquals(
        List.of(
            new Hint(Hint.How.SPRAY, "U9", true),
            new Hint(Hint.How.PRESS, "U2", true),
            new Hint(Hint.How.PIGGYBACK, "U4", false)),
        of(
                "display dark",
                "freezer spray on U9 brings it back",
                "pressing on U2 helps",
                "piggybacked a good chip on U4, no change")
            .hints());
  }

  @Test
  void deed_toNoPartOfTheBoard_isKeptAndNotTakenForALook() {
    Desk desk = noted("exchanged U77, no change");
    assertEquals(List.of(), desk.evidence().missed());
    assertTrue(desk.statements().stream().allMatch(s -> s instanceof Statement.Kept));
  }

  @Test
  void statement_ofADeed_namesThePartsAndWhatCameOfIt() {
    Statement statement = noted("U1 and U9 replaced, no change").statements().get(0);
    Statement.Tried tried = assertInstanceOf(Statement.Tried.class, statement);
    assertEquals(List.of("U1", "U9"), tried.parts());
    assertEquals(Statement.Came.REPAIR_MISSED, tried.came());
  }

  @Test
  void past_ofTheBoard_isAHistory_onceHoweverOftenTold() {
    Evidence evidence =
        of(
            "display dark, stored in a damp cellar",
            "somebody has been inside",
            "green spots under the chips");
    assertEquals(List.of(History.DAMP, History.OPENED), evidence.histories());
    assertEquals(1, evidence.seen().size());
  }
}
