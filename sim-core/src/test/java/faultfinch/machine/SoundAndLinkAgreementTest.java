package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import faultfinch.fault.FaultKinds;
import faultfinch.part.Sram6116;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Both machines agree on a board that sounds, measures a stick and asks a drive, with interrupts
 * from the link. Static RAM from 0000, tone generator from 2000, link controller from 4000, ROM
 * from E000; a cycle is 1 us.
 */
class SoundAndLinkAgreementTest {
  private static final Board BOARD = board();

  /** Reset lasts 55 ms; a round of the program about 1. */
  private static final long RUN = 75_000_000;

  @Test
  void healthyBoard_runsItsProgram_hearsTheDriveAndSeesTheStick() {
    Machine machine = new Machine(Setup.healthy(BOARD, 1), Machine.Kind.PLAIN);
    machine.runTo(RUN);
    assertEquals(0x5A, machine.cell("U3", Sram6116.CELLS, 0x10));
    assertEquals(32, machine.cell("U3", Sram6116.CELLS, 0x11));
    machine.hold(POT, true);
    machine.runTo(RUN + 5_000_000);
    assertEquals(63, machine.cell("U3", Sram6116.CELLS, 0x11));
  }

  @Test
  void healthyBoard_bothMachines_agree() {
    assertEquals(
        Optional.empty(), Agreement.ofRuns(Setup.healthy(BOARD, 1), RUN + 40_000_000).difference());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "U6.ACK/: open pin",
        "U6.STB: drives high",
        "U8.DAT/: clamps to ground through 1",
        "U7.2Y: drives low",
        "U6.LV1: open pin",
        "U5.AO-U5.BO: bridge",
        "U5: dead"
      })
  void faultyBoard_bothMachines_agree(String fault) {
    Setup setup = Setup.healthy(BOARD, 1).with(List.of(FaultKinds.parse(fault, BOARD)));
    assertEquals(Optional.empty(), Agreement.ofRuns(setup, RUN).difference());
  }

  @Test
  void stickPushedWhileItRuns_bothMachines_agree() {
    List<KeyPress> push = List.of(new KeyPress(POT, 60, 5), new KeyPress(POT, 70, 10));
    List<Long> marks = List.of(59_000_000L, 62_000_000L, 66_000_000L, 72_000_000L);
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(Setup.healthy(BOARD, 1), push, marks, 2_000).difference());
  }

  @Test
  void fastMachine_voicesSoundingAndLinkNeverIdle_playsMuchFromTables() {
    Machine machine = new Machine(Setup.healthy(BOARD, 1), Machine.Kind.FAST);
    machine.runTo(RUN);
    long cycles = machine.cycles();
    long byPhases = machine.byPhases();
    machine.runTo(RUN + 40_000_000);
    double share = (double) (machine.byPhases() - byPhases) / (machine.cycles() - cycles);
    assertTrue(share < 0.6, "share of cycles by phases: " + share);
  }

  private static final String POT = "U9";

  private static Board board() {
    Sheet s = new Sheet();
    s.part("6502", "");
    String rom = s.part("2764", "");
    String ram = s.part("6116", "");
    String timer = s.part("555", "");
    s.on("CLK", s.part("OSC", "") + ".OUT U1.PHI0");
    s.on("RAMP", s.part("R", "100k") + ".2 " + timer + ".TRIG " + timer + ".THR");
    String ramp = s.part("C", "500n");
    s.on("RAMP", ramp + ".1");
    s.on("GND", ramp + ".2");
    s.on("5V", "R1.1 U1.SO " + timer + ".RES/ " + rom + ".VPP " + rom + ".PGM/");
    for (int i = 0; i < 16; i++) {
      s.on("A" + i, "U1.A" + i);
    }
    s.bus("D", "U1", "D", 0, 8);
    s.bus("D", rom, "D", 0, 8);
    s.bus("D", ram, "D", 0, 8);
    s.bus("A", rom, "A", 0, 13);
    s.bus("A", ram, "A", 0, 11);
    s.on("RW", "U1.RW");
    s.on("PHI2", "U1.PHI2");
    String pulls = s.part("RPACK8", "4k7");
    s.on("5V", pulls + ".COM");
    s.on("RDY", "U1.RDY " + pulls + ".8");
    s.on("NMI/", "U1.NMI/ " + pulls + ".7");
    s.on("IRQ/", "U1.IRQ/ " + pulls + ".6");
    String tone = s.part("TONE", "");
    String link = s.part("LINKC", "");
    String drivers = s.part("74LS06", "");
    String drive = s.part("DRIVE", "");
    String pot = s.part("POT", "10k");
    devices(s, tone, link);
    link(s, link, drivers, drive, pulls);
    s.on("5V", pot + ".1 " + link + ".REF");
    s.on("GND", pot + ".3 " + link + ".LV2");
    s.on("WIPER", pot + ".2 " + s.part("R", "1k") + ".1");
    s.on("LV1", "R2.2 " + link + ".LV1");
    s.on("AO", tone + ".AO");
    s.on("BO", tone + ".BO");
    decoding(s, rom, ram, tone, link, timer);
    return s.board("sound-and-link", 1_000_000, 1000, rom, program(), List.of());
  }

  private static void devices(Sheet s, String tone, String link) {
    s.bus("D", tone, "D", 0, 8);
    s.bus("A", tone, "A", 0, 4);
    s.bus("D", link, "D", 0, 8);
    s.bus("A", link, "A", 0, 3);
    s.on("RW", tone + ".RW " + link + ".RW");
    s.on("PHI2", tone + ".PHI2 " + link + ".PHI2");
    s.on("IRQ/", link + ".IRQ/");
  }

  private static void link(Sheet s, String link, String drivers, String drive, String pulls) {
    String[] lines = {"STB", "ATN", "DO"};
    String[] ends = {"STB/", "ATN/", "DAT/"};
    for (int i = 0; i < lines.length; i++) {
      s.on(lines[i], link + "." + lines[i] + " " + drivers + "." + (i + 1) + "A");
      s.on(ends[i], drivers + "." + (i + 1) + "Y " + drive + "." + ends[i]);
      s.on(ends[i], pulls + "." + (i + 1));
    }
    s.on("DAT/", link + ".DAT/");
    s.on("ACK/", link + ".ACK/ " + drive + ".ACK/ " + pulls + ".4");
  }

  private static void decoding(
      Sheet s, String rom, String ram, String tone, String link, String timer) {
    String decoder = s.part("74LS138", "");
    s.on("A13", decoder + ".A");
    s.on("A14", decoder + ".B");
    s.on("A15", decoder + ".C");
    s.on("5V", decoder + ".G1");
    s.on("GND", decoder + ".G2A/ " + decoder + ".G2B/");
    s.on("Y0/", decoder + ".Y0/ " + ram + ".CE/");
    s.on("Y1/", decoder + ".Y1/ " + tone + ".CS/");
    s.on("Y2/", decoder + ".Y2/ " + link + ".CS/");
    s.on("Y7/", decoder + ".Y7/ " + rom + ".CE/");
    s.on("START", timer + ".OUT");
    String reset = s.gate("74LS04", "START");
    s.on(reset, "U1.RES/ " + tone + ".RES/ " + link + ".RES/");
    String reads = s.gate("74LS00", "RW", "PHI2");
    String writes = s.gate("74LS00", s.gate("74LS04", "RW"), "PHI2");
    s.on(reads, rom + ".OE/ " + ram + ".OE/");
    s.on(writes, ram + ".WE/");
  }

  /** Sounds two voices and a noise, then asks the drive and reads the stick, round and round. */
  private static byte[] program() {
    Program p = new Program();
    int reset = p.here();
    p.bytes(0xD8, 0xA2, 0xFF, 0x9A);
    int[] set = {0, 17, 2, 41, 4, 9, 5, 0xFF, 6, 0x1F, 7, 3};
    for (int i = 0; i < set.length; i += 2) {
      p.bytes(0xA9, set[i + 1]).word(0x8D, 0x2000 + set[i]);
    }
    p.bytes(0x58);
    int main = p.here();
    p.bytes(0xA9, 6).word(0x8D, 0x4001).bytes(0xA9, 0x40).word(0x8D, 0x4000);
    busy(p);
    p.bytes(0xA9, 4).word(0x8D, 0x4001).bytes(0xA9, 5).word(0x8D, 0x4001);
    busy(p);
    p.word(0xAD, 0x4000).bytes(0x85, 0x10).word(0xAD, 0x4005).bytes(0x85, 0x11);
    p.bytes(0xE6, 0x12, 0xA5, 0x12).word(0x8D, 0x2002).bytes(0xA9, 0).word(0x8D, 0x4000);
    p.bytes(0xA9, 0x80).word(0x8D, 0x4001);
    p.word(0x4C, main);
    int irq = p.here();
    p.bytes(0x48).word(0xAD, 0x4002).bytes(0xE6, 0x14, 0x68, 0x40);
    return p.vectors(irq, reset, irq).image();
  }

  /** Waits while the controller is busy, at most 256 looks. */
  private static void busy(Program p) {
    p.bytes(0xA2, 0x00);
    int look = p.here();
    p.word(0xAD, 0x4002).bytes(0x29, 0x40, 0xF0, 0x03, 0xCA).back(0xD0, look);
  }
}
