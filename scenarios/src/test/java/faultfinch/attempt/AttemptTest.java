package faultfinch.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Look;
import faultfinch.bench.Move;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AttemptTest {

  private static Attempt began(int number, String... moves) {
    Attempt attempt = Attempt.begin(number);
    for (String move : moves) {
      attempt.act(move);
    }
    return attempt;
  }

  /** From paper: S O E lose bit 0 and become R N D; R, R and L have none to lose. */
  @Test
  void firstCase_firstLook_comesWithinThreeActsAndReadsTheOldName() {
    Attempt attempt = began(1, "bench supply", "power on");
    assertEquals("reads 'RNRRDL'", attempt.act("look: screen").reading().text());
    assertEquals(3, attempt.notebook().size());
  }

  @Test
  void firstCase_doneAsTheGuideAsks_isSolvedInTwelveActsWithoutAPullOrABreach() {
    Attempt attempt = Attempt.begin(1);
    int acts = 0;
    while (attempt.guide().isPresent()) {
      acts++;
      String asked = attempt.guide().get();
      String typed = asked.substring(asked.toLowerCase(java.util.Locale.ROOT).indexOf("type ") + 5);
      switch (typed) {
        case "screen" -> attempt.act("look: screen");
        case "bits" -> attempt.strip();
        case "probe U1.D0" -> attempt.act("look: probe U1.D0 at the pin");
        case "probe U9.D0" -> attempt.act("look: probe U9.D0 at the pin");
        case "reseat U9" -> attempt.act("reseat: U9");
        case "decide U9 contact" -> attempt.decide("U9 contact");
        default -> attempt.act(typed);
      }
    }
    assertTrue(attempt.over());
    assertTrue(acts <= 12, acts + " acts");
    Debrief told = attempt.close();
    assertTrue(told.solved());
    assertEquals(List.of(), told.stillWrong());
    assertEquals(List.of(), told.breaches());
    assertEquals(0, told.spent().pulls());
    assertTrue(told.faults().get(0).startsWith("U9.D0: open contact"), told.faults().toString());
    assertEquals(List.of(), told.notReached());
  }

  @Test
  void strip_beforeTheScreenWasSeen_isASlipThatNamesTheScreen() {
    Slip slip = assertThrows(Slip.class, () -> Attempt.begin(1).strip());
    assertEquals(List.of("look: screen"), slip.nearest());
  }

  @Test
  void act_misspelt_costsNothingAndOffersWhatWasMeant() {
    Attempt attempt = began(1);
    Slip slip = assertThrows(Slip.class, () -> attempt.act("look: probe U9.DO at the pin"));
    assertTrue(slip.nearest().contains("look: probe U9.D0 at the pin"), slip.nearest().toString());
    assertEquals(0, attempt.status().minutes());
    assertEquals(List.of(), attempt.notebook());
    assertEquals(1, attempt.journal().size());
  }

  @Test
  void decision_onASoundPart_costsItsPriceAndPlayGoesOn() {
    Attempt attempt = began(4);
    Decision decision = attempt.decide("U9");
    assertEquals(Decision.Result.SAME, decision.result());
    assertFalse(attempt.over());
    assertEquals(1, attempt.status().pulls());
    assertTrue(decision.price().total() >= 20, decision.price().toString());
    assertEquals(Decision.Result.PASSES, attempt.decide("U8").result());
    assertTrue(attempt.over());
    assertEquals(2, attempt.close().decisions().size());
  }

  @Test
  void nothingWrong_decidedOnASickSupply_failsUntilTheSupplyIsRenewed() {
    Attempt attempt = began(2);
    assertFalse(attempt.decide("nothing wrong").result() == Decision.Result.PASSES);
    assertEquals(Decision.Result.PASSES, attempt.decide("supply").result());
    assertEquals(0, attempt.status().pulls());
  }

  /** One fault hides the other: after either repair the memory still fails its try. */
  @Test
  void firstCure_ofTwoFaults_leavesTheCaseOpen() {
    Attempt attempt = began(5);
    Decision first = attempt.decide("U9");
    assertEquals(Decision.Result.CHANGED, first.result());
    assertEquals(Decision.Result.PASSES, attempt.decide("U3").result());
  }

  @Test
  void pull_inTheThirdCase_isAskedAboutOnce() {
    Attempt attempt = began(3);
    Move pull = Move.parse("take out: U9");
    assertTrue(attempt.asksHunch(pull));
    assertFalse(attempt.asksHunch(Move.parse("look: screen")));
    attempt.noHunch();
    assertFalse(attempt.asksHunch(pull));
    assertFalse(began(2).asksHunch(pull));
  }

  @Test
  void twin_sameLook_showsTheHealthyName() {
    Attempt attempt = began(1, "bench supply", "power on", "look: screen");
    int before = attempt.status().minutes();
    assertEquals("reads 'SORREL'", attempt.twin(Look.parse("screen")).text());
    assertEquals(before, attempt.status().minutes());
  }

  @Test
  void journal_ofTheSameMoves_isTheSameAndEachLineCarriesTheOneBefore() {
    List<String> lines = began(1, "bench supply", "power on", "look: screen").journal();
    assertEquals(lines, began(1, "bench supply", "power on", "look: screen").journal());
    assertEquals(4, lines.size());
    for (int i = 1; i < lines.size(); i++) {
      String before = "\"before\":\"" + Journal.digest(lines.get(i - 1)) + "\"";
      assertTrue(lines.get(i).contains(before), lines.get(i));
    }
  }

  @Test
  void running_nothingShown_tellsTheFault() {
    Attempt attempt = began(1, "bench supply", "power on", "look: screen");
    String shown =
        attempt.card() + attempt.notebook().toString() + attempt.status() + attempt.journal();
    assertFalse(shown.contains("open contact"), shown);
    assertEquals(Optional.empty(), attempt.card().tools());
  }
}
