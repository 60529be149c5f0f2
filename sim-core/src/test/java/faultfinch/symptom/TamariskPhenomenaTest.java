package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What an owner of a faulty Tamarisk would see, and why. The firmware is at its prompt after 145
 * ms; its timer ticks 10 ms later, its first frame ends before 160 ms.
 */
class TamariskPhenomenaTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final int AT_THE_PROMPT = 200;
  private static final String NAME = "Tamarisk      Marrow Lane Works";
  private static final String ALL = "256 pages passed";

  private static Machine run(String... faults) {
    List<Fault> parsed = Arrays.stream(faults).map(f -> FaultKinds.parse(f, TAMARISK)).toList();
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1).with(parsed), Machine.Kind.FAST);
    machine.runTo(AT_THE_PROMPT * 1_000_000L);
    return machine;
  }

  private static boolean reached(Machine machine, String milestone) {
    return machine.milestones().containsKey(milestone);
  }

  /** For comparison with all that follows. */
  @Test
  void healthy_atThePrompt_showsBannerMemoryAndSevenInks() {
    Machine machine = run();
    Screen screen = Screen.look(machine);
    assertTrue(screen.synced());
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertEquals(
        Set.of("red", "green", "yellow", "blue", "magenta", "cyan", "white"), screen.inks());
    assertTrue(reached(machine, "M_TICK") && reached(machine, "M_FRAME"));
  }

  /** The latch's page bit moves the picture 1K up, where memory was cleared: blanks. */
  @Test
  void pageBitStuck_picture_isTheEmptyPageOfALivingMachine() {
    Machine machine = run("U29.Q0: drives high");
    Screen screen = Screen.look(machine);
    assertTrue(screen.synced() && screen.dark());
    assertTrue(reached(machine, "M_TICK") && reached(machine, "M_FRAME"));
  }

  /** Attributes off is a level of the same latch: all in plain white. */
  @Test
  void attributeEnableStuck_picture_hasNoColour() {
    Screen screen = Screen.look(run("U29.Q4: drives high"));
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertEquals(Set.of("white"), screen.inks());
  }

  /** Interrupted for ever the processor never gets back to what was interrupted. */
  @Test
  void interruptLineClamped_banner_isThereAndNothingTicks() {
    Machine machine = run("U28.IRQ/: clamps to ground through 1");
    assertEquals(List.of(NAME, ALL), Screen.look(machine).rows().subList(0, 2));
    assertFalse(reached(machine, "M_TICK") || reached(machine, "M_FRAME"));
  }

  /** Three parts pull the line; with the pin of one open the others still come through. */
  @Test
  void interruptPinOfThePictureOpen_timer_stillTicks() {
    Machine machine = run("U21.IRQ/: open pin");
    assertTrue(reached(machine, "M_TICK"));
    assertFalse(reached(machine, "M_FRAME"));
  }

  /** No memory drives line 5 any more: TTL inputs read high, and page 1 will not hold a 0 there. */
  @Test
  void memoryBitOpen_firmware_saysWhichLineAndGoesNoFurther() {
    Machine machine = run("U9.Q: open pin");
    Screen screen = Screen.look(machine);
    assertTrue(reached(machine, "M_NO_MEMORY"));
    assertFalse(reached(machine, "M_BANNER"));
    assertTrue(screen.rows().get(0).startsWith("memory does not hold"), screen.says());
  }

  /**
   * The address line stands still in one memory, so two places share a cell there: what differs on
   * the screen differs in bit 2 alone. 24h is a blank with that bit.
   */
  @Test
  void addressPinOfOneMemoryOpen_text_isWrongByThatBitOnly() {
    List<String> rows = Screen.look(run("U6.A3: open pin")).rows();
    String name = rows.stream().filter(r -> r.startsWith("Tamarisk")).findFirst().orElse("");
    assertFalse(name.equals(NAME));
    assertEquals(NAME.length(), name.length());
    for (int i = 0; i < name.length(); i++) {
      int wrong = name.charAt(i) ^ NAME.charAt(i);
      assertTrue(wrong == 0 || wrong == 4, "column " + i + " of " + name);
    }
  }

  /**
   * The picture's column is its row again, the processor's is not: memory passes, text does not.
   */
  @Test
  void pictureMultiplexerSelectStuck_memory_passesAndThePictureIsFromElsewhere() {
    Machine machine = run("U17.S: reads low");
    assertTrue(reached(machine, "M_PROMPT"));
    assertFalse(Screen.look(machine).rows().contains(NAME));
  }

  /**
   * The even buffer lets go and its lines keep what the odd one drove: each even column shows its
   * left neighbour. {@code " Tamarisk"} becomes {@code " aaaaiikk"}.
   */
  @Test
  void evenBufferSilent_everySecondColumn_repeatsTheOneBefore() {
    assertTrue(Screen.look(run("U22.OE/: reads high")).rows().get(0).startsWith("aaaaiikk "));
  }

  /** The line floats at the shifter's TTL input and reads high: dot 3 is lit in every glyph. */
  @Test
  void characterRomPinOpen_everyCell_hasTheSameStripe() {
    Screen screen = Screen.look(run("U24.D3: open pin"));
    for (int y = 44; y < 44 + 240; y++) {
      for (int column = 0; column < 36; column++) {
        assertTrue(screen.dot(48 + 8 * column + 4, y) != 0, "line " + y + " column " + column);
      }
    }
  }

  /** Without 12 V the video controller gives neither sync nor address; the processor lives on. */
  @Test
  void twelveVoltsMissing_picture_isGoneAndTheTimerTicks() {
    Machine machine = run("J2.+: open joint");
    assertFalse(Screen.look(machine).synced());
    assertTrue(reached(machine, "M_PROMPT") && reached(machine, "M_TICK"));
    assertFalse(reached(machine, "M_FRAME"));
  }

  /** One regulator of three feeds the picture half. */
  @Test
  void pictureRegulatorDead_picture_isGoneAndTheTimerTicks() {
    Machine machine = run("VR2: dead");
    assertFalse(Screen.look(machine).synced());
    assertTrue(reached(machine, "M_PROMPT") && reached(machine, "M_TICK"));
  }

  /**
   * A5 of ROM 0 reads as its line last was inside the chip: the vector is fetched from elsewhere.
   */
  @Test
  void romAddressPinOpen_processor_neverReachesTheBanner() {
    Machine machine = run("U2.A5: open pin");
    assertFalse(reached(machine, "M_BANNER"));
    assertFalse(Screen.look(machine).synced());
  }
}
