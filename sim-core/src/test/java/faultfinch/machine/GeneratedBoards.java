package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import java.util.ArrayList;
import java.util.List;

/**
 * Boards nobody drew: the same processor, ROM, RAM, clock and reset each time, round them decoding,
 * devices and loose gates wired by chance, and a program that runs over all of it.
 */
final class GeneratedBoards {
  private static final String[] TWO = {
    "74LS00", "74LS02", "74LS08", "74LS32", "74LS86",
  };
  private static final int SLOT = 0x2000;
  private static final int DEVICES = 7;

  private final long seed;
  private final Sheet s = new Sheet();
  private final List<Integer> devices = new ArrayList<>();
  private final List<String> moving = new ArrayList<>();
  private final List<String> still = new ArrayList<>();
  private final List<KeyPress> keys = new ArrayList<>();
  private long drawn;
  private String rom;
  private int cycleNs;

  private GeneratedBoards(long seed) {
    this.seed = seed;
  }

  /** The board of this seed. */
  static Board board(long seed) {
    return new GeneratedBoards(seed).board();
  }

  private int below(int bound) {
    return Chance.below(bound, seed, drawn++);
  }

  private boolean oneIn(int n) {
    return below(n) == 0;
  }

  private String any(List<String> of) {
    return of.get(below(of.size()));
  }

  private Board board() {
    clockAndReset();
    core();
    int wanted = 2 + below(4);
    for (int i = 0; i < wanted; i++) {
      device(1 + below(DEVICES - 1));
    }
    looseGates(below(6));
    byte[] image = program();
    int hertz = (int) (1e9 / cycleNs + 0.5) * (cycleNs == 1000 ? 1 : 2);
    return s.board("generated-" + seed, hertz, cycleNs, rom, image, keys);
  }

  private void clockAndReset() {
    String cpu = s.part("6502", "");
    String crystal = s.part("OSC", "");
    s.on("5V", cpu + ".SO");
    if (oneIn(2)) {
      cycleNs = 1000;
      s.on("CLK", crystal + ".OUT " + cpu + ".PHI0");
    } else {
      cycleNs = 800;
      String half = s.part("74LS74", "");
      s.on("XTAL", crystal + ".OUT " + half + ".1CLK");
      s.on("HALF/", half + ".1Q/ " + half + ".1D");
      s.on("5V", half + ".1CLR/ " + half + ".1PR/");
      s.on("CLK", half + ".1Q " + cpu + ".PHI0");
    }
    String timer = s.part("555", "");
    s.on("5V", timer + ".RES/");
    s.on("RAMP", s.part("R", "100k") + ".2 " + timer + ".TRIG " + timer + ".THR");
    String ramp = s.part("C", "500n");
    s.on("RAMP", ramp + ".1");
    s.on("GND", ramp + ".2");
    s.on("5V", "R1.1");
    String reset = s.gate("74LS04", "START");
    s.on("START", timer + ".OUT");
    s.on(reset, cpu + ".RES/");
    still.add(reset);
    String pulls = s.part("RPACK8", "4k7");
    s.on("5V", pulls + ".COM");
    s.on("RDY", cpu + ".RDY " + pulls + ".8");
    s.on("NMI/", cpu + ".NMI/ " + pulls + ".7");
    s.on("IRQ/", cpu + ".IRQ/ " + pulls + ".6");
    still.addAll(List.of("RDY", "NMI/", "IRQ/"));
  }

  private void core() {
    rom = s.part("2764", "");
    String ram = s.part("6116", "");
    s.on("5V", rom + ".VPP " + rom + ".PGM/");
    for (int i = 0; i < 16; i++) {
      s.on("A" + i, "U1.A" + i);
      moving.add("A" + i);
    }
    s.bus("D", "U1", "D", 0, 8);
    s.bus("D", rom, "D", 0, 8);
    s.bus("D", ram, "D", 0, 8);
    s.bus("A", rom, "A", 0, 13);
    s.bus("A", ram, "A", 0, 11);
    s.on("RW", "U1.RW");
    s.on("PHI2", "U1.PHI2");
    s.on("SYNC", "U1.SYNC");
    moving.addAll(List.of("RW", "PHI2", "SYNC"));
    decoder();
    String read = oneIn(2) ? s.gate("74LS00", "RW", "PHI2") : s.gate("74LS04", "RW");
    String write = s.gate("74LS00", s.gate("74LS04", "RW"), "PHI2");
    s.on(read, rom + ".OE/ " + ram + ".OE/");
    s.on(write, ram + ".WE/");
    s.on(through("Y0/"), ram + ".CE/");
    s.on(through("Y7/"), rom + ".CE/");
    writes = write;
    reads = read;
    moving.add(read);
    moving.add(write);
  }

  private String writes;
  private String reads;

  private void decoder() {
    String decoder = s.part("74LS138", "");
    s.on("A13", decoder + ".A");
    s.on("A14", decoder + ".B");
    s.on("A15", decoder + ".C");
    s.on(oneIn(3) ? "PHI2" : "5V", decoder + ".G1");
    s.on("GND", decoder + ".G2A/ " + decoder + ".G2B/");
    for (int i = 0; i < 8; i++) {
      s.on("Y" + i + "/", decoder + ".Y" + i + "/");
      moving.add("Y" + i + "/");
    }
  }

  /** The same signal on another net, behind whatever keeps its sense. */
  private String through(String net) {
    switch (below(6)) {
      case 0 -> {
        return s.gate("74LS04", s.gate("74LS04", net));
      }
      case 1 -> {
        return s.gate("74LS32", net, net);
      }
      case 2 -> {
        return s.gate("74LS08", net, oneIn(2) ? net : "5V");
      }
      case 3 -> {
        String series = s.part("R", "330");
        s.on(net, series + ".1");
        s.on(series, series + ".2");
        return series;
      }
      case 4 -> {
        return s.gate("74LS86", net, "GND");
      }
      default -> {
        return net;
      }
    }
  }

  /** Something in a slot of the map; one of each kind at most, and slots may meet. */
  private void device(int slot) {
    if (devices.contains(slot)) {
      return;
    }
    devices.add(slot);
    String select = through("Y" + slot + "/");
    switch (below(7)) {
      case 0, 1 -> portTimer(select);
      case 2 -> display(select);
      case 3 -> inputs(select);
      case 4 -> memory(select);
      case 5 -> outputs(select);
      default -> behindBuffer(select);
    }
  }

  private void portTimer(String select) {
    String ioc = s.part("IOC", "");
    s.bus(data, ioc, "D", 0, 8);
    s.bus("A", ioc, "A", 0, 3);
    s.on("RW", ioc + ".RW");
    s.on("PHI2", ioc + ".PHI2");
    s.on(select, ioc + ".CS/");
    s.on(oneIn(4) ? "A12" : "5V", ioc + ".CS");
    s.on(still.get(0), ioc + ".RES/");
    s.on("IRQ/", ioc + ".IRQ/");
    s.on(ioc + ".TO", ioc + ".TO");
    still.add(ioc + ".TO");
    for (int i = 0; i < 8; i++) {
      s.on(ioc + ".PA" + i, ioc + ".PA" + i);
      still.add(ioc + ".PA" + i);
      if (oneIn(6)) {
        key(ioc + ".PA" + i);
      }
    }
  }

  private void key(String net) {
    String key = s.part("KEY", "");
    s.on(net, key + ".1");
    s.on(oneIn(3) && still.size() > 4 ? any(still) : "GND", key + ".2");
    keys.add(new KeyPress(key, 57 + below(8), 1 + below(8)));
  }

  private void display(String select) {
    String display = s.part("DISPLAY", "");
    s.bus(data, display, "D", 0, 8);
    s.bus("A", display, "A", 0, 4);
    s.on(select, display + ".CS/");
    s.on(writes, display + ".WE/");
    s.on(still.get(0), display + ".RES/");
    s.on(oneIn(2) ? "5V" : any(still), display + ".EN");
  }

  private void inputs(String select) {
    String buffer = s.part("74LS244", "");
    String gate = s.gate("74LS32", select, reads);
    s.on(gate, buffer + ".1G/ " + buffer + ".2G/");
    for (int i = 0; i < 4; i++) {
      s.on("D" + i, buffer + ".1Y" + (i + 1));
      s.on("D" + (4 + i), buffer + ".2Y" + (i + 1));
      s.on(oneIn(3) ? any(moving) : any(still), buffer + ".1A" + (i + 1));
      if (oneIn(2)) {
        s.on(any(still), buffer + ".2A" + (i + 1));
      }
    }
  }

  private void memory(String select) {
    String ram = s.part("6116", "");
    s.bus(data, ram, "D", 0, 8);
    s.on(select, ram + ".CE/");
    s.on(writes, ram + ".WE/");
    s.on(reads, ram + ".OE/");
    s.bus("A", ram, "A", 0, 7);
    String swap = s.part("74LS157", "");
    s.on(oneIn(2) ? any(still) : any(moving), swap + ".S");
    s.on("GND", swap + ".G/");
    for (int i = 0; i < 4; i++) {
      s.on("A" + (7 + i), swap + "." + (i + 1) + "A");
      s.on(oneIn(3) ? any(still) : "A" + (8 + i), swap + "." + (i + 1) + "B");
      String y = swap + "." + (i + 1) + "Y";
      s.on(y, y + " " + ram + ".A" + (7 + i));
    }
  }

  private void outputs(String select) {
    if (oneIn(2)) {
      String latch = s.part("74LS373", "");
      s.on(s.gate("74LS02", select, writes), latch + ".LE");
      latched(latch);
    } else {
      String latch = s.part("74LS374", "");
      s.on(s.gate("74LS32", select, writes), latch + ".CLK");
      latched(latch);
    }
  }

  private void latched(String latch) {
    s.on(oneIn(3) ? any(still) : "GND", latch + ".OE/");
    for (int i = 0; i < 8; i++) {
      s.on("D" + i, latch + ".D" + i);
      s.on(latch + ".Q" + i, latch + ".Q" + i);
      still.add(latch + ".Q" + i);
    }
  }

  private String data = "D";

  private void behindBuffer(String select) {
    String buffer = s.part("74LS245", "");
    for (int i = 0; i < 8; i++) {
      s.on("D" + i, buffer + ".A" + (i + 1));
      s.on("B" + i, buffer + ".B" + (i + 1));
    }
    s.on(s.gate("74LS04", "RW"), buffer + ".DIR");
    s.on(select, buffer + ".G/");
    data = "B";
    if (oneIn(2)) {
      memory(select);
    } else {
      portTimer(select);
    }
    data = "D";
  }

  private void looseGates(int count) {
    for (int i = 0; i < count; i++) {
      String a = oneIn(3) ? any(still) : any(moving);
      String b = oneIn(2) ? any(still) : any(moving);
      String y = s.gate(TWO[below(TWO.length)], a, b);
      (still.contains(a) && still.contains(b) ? still : moving).add(y);
      if (oneIn(6)) {
        // Wired: pulls a line with a pull-up low.
        String diode = s.part("D", "");
        s.on(oneIn(2) ? "IRQ/" : "NMI/", diode + ".A");
        s.on(y, diode + ".K");
      }
    }
    if (oneIn(3)) {
      String counter = s.part("74LS393", "");
      s.on(any(still), counter + ".1CP/");
      s.on(oneIn(2) ? "GND" : any(still), counter + ".1MR");
      s.on(counter + ".1Q3", counter + ".1Q3 " + counter + ".2CP/");
      s.on("GND", counter + ".2MR");
    }
  }

  private byte[] program() {
    Program p = new Program();
    int reset = p.here();
    p.bytes(0xD8, 0xA2, 0xFF, 0x9A);
    p.bytes(0xA9, below(256), 0x85, 0x10, 0xA9, below(8), 0x85, 0x11);
    for (int slot : devices) {
      int[] set = {1, below(256), 2, 50 + below(200), 3, 1 + below(6), 4, below(4), 6, below(40)};
      for (int i = 0; i < set.length; i += 2) {
        p.bytes(0xA9, set[i + 1]).word(0x8D, slot * SLOT + 0x1000 + set[i]);
      }
    }
    p.bytes(0x58);
    int main = p.here();
    int blocks = 3 + below(4);
    for (int i = 0; i < blocks; i++) {
      block(p);
    }
    p.word(0x4C, main);
    int irq = p.here();
    p.bytes(0x48);
    for (int slot : devices) {
      p.word(0xAD, slot * SLOT + 0x1000 + 5);
    }
    p.bytes(0xE6, 0x20);
    somewhere(p, 0x8D);
    p.bytes(0x68, 0x40);
    int nmi = p.here();
    p.bytes(0xE6, 0x21, 0x40);
    return p.vectors(nmi, reset, irq).image();
  }

  private void block(Program p) {
    p.bytes(0xA2, 2 + below(20));
    int loop = p.here();
    int moves = 2 + below(5);
    for (int i = 0; i < moves; i++) {
      move(p);
    }
    p.bytes(0xCA).back(0xD0, loop);
  }

  /** One instruction or a few; X counts the loop and is left alone. */
  private void move(Program p) {
    switch (below(14)) {
      case 0 -> p.bytes(0xA9, below(256));
      case 1, 2 -> somewhere(p, 0xAD);
      case 3, 4 -> somewhere(p, 0x8D);
      case 5 -> p.bytes(0x65, below(64));
      case 6 -> p.bytes(0xE6, 0x30 + below(32));
      case 7 -> p.word(0x9D, 0x200 + below(0x500));
      case 8 -> p.word(0x7D, 0xE000 + below(0x400));
      case 9 -> p.bytes(0xA0, below(256), 0x91, 0x10, 0xB1, 0x10);
      case 10 -> p.bytes(0x48, 0x4A, 0x68);
      case 11 -> somewhere(p, oneIn(2) ? 0xEE : 0x4D);
      case 12 -> p.bytes(0xC9, below(256), 0x90, 1, 0xEA);
      default -> p.bytes(0xB5, below(128), 0x55, below(64));
    }
  }

  private void somewhere(Program p, int opcode) {
    int address =
        switch (below(5)) {
          case 0, 1 -> 0x200 + below(0x1E00);
          case 2 -> oneIn(4) ? below(0x10000) : 0xE000 + below(0x1F00);
          default ->
              devices.get(below(devices.size())) * SLOT + (oneIn(2) ? 0x1000 : 0) + below(16);
        };
    p.word(opcode, address);
  }
}
