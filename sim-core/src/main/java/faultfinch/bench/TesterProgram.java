package faultfinch.bench;

import faultfinch.machine.Chance;
import faultfinch.machine.TestSocket;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Level;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** What a chip tester does with one kind of chip, and what it says then. */
interface TesterProgram {

  /**
   * Works on a chip in the socket.
   *
   * @param sound a second socket with a chip known to be good
   * @return what was not as it should be, one line each
   */
  List<String> differences(TestSocket chip, Supplier<TestSocket> sound, int pauseMilliseconds);

  /** The program for a kind of chip; a tester has none for chips made for one board. */
  static Optional<TesterProgram> of(PartCatalog type) {
    return switch (type) {
      case DRAM_4164 -> Optional.of(new Dynamic());
      case SRAM_6116 -> Optional.of(new Static());
      default -> type.type().startsWith("74LS") ? Optional.of(new Logic(type)) : Optional.empty();
    };
  }

  /** Lines of a tally by pin, such as {@code 1Y was wrong in 37 of 256}. */
  private static List<String> lines(Map<String, Integer> wrong, int of) {
    List<String> lines = new ArrayList<>();
    wrong.forEach((pin, times) -> lines.add(pin + " was wrong in " + times + " of " + of));
    return lines;
  }

  /** Logic: the same drawn inputs to this chip and to a good one; every pin is compared. */
  record Logic(PartCatalog type) implements TesterProgram {
    private static final int STEPS = 256;

    @Override
    public List<String> differences(
        TestSocket chip, Supplier<TestSocket> sound, int pauseMilliseconds) {
      TestSocket good = sound.get();
      List<Pin> inputs = pins(Pin.Direction.IN);
      List<Pin> ways = pins(Pin.Direction.BOTH);
      Map<String, Integer> wrong = new LinkedHashMap<>();
      for (int step = 0; step < STEPS; step++) {
        for (Pin pin : inputs) {
          boolean high = high(step, pin);
          good.drive(pin.name(), high);
          chip.drive(pin.name(), high);
        }
        ways.forEach(pin -> good.release(pin.name()));
        ways.forEach(pin -> chip.release(pin.name()));
        good.rest();
        // Only where a good chip does not drive may the tester.
        for (Pin pin : ways) {
          if (good.level(pin.name()) == Level.FLOATING && pin.name().startsWith("A")) {
            good.drive(pin.name(), high(step, pin));
            chip.drive(pin.name(), high(step, pin));
          }
        }
        good.rest();
        for (Pin pin : ways) {
          if (good.level(pin.name()) == Level.FLOATING) {
            good.drive(pin.name(), high(step, pin));
            chip.drive(pin.name(), high(step, pin));
          }
        }
        good.cycle(phase -> {});
        chip.cycle(phase -> {});
        for (String pin : good.pins()) {
          if (good.level(pin) != chip.level(pin)) {
            wrong.merge(pin, 1, Integer::sum);
          }
        }
      }
      return TesterProgram.lines(wrong, STEPS);
    }

    private List<Pin> pins(Pin.Direction direction) {
      return type.part().pinout().pins().stream().filter(p -> p.direction() == direction).toList();
    }

    private static boolean high(int step, Pin pin) {
      return (Chance.draw(step, Chance.of(pin.name())) & 1) != 0;
    }
  }

  /** What cell so and so is to hold in the first and, turned over, in the second pass. */
  private static int pattern(int cell, int pass) {
    return (int) (Chance.draw(1, cell) >>> 8) & 0xFF ^ (pass == 0 ? 0 : 0xFF);
  }

  /** Static memory: every byte written, then every byte read, twice with opposite contents. */
  final class Static implements TesterProgram {
    private static final int LINES = 11;
    private static final int BITS = 8;

    @Override
    public List<String> differences(
        TestSocket chip, Supplier<TestSocket> sound, int pauseMilliseconds) {
      Map<String, Integer> wrong = new LinkedHashMap<>();
      for (int pass = 0; pass < 2; pass++) {
        chip.drive("WE/", true);
        chip.drive("CE/", false);
        chip.drive("OE/", true);
        for (int cell = 0; cell < 1 << LINES; cell++) {
          address(chip, cell);
          for (int bit = 0; bit < BITS; bit++) {
            chip.drive("D" + bit, (pattern(cell, pass) >> bit & 1) != 0);
          }
          chip.cycle(
              phase -> {
                if (phase == Phase.C_COL) {
                  chip.drive("WE/", false);
                } else if (phase == Phase.C_END) {
                  chip.drive("WE/", true);
                }
              });
        }
        chip.leave(pauseMilliseconds);
        for (int bit = 0; bit < BITS; bit++) {
          chip.release("D" + bit);
        }
        chip.drive("OE/", false);
        for (int cell = 0; cell < 1 << LINES; cell++) {
          address(chip, cell);
          chip.rest();
          for (int bit = 0; bit < BITS; bit++) {
            TesterProgram.compare(chip, "D" + bit, (pattern(cell, pass) >> bit & 1) != 0, wrong);
          }
        }
      }
      return TesterProgram.lines(wrong, 2 << LINES);
    }

    private static void address(TestSocket chip, int cell) {
      for (int line = 0; line < LINES; line++) {
        chip.drive("A" + line, (cell >> line & 1) != 0);
      }
    }
  }

  /** Dynamic memory: every bit written, left alone, then read, twice with opposite contents. */
  final class Dynamic implements TesterProgram {
    private static final int LINES = 8;

    @Override
    public List<String> differences(
        TestSocket chip, Supplier<TestSocket> sound, int pauseMilliseconds) {
      Map<String, Integer> wrong = new LinkedHashMap<>();
      for (int pass = 0; pass < 2; pass++) {
        for (boolean write : new boolean[] {true, false}) {
          // Row by row within a column, so that going through it refreshes all of it.
          for (int at = 0; at < 1 << 2 * LINES; at++) {
            access(chip, at, pass, write, wrong);
          }
          chip.leave(write ? pauseMilliseconds : 0);
        }
      }
      return TesterProgram.lines(wrong, 2 << 2 * LINES);
    }

    private static void access(
        TestSocket chip, int at, int pass, boolean write, Map<String, Integer> wrong) {
      int row = at & 0xFF;
      int column = at >> LINES;
      boolean high = (pattern(at, pass) & 1) != 0;
      chip.drive("CAS/", true);
      chip.drive("RAS/", false);
      chip.drive("WE/", !write);
      chip.drive("D", high);
      address(chip, row);
      chip.cycle(
          phase -> {
            if (phase == Phase.V_COL) {
              address(chip, column);
              chip.drive("CAS/", false);
            } else if (phase == Phase.V_LATCH) {
              if (!write) {
                chip.rest();
                TesterProgram.compare(chip, "Q", high, wrong);
              }
              chip.drive("CAS/", true);
              chip.drive("RAS/", true);
            }
          });
    }

    private static void address(TestSocket chip, int address) {
      for (int line = 0; line < LINES; line++) {
        chip.drive("A" + line, (address >> line & 1) != 0);
      }
    }
  }

  private static void compare(
      TestSocket chip, String pin, boolean high, Map<String, Integer> wrong) {
    if (chip.level(pin) != (high ? Level.HIGH : Level.LOW)) {
      wrong.merge(pin, 1, Integer::sum);
    }
  }
}
