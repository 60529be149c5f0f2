package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import faultfinch.fault.RepairAction;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DeskTest {
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

  private static boolean isUnsaid(Observation observation) {
    return observation.look().contains(" another of the ");
  }

  /** Who names a line of a bus has seen others move; of a port, of the bus itself, or of three. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "D5 stuck low                | D",
        "U9 D0 at 1.2 V              | D",
        "D3 and D5 stuck low         | D",
        "A7 and A9 not pulsing       | A",
        "D5 pulsing                  | ",
        "data lines stuck low        | ",
        "D0, D1, D2 and D3 stuck low | ",
        "one of the data lines is stuck low | ",
        "IRQ stuck low               | ",
      })
  void lineOfABus_thatStandsStill_leavesUnsaidThatAnotherMoves(String says, String bus) {
    List<Observation> unsaid =
        noted(says).evidence().seen().stream().filter(DeskTest::isUnsaid).toList();
    assertEquals(bus == null ? 0 : 1, unsaid.size(), says);
    for (Observation one : unsaid) {
      assertEquals("probe another of the " + bus + " lines", one.look());
      assertEquals(Observation.Doubt.HARDLY, one.doubt());
      assertEquals(List.of("pulsing"), one.reach().sights().get(0).outcomes());
    }
  }

  /** One by one they are four lines too, and of two the other six are left. */
  @Test
  void linesOfABus_namedOneByOne_leaveOneThingUnsaidOrNothing() {
    List<Observation> two = noted("D5 stuck low", "D3 stuck low").evidence().seen();
    List<Observation> unsaid = two.stream().filter(DeskTest::isUnsaid).toList();
    assertEquals(1, unsaid.size());
    assertEquals(6, unsaid.get(0).reach().sights().get(0).looks().size());
    List<Observation> four =
        noted("D0 low, D1 low", "D2 stuck low", "D3 stuck low").evidence().seen();
    assertEquals(List.of(), four.stream().filter(DeskTest::isUnsaid).toList());
    List<Statement> between =
        noted("D5 stuck low", "exchanged U9", "display dark", "D3 stuck low").statements();
    assertEquals(1, between.stream().filter(s -> s instanceof Statement.Tried).count());
  }

  private static Observation only(String says) {
    List<Observation> seen =
        noted(says).evidence().seen().stream().filter(o -> !isUnsaid(o)).toList();
    assertEquals(1, seen.size(), says);
    return seen.get(0);
  }

  /** What names no part is of the part before; what names one, or all, is not. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "VR1 output 5.0 V, and it is very hot | finger VR1",
        "VR1 output 5.0 V, 149 deg            | finger VR1",
        "VR1 output 5.0 V, U5 hot             | finger U5 ",
      })
  void warmth_behindAPart_isOfThatPartUnlessAnotherIsNamed(String says, String look) {
    Observation felt = noted(says).evidence().seen().get(1);
    assertEquals(1, felt.reach().sights().size());
    assertEquals(List.of(look), felt.reach().sights().get(0).looks());
  }

  @Test
  void warmth_ofNothing_isOfAllParts() {
    Observation felt = noted("VR1 output 5.0 V, nothing hot").evidence().seen().get(1);
    assertTrue(felt.reach().every() && felt.reach().sights().size() > 5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A meter below 2 V is read to 0.1 V: 1.2 is anything from 1.15 to 1.25.
        "1.2 V on U9.D0             | 1.1 V,1.2 V",
        "about 1.2 V on U9.D0       | 1.0 V,1.1 V,1.2 V,1.3 V",
        // Both ends are readings, and 1.3 is read from 1.3 up.
        "1.1 to 1.3 V on U9.D0      | 1.1 V,1.2 V,1.3 V",
        "1200 mV at U9 pin D0       | 1.1 V,1.2 V",
        "U9.D0 floating             | mid,no light",
        // A meter is put on later: a line that has come to rest low by then is low.
        "U9 D0 stuck low            | low,0.0 V,0.1 V,0.2 V,0.3 V",
        "probe U9.D0: no light      | no light",
        "U9.D0 is toggling          | pulsing",
        "VR1 is hot                 | hot",
        "the regulator feels warm   | hot,warm",
        "current is 560 mA          | 500 to 550 mA,550 to 600 mA",
        "U9.D0 not pulsing          | low,high,mid,no light,0.0 V,0.1 V,0.2 V,0.3 V,3.4 V,3.6 V,5 V",
        "U8 is not warm             | cold,normal",
        "lamp blinks twice a second | blinks twice a second",
        "track from U1.D0 to U2.D0 is open | open",
        "pin 8 of U4 low            | low",
      })
  void phrase_ofOnePlace_coversTheOutcomesOnPaper(String says, String outcomes) {
    Set<String> meant = new TreeSet<>();
    only(says).reach().sights().forEach(s -> meant.addAll(s.outcomes()));
    Set<String> right = new TreeSet<>(List.of(outcomes.split(",")));
    // Not every pin has every step of the dial among what faults show.
    right.retainAll(shown(only(says)));
    assertEquals(right, meant);
  }

  private static Set<String> shown(Observation observation) {
    Set<String> shown = new HashSet<>();
    for (Sight sight : observation.reach().sights()) {
      sight.looks().forEach(l -> shown.addAll(lookbook.outcomes(l)));
    }
    return shown;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "regulator output 0 V          | meter VR1.OUT",
        "A13 stuck high at U4          | probe U4.A at the pin",
        "no light at the pad of U9.D0  | probe U9.D0 at the pad",
        "track from U1.D0 to U2.D0 is open | continuity U1.D0-U2.D0",
        "the 555 is hot                | finger U7",
        "the address decoder is hot    | finger U4",
        "oscillator dead               | probe X1.OUT at the pin",
        "display shows SORREL M7       | screen",
        "key 2 does nothing            | key K2",
      })
  void place_inWords_isTheLookOnPaper(String says, String look) {
    Observation seen = only(says);
    assertEquals(1, seen.reach().sights().size());
    assertEquals(look, seen.reach().sights().get(0).looks().get(0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it shows a row of zeros",
        "works after reseating U9",
        "the owner dropped it",
        "U5 was replaced last year",
        "ram select line of U7 busy",
        "display is dark 5 of 3 times",
        "",
        ",",
      })
  void wordsThatAreNoReading_areKeptAndNotTakenForOne(String says) {
    Desk desk = noted(says);
    assertEquals(List.of(), desk.evidence().seen(), () -> "" + desk.statements());
    assertEquals(1, desk.statements().size());
  }

  @Test
  void pieceWithoutASubject_isOfTheOneBefore() {
    Desk desk = noted("two beeps at the start, both higher than usual");
    assertEquals(1, desk.evidence().seen().size());
    assertEquals("listen", desk.evidence().seen().get(0).look());
  }

  @Test
  void dataLine_inWords_isAnyOfTheEight() {
    Observation some = only("about 1.2 V on one data line");
    assertEquals(8, some.reach().sights().size());
    assertEquals(false, some.reach().every());
    Observation all = only("all data lines are toggling");
    assertEquals(8, all.reach().sights().size());
    assertTrue(all.reach().every());
  }

  @Test
  void nothingHot_isEveryPartNotHot() {
    Observation none = only("nothing hot");
    // On Sorrel thirteen chips, the regulator, and what its supply runs through or could run into:
    // a fuse, a diode, five capacitors.
    assertEquals(21, none.reach().sights().size());
    assertTrue(none.reach().every());
    assertTrue(none.reach().sights().stream().noneMatch(s -> s.outcomes().contains("hot")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "boots one time in five        | 1 | 5",
        "boots 3 of 4 times            | 3 | 4",
        "display is dark every other time | 1 | 2",
        "sometimes it boots            | 0 | 0",
        "it boots                      | 1 | 1",
      })
  void howOften_inWords_isATally(String says, int times, int of) {
    assertEquals(new Tally(times, of), only(says).reach().tally());
  }

  @Test
  void doubtAndWho_inWords_areTakenOut() {
    Observation doubtful = only("I think U8 is warm");
    assertEquals(Observation.Doubt.FAIRLY, doubtful.doubt());
    assertEquals(Observation.Source.WORDS, doubtful.source());
    Observation told = only("the owner says the display was blank");
    assertEquals(Observation.Source.TOLD, told.source());
  }

  @Test
  void conditions_ofAnEntry_holdForTheNextUntilTakenBack() {
    Desk desk = noted("with U8 out the display is blank", "the lamp is dark");
    assertEquals(List.of(), desk.evidence().seen());
    for (Statement statement : desk.statements()) {
      assertEquals(List.of("U8"), statement.when().out());
    }
    desk.note(Entry.saw("everything fitted, the lamp is dark"));
    assertEquals(1, desk.evidence().seen().size());
  }

  @Test
  void sameLook_inTwoEntries_isWhatBothAllow() {
    Desk desk = noted("display shows garbage", "it is still");
    assertEquals(1, desk.evidence().seen().size());
    Set<String> outcomes =
        new HashSet<>(desk.evidence().seen().get(0).reach().sights().get(0).outcomes());
    assertTrue(outcomes.contains("reads 'RNRRDL'"));
    assertTrue(outcomes.stream().noneMatch(o -> o.startsWith("moves")), "" + outcomes);
  }

  @Test
  void sameLook_afterARepair_isAnotherObservation() {
    Desk desk = noted("display is dark");
    desk.repaired(new RepairAction(RepairAction.Kind.EXCHANGE, "U9"));
    desk.note(Entry.saw("display is fine"));
    assertEquals(List.of(0, 1), desk.evidence().seen().stream().map(Observation::after).toList());
  }

  @Test
  void repair_inWords_isWhatItTakesAtThatPlace() {
    RepairAction socketed = new RepairAction(RepairAction.Kind.EXCHANGE, "U9");
    RepairAction soldered = new RepairAction(RepairAction.Kind.DESOLDER_AND_SOCKET, "U4");
    Repairs repairs = new Repairs(List.of(socketed, soldered));
    assertEquals(socketed, repairs.named("exchanged U9").orElseThrow());
    assertEquals(soldered, repairs.named("new U4").orElseThrow());
    assertTrue(repairs.named("exchanged U7").isEmpty());
  }
}
