package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.BenchRom;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reports of two stations, drawn on paper: all well; station 2 lost line 5; nothing to be read. */
class BenchWordsTest {
  private static final String WELL =
      "Station 01 wrote 70, read 70 at page C0: 000 of 001 differ. ========; "
          + "Station 02 wrote 39, read 39 at page 00: 000 of 255 differ. ========; lamp pulses 1";
  private static final String LINE_5 =
      "Station 01 wrote 70, read 70 at page C0: 000 of 001 differ. ========; "
          + "Station 02 wrote 39, read 19 at page 00: 128 of 255 differ. ==.=====; lamp pulses 2";
  private static final String NOTHING = "no picture; lamp no pulse";

  /** With its ports joined, and no pulse where all is well, as where nothing is to be seen. */
  private static final String WITH_LEADS = BenchRom.WITH_LEADS.look();

  private static final String JOINED = WELL.replace("lamp pulses 1", "lamp no pulse");
  private static final String LINE_0 =
      "Station 01 wrote 70, read 71 at page C0: 001 of 001 differ. =======.; "
          + "Station 02 wrote 39, read 39 at page 00: 000 of 255 differ. ========; lamp pulses 1";

  private static final Lookbook ROUNDS =
      new Lookbook() {
        @Override
        public Set<String> looks() {
          return Set.of(BenchWords.LOOK, WITH_LEADS);
        }

        @Override
        public List<String> outcomes(String look) {
          return look.equals(WITH_LEADS)
              ? List.of(JOINED, NOTHING, LINE_0)
              : List.of(WELL, LINE_5, NOTHING);
        }

        @Override
        public Set<String> differing() {
          return Set.of();
        }
      };

  private static Desk noted(String... says) {
    Desk desk = new Desk(BoardReader.shipped("tamarisk"), ROUNDS);
    for (String text : says) {
      desk.note(Entry.saw(text));
    }
    return desk;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "station 2 fails                     | LINE_5",
        "station 2 ok                        | WELL",
        "with the bench ROM: station 2 fails | LINE_5",
        "RAM test reports bit 5              | LINE_5",
        "bench ROM passes                    | WELL",
        "bench ROM: no errors                | WELL",
        "bench ROM: wrote FF, read DF        | LINE_5",
        "bench ROM: read DF for FF           | LINE_5",
        "bench ROM: hole at 5 in the ribbon  | LINE_5",
        // Station 2 tries page 0, as its milestone says.
        "bench ROM: memory bad               | LINE_5",
        "bench ROM finds memory errors       | LINE_5",
        "bench ROM: memory good              | WELL",
        "bench ROM: only bit 5 bad           | LINE_5",
        "bench ROM fails                     | LINE_5 NOTHING",
        "bench ROM shows nothing             | NOTHING",
      })
  void report_inWords_isTheRoundsOnPaper(String says, String rounds) {
    List<Observation> seen = noted(says).evidence().seen();
    assertEquals(1, seen.size(), says);
    List<String> meant = seen.get(0).reach().sights().get(0).outcomes();
    List<String> right =
        List.of(rounds.split(" ")).stream()
            .map(r -> r.equals("WELL") ? WELL : r.equals("LINE_5") ? LINE_5 : NOTHING)
            .toList();
    assertEquals(right, meant);
  }

  @Test
  void station_thatNoRoundShows_isKept() {
    Desk desk = noted("station 9 fails");
    assertEquals(List.of(), desk.evidence().seen());
    assertTrue(desk.statements().get(0) instanceof Statement.Kept);
  }

  @Test
  void line_namedAfterItsStation_isOfTheSameRound() {
    Desk desk = noted("station 2 fails, bit 5");
    assertEquals(List.of(LINE_5), desk.evidence().seen().get(0).reach().sights().get(0).outcomes());
    assertEquals(2, desk.statements().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "with the return leads station 1 fails           | LINE_0",
        "bench ROM with return leads: station 1 fails    | LINE_0",
        "bench ROM with the return leads passes          | JOINED",
        "with the return leads on wrote 70, read 71      | LINE_0",
      })
  void round_withTheReturnLeads_isALookOfItsOwn(String says, String round) {
    Observation seen = noted(says).evidence().seen().get(0);
    assertEquals(WITH_LEADS, seen.look());
    assertEquals(
        List.of(new Sight(List.of(WITH_LEADS), List.of(round.equals("JOINED") ? JOINED : LINE_0))),
        seen.reach().sights());
  }

  @Test
  void leads_areOffAgain_whereSomebodySaysSo() {
    List<Observation> seen =
        noted("with the return leads station 1 fails", "without the return leads station 2 fails")
            .evidence()
            .seen();
    assertEquals(
        List.of(WITH_LEADS, BenchWords.LOOK), seen.stream().map(Observation::look).toList());
  }

  @Test
  void whatElseIsSeenWithTheLeadsOn_isKept() {
    Desk desk = noted("with the return leads on U4.A0 is stuck low");
    assertEquals(List.of(), desk.evidence().seen());
  }
}
