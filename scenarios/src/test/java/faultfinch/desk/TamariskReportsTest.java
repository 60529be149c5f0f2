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
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is said of a set, a chord and a keyboard, held against faults that must, and must not, show
 * it.
 */
class TamariskReportsTest {
  private static Board board;
  private static FaultDictionary dictionary;
  private static Lookbook lookbook;

  @BeforeAll
  static void read() {
    board = BoardReader.shipped("tamarisk");
    dictionary = ShippedDictionaries.of(board).orElseThrow();
    lookbook = Lookbook.of(dictionary);
  }

  private static boolean shows(Observation said, String fault) {
    int row = dictionary.row(fault);
    List<Sight> sights = said.reach().sights();
    return said.reach().every()
        ? sights.stream().allMatch(s -> shows(s, row))
        : sights.stream().anyMatch(s -> shows(s, row));
  }

  private static boolean shows(Sight sight, int row) {
    return sight.looks().stream()
        .map(look -> dictionary.outcome(dictionary.look(look).orElseThrow(), row))
        .anyMatch(sight.outcomes()::contains);
  }

  /** What is said of one line holds against what is said of all of them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "all MD lines make pulses but MD3 is always LOW",
        "MD3 is always low. All MD lines make pulses."
      })
  void oneLine_thatIsNotAsAllAre_isNoneOfThem(String says) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    Observation all =
        desk.evidence().seen().stream()
            .filter(o -> o.look().equals("probe md lines"))
            .findFirst()
            .orElseThrow();
    assertEquals(7, all.reach().sights().size());
    assertTrue(
        all.reach().sights().stream()
            .flatMap(sight -> sight.looks().stream())
            .noneMatch("probe U7.Q at the pin"::equals));
  }

  /**
   * A good chip laid on top of one that drives low helps nothing, and so says nothing good of it.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "put a known good 4164 on the back of U7, no improvement | IN_VAIN",
        "new 4164 on top of U11, pressed hard: comes up with banner | HELPED",
        "pulled U2, U3 and U28, one by one, and left them out: D6 still low | REPAIR_MISSED",
        "C2 lifted: still the same             | REPAIR_MISSED",
        "removed U4 and U5 and fitted new ones | REPAIR_MISSED"
      })
  void whatWasTried_cameTo(String says, Statement.Came came) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertEquals(
        List.of(came),
        desk.statements().stream()
            .flatMap(s -> s instanceof Statement.Tried t ? Stream.of(t.came()) : Stream.empty())
            .toList());
  }

  /** Parts that are out, by what they are called, and what is said of the board without them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "with the sound chip out of its socket it starts at once | U34",
        "without the tone chip it boots            | U34",
        "it starts when I take the sound chip out  | U34",
        "it comes alive as soon as I pull the link chip out | U32",
        "with U34 out of its socket it boots       | U34",
        "removing U28 brings the picture back      | U28",
        "Black screen. With U28 out it is the same | U28",
      })
  void partThatIsOut_mayBeCalledByWhatItIs(String says, String ref) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertEquals(List.of(List.of(ref)), desk.partsOut());
  }

  /** Who pulls a chip that is not there, or changes one, has taken none out. */
  @ParameterizedTest
  @ValueSource(strings = {"with the sound chip swapped it boots", "with the drive out it boots"})
  void whatIsNoPartTakenOut_isNone(String says) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertEquals(List.of(), desk.partsOut());
  }

  /** The board is to be run without it, and to show what it showed with it. */
  @Test
  void partOutInVain_isWhatWasSeenBeforeOnceMore() {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw("Black screen, silent, 5 V fine. Pulling U34 makes no difference."));
    List<String> looks =
        desk.statements().stream()
            .filter(s -> s.when().out().equals(List.of("U34")))
            .map(s -> s instanceof Statement.Kept k ? k.about() : "weighed")
            .toList();
    assertEquals(List.of("screen", "listen"), looks);
  }

  /** The amplifier's input to the port open; a line of the picture's addresses open. */
  @Test
  void setThatNobodySpeaksOf_isHardlyOdd() {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw("Loading from tape fails every time. The start tune is right. 5 V fine."));
    Observation set = desk.evidence().seen().get(3);
    assertEquals("screen, not spoken of", set.look());
    assertEquals(Observation.Doubt.HARDLY, set.doubt());
    assertEquals(3, desk.noted());
    assertEquals(4, desk.statements().size());
    assertTrue(shows(set, "R13: open"));
    assertFalse(shows(set, "U21.VA8: open pin"));
  }

  /** Who speaks of the set, or has told little yet, leaves nothing unsaid. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Loading from tape fails every time. The start tune is right. 5 V fine. Screen is odd.",
        "Loading from tape fails every time. The start tune is right. 5 V fine. Keys work.",
        "Loading from tape fails every time. 5 V fine.",
        "Loading from tape fails every time. The start tune is right. 5 V fine. With U34 out the screen is fine.",
        "No clock at pin 37 of the CPU. 5 V fine. Lamp lit. Reset is low.",
      })
  void setThatIsSpokenOf_goesNotWithoutSaying(String says) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertTrue(desk.evidence().seen().stream().noneMatch(o -> o.look().endsWith("not spoken of")));
  }

  /** Also once the board was run so, and the look is one of its own. */
  @Test
  void setSeenWithAPartOut_isSpokenOf() {
    Desk desk = new Desk(board, lookbook, Map.of(List.of("U34"), lookbook));
    desk.note(Entry.saw("Loading from tape fails every time. The start tune is right. 5 V fine."));
    desk.note(Entry.saw("With U34 out the screen is fine."));
    assertEquals(
        List.of("tape", "listen", "meter rail", "screen with U34 out"),
        desk.evidence().seen().stream().map(Observation::look).toList());
  }

  /** On a dark set nobody reads what is typed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Black screen, chord is right, keyboard works | true",
        "Colours are wrong, keyboard works            | false",
        "Black screen, keyboard is dead               | false",
        "Black screen. Exchanged U1. Keyboard works   | false",
      })
  void keysThatWork_onADarkSet_areNotWeighed(String says, boolean blind) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertEquals(
        blind,
        desk.statements().stream()
            .anyMatch(s -> s instanceof Statement.Kept k && k.why() == Statement.Why.TYPED_BLIND));
  }

  /**
   * A multiplexer's line open: all stands twice on the set, and so does the list of files. Keys of
   * which nothing comes are none that work, whatever the set shows.
   */
  @Test
  void keysThatWork_onAnOddSet_workAsWellAsItCanBeRead() {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw("takes keys, even lists the disc"));
    Observation works = desk.evidence().seen().get(0);
    assertTrue(shows(works, "U18.2A: open leg"));
    assertFalse(shows(works, "U31.2A3: reads low"));
    assertFalse(shows(works, "F2: open"));
  }

  /** A processor is warm on every board, a gate is not. */
  @ParameterizedTest
  @CsvSource({"CPU is warm, HARDLY", "CPU is very hot, SURE", "U44 is warm, SURE"})
  void part_thatIsUsuallyWarm_calledWarm_hardlyCounts(String says, Observation.Doubt doubt) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertEquals(List.of(doubt), desk.evidence().seen().stream().map(o -> o.doubt()).toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cold spray on U9 brings it back",
        "A3 and A4 shorted together",
        "supply gets hot",
        "no good",
        "One can type blind: the list comes",
        "swapped U32"
      })
  void report_thatIsNoLook_isKept(String says) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertEquals(List.of(), desk.evidence().seen());
    assertEquals(1, desk.statements().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // The gate of a colour open: the colour, and what is mixed of it, is missing.
        "no red on the screen                  | screen | U27.1Y: open pin      | U27.2Y: open pin",
        "every second column missing           | screen | U22.OE/: open pin     | U24.A0: open pin",
        "letters doubled                       | screen | U22.OE/: open pin     | U24.A0: open pin",
        // A line of a glyph's address open: every letter is misshapen, blanks stay dark.
        "stripes in every letter               | screen | U24.A0: open pin      | U27.1Y: open pin",
        // An open LS input of the shifter reads high: dots in blanks too.
        "screen full of blocks                 | screen | U25.DOT: open pin     | U24.A0: open pin",
        "less memory                           | screen | U44.B: reads high     | U27.1Y: open pin",
        "chord heard                           | listen | U27.1Y: open pin      | U6.Q: open pin",
        "only one tone                         | listen | U34: defect voice-a-dead | U27.1Y: open pin",
        "no key works                          | typed  | U28: defect timer-dead | K11: open",
        "some keys dead                        | every  | U30.Y1/: open pin     | K11: open",
        "space bar does nothing                | every  | K3: open              | K11: open",
        "key W dead                            | every  | K30: open             | K11: open",
        "rail shorted to ground                | ohms   | C2: short             | K11: open",
        "the I key does nothing                | typed  | K11: open             | K10: open",
        "keys E, I and A do nothing            | every  | U30.Y1/: open pin     | K11: open",
        "ENTER key dead                        | every  | K4: open              | K11: open",
        "CAS/ missing                          | probe  | U42.2Y: open pin      | K11: open",
        // The processor has run into a wall: its lines moved before, and stand high when a probe
        // is put on. On a board that runs no address line stands high.
        "the address lines all sit high and do not move any more | probe | U44.Y2/: open pin | K11: open",
        "the address lines stand still         | probe  | U2.A11: open contact  | K11: open",
        // Of the chord one tone of two is lower.
        "the start tune is flat                | listen | X1: off frequency at 970 per mille | U34: defect voice-a-dead",
        "keyboard takes nothing                | typed  | U31.2A3: reads low    | K11: open",
        "keyboard takes nothing but enter      | typed  | U31.2A3: reads low    | U28: defect timer-dead",
        "the reset cap sits at 4.9 V           | meter  | U36.THR: reads low    | F1: open",
        "all eight columns at 5 V on the meter with no key touched | meter | U31.2A3: reads low | F1: open",
        "outputs on the 138 I could get at (15, 14, 13, 12, 11) stay high | probe | U39.2Y: drives high | K11: open",
        "bench ROM ten stations all zero       | bench  | K11: open             | U9: dead",
        // A line called 0 is not well.
        "bench ROM: station 2 bad, line 0      | bench  | U37.5A: reads low     | K11: open",
        "bench ROM ten times zero              | bench  | K11: open             | U9: dead",
        "black text on cream                   | screen | U26.INV: drives high  | U26: dead",
        "U25.DOT carries a healthy signal      | probe  | K11: open             | U25.DOT: drives low",
        "S types R                             | every  | U30.A: reads high     | K11: open",
        "every blank replaced by a backquote   | screen | U20.A7: open pin      | U9: dead",
        "M, N, O, P, the zero and the star do nothing | every | track K69.2-K44.2 and R21.1-R20.1: bridge | K11: open",
        // It is high once the board was switched on, on every board that starts.
        "reset goes high as it should          | probe  | K11: open             | U36.OUT: open pin",
        "it starts, second line is odd         | screen | U2: mis-programmed at 049E as 27 | U9: dead",
        "drive did not answer                  | typed  | F2: open              | K11: open",
        "5 V fine                              | meter  | U27.1Y: open pin      | VR2: dead",
        "no 12 V                               | meter  | lead: open            | U27.1Y: open pin",
        "counter on the CPU clock input: zero  | counter | X1: dead            | K11: open",
        "records programs and gets empty cassettes | tape | R15: open          | K11: open",
        "only 192 pages where it used to say 256 | screen | U29.Q3: drives low | K11: open",
        "7, 8, 9, 0, minus and plus don't print | every | U30.Y5/: drives low  | K11: open",
        "row line 0 of the keyboard sits at 5 V | meter | K8: stuck closed     | K11: open",
        "the keyboard's stone dead             | typed  | U28: defect timer-dead | K11: open",
        "/IRQ on the CPU down at 0.1 V, should idle at 5 | meter | RN2.3: open joint | K11: open",
        "ohms on the /IRQ line: open           | ohms   | RN2.3: open joint    | K11: open",
        "ohmmeter VR2 out to gnd: practically a short | ohms | C10: short      | K11: open",
        "takes 2.1 A where I'm used to 1.5     | current | C10: short          | K11: open",
        "current a quarter of an amp up on normal | current | U41.4Y: drives low | K11: open",
        "current tracer on U10.A3: flows out of U19 1Y4 and vanishes into U17 | flow | U17.4Y: drives low | K11: open",
        "joystick port 1: fire does not do anything | sticks | D14: open       | K11: open",
        "both enables of U19, 1G/ and 2G/, sit at 0.2 | meter | U41.4Y: drives low | K11: open",
        "at K33 through K40 I have 0.0 where the other keys have the 0.2 | meter | track U30.Y4/-K39.1: open | K11: open",
        "it says that word is not known here   | typed  | K11: open             | F2: open",
        "Machine starts all proper             | screen | U32.IRQ/: drives low | U9: dead",
        "neither joystick goes down            | sticks | RN1.2: open joint    | K11: open",
        "when he writes sticks the screen shows stiks | every | K25: open      | K11: open",
        "playing back what I recorded gives \"The tape is silent.\" | tape | U28: defect tone-dead | K11: open",
        "the joystick test arrives as \"stics\" | every | K27: open            | K11: open",
        "stick 2 pushed down+right with fire shows D and F | sticks | D18: open | K11: open",
        "2nd stick always level 00             | sticks | R18: open            | K11: open",
        "like a blanket on the loudspeaker     | listen | C20: open            | K11: open",
        "Beep test from U30 Y0/ along to K1: nothing | continuity | track U30.Y0/-K1.1: open | K11: open",
        "Pin 1 of K1 to K8: 0.0 V              | meter  | track U30.Y0/-K1.1: open | K11: open",
        "no beep from U30 Y3/ to K30           | continuity | track U30.Y3/-K30.1: open | K11: open",
        "bench ROM blinks 1, 2                 | bench  | U9: dead             | K11: open",
        "Y0, Y1 and Y4 of U30 at 0.0 V         | meter  | U30.B: open pin      | K11: open",
        "so I went round the character ROM: A2 at 0.0 V | meter | track U21.RA2-U24.A2: open | K11: open",
        "the same 0.3 V at R13 and R14 where they join | meter | R14: drifts to 50 per cent | K11: open",
        "at U28 PA7 there's 0.3 V and on the reference board 0.5 | meter | R14: drifts to 50 per cent | K11: open",
        "U36 OUT 3.4 V, normally it is low     | meter  | U36.THR: clamps to ground through 4k7 | K11: open",
        "149 deg on U44                        | finger | U44: reversed        | K11: open",
        "keys E, I and A do not answer         | every  | U30.Y1/: open pin    | K11: open",
        "freq counter on X1 OUT: nothing       | counter | X1: dead            | K11: open",
        "tape level into PA7 idles at 1.0 V at the R13/R14 junction, known good board 0.5 | meter | R14: open | K11: open",
        "U34 supply present                    | probe  | K11: open            | U34.VCC: open leg",
        "U1 RES/ high                          | probe  | K11: open             | U36.OUT: open pin",
        "reset stuck high                      | probe  | U36.RES/: open pin    | K11: open",
        "CPU held in reset                     | probe  | U36.OUT: open pin     | K11: open",
        "U21 VS/ pulsing                       | probe  | K11: open             | U21.VS/: drives low",
        "HS and VS pulsing                     | probe  | K11: open             | X1: dead",
        "RAS pulsing                           | probe  | K11: open             | U12.RAS/: drives high",
        "U21 runs at 58 degrees                | finger | K11: open             | U21: reversed",
        "U26 is at 75 degrees                  | finger | U26: reversed         | K11: open",
        "I get a few hundred ohms from U4's A1 to ground | ohms | U4.A1: clamps to ground through 470 ohms | K11: open",
        "Unpowered, the ohmmeter shows only some thousand ohms at U8 CAS | ohms | U8.CAS/: clamps to supply through 4k7 | K11: open",
        "continuity from U30.Y0/ to K1.1 missing | continuity | track U30.Y0/-K1.1: open | K11: open",
        "U34's chip select is stuck high       | probe  | U39.2B: open pin      | K11: open",
        "display enable at U25 is low          | probe  | U21.DE: drives low    | K11: open",
        "voltages all ok                       | meter  | K11: open             | VR2: shorted",
        "9 V supply measures 9.6 V under load  | meter  | K11: open             | C1: short",
        "psu puts out 0 V                      | meter  | J1: open              | K11: open",
        "character ROM data lines all toggle   | probe  | K11: open             | X1: dead",
        "U26 is burning hot                    | finger | U26: reversed         | K11: open",
        "words still readable                  | screen | U25.D4: reads low    | U42.2Y: drives high",
        "text legible, letters wrong           | screen | U7.Q: drives low      | K11: open",
        "only two short dashes on the screen   | screen | U17: dead             | K11: open",
        "no beep at switch on                  | listen | U17: reversed         | K11: open",
        "one dot column missing through every letter | screen | U25.D4: reads low | K11: open",
        "U34 pin 14 sits high without a single pulse | probe | U44.Y2/: drives high | K11: open",
        "the drive lamp never goes out         | lamp   | U44.Y0/: drives high  | K11: open",
        "The first joystick does not steer left | sticks | D12: open            | K11: open",
        "5VP to ground about 300 ohms          | ohms   | K11: open             | C27: short",
        "5VA to ground 55 ohm                  | ohms   | K11: open             | C2: short",
        "ATN/ stands at 0.1 V                  | meter  | U33.2Y: drives low    | K11: open",
        "light with dark letters               | screen | U29.Q5: drives high   | K11: open",
        "Pin 3 of all RAMs solid high          | probe  | U38.2Y: drives high   | K11: open",
        "all white                             | screen | U26: dead             | K11: open",
        "I and M are dead                      | every  | track K14.1-K11.1: open | K12: open",
        "RAS/, CAS/ and WR/ all there on the memory row | probe | K11: open      | U12.RAS/: drives high",
        "The other lines, D0, D3, D5, do pulse | probe  | K11: open             | X1: dead",
        "bench ROM: all the RAM stations are clean | bench | U24.A6: reads high | U9: dead",
        "Station 06 on the bench ROM is clean, 000 of 512 differ | bench | K11: open | U26: dead",
        "Bench ROM station 06 had no complaints either | bench | K11: open          | U26: dead",
        "5VA is 0.1 V                          | meter  | C13: short            | K11: open",
        "Colours wrong                         | screen | U27.1Y: drives low    | K11: open",
        "Address lines are frozen              | probe  | U1.RDY: clamps to ground through 470 ohms | K11: open",
        "5VS is there                          | probe  | K11: open             | D20: open",
        "screen black except the cursor        | screen | U17.3B: open pin      | K11: open",
        "Joystick switches fine                | sticks | RV1.1: open joint     | D12: open",
        "V, B, N and J don't print             | every  | track K18.1-K22.1: open | K12: open",
        "always the capitals in the odd columns are wrong | screen | U23.D5: open leg | K11: open",
        "every letter is right except the capital I | every | U24: mis-programmed at 0495 as 09 | K12: open",
        "ROW2 at U30 pin 3 pulses              | probe  | track K18.1-K22.1: open | U30.Y2/: open pin",
        "VS/ pulses at U21                     | probe  | K11: open             | U21.VS/: drives high",
        "CUR pulses at U25 pin 12              | probe  | U25.CUR: reads low    | U26.CURO: drives low",
        "Input of VR1 and VR2: 0 V             | meter  | F1: open             | K11: open",
        "5VA zero                              | meter  | F1: open             | K11: open",
        "Ohms from 5VP to ground with power off: 0.3 | ohms | C27: short          | K11: open",
        "All rails: 5.01/4.99/12.1             | meter  | K11: open             | VR2: shorted",
        "12 V 12.4                             | meter  | K11: open             | lead: open",
        "KEYRD/ is stuck near ground           | probe  | U40.4Y: drives low    | K11: open",
        "MD0 to MD4 and MD6, MD7 swing properly | probe | K11: open             | X1: dead",
        "a dark bar moves slowly up the screen | screen | brick: ripples        | K11: open",
        "VR2 gets clearly colder than its neighbours | finger | VR2: dead         | K11: open",
        "number of pages is far too low        | screen | U28: defect port-dead | K11: open",
        "B becomes F                           | every  | U24.A6: reads high    | K11: open",
        "press B and get F                     | every  | U24.A6: reads high    | K11: open",
        "F prints e, J prints i                | every  | U30.Y1/-U30.Y2/: bridge | K11: open",
        "555: pin 3 high all the time          | probe  | U36.TRIG: reads low   | K11: open",
        "On the op-amp pin 1 sits at 2.5 V     | meter  | K11: open             | U35.OUT1: drives low",
        "Everything in white                   | screen | U29.Q4: drives high   | K11: open",
        "no key is accepted                    | typed  | U28: defect port-dead | K11: open",
        "stations two and three each fail on 127 out of 255 | bench | U11.A7: open pin | U36: dead",
        "bench ROM: stations two and three fail | bench | U9: dead              | K11: open",
        "bench ROM: station 2 wrote 19 and read 39 | bench | U9: dead           | U7.Q: drives low",
        "Test ROM: all stations clean except the sound chip | bench | D20: open         | K11: open",
        "bench ROM: the leftmost bit is bad and 39 comes back as B9 | bench | U11.A7: open pin | U9: dead",
        "Bench ROM winks once, then three times | bench  | U44.Y3/: drives high  | K11: open",
        "memory bad and the first of the eight marks is hollow | screen | U11.A7: open pin | U7.Q: drives low",
        "a row of white bars with one hollow place, fifth from the left | screen | U7.Q: drives low | U11.A7: open pin",
        "third of the eight marks is different | screen | U9: dead               | U7.Q: drives low",
        "the usual memory message, garbled     | screen | U7.Q: drives low      | K11: open",
        "bench ROM: the first few stations wrote 39 and read B9 | bench | U11.A7: open pin | U9: dead",
        "only the cursor is missing            | screen | U1.IRQ/: open pin     | K11: open",
        "nothing but a flashing cursor         | screen | U17.2Y: drives high   | K11: open",
        "F gives b                             | every  | RN1.COM: open joint   | K11: open",
        "Row lines out of U30 are all being pulsed low in turn | probe | K11: open | U30: dead",
        "All eight columns read about one and a half volts | meter | RN1.COM: open joint | K11: open",
        "pin 8 of U42 stays high even with pin 9 low | probe | U42.3Y: drives high | K11: open",
        "'files' turns up as 'eiles'           | typed  | U30.Y1/-U30.Y2/: bridge | K11: open",
        "white text appears magenta            | screen | U27.2Y: drives low    | K11: open",
        "Pin 2 of the monitor socket stays low | probe  | U27.2Y: drives low    | K11: open",
        "Drive is not answering to 'files'     | typed  | U33.1Y: drives low    | K11: open",
        "no key gives a character              | typed  | U28: defect timer-dead | K11: open",
        "Lamp after the round: two pulses, then one | bench | U14.1Q1: drives low | K11: open",
        "Bench ROM station 05 wrote B9, read BD at page E3, 002 of 256 differ | bench | U14.1Q1: drives low | K11: open",
        "REFEN/ goes low regularly             | probe  | K11: open             | U41.4Y: drives high",
        "RAS/ pulses at U12 pin 2              | probe  | K11: open             | U12.RAS/: drives low",
        "the picture rolls, never stands       | screen | MON1.VS/: open pin    | U2: dead",
        "5 V at the processor measures well under 4.75 V | meter | brick: low   | F1: open",
        "VR2 out far too low, below 4.7 V      | meter  | VR2: low              | K11: open",
        "VR3 puts out nothing                  | meter  | VR3: dead             | K11: open",
        "the screen is empty                   | screen | U17.3B: reads high    | K11: open",
        "checkered characters all over         | screen | U42.2Y: drives high   | K11: open",
        "No column clock at U21 pin 18, it is low all the time | probe | U37.4Y: drives low | K11: open",
        "no column clock at U21 pin 18         | probe  | U37.4Y: drives low    | K11: open",
        "no start message                      | screen | U2: dead              | K11: open",
        "what I type does not show             | typed  | U28: defect timer-dead | K11: open",
        "The bench ROM says memory is bad in data bit 0 | bench | U4.Q: drives low | U5.Q: drives low",
        "the bench ROM finds bit 1 of the memory bad | bench | U5.D: reads high | U4.D: reads high",
        "A few keys are dead: B, C, D, the semicolon and the 7. | every | track K9.2-K33.2: open | K12: open",
        "U36 pin 3 goes high, then low about 50 ms after switch-on | probe | K11: open | U36.OUT: open pin",
        "not even the drive lamp for an instant when I switch it on | lamp | F1: open | U28: dead",
        "Of the colour bar I see red, a gap, red, a gap, red again, then turquoise, white | screen | MON1.G-MON1.B: bridge | K11: open",
        "Plugged in the bench ROM and the board wakes up and gets on with its tests | bench | U2: dead | U1: dead",
        "U1 pin 8: nothing worth mentioning    | meter  | track VR1.OUT-C2.+: open | K11: open",
        "No volts on pin 6 of the drive connector | meter | F2: open           | K11: open",
      })
  void report_ofAFault_coversWhatThatFaultShows(
      String says, String look, String fault, String other) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    List<Observation> seen = desk.evidence().seen();
    assertEquals(1, seen.size(), () -> desk.statements().toString());
    assertEquals(look, seen.get(0).reach().sights().get(0).looks().get(0).split(" ")[0]);
    assertTrue(shows(seen.get(0), fault), fault);
    assertFalse(shows(seen.get(0), other), other);
  }

  /**
   * What stands in rows on a set is no ribbon of data lines where colours or keys are spoken of.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "the fifth bar of the colour stripe is missing",
        "fifth from the left of the blue letters is different"
      })
  void placeInARowOfSomethingElse_isNoLineOfMemory(String says) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    assertTrue(
        desk.evidence().seen().stream().noneMatch(o -> shows(o, "U7.Q: drives low")),
        () -> desk.statements().toString());
  }

  /** Who names one line of a bus has seen others move: the first entry is of the line itself. */
  @ParameterizedTest
  @CsvSource({
    "D5 never reaches a valid low, U31.2Y2: drives high",
    "G4 at U25 pin 5 has no valid level, U24.D4: open contact"
  })
  void levelOfOneLine_betweenHighAndLow_isWhatItsFaultShows(String says, String fault) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    Observation line = desk.evidence().seen().get(0);
    assertTrue(shows(line, fault), () -> desk.statements().toString());
    assertFalse(shows(line, "K11: open"));
  }

  /** What was measured beside a part that was exchanged in vain is not lost behind that. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pin 22 of U21 never pulses, and a new U21 behaved just the same",
        "new U37 fitted, pin 8 of it still high all the time"
      })
  void measuredBesideADeed_isNotedToo(String says) {
    Desk desk = new Desk(board, lookbook);
    desk.note(Entry.saw(says));
    List<Statement> all = desk.statements();
    assertEquals(1, all.stream().filter(s -> s instanceof Statement.Tried).count(), all::toString);
    assertEquals(1, desk.evidence().seen().size(), all::toString);
  }
}
