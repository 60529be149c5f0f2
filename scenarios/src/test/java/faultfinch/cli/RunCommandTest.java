package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunCommandTest {

  @TempDir Path folder;

  private static Played done(String... args) {
    Played played = Played.of(args);
    assertEquals("", played.err());
    assertEquals(0, played.code());
    return played;
  }

  @Test
  void healthyBoard_powered_readsItsNameAndGetsReady() throws IOException {
    JsonNode json = new ObjectMapper().readTree(done("run", "--json").out());
    assertEquals("reads 'SORREL'", json.get("shows").get("display").textValue());
    assertTrue(json.get("shows").get("lamp").textValue().startsWith("blinks"), json.toString());
    // 2.4576 MHz halved.
    assertEquals(1_228_800.0, json.get("clockHertz").doubleValue());
    for (JsonNode step : json.get("milestones")) {
      String name = step.get("name").textValue();
      boolean needsAKey =
          name.startsWith("key")
              || name.equals("program summed")
              || name.startsWith("memory tried");
      assertEquals(!needsAKey, step.get("reached").booleanValue(), name);
    }
  }

  @Test
  void keys_played_showInTheSentences() {
    String out = done("run", "--keys").out();
    assertTrue(out.contains("K1 pressed: "), out);
    assertTrue(out.contains("K4 pressed: "), out);
    assertTrue(out.contains("memory tried again"), out);
    assertTrue(!out.contains("not reached"), out);
  }

  /** The exercise of the board types FILES; its disc holds three. */
  @Test
  void keys_playedOnABoardWithASet_changeThePicture() {
    String out = done("run", "--board", "tamarisk", "--keys").out();
    assertTrue(out.contains("K18 (key F) pressed: 'f' appears, no sound."), out);
    assertTrue(out.contains("K4 (key ENTER) pressed: 'NOTES' appears, 'STAIRS' appears"), out);
    assertTrue(out.indexOf("K18 (key F)") < out.indexOf("K11 (key I)"), "in the order of presses");
  }

  @Test
  void openDataContact_ofTheDisplay_clearsOneBitOfEachLetter() {
    // D0 reads low: S 53 -> R 52, O 4F -> N 4E, E 45 -> D 44, R 52 and L 4C have it low already.
    String out = done("run", "--fault", "U9.D0: open contact").out();
    assertTrue(out.contains("Display when the board should be ready: reads 'RNRRDL'."), out);
    assertTrue(out.startsWith("Sorrel by Marrow Lane Works, U9.D0: open contact: "), out);
  }

  /** Its clock is there, up to its pin. */
  @Test
  void deadProcessor_powered_isNotSaidToLackItsClock() {
    String out = done("run", "--fault", "U1: dead").out();
    assertTrue(out.contains("The processor does nothing: it is dead"), out);
    assertFalse(out.contains("no clock"), out);
  }

  @Test
  void deadOscillator_powered_hasNoClockAndNoStep() {
    String out = done("run", "--fault", "X1: dead").out();
    assertTrue(out.contains("The processor has no clock."), out);
    assertTrue(out.lines().filter(l -> l.contains("not reached")).count() > 10, out);
  }

  @Test
  void bothMachines_sameBoard_tellTheSame() {
    String[] fault = {"run", "--fault", "U4.Y5/: drives low", "--seed", "5", "--machine", "fast"};
    String fast = done(fault).out();
    fault[6] = "plain";
    assertEquals(fast, done(fault).out());
  }

  /** Page 2 is written 02 ^ 5A = 58; without return leads the side port reads its rest, F0. */
  @Test
  void benchRom_plugged_isToldAfterOneRound() {
    Played ran = done("run", "--board", "tamarisk", "--bench-rom", "--return-leads");
    assertTrue(
        ran.out().contains("Station 04 wrote 58, read 58 at page 02: 000 of 252 differ. ========"),
        ran.out());
    assertTrue(ran.out().contains("Lamp after the round: no pulse."), ran.out());
    Played without = done("run", "--board", "tamarisk", "--bench-rom", "--json");
    assertTrue(without.out().contains("Station 09 wrote 00, read F0"), without.out());
  }

  @Test
  void benchRom_whereItCannotBe_isRefusedInOneLine() {
    assertEquals("faultfinch: --bench-rom: Sorrel has none", refused("run", "--bench-rom"));
    assertEquals(
        "faultfinch: --return-leads is given without --bench-rom; right would be both",
        refused("run", "--board", "tamarisk", "--return-leads"));
  }

  private static String refused(String... args) {
    Played ran = Played.of(args);
    assertEquals(2, ran.code());
    return ran.err().strip();
  }

  @Test
  void picture_written_isThePictureOfTheDisplay() throws IOException {
    Path file = folder.resolve("p.png");
    done("run", "--picture", file.toString());
    BufferedImage image = ImageIO.read(file.toFile());
    // 16 cells of 5 dots with 15 gaps and 3 dots of margin on each side, 6 pixels a dot.
    assertEquals((16 * 5 + 15 + 6) * 6, image.getWidth());
    // The letter S has lit dots, the last cell is blank: two colours must be told apart.
    long colours = image.getWidth() == 0 ? 0 : distinct(image, 0, 40);
    long blank = distinct(image, image.getWidth() - 50, 30);
    assertTrue(colours > blank, colours + " and " + blank);
    try (var left = Files.list(folder)) {
      assertEquals(List.of(file), left.toList());
    }
  }

  @Test
  void picture_ofABoardWithASet_isWhatTheSetShows() throws IOException {
    Path file = folder.resolve("set.png");
    Played ran = done("run", "--board", "tamarisk", "--picture", file.toString());
    assertTrue(ran.out().contains("256 pages passed"), ran.out());
    BufferedImage image = ImageIO.read(file.toFile());
    // Two dots in each of 176 half cycles of a line, 320 lines, 2 pixels a dot.
    assertEquals(2 * 176 * 2, image.getWidth());
    assertEquals(320 * 2, image.getHeight());
    // Seven inks on dark glass: the ribbon under the banner shows each.
    Set<Integer> colours = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        colours.add(image.getRGB(x, y));
      }
    }
    assertEquals(8, colours.size());
  }

  private static long distinct(BufferedImage image, int left, int wide) {
    return java.util.stream.IntStream.range(0, wide * image.getHeight())
        .map(i -> image.getRGB(left + i % wide, i / wide))
        .distinct()
        .count();
  }

  @Test
  void sound_written_holdsTheTwoTonesOfTheStart() throws Exception {
    Path file = folder.resolve("s.wav");
    done("run", "--seconds", "2", "--sound", file.toString());
    try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
      AudioFormat format = in.getFormat();
      assertEquals(44_100f, format.getSampleRate());
      assertEquals(1, format.getChannels());
      assertEquals(16, format.getSampleSizeInBits());
      assertEquals(2 * 44_100, in.getFrameLength());
      byte[] bytes = in.readAllBytes();
      // Nothing sounds while the reset lasts, 55 ms; the chirp follows between 0.15 and 0.27 s.
      assertEquals(0, loudest(bytes, 0, 2_200));
      assertTrue(loudest(bytes, 6_800, 11_000) > 3_000);
    }
  }

  private static int loudest(byte[] bytes, int from, int to) {
    int most = 0;
    for (int i = from; i < to; i++) {
      most = Math.max(most, Math.abs((short) (bytes[2 * i] & 0xFF | bytes[2 * i + 1] << 8)));
    }
    return most;
  }

  @Test
  void trace_written_risesInTimeAndShowsTheClock() throws IOException {
    Path file = folder.resolve("t.vcd");
    done(
        "run",
        "--trace",
        file.toString(),
        "--pins",
        "U1.PHI2, U1.VCC, X1.OUT, U1.PHI0",
        "--trace-at",
        "0.5",
        "--trace-cycles",
        "100");
    List<String> lines = Files.readAllLines(file);
    assertTrue(lines.contains("$timescale 1 ns $end"));
    assertTrue(lines.contains("$var wire 1 ! U1.PHI2 $end"));
    long before = 0;
    int rises = 0;
    for (String line : lines) {
      if (line.startsWith("#")) {
        long now = Long.parseLong(line.substring(1));
        assertTrue(now > before || before == 0 || line.equals(lines.get(lines.size() - 1)), line);
        before = now;
      }
      rises += line.equals("1!") ? 1 : 0;
    }
    // The clock rises once a cycle; the trace ends with the instruction, at most 7 cycles later.
    assertTrue(rises >= 99 && rises <= 107, "rises: " + rises);
    // 100 cycles of 1/1.2288 MHz are 81.4 us.
    assertTrue(before > 500_080_000 && before < 500_090_000, "ends at " + before);
    assertEquals(1, lines.stream().filter(l -> l.equals("1\"")).count());
    // It is the crystal's by two, and the processor's own clock follows the one it is given.
    long crystal = lines.stream().filter(l -> l.equals("1#")).count();
    assertEquals(2.0 * rises, crystal, 2);
    assertEquals(rises, lines.stream().filter(l -> l.equals("1$")).count(), 1);
  }

  /**
   * C12 lies behind the first regulator, which gives what it can: its input is not dragged down.
   */
  @Test
  void trace_ofASupplyThatIsShorted_isWhatAMeterShowsThere() throws IOException {
    Path file = folder.resolve("short.vcd");
    done(
        "run",
        "--board",
        "tamarisk",
        "--fault",
        "C12: short",
        "--trace",
        file.toString(),
        "--pins",
        "J1.+, VR1.OUT, VR2.OUT",
        "--trace-cycles",
        "2");
    List<String> lines = Files.readAllLines(file);
    assertTrue(lines.containsAll(List.of("1!", "0\"", "1#")), lines::toString);
    assertFalse(lines.contains("0!"), lines::toString);
  }

  /** Broken inside the package: a clip on the leg sees the board's line, not what the die does. */
  @Test
  void trace_ofALegThatIsBrokenInside_isThatOfItsPad() throws IOException {
    Path file = folder.resolve("leg.vcd");
    done(
        "run",
        "--fault",
        "U9.D0: open pin",
        "--trace",
        file.toString(),
        "--pins",
        "U9.D0",
        "--trace-at",
        "0.4",
        "--trace-cycles",
        "20");
    List<String> lines = Files.readAllLines(file);
    assertTrue(lines.contains("1!") && lines.contains("0!"), lines::toString);
  }

  @Test
  void longRun_switchedOffLater_tellsSo() {
    String out = done("run", "--seconds", "3").out();
    assertTrue(out.contains("switched on for 3.000 s"), out);
  }
}
