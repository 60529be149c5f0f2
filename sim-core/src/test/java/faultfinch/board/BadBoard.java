package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One thing wrong with Sorrel's description: a passage, and what someone wrote instead. The mark §
 * in it stands where the message should point.
 *
 * @param schema whether a schema can see it
 */
record BadBoard(String name, String from, String to, String found, String right, boolean schema) {
  static final Path SORREL = Path.of("src/main/resources/faultfinch/boards/sorrel");

  private static final String REST_OF_D0 = "U2.D0 (U9.D0) U3.D0 U8.D0 U10.1Y1";
  private static final String TRACK = "a pin, written for example U4.Y0/";

  static List<BadBoard> all() {
    return List.of(
        seen("a key no board has", "\"maker\"", "§\"makers\"", "unknown key 'makers'", "maker"),
        seen("a key left out", "\"format\": 1,", "", "without 'format'", "an object with 'format'"),
        seen(
            "a key of a part left out",
            "{\"ref\": \"U4\", \"type\": \"74LS138\", \"role\": \"address decoder\",",
            "§{\"ref\": \"U4\", \"type\": \"74LS138\",",
            "parts[18] without 'role'",
            "an object with 'role'"),
        seen(
            "a format of the future",
            "\"format\": 1",
            "\"format\": §2",
            "2",
            "a whole number from 1 to 1"),
        seen(
            "a text for a number",
            "\"hertz\": 2457600",
            "\"hertz\": §\"2457600\"",
            "'2457600'",
            "a whole number from 1 to 2147483647"),
        seen(
            "half a hertz",
            "\"hertz\": 2457600",
            "\"hertz\": §2457600.5",
            "2457600.5",
            "a whole number from 1 to 2147483647"),
        seen("a number for a text", "\"title\": \"Sorrel\"", "\"title\": §7", "7", "a text"),
        seen(
            "a text for a truth",
            "\"turn\": 270, \"socketed\": true",
            "\"turn\": 270, \"socketed\": §\"yes\"",
            "'yes'",
            "true or false"),
        seen(
            "null",
            "\"outline\": {\"width\": 190, \"height\": 125}",
            "\"outline\": §null",
            "null",
            "an object"),
        seen(
            "an object for a list",
            "\"right\": {\"display\": \"SORREL\"}",
            "\"right\": §[]",
            "a list of 0",
            "an object"),
        seen(
            "an empty title",
            "\"title\": \"Sorrel\"",
            "\"title\": §\"\"",
            "''",
            "a text that is not empty"),
        seen("a turn askew", "\"turn\": 270", "\"turn\": §45", "45", "0, 90, 180 or 270"),
        seen("three coordinates", "[97, 95]", "§[97, 95, 2]", "a list of 3", "a list of 2"),
        seen(
            "a class of failures no one knows",
            "\"class\": \"CPU\"",
            "\"class\": §\"cpu\"",
            "'cpu'",
            "LS, LSI, EPROM, SRAM, DRAM, CPU, regulator, clock, passive, electrolytic, ceramic or connector"),
        seen(
            "a resistor in commas",
            "\"value\": \"330\"",
            "\"value\": §\"3,3k\"",
            "'3,3k'",
            "for example 330, 4k7, 1M, 100n, 1000u or 1A"),
        seen("a phase of another name", "\"C-col\"", "§\"C-column\"", "'C-column'", "C-col"),
        seen(
            "phases in another order",
            "{\"name\": \"V-row\", \"nanoseconds\": 130},\n    {\"name\": \"V-col\"",
            "{\"name\": §\"V-col\", \"nanoseconds\": 130},\n    {\"name\": \"V-row\"",
            "'V-col'",
            "V-row"),
        seen(
            "five phases",
            "\"phases\": [\n    {\"name\": \"V-row\", \"nanoseconds\": 130},",
            "\"phases\": §[",
            "a list of 5",
            "a list of 6"),
        seen(
            "a brick without voltage",
            "\"noLoadVolts\": 11.5",
            "\"noLoadVolts\": §0",
            "0",
            "a number from 0.001 to 1000"),
        seen(
            "no rails",
            "[\n      {\"net\": \"5V\", \"regulator\": \"VR1\", \"from\": \"RAW\"}\n    ]",
            "§[]",
            "an empty list",
            "a list of at least one rail"),
        seen(
            "a key for no time",
            "\"atMs\": 1250, \"forMs\": 120",
            "\"atMs\": 1250, \"forMs\": §0",
            "0",
            "a whole number from 1 to 1000000"),
        seen(
            "a drill nobody knows",
            "\"exercise\": [",
            "\"drills\": [{\"name\": §\"dance\", \"steps\": []}], \"exercise\": [",
            "'dance'",
            "sticks or tape"),
        seen(
            "two steps in one",
            "\"exercise\": [",
            "\"drills\": [{\"name\": \"sticks\", \"steps\": [§{\"hold\": [\"K1\"], \"free\": []}]}],"
                + " \"exercise\": [",
            "a step with 2 keys",
            "a step with one key"),
        seen(
            "a pin without its part",
            "\"U1.D0 " + REST_OF_D0,
            "\"§D0 " + REST_OF_D0,
            "'D0'",
            TRACK),
        seen(
            "nothing for a track",
            "\"KEY1\": \"K1.1 U10.1A1 RN1.1\"",
            "\"KEY1\": \"§\"",
            "the end of the track",
            TRACK),
        seen("a bracket first", "\"U1.D0 " + REST_OF_D0, "\"§(U1.D0) " + REST_OF_D0, "'('", TRACK),
        seen("an empty branch", "U2.D0 (U9.D0) U3.D0", "U2.D0 (§) U9.D0 U3.D0", "')'", TRACK),
        seen(
            "no blank before a branch",
            "U2.D0 (U9.D0) U3.D0",
            "U2.D0§(U9.D0) U3.D0",
            "'('",
            "a blank, or ) at the end of a branch"),
        seen(
            "no blank after a branch",
            "U2.D0 (U9.D0) U3.D0",
            "U2.D0 (U9.D0)§U3.D0",
            "'U'",
            "a blank, or ) at the end of a branch"),
        seen("two blanks", "U2.D0 (U9.D0) U3.D0", "U2.D0 (U9.D0) § U3.D0", "' '", TRACK),
        seen(
            "a blank at the end",
            "U8.D0 U10.1Y1\"",
            "U8.D0 U10.1Y1 §\"",
            "the end of the track",
            TRACK),
        hidden(
            "a bracket left open",
            "U2.D0 (U9.D0) U3.D0",
            "U2.D0 §(U9.D0 U3.D0",
            "a bracket that is not closed",
            "a ) after the branch"),
        hidden(
            "a branch of a branch that has no pad yet",
            "U2.D0 (U9.D0) U3.D0",
            "U2.D0 (§(U9.D0)) U3.D0",
            "'('",
            TRACK),
        hidden(
            "a bracket closed twice",
            "U2.D0 (U9.D0) U3.D0",
            "U2.D0 (U9.D0)§) U3.D0",
            "')' that closes nothing",
            "a ( before the branch"),
        hidden(
            "a place inside a track that has an escape",
            "\"U1.D0 " + REST_OF_D0,
            "\"\\u0055\\u0031.D0 §U22.D0 (U9.D0) U3.D0 U8.D0 U10.1Y1",
            "unknown part 'U22'",
            "U12, U11 or U2"),
        hidden(
            "a part the catalogue lacks",
            "\"74LS138\"",
            "§\"74LS139\"",
            "unknown part type '74LS139'",
            "74LS138, 74LS145 or 74LS157"),
        hidden(
            "a part that is not there",
            "\"U1.D0 U2.D0",
            "\"U1.D0 §U13.D0",
            "unknown part 'U13'",
            "U11, U12 or U10"),
        hidden(
            "a pin the part lacks",
            "\"U4.Y0/ U3",
            "\"U4.§Y0 U3",
            "unknown pin 'Y0' of U4, a 74LS138",
            "Y0/, Y1/ or Y2/"),
        hidden(
            "a pin on two nets",
            "\"KEY2\": \"K2.1",
            "\"KEY2\": \"§K1.1 K2.1",
            "K1.1 again, after net KEY1",
            "each pin on one net, once"),
        hidden(
            "a pin twice on one net",
            "\"K2.1 U10.1A2",
            "\"K2.1 §K2.1 U10.1A2",
            "K2.1 again, after net KEY2",
            "each pin on one net, once"),
        hidden(
            "a pin on a net and on none",
            "\"U1.PHI1\",",
            "\"U1.PHI1\", §\"U1.PHI2\",",
            "U1.PHI2 again, after net PHI2",
            "a pin that is on no net, once"),
        hidden(
            "a net twice",
            "\"KEY2\": \"K2.1",
            "§\"KEY1\": \"K2.1",
            "key 'KEY1' twice",
            "each key once; the first is in line 117"),
        hidden(
            "a reference twice",
            "{\"ref\": \"K4\"",
            "{\"ref\": §\"K3\"",
            "reference 'K3' twice",
            "each part its own; the first is in line 57"),
        hidden("a part off the board", "[97, 95]", "[97, §126]", "126", "a number from 0 to 125"),
        hidden(
            "a resistor without a value",
            "{\"ref\": \"R1\", \"type\": \"R\", \"role\": \"pull-up of the divider's set and clear pins\", \"at\": [39.5,"
                + " 37], \"turn\": 0, \"socketed\": false, \"value\": \"4k7\"",
            "§{\"ref\": \"R1\", \"type\": \"R\", \"role\": \"pull-up of the divider's set and clear pins\", \"at\":"
                + " [39.5, 37], \"turn\": 0, \"socketed\": false",
            "resistor R1 without 'value'",
            "for example 330, 4k7 or 1M"),
        hidden(
            "a resistor of so many farads",
            "\"value\": \"330\"",
            "\"value\": §\"330n\"",
            "'330n'",
            "ohms from 1 to 999M, for example 330, 4k7 or 1M"),
        hidden(
            "a resistor of none",
            "\"value\": \"330\"",
            "\"value\": §\"0k0\"",
            "'0k0'",
            "ohms from 1 to 999M, for example 330, 4k7 or 1M"),
        hidden(
            "a capacitor of so many ohms",
            "\"value\": \"500n\"",
            "\"value\": §\"500k\"",
            "'500k'",
            "farads, for example 47p, 4n7, 100n or 22u"),
        // Two ticks of 2,457,600 Hz are 813.8 ns; 130+140+137+130+140+137 is 814.
        hidden(
            "phases two nanoseconds long",
            "\"phases\": [\n    {\"name\": \"V-row\", \"nanoseconds\": 130}",
            "\"phases\": §[\n    {\"name\": \"V-row\", \"nanoseconds\": 132}",
            "phases that last 816 ns in all",
            "814 ns, the length of a cycle"),
        hidden(
            "an oscillator that is none",
            "{\"part\": \"X1\"",
            "{\"part\": §\"U7\"",
            "U7, a part of type 555",
            "a part of type OSC"),
        hidden(
            "a jack that is none",
            "\"jack\": \"J1\"",
            "\"jack\": §\"J2\"",
            "J2, a part of type LINK",
            "a jack"),
        hidden(
            "a net that is not there",
            "\"net\": \"9V\"",
            "\"net\": §\"90V\"",
            "unknown net '90V'",
            "9V or 5V"),
        hidden(
            "a rail the regulator does not make",
            "{\"net\": \"5V\"",
            "{\"net\": §\"RAW\"",
            "net 'RAW'",
            "the net of VR1.OUT"),
        hidden(
            "a rail from elsewhere",
            "\"from\": \"RAW\"",
            "\"from\": §\"FUSED\"",
            "net 'FUSED'",
            "the net of VR1.IN"),
        hidden(
            "a program in a RAM", "{\"part\": \"U2\"", "{\"part\": §\"U3\"", "U3, a 6116", "a ROM"),
        hidden(
            "an image that is not there",
            "\"firmware/sorrel.bin\"",
            "§\"firmware/sorel.bin\"",
            "no file 'firmware/sorel.bin'",
            "a file that can be read"),
        hidden(
            "an image that is a folder",
            "\"firmware/sorrel.bin\"",
            "§\"firmware\"",
            "a folder or damaged file 'firmware'",
            "a file that can be read"),
        hidden(
            "an image outside the folder",
            "\"firmware/sorrel.bin\"",
            "§\"../sorrel.bin\"",
            "'../sorrel.bin'",
            "a file in the board's folder, for example firmware/image.bin"),
        hidden(
            "an image of another length",
            "\"firmware/sorrel.bin\"",
            "§\"firmware/sorrel.lbl\"",
            "an image of 632 bytes",
            "8192, as many as the ROM has"),
        hidden(
            "a label that is not there",
            "\"M_READY\"",
            "§\"M_REDY\"",
            "unknown label 'M_REDY'",
            "M_READY"),
        hidden(
            "milestones without labels",
            ", \"labels\": \"firmware/sorrel.lbl\"}\n  ],\n\n  \"milestones\": [\n    {\"label\": \"M_RESET\"",
            "}\n  ],\n\n  \"milestones\": [\n    {\"label\": §\"M_RESET\"",
            "unknown label 'M_RESET'",
            "a firmware with 'labels'"),
        hidden(
            "a chip held in a drill",
            "\"exercise\": [",
            "\"drills\": [{\"name\": \"sticks\", \"steps\": [{\"hold\": [\"K1\", §\"U4\"]}]}], \"exercise\": [",
            "U4, a part of type 74LS138",
            "a switch or a potentiometer"),
        hidden(
            "a sign without a key",
            "\"exercise\": [",
            "\"drills\": [{\"name\": \"sticks\", \"steps\": [{\"line\": \"§go\"}]}], \"exercise\": [",
            "'g'",
            "a sign that a key of the board types by itself"),
        hidden(
            "a tape waited for that nobody watches",
            "\"exercise\": [",
            "\"drills\": [{\"name\": \"tape\", \"steps\": [§{\"awaitMs\": 10}]}], \"exercise\": [",
            "'awaitMs' in a drill without 'recorder'",
            "a recorder whose tape to wait for"),
        hidden(
            "a recorder that is none",
            "\"exercise\": [",
            "\"drills\": [{\"name\": \"tape\", \"recorder\": §\"U4\", \"steps\": []}], \"exercise\": [",
            "U4, a part of type 74LS138",
            "a tape recorder"),
        hidden(
            "a drill twice",
            "\"exercise\": [",
            "\"drills\": [{\"name\": \"tape\", \"steps\": []}, {\"name\": §\"tape\", \"steps\": []}],"
                + " \"exercise\": [",
            "'tape' again",
            "each drill once"),
        hidden(
            "a press of a chip",
            "\"press\": \"K4\"",
            "\"press\": §\"U4\"",
            "U4, a part of type 74LS138",
            "a key"),
        hidden(
            "a press of nothing",
            "\"press\": \"K4\"",
            "\"press\": §\"K5\"",
            "unknown part 'K5'",
            "K1, K2 or K3"),
        hidden(
            "a soldered chip worth taking out",
            "[\"U8\", \"U9\", \"U3\"]",
            "[\"U8\", \"U9\", §\"U4\"]",
            "U4, which has no socket",
            "a part in a socket"));
  }

  /** The description with the mistake in it. */
  String text() throws IOException {
    return marked().replace("§", "");
  }

  /** Line and column of the mark, or where there is none of the whole document, as {@code 5:12}. */
  String place() throws IOException {
    String marked = marked();
    int mark = marked.indexOf('§');
    if (mark < 0) {
      return "1:1";
    }
    String before = marked.substring(0, mark);
    return before.lines().count() + ":" + (mark - before.lastIndexOf('\n'));
  }

  @Override
  public String toString() {
    return name;
  }

  private String marked() throws IOException {
    String sorrel = Files.readString(SORREL.resolve("board.json"));
    int first = sorrel.indexOf(from);
    assertEquals(first, sorrel.lastIndexOf(from), "not there, or there twice: " + from);
    return sorrel.replace(from, to);
  }

  private static BadBoard seen(String name, String from, String to, String found, String right) {
    return new BadBoard(name, from, to, found, right, true);
  }

  private static BadBoard hidden(String name, String from, String to, String found, String right) {
    return new BadBoard(name, from, to, found, right, false);
  }
}
