package faultfinch.symptom;

import static faultfinch.symptom.TamariskRun.ALL;
import static faultfinch.symptom.TamariskRun.NAME;
import static faultfinch.symptom.TamariskRun.light;
import static faultfinch.symptom.TamariskRun.memory;
import static faultfinch.symptom.TamariskRun.millivolts;
import static faultfinch.symptom.TamariskRun.reached;
import static faultfinch.symptom.TamariskRun.toThePrompt;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Firmware;
import faultfinch.machine.Heat;
import faultfinch.machine.Machine;
import faultfinch.part.Eprom2764;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What faults of Tamarisk's decoding and of its ROMs look like, and why. */
class TamariskDecodingPhenomenaTest {
  private static final int AFTER_RESET = 57;

  private static Machine started(Machine.Kind kind, String... faults) {
    return TamariskRun.to(AFTER_RESET, 54, kind, TamariskRun.setup(faults));
  }

  /**
   * The port controller answers every read beside the ROM: 0.1 V behind 150 ohms against 3.8 V
   * behind 400 leave 1.1 V on the lines they disagree on. No program runs, and both get warm.
   */
  @ParameterizedTest
  @EnumSource
  void decoderOutputStuckActive_twoDevices_meetAtMidLevelsAndBothWarm(Machine.Kind kind) {
    Machine machine = started(kind, "U44.Y0/: drives low");
    assertFalse(reached(machine, "M_BANNER") || reached(machine, "M_SIZING"));
    assertEquals("mid", light(machine, "U1.D0"));
    Heat heat = machine.heat();
    assertTrue(heat.signalMilliwatts("U2") > 20, "ROM " + heat.signalMilliwatts("U2"));
    assertTrue(heat.signalMilliwatts("U28") > 10, "port " + heat.signalMilliwatts("U28"));
    Heat healthy = started(kind).heat();
    assertEquals(0, healthy.signalMilliwatts("U2") + healthy.signalMilliwatts("U28"));
  }

  /** Nobody ever selects the video controller: no sync, and no end of a frame. */
  @ParameterizedTest
  @EnumSource
  void decoderOutputStuckInactive_oneDevice_neverAnswers(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "U44.Y3/: drives high");
    assertFalse(Screen.look(machine).synced());
    assertTrue(reached(machine, "M_PROMPT") && reached(machine, "M_TICK"));
    assertFalse(reached(machine, "M_FRAME"));
  }

  /** The port controller is missing: as with the chip out, no banks and no ticks. */
  @ParameterizedTest
  @EnumSource
  void decoderOutputOfThePortOpen_banner_countsOneBank(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "U28.CS/: clamps to supply through 1");
    assertEquals(List.of(NAME, "160 pages passed"), Screen.look(machine).rows().subList(0, 2));
    assertFalse(reached(machine, "M_TICK"));
  }

  /**
   * A gate's input that is shorted inside holds the line its driver cannot lift: 3.4 V behind 100
   * ohms against 1 leave 34 mV, and the healthy decoder looks dead. One lifted leg tells: the
   * driver comes up to 3.4 V.
   */
  @ParameterizedTest
  @EnumSource
  void loadClampsAChipSelect_driverLooksDead_untilTheLoadIsLifted(Machine.Kind kind) {
    String clamp = "U40.4B: clamps to ground through 1";
    Machine clamped = started(kind, clamp);
    assertEquals("low", light(clamped, "U44.Y4/"));
    assertEquals(34, millivolts(clamped, "U44.Y4/"));
    assertTrue(clamped.heat().signalMilliwatts("U44") > 50);
    Machine lifted = started(kind, clamp, "U40.4B: open leg");
    assertEquals(3400, millivolts(lifted, "U44.Y4/"));
    Machine driverLifted = started(kind, clamp, "U44.Y4/: open leg");
    assertTrue(millivolts(driverLifted, "U40.4B") < 10, "still low: it was not the driver");
  }

  /** The line rests high at TTL inputs: D3 of every byte of the boot reads 1, and it runs wild. */
  @ParameterizedTest
  @EnumSource
  void romDataPinOpen_processor_runsWild(Machine.Kind kind) {
    Machine machine = started(kind, "U2.D3: open pin");
    assertFalse(reached(machine, "M_SIZING"));
  }

  /**
   * A5 of ROM 0 reads as its line last was inside the chip: the vector is fetched from elsewhere.
   */
  @ParameterizedTest
  @EnumSource
  void romAddressPinOpen_processor_neverReachesTheBanner(Machine.Kind kind) {
    Machine machine = started(kind, "U2.A5: open pin");
    assertFalse(reached(machine, "M_SIZING"));
    assertFalse(Screen.look(machine).synced());
  }

  /** One byte of the boot ROM is a small t: the banner says so, and all else is right. */
  @ParameterizedTest
  @EnumSource
  void romByteMisProgrammed_banner_isOdd(Machine.Kind kind) {
    Firmware rom = TamariskRun.BOARD.firmware().get(0);
    int at = new String(rom.image(), StandardCharsets.ISO_8859_1).indexOf("Tamarisk");
    String fault = String.format("U2: mis-programmed at %04X as 74", at);
    Screen screen = Screen.look(toThePrompt(kind, fault));
    assertEquals(List.of("t" + NAME.substring(1), ALL), screen.rows().subList(0, 2));
  }

  /**
   * One gate input misreads A14/: the devices of A000 answer at E000 too, beside the ROM. A program
   * out of their way adds up E000 to E7FF, 2,048 NOPs of EA: 2048 x 234 = 75000h, of which 16 bits
   * are 5000h. The sum is wrong, and the ROM, read out of its socket, is as it was written.
   */
  @ParameterizedTest
  @EnumSource
  void decoderFaultWithAGoodRom_sumIsWrong_andTheRomReadsBackRight(Machine.Kind kind) {
    assertEquals(0x5000, sum(summed(kind)));
    Machine machine = summed(kind, "U39.2B: reads high");
    assertNotEquals(0x5000, sum(machine));
    byte[] image = machine.board().firmware().get(0).image();
    byte[] readOut = new byte[image.length];
    for (int i = 0; i < image.length; i++) {
      readOut[i] = (byte) machine.cell("U2", Eprom2764.CELLS, i);
    }
    assertArrayEquals(image, readOut);
  }

  /** Adds up eight pages from E000; the sum is at 10 and 11 when 14 is 1. */
  private static Machine summed(Machine.Kind kind, String... faults) {
    return new TamariskProgram(0xF800)
        .bytes(0xA9, 0, 0x85, 0x14, 0x85, 0x10, 0x85, 0x11, 0x85, 0x12, 0xA8)
        .bytes(0xA9, 0xE0, 0x85, 0x13)
        .bytes(0x18, 0xB1, 0x12, 0x65, 0x10, 0x85, 0x10, 0x90, 2, 0xE6, 0x11, 0xC8, 0xD0, 0xF2)
        .bytes(0xE6, 0x13, 0xA5, 0x13, 0xC9, 0xE8, 0xD0, 0xEA, 0xA9, 1, 0x85, 0x14)
        .stop()
        .run(kind, 95, faults);
  }

  private static int sum(Machine machine) {
    assertEquals(1, memory(machine, 0x14), "the program ran to its end");
    return memory(machine, 0x11) << 8 | memory(machine, 0x10);
  }

  /** A key's line is read through the buffer the decoder opens; with it shut no key is seen. */
  @ParameterizedTest
  @CsvSource({"PLAIN", "FAST"})
  void keyDecoderOutputStuckInactive_board_bootsAndTakesNoKeys(Machine.Kind kind) {
    String fault = "U44.Y4/: drives high";
    Machine machine = TamariskRun.pressed(kind, TamariskRun.setup(fault), Set.of("K18"));
    assertTrue(reached(machine, "M_TICK"));
    assertFalse(reached(machine, "M_ECHO"));
    assertEquals("high", light(machine, "U40.4B"));
  }
}
