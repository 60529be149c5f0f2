package faultfinch.part.mpu6502;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;

/**
 * A core on a flat memory, set up and read back in one line of text. Interrupt vectors: NMI to
 * 5000, reset to 6000, IRQ to 7000.
 */
final class Breadboard {

  private static final String FLAGS = "NV--DIZC"; // bit 7 first

  final byte[] memory = new byte[0x10000];
  final CycleLog log = new CycleLog(memory);
  final Mpu6502 mpu = new Mpu6502(log);

  private Breadboard() {}

  static Breadboard at(int pc) {
    Breadboard board = new Breadboard();
    board.mpu.pc = pc;
    board.mpu.p = Alu.UNUSED;
    board.set("FFFB=50 FFFD=60 FFFF=70");
    return board;
  }

  /** All memory holds NOP but for the vectors and the bytes, which start at PC; S is FF. */
  static Breadboard running(int pc, String bytes) {
    Breadboard board = at(pc);
    Arrays.fill(board.memory, 0, 0xFFFA, (byte) 0xEA);
    byte[] code = HexFormat.ofDelimiter(" ").parseHex(bytes);
    System.arraycopy(code, 0, board.memory, pc, code.length);
    board.mpu.s = 0xFF;
    return board;
  }

  /** Words like a=12, pc=1234, 01F0=AA for memory, f=NC for exactly these flags. */
  Breadboard set(String words) {
    for (String word : words.isBlank() ? List.<String>of() : List.of(words.split(" "))) {
      String name = word.substring(0, word.indexOf('='));
      String text = word.substring(name.length() + 1);
      if (name.equals("f")) {
        mpu.p = flags(text);
        continue;
      }
      int value = Integer.parseInt(text, 16);
      switch (name) {
        case "pc" -> mpu.pc = value;
        case "s" -> mpu.s = value;
        case "a" -> mpu.a = value;
        case "x" -> mpu.x = value;
        case "y" -> mpu.y = value;
        default -> memory[Integer.parseInt(name, 16)] = (byte) value;
      }
    }
    return this;
  }

  Breadboard steps(int count) {
    for (int i = 0; i < count; i++) {
      mpu.step();
    }
    return this;
  }

  String registers() {
    return "pc=%04X s=%02X a=%02X x=%02X y=%02X p=%02X"
        .formatted(mpu.pc, mpu.s, mpu.a, mpu.x, mpu.y, mpu.p);
  }

  int memory(int address) {
    return memory[address] & 0xFF;
  }

  private static int flags(String letters) {
    int flags = Alu.UNUSED;
    for (char letter : letters.toCharArray()) {
      flags |= 0x80 >> FLAGS.indexOf(letter);
    }
    return flags;
  }
}
