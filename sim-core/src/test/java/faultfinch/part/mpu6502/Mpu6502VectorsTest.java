package faultfinch.part.mpu6502;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Runs the core against a file of single-instruction vectors, named by the system property {@code
 * vectors}; skipped without it.
 *
 * <p>The file is a run of records, numbers big-endian: length of the rest (2 bytes), opcode, state
 * before, state after, cycles. A state is PC (2), S, A, X, Y, P, a count and so many times address
 * (2) and value. The cycles are a count and so many times address (2), value, 'r' or 'w'.
 */
class Mpu6502VectorsTest {

  private static final String NO_FILE =
      "vectors skipped: give -Dvectors=<absolute path of the file>";

  private final byte[] memory = new byte[0x10000];
  private final CycleLog log = new CycleLog(memory);
  private final Mpu6502 mpu = new Mpu6502(log);

  @Test
  void mpu_runningEveryVector_matchesStateMemoryAndCycles() throws IOException {
    String file = System.getProperty("vectors", "");
    if (file.isBlank()) {
      System.out.println(NO_FILE);
    }
    Assumptions.assumeFalse(file.isBlank(), NO_FILE);
    long passed = 0;
    long seen = 0;
    String firstMiss = "";
    try (DataInputStream in =
        new DataInputStream(
            new BufferedInputStream(Files.newInputStream(Path.of(file)), 1 << 16))) {
      for (Optional<ByteBuffer> next = record(in); next.isPresent(); next = record(in)) {
        String miss = missOf(next.get());
        if (miss.isEmpty()) {
          passed++;
        } else if (firstMiss.isEmpty()) {
          firstMiss = "vector " + seen + ": " + miss;
        }
        seen++;
      }
    }
    String tally = passed + " of " + seen + " vectors passed";
    System.out.println(tally);
    assertTrue(seen > 0, "no vectors in " + file);
    assertEquals(seen, passed, tally + "; first miss: " + firstMiss);
  }

  private static Optional<ByteBuffer> record(DataInputStream in) throws IOException {
    int high = in.read();
    if (high < 0) {
      return Optional.empty();
    }
    byte[] rest = new byte[high << 8 | in.readUnsignedByte()];
    if (in.readNBytes(rest, 0, rest.length) < rest.length) {
      throw new EOFException("the last vector is cut short");
    }
    return Optional.of(ByteBuffer.wrap(rest));
  }

  private String missOf(ByteBuffer vector) {
    int opcode = vector.get() & 0xFF;
    mpu.pc = vector.getShort() & 0xFFFF;
    mpu.s = vector.get() & 0xFF;
    mpu.a = vector.get() & 0xFF;
    mpu.x = vector.get() & 0xFF;
    mpu.y = vector.get() & 0xFF;
    mpu.p = vector.get() & 0xFF;
    mpu.locked = false;
    for (int n = vector.get() & 0xFF; n > 0; n--) {
      memory[vector.getShort() & 0xFFFF] = vector.get();
    }
    log.clear();
    mpu.step();
    String miss = missAfter(vector);
    for (int i = 0; i < log.count(); i++) {
      memory[log.address(i)] = 0;
    }
    return miss.isEmpty()
        ? ""
        : HexFormat.of().withUpperCase().toHexDigits((byte) opcode)
            + " "
            + OpcodeMap.text(opcode)
            + ": "
            + miss;
  }

  private String missAfter(ByteBuffer vector) {
    StringBuilder miss = new StringBuilder();
    check(miss, "PC", vector.getShort() & 0xFFFF, mpu.pc);
    check(miss, "S", vector.get() & 0xFF, mpu.s);
    check(miss, "A", vector.get() & 0xFF, mpu.a);
    check(miss, "X", vector.get() & 0xFF, mpu.x);
    check(miss, "Y", vector.get() & 0xFF, mpu.y);
    check(miss, "P", vector.get() & 0xFF, mpu.p);
    for (int n = vector.get() & 0xFF; n > 0; n--) {
      int address = vector.getShort() & 0xFFFF;
      int value = vector.get() & 0xFF;
      if ((memory[address] & 0xFF) != value) {
        check(miss, "memory at " + address, value, memory[address] & 0xFF);
      }
      memory[address] = 0;
    }
    int cycles = vector.get() & 0xFF;
    check(miss, "number of cycles", cycles, log.count());
    for (int i = 0; i < Math.min(cycles, log.count()); i++) {
      int address = vector.getShort() & 0xFFFF;
      int value = vector.get() & 0xFF;
      boolean write = vector.get() == 'w';
      if (address != log.address(i) || value != log.value(i) || write != log.wrote(i)) {
        miss.append(
            "cycle %d is %s, should be %04X %02X %s; "
                .formatted(i, log.text(i), address, value, write ? "w" : "r"));
      }
    }
    return miss.toString();
  }

  private static void check(StringBuilder miss, String what, int expected, int found) {
    if (expected != found) {
      miss.append("%s is %X, should be %X; ".formatted(what, found, expected));
    }
  }
}
