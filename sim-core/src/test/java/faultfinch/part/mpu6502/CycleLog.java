package faultfinch.part.mpu6502;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A flat memory on the bus that remembers every cycle, so that tests can read the cycles back. */
final class CycleLog implements Bus {

  private final byte[] memory;
  private int[] cycles = new int[64];
  private int count;

  CycleLog(byte[] memory) {
    this.memory = memory;
  }

  void clear() {
    count = 0;
  }

  int count() {
    return count;
  }

  int address(int cycle) {
    return cycles[cycle] & 0xFFFF;
  }

  int value(int cycle) {
    return cycles[cycle] >> 16 & 0xFF;
  }

  boolean wrote(int cycle) {
    return kind(cycle) == 'w';
  }

  /** Address, value and f for a fetch, r for a read, w for a write: "0400 EA f". */
  String text(int cycle) {
    return "%04X %02X %c".formatted(address(cycle), value(cycle), kind(cycle));
  }

  List<String> texts() {
    List<String> texts = new ArrayList<>();
    for (int cycle = 0; cycle < count; cycle++) {
      texts.add(text(cycle));
    }
    return texts;
  }

  @Override
  public int fetch(int address) {
    return log(address, memory[address] & 0xFF, 'f');
  }

  @Override
  public int read(int address) {
    return log(address, memory[address] & 0xFF, 'r');
  }

  @Override
  public void write(int address, int value) {
    memory[address] = (byte) value;
    log(address, value, 'w');
  }

  private char kind(int cycle) {
    return (char) (cycles[cycle] >>> 24);
  }

  private int log(int address, int value, char kind) {
    if (count == cycles.length) {
      cycles = Arrays.copyOf(cycles, 2 * count);
    }
    cycles[count++] = kind << 24 | value << 16 | address;
    return value;
  }
}
