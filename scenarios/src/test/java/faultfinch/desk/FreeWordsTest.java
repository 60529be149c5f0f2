package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.diagnosis.Sight;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sentences as owners and technicians write them. Each is held against a fault that must show it
 * and one that must not: which is which follows from the part, not from a run.
 */
class FreeWordsTest {
  private static Board board;
  private static FaultDictionary dictionary;

  @BeforeAll
  static void read() {
    board = BoardReader.shipped("tamarisk");
    dictionary = ShippedDictionaries.of(board).orElseThrow();
  }

  private static Desk noted(String... says) {
    Desk desk = new Desk(board, Lookbook.of(dictionary));
    for (String each : says) {
      desk.note(Entry.saw(each));
    }
    return desk;
  }

  private static boolean shows(Observation said, String fault) {
    int row = dictionary.row(fault);
    Predicate<Sight> shown =
        s ->
            s.looks().stream()
                .map(look -> dictionary.outcome(dictionary.look(look).orElseThrow(), row))
                .anyMatch(s.outcomes()::contains);
    Stream<Sight> sights = said.reach().sights().stream();
    return said.reach().every() ? sights.allMatch(shown) : sights.anyMatch(shown);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // A key that is always closed comes before, between and after what is typed.
        "q by itself on the command line       | screen | K13: stuck closed | K30: stuck closed",
        "files turns into qiqeq                | typed  | K13: stuck closed | K30: stuck closed",
        "my machine types j on its own         | screen | K19: stuck closed | K13: stuck closed",
        "there is a star at the prompt before I even touch anything | screen | K52: stuck closed | K19: stuck closed",
        "a figure 1 comes up by itself         | screen | K31: stuck closed | K43: stuck closed",
        "the I key is dead                     | typed  | K11: open         | K13: stuck closed",
        "typing files comes out as fles        | typed  | K11: open         | U32: defect link-dead",
        // What the program says of itself.
        "it says \"ROM 1 does not answer.\"    | typed  | U3.D2: open pin   | U32: defect link-dead",
        "asking for files gets \"The drive did not answer.\" | typed | U32: defect link-dead | U3.D2: open pin",
        "title reads Earrow Lane Works         | screen | U7.A7: reads low  | U4.A5: open pin",
        "comes up saying 160 pages passed rather than 256 | screen | U28.CS: open pin | U7.A7: reads low",
        // The third attribute bit stays high: what is left are the inks with blue in them.
        "just blue, magenta, cyan and white    | screen | U26.INK2: open pin | K13: stuck closed",
        "whole screen full of solid squares    | screen | U11.Q: open pin   | U6.Q: open leg",
        // An open data pin of a memory turns blanks into one and the same sign.
        "dollar signs wherever there ought to be a gap | screen | U6.Q: open leg | U11.Q: open pin",
        "comma, colon and an open bracket are fine, but exclamation marks all over | screen | U4.GND: open joint | U6.Q: open leg",
        "an apostrophe stands next to the prompt | screen | K56: stuck closed | K52: stuck closed",
        "chord absent                          | listen | U1.RES/: open pin | K13: stuck closed",
        "an equals sign at the prompt the moment it comes up | screen | K53: stuck closed | K19: stuck closed",
        "I type files and get 'file'           | typed  | K29: open         | K11: open",
        // Two colours are green's: without it white is red and blue, yellow red, cyan blue.
        "white is magenta, yellow is red, cyan is blue | screen | U27.2Y: drives low | U26.INK2: open pin",
        // Letter for letter, where somebody lists them so.
        "the title reads 'TamariSK'            | screen | U9.A6: open joint | U7.A7: reads low",
        // Other bytes than ours, but the same line: bit 5 is read high from an open memory.
        "bench ROM: wrote 5A, read 7A everywhere | bench ROM | U9.Q: open leg | U6.Q: open leg",
        "neither picture nor sound             | screen | U1.RES/: open pin | K13: stuck closed",
        "tone of 196 Hz                        | listen | U9.WE/: open pin  | U34: defect voice-a-dead",
        // The video controller's interrupt is the blink.
        "no cursor                             | screen | U1.IRQ/: open pin | K13: stuck closed",
        "two long low notes instead of the chord | listen | U9.WE/: open pin | U34: defect voice-a-dead",
        "I had the fuse out and the wire in it looks whole | fuse | K13: stuck closed | F1: open",
        // D10 to D14 lead the first stick's ways to its row, R17 its level to the converter.
        "U22.Q4 stays low, same on U24.A8      | probe U24.A8 at the pin | U24.A8: clamps to ground through 1 ohm | K44: open",
        "U7 is cold while its neighbours are warm | finger U7 | U7.VCC: open pin | K44: open",
        "the 5 V regulator runs very hot       | finger regulator | C2: short | K44: open",
        "12V is missing at the sound chip      | meter sound chip 12 v rail | lead: open | K44: open",
        "U1 has no 5 V                         | meter U1 rail | F1: open | K44: open",
        "D0 to D6 pulse                        | probe d0 to d6 | K44: open | F1: open",
        // A stuck 6 stands behind the prompt, and nobody calls that a fault of the picture.
        "picture fine                          | screen | K40: stuck closed | U26.INK2: open pin",
        "The apostrophe key doesnt do anything | every key | K56: open     | K44: open",
        // Each pin for itself, though one net joins both: P4 goes from U22 and U23 to U24.
        "U22.Q4 and U23.Q4 both stay low       | probe U22.Q4 and U23.Q4 | U24.A8: clamps to ground through 1 ohm | K44: open",
        "Zero key not working                  | every key | K44: open      | K43: open",
        "joystick 1 won't go up                | sticks | D10: open         | D12: open",
        "the level of the first joystick stays at nought | sticks | R17: open | R18: open",
        "the joystick is dead                  | sticks | U30.Y8/: open pin | D10: open",
        "fire button dead                      | sticks | K65: open         | K61: open",
        // Volts and warmth as people have them.
        "5 V is only 4.3 V                     | meter rail | VR1: low         | K44: open",
        "VR1 output 4.2                        | meter VR1.OUT | VR1: low      | K44: open",
        "U15 is hotter than U16                | finger U15 | U15: reversed     | K44: open",
        "no chip hot                           | finger chip | VR1: dead       | U18: reversed",
        "only one note of the chord            | listen | U34: defect voice-a-dead | K44: open",
        "U25 output low                        | probe U25.DOT at the pin | U25.DOT: drives low | K44: open",
        "memory bit 3 stuck                    | bench ROM | U7: cell 0000 bit 0 stuck low | K16: open",
        // A key by its reference; parts from one to another.
        "K16 dead                              | every key | K16: open     | K30: open",
        "K23 sticks                            | every key | K23: stuck closed | K16: open",
        "U4 to U11 warm                        | finger U4 to U11 | VR1: shorted | U4.D: open pin",
        "U4-U11 cold                           | finger U4-U11 | U41.VCC: clamps to ground through 1 ohm | U4.D: open pin",
        // A row of keys with a hole, or without its first; a figure by its name.
        "letter row gives wertyuiop*/ and no more | every key | K13: open  | K30: open",
        "the row test gave adfghjkl            | every key | K29: open      | K37: open",
        "Nine is missing                       | every key | K43: open      | K44: open",
        "cannot type the closing bracket       | every key | K55: open      | K56: open",
        "pressing ALT does not lock the capitals any more | every key | K2: open | K1: open",
        "typing \"files\" gets no list         | typed  | U32: defect link-dead | K30: open",
        // What the bench ROM shows where it shows nothing to be read, and by its lamp.
        "with the test rom plugged in the screen stays black | bench ROM | X1: off frequency at 900 per mille | K44: open",
        "bench rom paints only junk; its lamp pattern is 1, then 2 | bench ROM | U20: dead | K44: open",
        "diagnostic rom flashes 3 then 1       | bench ROM | X1: off frequency at 900 per mille | U20: dead",
        // The short at VR1's output leaves its memories and its ROMs cold.
        "memory chips stay cold                | finger memory chips | C11: short | K44: open",
        "the 12 V for the analogue side is fine, analogue 5 V gone | meter VR3.OUT | D20: open | K44: open",
        "Plus leg of C1 reads 0.0 V, and so does the 5 V output of VR1 | meter VR1.OUT | F1: open | K44: open",
        "nothing at the input of VR3           | meter VR3.IN | D20: open   | K44: open",
        "on A5 and A6 the tracer stays quiet   | flow a5 and a6 | U1.A5-U1.A6: bridge | U1.A9: drives high",
        "a single high note of 523 Hz, the low one of the pair has gone | listen | U34: defect voice-a-dead | K44: open",
        "tape loads, but anything I record comes back as \"The tape is silent.\" | tape | TP1.OUT: open joint | C24: open",
        "pushing stick 1 left I type sticks and \"staccs\" appears | sticks | D12: short | D10: open",
        "the test cartridge is simply ignored  | bench ROM | track C28.--EX1.GND: open | K44: open",
        "memory address 5 is at only 0.6 V     | meter ma5 | U18.2Y: drives low | K44: open",
        "refresh buffer runs distinctly warm   | finger U19 | U37.4Y: drives low | K44: open",
        "only all is in white                  | screen | U29.Q4: drives high | K44: open",
        "second joystick does not shoot        | sticks | D19.A: open joint | K61: open",
        "line sync stuck high                  | probe line sync | U13.2Q0: drives low | K44: open",
        "ready pin of the processor 0.0 V. Power off: that pin to ground more than 100 k | ohms U1.RDY | RN2.1: open joint | K44: open",
        "drive lamp flickers quicker than four times a second | lamp | U42.3Y: drives low | U9.Q: drives low",
        "the 12 V jack has only 5 V on it      | meter J2.+ | C29: short   | K44: open",
        "tube stays empty                      | screen | U13.2Q0: drives low | K44: open",
        "12 V to U35 pin 8 present             | meter U35.V+ | K44: open   | J2.+: open joint",
        "most of the other data lines 1.2 V    | meter data lines | U44.Y2/: drives low | F1: open",
        "I measured U42 pin 9 and there is 3.4 V | meter U42.3A | U29.Q2: drives high | F1: open",
        "loading of my old cassettes is no trouble | tape | TP1.OUT: open joint | C24: open",
        "nobody is hot on the board            | finger | K44: open         | C2: short",
        "joysticks do nothing either           | sticks | U44.Y4/: open pin | D10: open",
        "typed files and nothing happens       | typed  | K4: open          | K44: open",
        "Both enables of the LS244 (1 and 19) are high and never budge | probe pins 1 and 19 of ls244 | U44.Y4/: drives high | F1: open",
        "pin 6 of the LS32 stays high          | probe pin 6 of the ls32 | U40.2Y: drives high | K44: open",
        "under one ohm from the 5 V of the RAMs to ground | ohms 5 v rail | C13: short | K44: open",
        "meter shows practically zero on pin 16 of U32 | meter U32.LV1 | RV1.2: open pin | K44: open",
        "the refresh counter counts            | probe refresh counter outputs | K44: open           | U14: dead",
        "the words 'Memory does not hold these lines' among ticks | screen | U10: dead | K44: open",
        "COL3 dips low for some microseconds each time | probe U31.1A4 at the pin | K20: stuck closed | F1: open",
        "the chord is flat                     | listen | X1: off frequency at 900 per mille | K44: open",
        "R/W is stuck high and the clock runs  | probe r/w | U1.RW: drives high | F1: open",
        "Thin vertical line down the middle of every character place | screen | U25.D3: open pin | K44: open",
        "Everything normal until I ask for files | screen | F2: open | F1: open",
        "as soon as it is plugged in the brick collapses | meter brick | brick: sags | K44: open",
        "ohms from U21 pin 40 to ground: practically zero | ohms VR2.OUT | C27: short | K44: open",
        "Resistance from the 5 V of the RAMs to ground, power off, under an ohm | ohms 5 v rail | C13: short | K44: open",
        "5 V at the processor: nothing         | meter processor rail | C13: short | K44: open",
        "pin 40 of U21 reads next to nothing   | meter U21.VCC | C27: short | K44: open",
        "C13 is scorching hot                  | finger C13 | C13: short | C14: short",
        "current tracer on 5VA points at C13.1 | flow 5VA | C13: short | C14: short",
        "current tracer on 5VP does not react    | flow 5vp | C13: short | C27: short",
        "pin 3 of U14 just sits there          | probe U14.1Q0 at the pin | U14.1Q0: drives low | K44: open",
        "HS and VS of U21 never move           | probe U21.HS and U21.VS | U21.RES/: reads low | K44: open",
        "the lamp stays quiet                  | lamp | K44: open | U9.Q: drives high",
        "Whole screen green, even the border   | screen | U27.2Y: drives high | U27.1Y: drives high",
        "blue background                       | screen | U27.3Y: drives high | U27.1Y: drives high",
        "white screen                          | screen | U25.DOT: drives high | K44: open",
        "dead as a doornail but for the lamp   | screen | U1.RES/: open pin | U34: defect voice-a-dead"
      })
  void sentence_isTakenAsALook_thatOneFaultShowsAndAnotherDoesNot(
      String says, String look, String shows, String other) {
    List<Observation> seen = noted(says).evidence().seen();
    assertTrue(seen.stream().anyMatch(o -> o.look().equals(look)), seen::toString);
    assertTrue(seen.stream().allMatch(o -> shows(o, shows)), seen::toString);
    assertFalse(seen.stream().allMatch(o -> shows(o, other)), seen::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it used to play a chord",
        "between cycles D4 lies at the bottom",
        "In the empty part of the screen all eight data pins of U24 are low",
        "the bench ROM makes a low 165 Hz tone near the middle",
        "the printer is dead",
        "is the screen normal?",
        "black on my other machine",
        "should be quiet low",
        "about 2.4 V on a working board",
        "didn't find a wrong voltage",
        "half that when all is well",
        "couldn't find a single wrong voltage anywhere",
        "as if the bottom ends of the pots hung in the air",
        "where it should blink three and one",
        "joysticks and tape cannot be tested as nothing can be typed",
        "turning the volume knob does nothing",
        "on a good machine it is 3.4 V",
        "the rest of the keyboard is fine",
        "no pulses at all at the dead keys",
        "both halves of the analogue chip sit at odd levels",
        "brick alone gives its 9 V",
        "When BUF/ is low, D0 to D7 float"
      })
  void sentence_thatIsNoLookAtThisBoard_isKept(String says) {
    Desk desk = noted(says);
    assertEquals(List.of(), desk.evidence().seen());
    assertEquals(1, desk.statements().size());
  }

  /** What a short does not depend on; of levels nothing is known with the part out. */
  @Test
  void shortThatStays_withAPartOut_isThatOfTheBoard() {
    List<Observation> seen =
        noted("with U7 out MD3 still reads about an ohm to ground").evidence().seen();
    assertEquals(1, seen.size(), seen::toString);
    assertTrue(shows(seen.get(0), "U20.A4: clamps to ground through 1 ohm"));
    assertFalse(shows(seen.get(0), "K44: open"));
    assertEquals(List.of(), noted("with U7 out MD3 reads 50 k to ground").evidence().seen());
  }

  /** A pin is measured on the board as it is, whatever the bench ROM said before. */
  @Test
  void pinBehindTheBenchRom_isOfTheBoardAsItIs() {
    Desk desk = noted("With the bench ROM in there is a picture, U21.DE stuck low");
    assertTrue(
        desk.evidence().seen().stream()
            .flatMap(o -> o.reach().sights().stream())
            .anyMatch(s -> s.looks().contains("probe U21.DE at the pin")));
  }

  @Test
  void whatIsOdd_holdsInPlaceOfWhatWasSaidInPassing() {
    List<Observation> seen = noted("boots up fine", "no blue on the screen").evidence().seen();
    assertEquals(1, seen.size());
    assertTrue(
        shows(seen.get(0), "U26.INK2: open pin") || shows(seen.get(0), "U27.3Y: drives low"));
    assertFalse(shows(seen.get(0), "U32: defect link-dead"));
  }

  @Test
  void benchRom_isInAsLongAsAnEntrySpeaksOfIt() {
    Desk desk = noted("with the bench ROM the same", "display dark");
    assertEquals(List.of("screen"), desk.evidence().seen().stream().map(o -> o.look()).toList());
  }

  @Test
  void exception_isNotHeldAgainstTheBoard() {
    List<String> looks =
        noted("completely dead except the lamp").evidence().seen().stream()
            .map(Observation::look)
            .toList();
    assertEquals(List.of("screen", "listen"), looks);
  }

  @Test
  void bytesOfTheBenchRom_areHeldTogether_acrossCommas() {
    Desk desk = noted("bench ROM station 03: sent 0D, got 0C on page 01");
    List<Observation> seen = desk.evidence().seen();
    assertEquals(List.of("bench ROM"), seen.stream().map(Observation::look).toList());
    for (String outcome : seen.get(0).reach().sights().get(0).outcomes()) {
      assertTrue(outcome.contains("Station 03 wrote 0D, read 0C at page 01:"), outcome);
    }
  }

  @Test
  void severalThings_ofWhichOneIsSaid_areEachMeant() {
    List<String> looks =
        noted("screen, keys and chord normal").evidence().seen().stream()
            .map(Observation::look)
            .toList();
    assertEquals(List.of("screen", "typed", "listen"), looks);
  }

  @Test
  void asideOfTheBenchRom_doesNotHoldForWhatFollows() {
    Desk desk = noted("solid sheet of blocks, also with the bench ROM", "chord heard");
    assertEquals(2, desk.evidence().seen().size());
  }

  @Test
  void supplyThatIsMissingAtAPin_isNotRead_asThere() {
    Observation none = noted("K65.2 without its 5 V").evidence().seen().get(0);
    assertFalse(none.reach().sights().get(0).outcomes().contains("5 V"));
  }

  @Test
  void currentFollowedToAPart_isWhatThatPartHolds_andNoOther() {
    Observation seen = noted("current tracer on D1 points at U34").evidence().seen().get(0);
    assertEquals("flow D1", seen.look());
    assertTrue(shows(seen, "U34.D1: drives low"));
    assertFalse(shows(seen, "U1.D1: drives low"));
  }

  @Test
  void currentFollowedBetweenTwoPins_isBothOfThem() {
    Observation seen =
        noted("tracer: on MA7 it runs from U16.4Y to U19.2Y4").evidence().seen().get(0);
    for (String outcome : seen.reach().sights().get(0).outcomes()) {
      assertTrue(outcome.contains("U16.4Y") && outcome.contains("U19.2Y4"), outcome);
    }
  }

  @Test
  void lightOfAProbe_isNoLamp() {
    List<Observation> seen = noted("the probe on U31 1G/ does not light at all").evidence().seen();
    assertEquals("probe U31.1G/ at the pin", seen.get(0).look());
  }

  @Test
  void twoPinsOfAPart_areBothMeant() {
    Observation both = noted("D1 and D6 of U34 nailed high").evidence().seen().get(0);
    assertEquals(
        List.of("probe U34.D1 at the pin", "probe U34.D6 at the pin"),
        both.reach().sights().stream().map(s -> s.looks().get(0)).toList());
    assertTrue(both.reach().every());
  }

  @Test
  void pinNamedBeforeOrBehindItsPart_isTheSame() {
    for (String says :
        List.of(
            "A4 of U1 stuck high",
            "U1 pin A4 stuck high",
            "pin A4 on the processor U1 stuck high")) {
      List<Sight> sights = noted(says).evidence().seen().get(0).reach().sights();
      assertEquals(List.of("probe U1.A4 at the pin", "meter U1.A4"), sights.get(0).looks(), says);
    }
  }

  @Test
  void pinWhoseNameIsLikeAFigure_isNoCurrent() {
    List<Observation> seen = noted("U33 4A has a full 5V").evidence().seen();
    assertEquals("meter U33.4A", seen.get(0).look());
  }

  @Test
  void pieceWithoutAPlace_goesOnOfThePinBefore() {
    List<Observation> seen = noted("U3.CE/ does not move, stuck high").evidence().seen();
    assertEquals(1, seen.size());
    List<String> outcomes = seen.get(0).reach().sights().get(0).outcomes();
    assertTrue(outcomes.contains("high") && !outcomes.contains("low"), outcomes.toString());
  }

  @Test
  void figureWithoutAUnit_atAPinIsInVolts() {
    assertEquals("meter U21.VA0", noted("VA0 of U21 0.1").evidence().seen().get(0).look());
  }

  @Test
  void newPart_afterWhichItIsAsBefore_wasExchangedInVain() {
    Desk desk = noted("no sound", "new U34 tried, still mute");
    assertEquals(1, desk.evidence().missed().size());
    assertEquals(
        List.of("listen"), desk.evidence().seen().stream().map(Observation::look).toList());
  }
}
