package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextTrainerTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int train(String typed, String... args) {
    String[] all = new String[args.length + 1];
    all[0] = "train";
    System.arraycopy(args, 0, all, 1, args.length);
    return CommandLine.run(
        all,
        a -> OptionalInt.empty(),
        new BufferedReader(new StringReader(typed)),
        new PrintWriter(out, true),
        new PrintWriter(err, true));
  }

  private void assertSays(String text) {
    assertTrue(out.toString().contains(text), out.toString());
  }

  private void assertNeverSays(String text) {
    assertFalse(out.toString().contains(text), out.toString());
  }

  /** The lid keeps hands off; the bench ROM plugs in from outside and is told line by line. */
  @Test
  void tamariskInItsCase_benchRom_isOfferedAndReadWithTheLidOn(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("mine.json");
    Files.writeString(
        file,
        """
        {"format": 1, "name": "half-a-window", "title": "Half a window", "board": "tamarisk",
         "seed": 3, "minutes": 60, "faults": ["U29.Q2: drives low"],
         "complaint": "It says 192 pages.", "lid": "on", "tools": "all",
         "coach": {"guided": false, "prices": true, "suspects": false, "marks": true},
         "goal": "Say what is wrong.", "notes": "A bank bit."}
        """);
    String typed =
        """
        ?
        reseat U1
        return leads
        swap the supply
        bench rom
        lid off
        ? bench ROM
        ? U29
        leave
        """;
    assertEquals(0, train(typed, "--text", file.toString()));
    assertSays("Station 05 wrote DA, read FA at page 80: 128 of 256 differ. ==.=====");
    assertSays("lamp pulses 2, then 1");
    assertSays("4 min  bench rom");
    assertSays("piggyback");
    assertNeverSays("U1 sits again");
  }

  @Test
  void firstCase_playedThrough_isSolvedAndDebriefed() {
    String typed =
        """
        bench supply
        power on
        screen
        bits
        same on a healthy board
        probe U1.D0
        probe U9.D0
        power off
        wrist strap
        reseat U9
        power on
        screen
        decide U9 contact
        why
        leave
        """;
    assertEquals(0, train(typed, "--text"));
    assertSays("reads 'RNRRDL'");
    assertSays("On a healthy board, screen: reads 'SORREL'");
    assertSays("  R   1  0  1  0  0  1  0      S   1  0  1  0  0  1  1");
    assertSays("Solved.");
    assertSays("U9.D0: open contact");
    assertNeverSays("min so far"); // no price in the first case
    assertNeverSays("Marks");
    assertEquals("", err.toString());
  }

  @Test
  void stepOfTheGuide_passedOver_isNotAskedForOnAndOn() {
    assertEquals(0, train("bench supply\npower on\nscreen\nprobe U1.D0\nleave\n", "--text"));
    // Once, when it was due: the probe instead of it brings what comes after the probe.
    assertEquals(2, out.toString().split("type bits", -1).length);
    assertSays("And at the display, at the leg of the chip?");
  }

  @Test
  void withoutAScreen_playsInTheTerminal() {
    assertEquals(0, train("leave\n"));
    assertSays("Case 1");
  }

  @Test
  void slip_typed_costsNothingAndOffersTheNearest() {
    assertEquals(0, train("bench suply\nbench supply\npower on\nprobe U9.DO\nnotes\n", "--text"));
    assertSays("Nearest: bench supply");
    assertSays("probe U9.D0");
    assertSays("2  power on");
    assertNeverSays("3  probe");
  }

  @Test
  void input_thatEnds_endsCleanly() {
    assertEquals(0, train("", "--text"));
    assertEquals(0, train("bench supply\npower on", "--text"));
    assertSays("Not solved.");
    assertEquals("", err.toString());
  }

  @Test
  void question_typed_listsKindsAndNotHundredsOfPlaces() {
    assertEquals(0, train("bench supply\npower on\n?\n? finger\n? U9\n", "--text"));
    assertSays("What you can do now:");
    assertSays("decide ... contact");
    assertSays("finger: ");
    int from = out.toString().indexOf("What you can do now:");
    int to = out.toString().indexOf("? with a word");
    assertTrue(out.toString().substring(from, to).lines().count() < 60, out.toString());
  }

  @Test
  void secondCase_moves_showTheirPrices() {
    assertEquals(0, train("supply off load\nsupply on dummy load\nleave\n", "--text", "2"));
    assertSays("[2 min; 2 min so far]");
    assertSays("[3 min; 5 min so far]");
  }

  @Test
  void pull_inTheThirdCase_asksAndOneWordSkips() {
    assertEquals(0, train("wrist strap\ntake out U9\nskip\nleave\n", "--text", "3"));
    assertSays("which part do you suspect");
    assertSays("U9 lies beside the board");
  }

  @Test
  void breach_warned_isDoneOnlyOnYes() {
    assertEquals(0, train("power on\nno\npower on\nyes\nleave\n", "--text", "2"));
    assertSays("Careful: A supply that gives too much");
    assertSays("Not done; it cost nothing.");
    assertSays("the board is on");
  }

  @Test
  void nextCase_asked_goesOn() {
    assertEquals(0, train("next case\nleave\n", "--text"));
    assertSays("Case 2");
  }

  @Test
  void caseFile_wrong_isRefusedInOneLineWithItsPlace(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("mine.json");
    Files.writeString(file, "{\n  \"format\": 1,\n  \"nam\": \"x\"\n}\n");
    assertEquals(2, train("", "--text", file.toString()));
    assertTrue(err.toString().contains("mine.json:3:3: found"), err.toString());
    assertEquals(1, err.toString().lines().count());
    assertEquals("", out.toString());
  }

  @Test
  void caseName_misspelt_namesTheNearest() {
    assertEquals(2, train("", "--text", "wrong-leters"));
    assertTrue(err.toString().contains("wrong-letters"), err.toString());
    assertEquals(1, err.toString().lines().count());
  }
}
