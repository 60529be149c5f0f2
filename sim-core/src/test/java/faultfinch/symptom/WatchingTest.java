package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Setup;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an owner of the first board sees and hears, worked out by hand from its faults. */
class WatchingTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Setup HEALTHY = Setup.healthy(SORREL, 1);

  private static Watching broken(String fault) {
    return Watching.of(HEALTHY.with(List.of(FaultKinds.parse(fault, SORREL))));
  }

  @Test
  void symptoms_healthyBoard_areItsNameItsChirpAndItsBlinkingLamp() {
    Watching seen = Watching.of(HEALTHY);
    Symptoms symptoms = seen.symptoms();
    assertEquals("reads 'SORREL'", symptoms.feature(Symptoms.DISPLAY));
    // The tone line turns every 16 n cycles of 1.2288 MHz: 38400 / n hertz. n is 44, then 29:
    // 873 Hz is 13.7 cents below A5 (880), 1324 Hz is 7 above E6 (1318.5).
    assertEquals("short 880 Hz, short 1319 Hz", symptoms.feature(Symptoms.SOUND));
    // 25 of about 50 ticks a second lit, 25 dark.
    assertEquals("blinks once a second", symptoms.feature(Symptoms.LAMP));
    assertEquals(SORREL.milestones().size(), seen.milestones().size());
  }

  @Test
  void symptoms_healthyBoardWithKeyOne_echoTheKeyAndSoundTheKeyTone() {
    // n is 21: 1829 Hz, 34 cents below A#6 (1864.7). The last cell tells the key's number.
    assertEquals(
        "reads 'SORREL         1' with short 1865 Hz",
        Watching.of(HEALTHY).symptoms().feature(Symptoms.KEY + "K1"));
  }

  @Test
  void display_contactOfDataLineZeroOpen_readsTheNameWithThatBitLow() {
    // S 53 -> 52 R, O 4F -> 4E N, R 52 stays, R stays, E 45 -> 44 D, L 4C stays.
    Symptoms symptoms = broken("U9.D0: open contact").symptoms();
    assertEquals("reads 'RNRRDL'", symptoms.feature(Symptoms.DISPLAY));
    assertEquals("short 880 Hz, short 1319 Hz", symptoms.feature(Symptoms.SOUND));
  }

  @Test
  void display_oscillatorDead_showsNothingAndNothingSounds() {
    Watching seen = broken("X1: dead");
    assertEquals("silent", seen.symptoms().feature(Symptoms.SOUND));
    assertTrue(seen.milestones().isEmpty());
  }

  @Test
  void sound_beeperOpen_isSilentWhileTheBoardWorks() {
    Symptoms symptoms = broken("LS1: open").symptoms();
    assertEquals("silent", symptoms.feature(Symptoms.SOUND));
    assertEquals("reads 'SORREL'", symptoms.feature(Symptoms.DISPLAY));
  }

  @Test
  void lamp_resistorOpen_isDarkWhileTheBoardWorks() {
    Symptoms symptoms = broken("R4: open").symptoms();
    assertEquals("dark", symptoms.feature(Symptoms.LAMP));
    assertEquals("reads 'SORREL'", symptoms.feature(Symptoms.DISPLAY));
  }

  @Test
  void samples_chirp_moveWhileItSoundsAndRestBefore() {
    Watching seen = Watching.of(HEALTHY);
    Tone first = seen.tones(0, 400).get(0);
    long from = first.fromMilliseconds() * 1_000_000L;
    Sound sounding = seen.sound(from + 5_000_000, from + 25_000_000, 48_000);
    Sound before = seen.sound(from - 40_000_000, from - 20_000_000, 48_000);
    // 20 ms at 48 kHz are 960 samples.
    assertEquals(960, sounding.samples().length);
    assertTrue(loudest(sounding) > 4000);
    assertEquals(0, loudest(before));
  }

  private static int loudest(Sound sound) {
    short[] samples = sound.samples();
    int loudest = 0;
    for (short s : samples) {
      loudest = Math.max(loudest, Math.abs(s));
    }
    return loudest;
  }

  @Test
  void picture_readyDisplay_lightsAsManyDotsAsItsLettersHave() {
    Dots font = Dots.shipped();
    int dots = 0;
    for (char c : "SORREL".toCharArray()) {
      for (int i = 0; i < Dots.WIDE * Dots.HIGH; i++) {
        dots += font.lit(c, i % Dots.WIDE, i / Dots.WIDE) ? 1 : 0;
      }
    }
    Picture picture = Picture.of(Watching.of(HEALTHY).glassAt(400), 3);
    int[] argb = picture.argb();
    // The lightest colour is the lit dot's; a dot is 2 by 2 of its 3 by 3 pixels.
    int lightest = Arrays.stream(argb).max().orElseThrow();
    assertEquals(4L * dots, Arrays.stream(argb).filter(p -> p == lightest).count());
    assertEquals(argb.length, picture.width() * picture.height());
  }
}
