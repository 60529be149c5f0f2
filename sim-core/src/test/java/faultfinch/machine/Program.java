package faultfinch.machine;

/** Bytes of a program being written into the top 8 KB of the address space. */
final class Program {
  private static final int BASE = 0xE000;
  private final byte[] image = new byte[0x2000];
  private int at = BASE;

  Program() {
    java.util.Arrays.fill(image, (byte) 0xEA);
  }

  int here() {
    return at;
  }

  Program bytes(int... bytes) {
    for (int b : bytes) {
      image[at++ - BASE] = (byte) b;
    }
    return this;
  }

  /** An opcode with a two-byte operand. */
  Program word(int opcode, int operand) {
    return bytes(opcode, operand & 0xFF, operand >>> 8);
  }

  /** A branch to an address already passed, at most 126 bytes back. */
  Program back(int opcode, int to) {
    return bytes(opcode, to - (at + 2) & 0xFF);
  }

  Program origin(int address) {
    at = address;
    return this;
  }

  Program vectors(int nmi, int reset, int irq) {
    return origin(0xFFFA).pair(nmi).pair(reset).pair(irq);
  }

  private Program pair(int word) {
    return bytes(word & 0xFF, word >>> 8);
  }

  byte[] image() {
    return image.clone();
  }
}
