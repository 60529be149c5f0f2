package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Firmware;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** A few bytes at E000 in place of Tamarisk's firmware, run on the plain machine. */
final class TamariskProgram {
  private static final Board SHIPPED = BoardReader.shipped("tamarisk");
  private static final int BASE = 0xE000;
  private static final int RESET_VECTOR = 0xFFFC;
  private static final int NOP = 0xEA;
  private final byte[] rom = new byte[0x2000];
  private int at = BASE;

  TamariskProgram() {
    Arrays.fill(rom, (byte) NOP);
    rom[RESET_VECTOR - BASE] = 0;
    rom[RESET_VECTOR + 1 - BASE] = (byte) (BASE >>> 8);
  }

  TamariskProgram bytes(int... bytes) {
    for (int b : bytes) {
      rom[at++ - BASE] = (byte) b;
    }
    return this;
  }

  /** Loads a value and stores it. */
  TamariskProgram store(int address, int value) {
    return bytes(0xA9, value, 0x8D, address & 0xFF, address >>> 8);
  }

  /** Waits for ever. */
  TamariskProgram stop() {
    return bytes(0x4C, at & 0xFF, at >>> 8);
  }

  /** Runs on a board with these faults from power-on. */
  Machine run(long milliseconds, String... faults) {
    Firmware first = new Firmware(SHIPPED.firmware().get(0).ref(), rom, Map.of());
    Board board =
        new Board(
            SHIPPED.name(),
            SHIPPED.title(),
            SHIPPED.maker(),
            SHIPPED.about(),
            SHIPPED.hertz(),
            SHIPPED.crystal(),
            SHIPPED.phaseNanoseconds(),
            SHIPPED.width(),
            SHIPPED.height(),
            SHIPPED.parts(),
            SHIPPED.nets(),
            SHIPPED.supply(),
            List.of(first, glyphs()),
            List.of(),
            List.of(),
            "",
            List.of());
    Setup setup = Setup.healthy(board, 1);
    List<faultfinch.fault.Fault> harm =
        Arrays.stream(faults).map(f -> FaultKinds.parse(f, board)).toList();
    Machine machine = new Machine(setup.with(harm), Machine.Kind.PLAIN);
    machine.runTo(milliseconds * 1_000_000);
    return machine;
  }

  /** A glyph of the code's own bits, the same in each of the lines 0 to 11. */
  private static Firmware glyphs() {
    byte[] rom = new byte[0x2000];
    for (int code = 0; code < 256; code++) {
      Arrays.fill(rom, 16 * code, 16 * code + 12, (byte) code);
    }
    return new Firmware("U24", rom, Map.of());
  }
}
