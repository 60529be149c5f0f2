package faultfinch.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.BoardReader;
import faultfinch.fault.RepairAction;
import faultfinch.fault.RepairAction.Kind;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimsTest {
  private static final Claims CLAIMS = new Claims(BoardReader.shipped("sorrel"));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "U9 contact | RESEAT | U9",
        "u9: Contact | RESEAT | U9",
        "U9.D0 contact | RESEAT | U9",
        "U9 socket | NEW_SOCKET | U9",
        "U9 | EXCHANGE | U9",
        "U9 chip | EXCHANGE | U9",
        "U4 | DESOLDER_AND_SOCKET | U4",
        "R2 | EXCHANGE_SMALL | R2",
        "RN1.COM dry joint | REFLOW | RN1.COM",
        "track U1.D0-U2.D0 | LINK_TRACK | U1.D0-U2.D0",
        "U1.D0-U2.D0 track | LINK_TRACK | U1.D0-U2.D0",
        "supply | SUPPLY | brick",
        "lead | SUPPLY | lead",
        "J2 setting | SET_LINK | J2",
      })
  void answer_typedAsPeopleDo_leadsToItsRepair(String typed, Kind kind, String place) {
    assertEquals(Optional.of(new RepairAction(kind, place)), CLAIMS.repair(typed));
  }

  @Test
  void answer_thatNothingIsWrong_leadsToNoRepair() {
    assertEquals(Optional.empty(), CLAIMS.repair("Nothing wrong"));
  }

  @ParameterizedTest
  @CsvSource({"U99 contact", "U9 hiccups", "U4 contact", "gremlins"})
  void answer_thatIsNone_isASlipWithNearOnes(String typed) {
    Slip slip = assertThrows(Slip.class, () -> CLAIMS.repair(typed));
    assertTrue(slip.getMessage().contains(typed), slip.getMessage());
    assertEquals(3, slip.nearest().size());
  }

  @Test
  void answers_ofAPart_areOfThatPartAlone() {
    assertTrue(CLAIMS.of("U9").contains("U9: contact"));
    assertTrue(CLAIMS.of("U9").contains("U9.D0: joint"));
    assertFalse(CLAIMS.of("U1").contains("U10: part"));
    assertFalse(CLAIMS.of("U1").contains("U11.1Q: joint"));
    assertTrue(CLAIMS.of("U1").contains("U11.1Q-U1.PHI0: track"));
    assertTrue(CLAIMS.of("").contains("nothing wrong"));
  }
}
