package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Firmware;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.HandedOver;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.machine.Surroundings;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A few bytes in place of Tamarisk's firmware, with a glyph of its own bits for every code. */
final class TamariskProgram {
  private static final Board SHIPPED = BoardReader.shipped("tamarisk");
  private static final int BASE = 0xE000;

  /** Reset lasts 55 ms and needs no plain machine. */
  private static final long IN_RESET = 54;

  private static final int RESET_VECTOR = 0xFFFC;
  private static final int NOP = 0xEA;
  private final byte[] rom = new byte[0x2000];
  private int at;
  private int minutes;

  /** One that begins at E000. */
  TamariskProgram() {
    this(BASE);
  }

  /** One that begins at this address; all other bytes are NOP. */
  TamariskProgram(int from) {
    at = from;
    Arrays.fill(rom, (byte) NOP);
    rom[RESET_VECTOR - BASE] = (byte) from;
    rom[RESET_VECTOR + 1 - BASE] = (byte) (from >>> 8);
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

  /** On a board that has been on for so long. */
  TamariskProgram after(int minutesOn) {
    minutes = minutesOn;
    return this;
  }

  /** Runs on a board with these faults; the plain machine takes over before reset ends. */
  Machine run(Machine.Kind kind, long milliseconds, String... faults) {
    return run(kind, Math.min(IN_RESET, milliseconds), milliseconds, faults);
  }

  /** Runs on a board with these faults; the machine asked for plays from a moment on. */
  Machine run(Machine.Kind kind, long from, long milliseconds, String... faults) {
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
    List<faultfinch.fault.Fault> harm =
        Arrays.stream(faults).map(f -> FaultKinds.parse(f, board)).toList();
    Surroundings warm = new Surroundings(minutes, Surroundings.Air.ROOM, false);
    Setup setup = new Setup(board, harm, Set.of(), 1, 0, warm);
    Machine fast = new Machine(setup, Machine.Kind.FAST);
    fast.runTo(from * 1_000_000);
    Machine machine = HandedOver.to(kind, fast);
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
