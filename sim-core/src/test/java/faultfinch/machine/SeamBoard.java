package faultfinch.machine;

import faultfinch.board.Board;
import java.util.List;

/**
 * A board with what Sorrel lacks: a picture counter that addresses dynamic memory while the
 * processor's clock is low, a latch for what it fetches, two buses with a buffer between them, two
 * interrupts on one line, an analogue switch.
 *
 * <p>The map: static RAM from 0000, port A from 2000, port B from 4000, picture memory from 6000
 * (two bits wide, behind the buffer), inputs from 8000, ROM from E000.
 */
final class SeamBoard {
  private static final int CYCLE_NS = 1000;
  private final Sheet s = new Sheet();

  private final boolean told;

  private SeamBoard(boolean told) {
    this.told = told;
  }

  /** The board whose inputs look at the picture latch. */
  static Board board() {
    return new SeamBoard(true).drawn();
  }

  /** The board whose processor sees the counter, but nothing of what the picture half fetched. */
  static Board apart() {
    return new SeamBoard(false).drawn();
  }

  private Board drawn() {
    processor();
    decoder();
    dynamicMemory();
    ports();
    picture();
    return s.board("seam", 1_000_000, CYCLE_NS, "U2", program(), List.of());
  }

  private void processor() {
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
    s.on("START", timer + ".OUT");
    s.on(s.gate("74LS04", "START"), "U1.RES/");
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
  }

  private String reads;
  private String writes;
  private String written;

  private void decoder() {
    String decoder = s.part("74LS138", "");
    s.on("A13", decoder + ".A");
    s.on("A14", decoder + ".B");
    s.on("A15", decoder + ".C");
    s.on("5V", decoder + ".G1");
    s.on("GND", decoder + ".G2A/ " + decoder + ".G2B/");
    for (int i : new int[] {0, 1, 2, 3, 4, 7}) {
      s.on("Y" + i + "/", decoder + ".Y" + i + "/");
    }
    written = s.gate("74LS04", "RW");
    reads = s.gate("74LS00", "RW", "PHI2");
    writes = s.gate("74LS00", written, "PHI2");
    s.on("Y0/", "U3.CE/");
    s.on("Y7/", "U2.CE/");
    s.on(reads, "U2.OE/ U3.OE/");
    s.on(writes, "U3.WE/");
  }

  /** Row and column from the processor or, while its clock is low, from the picture counter. */
  private void dynamicMemory() {
    String strobes = s.part("STROBES", "");
    s.on("5V", strobes + ".EN");
    s.on("RAS/", strobes + ".RAS/");
    s.on("VCAS/", strobes + ".VCAS/");
    s.on("CCAS/", strobes + ".CCAS/");
    s.on("MUX", strobes + ".MUX");
    s.on("PIC", strobes + ".PIC");
    String column = s.gate("74LS08", "VCAS/", s.gate("74LS32", "CCAS/", "Y3/"));
    String write = s.gate("74LS32", writes, "Y3/");
    for (int chip = 0; chip < 2; chip++) {
      String ram = s.part("4164", "");
      s.bus("M", ram, "A", 0, 8);
      s.on("RAS/", ram + ".RAS/");
      s.on(column, ram + ".CAS/");
      s.on(write, ram + ".WE/");
      s.on("B" + chip, ram + ".D " + ram + ".Q");
    }
    String counter = s.part("74LS393", "");
    s.on("PHI2", counter + ".1CP/");
    s.on("V3", counter + ".2CP/");
    s.on("GND", counter + ".1MR " + counter + ".2MR");
    s.bus("V", counter, "1Q", 0, 4);
    for (int i = 0; i < 4; i++) {
      s.on("V" + (4 + i), counter + ".2Q" + i);
    }
    for (int half = 0; half < 2; half++) {
      String row = s.part("74LS157", "");
      String both = s.part("74LS157", "");
      s.on("PHI2", row + ".S");
      s.on("MUX", both + ".S");
      s.on("GND", row + ".G/ " + both + ".G/");
      for (int i = 0; i < 4; i++) {
        int line = 4 * half + i;
        String lane = "." + (i + 1);
        s.on("V" + line, row + lane + "A");
        s.on("A" + line, row + lane + "B");
        s.on("ROW" + line, row + lane + "Y " + both + lane + "B");
        s.on(line < 5 ? "A" + (8 + line) : "GND", both + lane + "A");
        s.on("M" + line, both + lane + "Y");
      }
    }
    String buffer = s.part("74LS245", "");
    for (int i = 0; i < 8; i++) {
      s.on("D" + i, buffer + ".A" + (i + 1));
      s.on("B" + i, buffer + ".B" + (i + 1));
    }
    s.on(written, buffer + ".DIR");
    s.on(s.gate("74LS00", "PHI2", s.gate("74LS04", "Y3/")), buffer + ".G/");
  }

  private void ports() {
    for (int i = 0; i < 2; i++) {
      String port = s.part("IOC", "");
      s.bus("D", port, "D", 0, 8);
      s.bus("A", port, "A", 0, 3);
      s.on("RW", port + ".RW");
      s.on("PHI2", port + ".PHI2");
      s.on("Y" + (1 + i) + "/", port + ".CS/");
      s.on("5V", port + ".CS");
      s.on("U6.1Y", port + ".RES/");
      s.on("IRQ/", port + ".IRQ/");
      s.on("PA" + i, port + ".PA0");
      s.on("TO" + i, port + ".TO");
    }
    String four = s.part("4066", "");
    s.on("PA0", four + ".1C");
    s.on("TO0", four + ".1A");
    s.on("LINE", four + ".1B " + s.part("R", "4k7") + ".1");
    s.on("PA1", four + ".2C");
    s.on("TO1", four + ".2A");
    s.on("LINE", four + ".2B");
    s.on("GND", "R2.2 " + four + ".3C " + four + ".4C");
  }

  private void picture() {
    String latch = s.part("74LS374", "");
    s.on("PIC", latch + ".CLK");
    s.on("GND", latch + ".OE/");
    for (int i = 0; i < 8; i++) {
      s.on(i < 2 ? "B" + i : "V" + i, latch + ".D" + i);
      s.on("P" + i, latch + ".Q" + i);
    }
    String buffer = s.part("74LS244", "");
    s.on(s.gate("74LS32", reads, "Y4/"), buffer + ".1G/ " + buffer + ".2G/");
    for (int i = 0; i < 4; i++) {
      s.on("D" + i, buffer + ".1Y" + (i + 1));
      s.on("D" + (4 + i), buffer + ".2Y" + (i + 1));
      String latched = i < 2 ? "P" + i : i == 2 ? "LINE" : "P7";
      s.on(told ? latched : "LINE", buffer + ".1A" + (i + 1));
      s.on("V" + (4 + i), buffer + ".2A" + (i + 1));
    }
  }

  /**
   * Fills and reads back picture memory, looks at the inputs, rings the tones and switches them
   * through, while two timers interrupt.
   */
  private static byte[] program() {
    Program p = new Program();
    int reset = p.here();
    p.bytes(0xD8, 0xA2, 0xFF, 0x9A);
    int[][] ports = {{0x2000, 200, 5}, {0x4000, 90, 9}};
    for (int[] port : ports) {
      int[] set = {1, 1, 2, port[1], 3, 1, 4, 3, 6, port[2]};
      for (int i = 0; i < set.length; i += 2) {
        p.bytes(0xA9, set[i + 1]).word(0x8D, port[0] + set[i]);
      }
    }
    p.bytes(0x58);
    int main = p.here();
    p.bytes(0xA2, 0x00);
    int fill = p.here();
    p.bytes(0x8A).word(0x9D, 0x6000).word(0x9D, 0x7F00).bytes(0xE8).back(0xD0, fill);
    int compare = p.here();
    p.word(0xBD, 0x6000).bytes(0x29, 3, 0x85, 0x10, 0x8A, 0x29, 3, 0xC5, 0x10, 0xF0, 2);
    p.bytes(0xE6, 0x11);
    p.word(0xAD, 0x8000).bytes(0x65, 0x12, 0x85, 0x12);
    p.bytes(0xE8).back(0xD0, compare);
    p.bytes(0xE6, 0x13, 0xA5, 0x13).word(0x8D, 0x2000).bytes(0x4A).word(0x8D, 0x4000);
    p.word(0x4C, main);
    int irq = p.here();
    p.bytes(0x48).word(0xAD, 0x2005).bytes(0x10, 2, 0xE6, 0x14);
    p.word(0xAD, 0x4005).bytes(0x10, 2, 0xE6, 0x15).bytes(0x68, 0x40);
    return p.vectors(irq, reset, irq).image();
  }
}
