package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.Machine;
import faultfinch.machine.SoundNet;
import faultfinch.part.Dram4164;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tamarisk's sound, joystick levels and link with programs of a few bytes. Voices of 195 and 155:
 * 440.7 and 554.4 Hz. Reset ends after 55 ms.
 */
class TamariskSoundTest {
  private static final int SOUNDING = 57;
  private static final long HALF_A_SECOND = 500_000_000;

  private static Machine chord(Machine.Kind kind, String... faults) {
    return new TamariskProgram()
        .store(0xA200, 195)
        .store(0xA202, 155)
        .store(0xA205, 0xFF)
        .stop()
        .run(kind, SOUNDING, faults);
  }

  private static String heard(Machine.Kind kind, String... faults) {
    Machine machine = chord(kind, faults);
    Speaker speaker = Speaker.of(machine.board()).orElseThrow();
    speaker.look(machine);
    long from = machine.nanoseconds();
    Sound sound = speaker.sound(SoundNet.of(machine), from, from + HALF_A_SECOND, Ear.RATE);
    List<Heard> heard = Ear.hears(sound, 0);
    return heard.isEmpty() ? "silent" : heard.get(0).says();
  }

  @ParameterizedTest
  @EnumSource
  void chord_healthy_isLoudAndClear(Machine.Kind kind) {
    assertEquals("loud and clear long chord of 440 and 554 Hz", heard(kind));
  }

  @ParameterizedTest
  @EnumSource
  void chord_oneVoiceDead_isTheOtherAlone(Machine.Kind kind) {
    assertEquals("loud and clear long 554 Hz", heard(kind, "U34: defect voice-a-dead"));
  }

  /**
   * C21 holds the amplifier's gain down above 2.3 kHz; without it overtones are lifted by 13 dB.
   */
  @ParameterizedTest
  @EnumSource
  void chord_filterCapacitorOpen_isShrill(Machine.Kind kind) {
    assertEquals("loud and shrill long chord of 440 and 554 Hz", heard(kind, "C21: open"));
  }

  /** C20 carries the overtones round 33k; without it they fall from 2.3 kHz on. */
  @ParameterizedTest
  @EnumSource
  void chord_capacitorAcrossTheInputOpen_isDull(Machine.Kind kind) {
    assertEquals("loud and dull long chord of 440 and 554 Hz", heard(kind, "C20: open"));
  }

  @ParameterizedTest
  @EnumSource
  void chord_couplingCapacitorOpen_isSilent(Machine.Kind kind) {
    assertEquals("silent", heard(kind, "C26: open"));
  }

  /**
   * No way from the sum to the speaker; or an amplifier that has no supply, no bias, or a bias
   * drained through a bad capacitor (470 ohms below 100k is 23 mV) and so lies on the ground.
   */
  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(
      strings = {"R5: open", "U34.SUM: open pin", "U35.V+: open pin", "C25: leaks through 470"})
  void chord_pathBroken_isSilent(String fault) {
    Machine.Kind kind = Machine.Kind.FAST;
    assertEquals("silent", heard(kind, fault));
  }

  /**
   * The amplifier stands on 12 V, the tone generator and the bias on the analogue regulator, which
   * is fed from 12 V too: without either nothing sounds, and the rest of the board goes on.
   */
  @ParameterizedTest
  @ValueSource(strings = {"VR3: dead", "D20: open", "track C29.+-EX1.12V: open"})
  void chord_aRailOfTheSoundSideMissing_isSilent(String fault) {
    Machine.Kind kind = Machine.Kind.FAST;
    assertEquals("silent", heard(kind, fault));
  }

  /**
   * The potentiometers hang on the analogue regulator: without it, or without the 12 V it is fed
   * from, both wipers lie on the ground, and no stick moves anything.
   */
  @ParameterizedTest
  @CsvSource({
    "PLAIN, VR3: dead",
    "FAST, VR3: dead",
    "PLAIN, J2.+: open joint",
    "FAST, J2.+: open joint",
    "FAST, D20: open"
  })
  void levels_noAnalogueRail_bothStayAtZeroWhateverStickMoves(Machine.Kind kind, String fault) {
    Machine machine = reading(kind, fault);
    assertEquals(List.of(0, 0), read(machine));
    machine.hold("RV1", true);
    machine.runTo((SOUNDING + 1) * 1_000_000L);
    assertEquals(List.of(0, 0), read(machine));
  }

  /** Whoever blames the sticks, or the tone generator beside them, looks at the wrong chip. */
  @ParameterizedTest
  @EnumSource
  void levels_linkControllerDead_noStickMovesAndTheChordIsWell(Machine.Kind kind) {
    Machine machine = reading(kind, "U32: dead");
    List<Integer> before = read(machine);
    assertEquals(before.get(0), before.get(1));
    machine.hold("RV1", true);
    machine.runTo((SOUNDING + 1) * 1_000_000L);
    assertEquals(before, read(machine));
    assertEquals("loud and clear long chord of 440 and 554 Hz", heard(kind, "U32: dead"));
  }

  /** A track of the sum that a defect loads with 150 ohms: 600 ohms drive a fifth of it. */
  @ParameterizedTest
  @EnumSource
  void chord_sumClamped_isSofter(Machine.Kind kind) {
    assertEquals(
        "soft and clear long chord of 440 and 554 Hz",
        heard(kind, "U34.SUM: clamps to ground through 150"));
  }

  /** What a program reads at both level inputs. */
  private static List<Integer> levels(Machine.Kind kind, String... faults) {
    return read(reading(kind, faults));
  }

  private static Machine reading(Machine.Kind kind, String... faults) {
    TamariskProgram program = new TamariskProgram();
    program.bytes(0xAD, 0x05, 0xA1, 0x85, 0x10, 0xAD, 0x06, 0xA1, 0x85, 0x11, 0x4C, 0x00, 0xE0);
    return program.run(kind, SOUNDING, faults);
  }

  private static List<Integer> read(Machine machine) {
    return List.of(memory(machine, 0x10), memory(machine, 0x11));
  }

  private static int memory(Machine machine, int address) {
    int value = 0;
    for (int bit = 0; bit < 8; bit++) {
      value |= machine.cell("U" + (4 + bit), Dram4164.CELLS, address) << bit;
    }
    return value;
  }

  /** 2500 of 5000 mV are 32 of 64 steps; a wiper at its stop stands a hundredth below: 63. */
  @ParameterizedTest
  @EnumSource
  void levels_stickLetGoAndPushed_readTheMiddleAndTheEnd(Machine.Kind kind) {
    Machine machine = reading(kind);
    assertEquals(List.of(32, 32), read(machine));
    machine.hold("RV1", true);
    machine.runTo((SOUNDING + 1) * 1_000_000L);
    assertEquals(List.of(63, 32), read(machine));
  }

  /** Let go the control stands in its middle; turned up, nothing of it lies in the way. */
  @Test
  void volume_turnedUp_isTwiceAsLoudAndMore() {
    double middle = loudness(false);
    assertTrue(middle > 0);
    // In the middle 1.1k of 2.8k, 0.393 of the sum, behind 0.67k drive 43k; turned up, 22 ohms from
    // the end, 2.178k of 2.8k, 0.778, behind 0.48k: 0.01789 against 0.00900 a kilohm.
    assertEquals(1.99, loudness(true) / middle, 0.1);
  }

  /**
   * Its wiper or its hot end off, nothing comes through. Its cold end off, all of the sum drives
   * 1.7k and 43k: 0.0224 a kilohm.
   */
  @Test
  void volume_oneEndOff_isSilentOrFull() {
    assertEquals("silent", heard(Machine.Kind.FAST, "RV3.2: open joint"));
    assertEquals("silent", heard(Machine.Kind.FAST, "RV3.1: open joint"));
    assertEquals(2.49, loudness(false, "RV3.3: open joint") / loudness(false), 0.15);
  }

  private static double loudness(boolean up, String... faults) {
    Machine machine = chord(Machine.Kind.FAST, faults);
    machine.hold("RV3", up);
    long from = machine.nanoseconds();
    Speaker speaker = Speaker.of(machine.board()).orElseThrow();
    speaker.look(machine);
    Sound sound = speaker.sound(SoundNet.of(machine), from, from + HALF_A_SECOND, Ear.RATE);
    double square = 0;
    for (short sample : sound.samples()) {
      square += (double) sample * sample;
    }
    return Math.sqrt(square);
  }

  /** Nothing leads to the input: it stands at 0 V, and only this stick is stuck at an end. */
  @ParameterizedTest
  @EnumSource
  void levels_oneInputCutOff_stickBlamed(Machine.Kind kind) {
    assertEquals(List.of(0, 32), levels(kind, "R17: open"));
  }

  /** Without its reference every level is above full scale: both sticks at their end. */
  @ParameterizedTest
  @EnumSource
  void levels_referenceOpen_bothAtTheEnd(Machine.Kind kind) {
    assertEquals(List.of(63, 63), levels(kind, "U32.REF: open pin"));
  }

  /**
   * The wiper sees 5k to 5 V, and 5k beside 1k + 4k7, which are 2.66k, to ground: 1738 mV. Of that
   * 4.7 of 5.7 stand at the input, 1433 mV: 18 of 64 steps.
   */
  @ParameterizedTest
  @EnumSource
  void levels_leakAtTheInput_readsTooLow(Machine.Kind kind) {
    assertEquals(18, levels(kind, "U32.LV1: leaks to ground through 4700").get(0));
  }

  /** Asks the drive whether it is there; 1,280 cycles are 0.93 ms, a byte takes 0.4. */
  private static int driveSays(Machine.Kind kind, String... faults) {
    TamariskProgram program =
        new TamariskProgram().store(0x0010, 0).store(0xA101, 2).store(0xA100, 0x40);
    wait(program);
    program.store(0xA101, 0x01);
    wait(program);
    program.bytes(0xAD, 0x00, 0xA1, 0x85, 0x10).stop();
    return memory(program.run(kind, SOUNDING + 2, faults), 0x10);
  }

  private static void wait(TamariskProgram program) {
    program.bytes(0xA2, 0x00, 0xCA, 0xD0, 0xFD);
  }

  @ParameterizedTest
  @EnumSource
  void drive_healthyLink_saysItIsThere(Machine.Kind kind) {
    assertEquals(0x5A, driveSays(kind));
  }

  /**
   * A driver that cannot pull, an input cut off, a drive without supply, lines without pull-ups.
   */
  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(strings = {"U33.2Y: open pin", "U32.ACK/: open pin", "DRV1: dead", "F2: open"})
  void drive_linkBroken_doesNotAnswer(String fault) {
    Machine.Kind kind = Machine.Kind.FAST;
    assertEquals(0, driveSays(kind, fault));
  }

  @ParameterizedTest
  @EnumSource
  void drive_strobeDriverOpen_doesNotAnswer(Machine.Kind kind) {
    assertEquals(0, driveSays(kind, "U33.1Y: open pin"));
  }

  /** With the data line cut at the buffer the command arrives as 00, which the drive ignores. */
  @ParameterizedTest
  @EnumSource
  void drive_dataDriverOpen_hearsNoCommand(Machine.Kind kind) {
    assertEquals(0, driveSays(kind, "U33.3Y: open pin"));
  }

  /** Pins put out on the side port, read back at the pins. */
  private static int sidePort(Machine.Kind kind, String... faults) {
    TamariskProgram program = new TamariskProgram().store(0xA104, 0xFF).store(0xA103, 0xA5);
    program.bytes(0xAD, 0x03, 0xA1, 0x85, 0x10).stop();
    return memory(program.run(kind, SOUNDING, faults), 0x10);
  }

  @ParameterizedTest
  @EnumSource
  void sidePort_oneBitClamped_isTheBitThatReadsBackWrong(Machine.Kind kind) {
    assertEquals(0xA5, sidePort(kind));
    assertEquals(0xA4, sidePort(kind, "U32.SP0: clamps to ground through 1"));
  }
}
