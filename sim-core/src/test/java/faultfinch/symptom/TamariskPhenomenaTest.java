package faultfinch.symptom;

import static faultfinch.symptom.TamariskRun.ALL;
import static faultfinch.symptom.TamariskRun.NAME;
import static faultfinch.symptom.TamariskRun.reached;
import static faultfinch.symptom.TamariskRun.toThePrompt;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.Machine;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the owner of a Tamarisk would see of its latch, its interrupts and its rails, and why. */
class TamariskPhenomenaTest {

  /** For comparison with all that follows. */
  @ParameterizedTest
  @EnumSource
  void healthy_atThePrompt_showsBannerMemoryAndSevenInks(Machine.Kind kind) {
    Machine machine = toThePrompt(kind);
    Screen screen = Screen.look(machine);
    assertTrue(screen.synced());
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertEquals(
        Set.of("red", "green", "yellow", "blue", "magenta", "cyan", "white"), screen.inks());
    assertTrue(reached(machine, "M_TICK") && reached(machine, "M_FRAME"));
  }

  /**
   * The latch's page bit moves the picture 1K up, where memory was cleared: blanks. So does an open
   * pin, for the line then ends at a TTL input, which reads high. The machine lives: it sounds its
   * chord, and a key is taken.
   */
  @ParameterizedTest
  @CsvSource({
    "PLAIN, U29.Q0: drives high",
    "FAST, U29.Q0: drives high",
    "PLAIN, U29.Q0: open pin",
    "FAST, U29.Q0: open pin"
  })
  void pageBitStuckOrOpen_picture_isTheEmptyPageOfALivingMachine(Machine.Kind kind, String fault) {
    Machine machine = TamariskRun.pressed(kind, TamariskRun.setup(fault), Set.of("K18"));
    assertTrue(reached(machine, "M_CHORD") && reached(machine, "M_ECHO"));
    Screen screen = Screen.look(machine);
    assertTrue(screen.synced() && screen.dark());
  }

  /** Attributes off is a level of the same latch: all in plain white. */
  @ParameterizedTest
  @EnumSource
  void attributeEnableStuck_picture_hasNoColour(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U29.Q4: drives high"));
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertEquals(Set.of("white"), screen.inks());
  }

  /** With its enable line open nobody sees: the attribute memory is MOS, and the line falls low. */
  @ParameterizedTest
  @EnumSource
  void attributeEnableOpen_picture_keepsItsColours(Machine.Kind kind) {
    assertEquals(7, Screen.look(toThePrompt(kind, "U29.Q4: open pin")).inks().size());
  }

  /**
   * A bank bit that is stuck shows one of two banks twice: of 4 x 32 pages in the window 2 x 32 do
   * not keep a number of their own.
   */
  @ParameterizedTest
  @EnumSource
  void bankBitStuck_banner_countsTwoBanksLess(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U29.Q2: drives high"));
    assertEquals(List.of(NAME, "192 pages passed"), screen.rows().subList(0, 2));
  }

  /**
   * Interrupted a hundred times with nobody owning to it, the firmware goes on without interrupts:
   * banner, but no blink, no tick and no keys. Whoever clamps the line, it looks the same.
   */
  @ParameterizedTest
  @CsvSource({
    "PLAIN, U28.IRQ/: clamps to ground through 1",
    "FAST, U28.IRQ/: clamps to ground through 1",
    "PLAIN, U32.IRQ/: clamps to ground through 470",
    "FAST, U21.IRQ/: clamps to ground through 1"
  })
  void interruptLineClamped_banner_isThereAndNothingTicks(Machine.Kind kind, String fault) {
    Machine machine = TamariskRun.pressed(kind, TamariskRun.setup(fault), Set.of("K18"));
    assertFalse(reached(machine, "M_TICK") || reached(machine, "M_FRAME"));
    assertFalse(reached(machine, "M_ECHO"));
    assertEquals(List.of(NAME, ALL), Screen.look(machine).rows().subList(0, 2));
  }

  /**
   * What holds the line tells itself by its volts, without a pull. Before the first tick a driver
   * is alone, 0.1 V behind 150 ohms against 4k7: (0.1 / 150 + 5 / 4700) / (1 / 150 + 1 / 4700) =
   * 252 mV. A short of 1 ohm leaves 1 mV. With the leg lifted the line is free, and the rest of the
   * board still interrupts.
   */
  @ParameterizedTest
  @EnumSource
  void interruptLineHeldLow_voltsAndALiftedLeg_tellTheDriverFromTheLoad(Machine.Kind kind) {
    assertEquals(252, atTheLine(kind, "U21.IRQ/: drives low"));
    String clamp = "U21.IRQ/: clamps to ground through 1";
    assertTrue(atTheLine(kind, clamp) < 5);
    Machine lifted = toThePrompt(kind, clamp, "U21.IRQ/: open leg");
    assertTrue(reached(lifted, "M_TICK"));
    assertFalse(reached(lifted, "M_FRAME"));
  }

  private static int atTheLine(Machine.Kind kind, String fault) {
    Machine machine = TamariskRun.to(147, 136, kind, TamariskRun.setup(fault));
    return TamariskRun.millivolts(machine, "U1.IRQ/");
  }

  /** Three parts pull the line; with the pin of one open the others still come through. */
  @ParameterizedTest
  @EnumSource
  void interruptPinOfThePictureOpen_timer_stillTicksAndNothingBlinks(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "U21.IRQ/: open pin");
    assertTrue(reached(machine, "M_TICK"));
    assertFalse(reached(machine, "M_FRAME"));
  }

  /**
   * The timer's own interrupt does not come through, but every frame's does, and then the timer is
   * asked first: a tick each 20 ms, and the frame it came with goes unnoticed until its next.
   */
  @ParameterizedTest
  @EnumSource
  void interruptPinOfTheTimerOpen_ticks_comeAtHalfTheirRate(Machine.Kind kind) {
    int tick = 0;
    Machine healthy = TamariskRun.to(340, 320, kind, TamariskRun.setup());
    Machine slow = TamariskRun.to(340, 320, kind, TamariskRun.setup("U28.IRQ/: open pin"));
    assertEquals(20, TamariskRun.memory(healthy, tick), 1);
    assertEquals(10, TamariskRun.memory(slow, tick), 1);
  }

  /**
   * 12 V feeds the amplifier and the analogue regulator, so the tone generator too: it cannot be
   * heard nor written to, and boot asks nothing of it. What it does to the joystick levels is in
   * {@link TamariskSoundTest}.
   */
  @ParameterizedTest
  @EnumSource
  void twelveVoltsMissing_board_isSilentAndThePictureFine(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "J2.+: open joint");
    assertTrue(Screen.look(machine).rows().contains(NAME));
    assertTrue(reached(machine, "M_TICK") && reached(machine, "M_FRAME"));
  }

  /** All that an owner can tell: only what he hears differs from a healthy board. */
  @Test
  void twelveVoltsMissing_owner_missesTheChordAlone() {
    Map<String, String> healthy = new TreeMap<>(features());
    Map<String, String> without = new TreeMap<>(features("J2.+: open joint"));
    assertEquals("silent", without.remove(Symptoms.SOUND));
    assertNotEquals("silent", healthy.remove(Symptoms.SOUND));
    assertEquals(healthy, without);
  }

  private static Map<String, String> features(String... faults) {
    return Watching.of(TamariskRun.setup(faults)).symptoms().features();
  }

  /** One regulator of three feeds the picture half. */
  @ParameterizedTest
  @EnumSource
  void pictureRegulatorDead_picture_isGoneAndTheTimerTicks(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "VR2: dead");
    assertFalse(Screen.look(machine).synced());
    assertTrue(reached(machine, "M_PROMPT") && reached(machine, "M_TICK"));
  }
}
