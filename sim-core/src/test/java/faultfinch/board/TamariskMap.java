package faultfinch.board;

import faultfinch.part.mpu6502.Bus;
import faultfinch.part.mpu6502.Mpu6502;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.IntBinaryOperator;

/**
 * Tamarisk's map as the programmer sees it, for trying firmware without a board: memory, registers
 * that remember what is written, a timer, frames, keys, and a drive that takes whole bytes.
 */
final class TamariskMap implements Bus {

  /** Chips that can be left out; reads of them bring FF. */
  enum Chip {
    CONTROLLER,
    LINK,
    TONE,
    ATTRIBUTES,
    ROM1
  }

  static final int CYCLES_A_MILLISECOND = 1375;
  static final int RESET_CYCLES = 55 * CYCLES_A_MILLISECOND;
  private static final int FRAME_CYCLES = 27_456;
  private static final int LINK_BYTE_CYCLES = 900;
  private static final int TRAIL = 40;

  final Mpu6502 mpu = new Mpu6502(this);
  final byte[] ram = new byte[0x10000];
  final int[] video = new int[16];
  final int[] tone = new int[16];
  final int[] attributes = new int[0x400];
  final TamariskDrive drive = new TamariskDrive();
  TamariskTape tape = new TamariskTape();

  /** Addresses read where nothing answers. */
  final List<Integer> undriven = new ArrayList<>();

  /** Half periods of voice A, in 8 cycles, each time its loudness was set while it sounded. */
  final List<Integer> sounded = new ArrayList<>();

  int latch;
  boolean interruptHeldLow;

  /** What memory makes of what its cell holds: cell, 0 to FFFF, and value. */
  IntBinaryOperator memory = (cell, value) -> value;

  /** Side port lines 0-3 joined to 4-7. */
  boolean returnLeads;

  /** Cycles at which the drive lamp came on. */
  final List<Long> lampCameOn = new ArrayList<>();

  private final byte[] rom0;
  private final byte[] rom1;
  private final Set<Chip> out = EnumSet.noneOf(Chip.class);
  private final int[] trail = new int[TRAIL];
  private int trailAt;
  private int key = -1;
  private boolean shift;
  private int port;
  private int direction;
  private int timer;
  private int timerHow;
  private boolean expired;
  private long expires = Long.MAX_VALUE;
  private long frameEnds = FRAME_CYCLES;
  private boolean frameWaits;
  private int linkHow;
  private boolean linkReceives;
  private boolean linkDone;
  private long linkEnds = Long.MAX_VALUE;
  private int linkByte;
  private int sideOut;
  private int sideWay;
  private boolean line;
  private long digest = 17;

  TamariskMap(byte[] rom0, byte[] rom1, long seed) {
    this.rom0 = rom0.clone();
    this.rom1 = rom1.clone();
    Random chance = new Random(seed);
    chance.nextBytes(ram);
    for (int i = 0; i < attributes.length; i++) {
      attributes[i] = chance.nextInt(16);
    }
    mpu.a = chance.nextInt(256);
    mpu.x = chance.nextInt(256);
    mpu.y = chance.nextInt(256);
    mpu.s = chance.nextInt(256);
    mpu.p |= chance.nextInt(256) & 0xC3;
    mpu.cycle = RESET_CYCLES;
    mpu.requestReset();
  }

  TamariskMap without(Chip chip) {
    out.add(chip);
    return this;
  }

  /** Runs until an instruction at this address is fetched; whether it was, within the time. */
  boolean reaches(int address, double seconds) {
    long until = (long) (seconds * 1000 * CYCLES_A_MILLISECOND);
    while (mpu.cycle < until) {
      if (mpu.pc == address) {
        return true;
      }
      mpu.step();
    }
    return false;
  }

  void run(int milliseconds) {
    mpu.run(mpu.cycle + (long) milliseconds * CYCLES_A_MILLISECOND);
  }

  /** Presses and lets go of keys, one after the other, as a person would. */
  void type(String text) {
    for (char c : text.toCharArray()) {
      press(TamariskKeys.place(c), TamariskKeys.shifted(c));
      run(60);
      press(-1, false);
      run(60);
    }
  }

  /** Row * 8 + column of the key held down, -1 for none. */
  void press(int place, boolean withShift) {
    key = place;
    shift = withShift;
  }

  /** A row of picture page 0 as text, a dot for what is no letter. */
  String row(int number) {
    return row(0, number);
  }

  String row(int page, int number) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 36; i++) {
      int code = ram[0x7000 + 0x400 * page + 36 * number + i] & 0xFF;
      text.append(code >= 32 && code < 127 ? (char) code : '.');
    }
    return text.toString().stripTrailing();
  }

  boolean tapeRuns() {
    return (direction & 0x40) != 0 && (port & 0x40) == 0;
  }

  boolean lampLit() {
    return (direction & 0x20) == 0 || (port & 0x20) != 0;
  }

  /** One number for all that went over the bus, but for what was read, since the last call. */
  long digest() {
    long since = digest;
    digest = 17;
    return since;
  }

  /** The last cycles, oldest first. */
  String trail() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < TRAIL; i++) {
      int cycle = trail[(trailAt + i) % TRAIL];
      text.append("%04X %02X%n".formatted(cycle & 0xFFFF, cycle >>> 16));
    }
    return text.toString();
  }

  @Override
  public int fetch(int address) {
    return read(address);
  }

  @Override
  public int read(int address) {
    elapse();
    int value = value(address);
    note(address, value);
    digest = digest * 31 + address;
    interrupts();
    return value;
  }

  @Override
  public void write(int address, int value) {
    elapse();
    note(address, value);
    digest = (digest * 31 + address) * 31 + value;
    store(address, value);
    interrupts();
  }

  private void note(int address, int value) {
    trail[trailAt] = address | value << 16;
    trailAt = (trailAt + 1) % TRAIL;
  }

  private int value(int address) {
    if (address < 0xA000) {
      return memory.applyAsInt(cell(address), ram[cell(address)] & 0xFF);
    }
    if (address >= 0xE000) {
      return rom0[address - 0xE000] & 0xFF;
    }
    if (address >= 0xC000) {
      return out.contains(Chip.ROM1) ? nothing(address) : rom1[address - 0xC000] & 0xFF;
    }
    return switch (address >> 8) {
      case 0xA0 -> out.contains(Chip.CONTROLLER) ? nothing(address) : controller(address & 7);
      case 0xA1 -> out.contains(Chip.LINK) ? nothing(address) : link(address & 7);
      case 0xA2 -> out.contains(Chip.TONE) ? nothing(address) : toneRegister(address & 15);
      case 0xA3 -> videoRegister(address & 15);
      case 0xA4 -> columns();
      case 0xA8, 0xA9, 0xAA, 0xAB -> nothing(address) & (0xF0 | attribute(address & 0x3FF));
      default -> nothing(address);
    };
  }

  private int nothing(int address) {
    undriven.add(address);
    return 0xFF;
  }

  private int cell(int address) {
    return address < 0x8000 ? address : 0x8000 + 0x2000 * (latch >> 2 & 3) + (address & 0x1FFF);
  }

  private int controller(int register) {
    return switch (register) {
      case 0 -> port & direction | ~direction & (tape.high(mpu.cycle) ? 0xFF : 0x7F);
      case 1 -> direction;
      case 4 -> timerHow;
      case 5 -> {
        int status = (expired ? 1 : 0) | (expired && (timerHow & 2) != 0 ? 0x80 : 0);
        expired = false;
        yield status;
      }
      default -> 0;
    };
  }

  private int link(int register) {
    return switch (register) {
      case 0 -> linkByte;
      case 1 -> linkHow & 6;
      case 2 -> {
        int status =
            (linkDone ? 1 : 0)
                | (linkDone && (linkHow & 4) != 0 ? 0x80 : 0)
                | (linkEnds == Long.MAX_VALUE ? 0 : 0x40);
        linkDone = false;
        yield status;
      }
      case 3 -> sidePins();
      case 4 -> sideWay;
      case 5 -> 0x1C;
      case 6 -> 0x1D;
      default -> 0;
    };
  }

  private int attribute(int cell) {
    return out.contains(Chip.ATTRIBUTES) ? 0x0F : attributes[cell];
  }

  /** A line nobody drives is pulled up; a lead joins two, and who drives wins. */
  private int sidePins() {
    int pins = sideOut & sideWay | 0xFF & ~sideWay;
    if (!returnLeads) {
      return pins;
    }
    int both = pins & (pins >> 4 | pins << 4);
    return both & 0xFF;
  }

  private int toneRegister(int register) {
    return register > 8 ? 0 : tone[register];
  }

  private int videoRegister(int register) {
    if (register == 14) {
      int status = frameWaits ? 0x80 : 0;
      frameWaits = false;
      return status;
    }
    return register == 15 ? 0 : video[register];
  }

  private int columns() {
    int row = out.contains(Chip.CONTROLLER) || (direction & 15) != 15 ? 15 : port & 15;
    int pressed = key >= 0 && key >> 3 == row ? 1 << (key & 7) : 0;
    return 0xFF & ~(pressed | (shift && row == 0 ? 1 : 0));
  }

  private void store(int address, int value) {
    if (address < 0xA000) {
      ram[cell(address)] = (byte) value;
      return;
    }
    switch (address >> 8) {
      case 0xA0 -> {
        if (!out.contains(Chip.CONTROLLER)) {
          storeController(address & 7, value);
        }
      }
      case 0xA1 -> {
        if (!out.contains(Chip.LINK)) {
          storeLink(address & 7, value);
        }
      }
      case 0xA2 -> {
        tone[address & 15] = value;
        int half = tone[0] | tone[1] << 8;
        if ((address & 15) == 5 && (value & 15) != 0 && half != 0) {
          sounded.add(half);
        }
      }
      case 0xA3 -> video[address & 15] = value;
      case 0xA8, 0xA9, 0xAA, 0xAB -> attributes[address & 0x3FF] = value & 15;
      default -> {
        // Nothing takes it.
      }
    }
  }

  private void storeController(int register, int value) {
    boolean lit = lampLit();
    switch (register) {
      case 0 -> port = value;
      case 1 -> direction = value;
      case 2 -> timer = timer & 0xFF00 | value;
      case 3 -> {
        timer = timer & 0xFF | value << 8;
        expires = mpu.cycle + timer + 1;
      }
      case 4 -> timerHow = value & 3;
      case 6 -> tape.record(mpu.cycle, value);
      default -> {
        // Status and the spare register take no writes.
      }
    }
    if ((direction & 0x10) != 0 && (port & 0x10) == 0) {
      int bit = 1 << (port & 7);
      latch = (port & 8) != 0 ? latch | bit : latch & ~bit;
    }
    if (lampLit() && !lit) {
      lampCameOn.add(mpu.cycle);
    }
  }

  private void storeLink(int register, int value) {
    if (register == 0) {
      linkByte = value;
      linkReceives = false;
      linkEnds = drive.takes() ? mpu.cycle + LINK_BYTE_CYCLES : Long.MAX_VALUE - 1;
    } else if (register == 1) {
      linkHow = value;
      if ((value & 0x80) != 0) {
        linkEnds = Long.MAX_VALUE;
      }
      if ((value & 1) != 0) {
        linkReceives = true;
        linkEnds = drive.gives() ? mpu.cycle + LINK_BYTE_CYCLES : Long.MAX_VALUE - 1;
      }
    } else if (register == 3) {
      sideOut = value;
    } else if (register == 4) {
      sideWay = value;
    }
  }

  private void elapse() {
    if (mpu.cycle >= expires) {
      expired = true;
      expires = (timerHow & 1) != 0 ? expires + timer + 1 : Long.MAX_VALUE;
    }
    if (mpu.cycle >= frameEnds) {
      frameWaits = true;
      frameEnds += FRAME_CYCLES;
    }
    if (mpu.cycle >= linkEnds) {
      linkEnds = Long.MAX_VALUE;
      linkDone = true;
      if (linkReceives) {
        linkByte = drive.give();
      } else {
        drive.take(linkByte, (linkHow & 2) != 0);
      }
    }
  }

  private void interrupts() {
    boolean low =
        interruptHeldLow
            || expired && (timerHow & 2) != 0
            || frameWaits && (video[13] & 8) != 0
            || linkDone && (linkHow & 4) != 0;
    if (low && !line) {
      mpu.irqSince = mpu.cycle;
    } else if (!low && line) {
      mpu.irqReleased(mpu.cycle);
    }
    line = low;
  }
}
