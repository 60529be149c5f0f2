package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.part.Monitor;
import faultfinch.part.mpu6502.Mpu6502;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * On a healthy Tamarisk no byte that nobody wrote reaches a register, a flag or an unblanked dot.
 * At each power-on memory, attributes and registers wake up otherwise: whatever of them mattered
 * would make two power-ons differ, and a byte that was the same in all four is one in 16 million.
 * The stage that says whose half it is wakes up either way and moves the end of a frame by a cycle:
 * power-ons are compared in which it woke up alike.
 */
class UnwrittenBytesTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long MS = 1_000_000;
  private static final int POWER_ONS = 3;

  /** Before the picture is programmed, in its first frame, and at the prompt; no key is pressed. */
  private static final int[] LOOKED_AT = {130, 181, 340};

  /** The boot sets A, X, S and flags, tries memory with them, and needs Y and the carry after. */
  private static final String FIRST = "M_SIZING";

  private static final String THEN_ALL = "M_SECOND_LOOK";
  private static final int CARRY = 1;

  /** Registers, flags and what is written, a number for each instruction fetched. */
  private static final class Followed implements CycleTap {
    private final long[] states = new long[1_200_000];
    private final long[] withYAndCarry = new long[states.length];
    private final long[] cycles = new long[states.length];
    private int size;
    private long written;
    private Mpu6502 core;

    @Override
    public void cycle(
        long cycle, int address, int value, boolean reads, boolean sync, long control) {
      if (!reads) {
        written = Chance.draw(address, value);
      }
      if (sync && core != null && size < states.length) {
        long registers = core.a | core.x << 8 | core.s << 16;
        states[size] = Chance.draw(registers, core.p & ~CARRY, address, written);
        withYAndCarry[size] = Chance.draw(core.y, core.p);
        cycles[size++] = cycle;
      }
    }
  }

  private record Run(Followed followed, Machine machine) {}

  private static Run run(int powerOn, long milliseconds) {
    Followed followed = new Followed();
    Setup setup = new Setup(TAMARISK, List.of(), Set.of(), 1, powerOn);
    Machine machine = new Machine(setup, Machine.Kind.FAST, followed);
    followed.core = machine.bus().core;
    new Script(TAMARISK.exercise()).runTo(machine, milliseconds * MS);
    return new Run(followed, machine);
  }

  @Test
  void powerOns_throughBootAndKeys_differInNoRegisterAndNoFlag() {
    Run first = run(0, 1900);
    assertTrue(first.machine.milestones().containsKey("M_LISTED"));
    int tries = before(first, FIRST);
    int all = before(first, THEN_ALL);
    assertTrue(tries > 0 && all > tries && first.followed.size > all);
    for (int powerOn : alike().subList(1, POWER_ONS)) {
      Followed other = run(powerOn, 1900).followed;
      assertNotEquals(first.followed.states[0], other.states[0], "registers wake up otherwise");
      assertEquals(first.followed.size, other.size);
      assertSame(first.followed, first.followed.states, other.states, tries);
      assertSame(first.followed, first.followed.withYAndCarry, other.withYAndCarry, all);
    }
  }

  /** The first power-ons that wake up in the same slot as power-on 0, and that one. */
  private static List<Integer> alike() {
    boolean first = slot(0);
    return IntStream.range(0, 40).filter(n -> slot(n) == first).limit(POWER_ONS).boxed().toList();
  }

  private static boolean slot(int powerOn) {
    Machine machine =
        new Machine(new Setup(TAMARISK, List.of(), Set.of(), 1, powerOn), Machine.Kind.PLAIN);
    return machine.millivolts(new Pad("U13", "2Q0"), false) > 2000;
  }

  /** How many instructions were fetched before a milestone. */
  private static int before(Run run, String milestone) {
    long cycle = run.machine.milestones().get(milestone) / 727;
    return (int) Arrays.stream(run.followed.cycles).takeWhile(c -> c < cycle).count();
  }

  private static void assertSame(Followed run, long[] one, long[] two, int from) {
    int differs = Arrays.mismatch(one, from, run.size, two, from, run.size);
    long at = differs < 0 ? 0 : run.cycles[from + differs];
    assertEquals(-1, differs, "differs at cycle " + at);
  }

  @Test
  void powerOns_picture_differsInNoDot() {
    int[][] first = dots(0);
    for (int powerOn = 1; powerOn < POWER_ONS; powerOn++) {
      int[][] other = dots(powerOn);
      for (int at = 0; at < LOOKED_AT.length; at++) {
        assertArrayEquals(first[at], other[at], "at " + LOOKED_AT[at] + " ms");
      }
    }
  }

  /** What a set has shown at each of them, with a frame and more played before it. */
  private static int[][] dots(int powerOn) {
    Machine machine = run(powerOn, 0).machine;
    int[][] dots = new int[LOOKED_AT.length][];
    for (int at = 0; at < LOOKED_AT.length; at++) {
      machine.runTo((LOOKED_AT[at] - 40) * MS);
      machine.play((long) (40 * MS / 727.3), (phase, nanoseconds) -> {});
      dots[at] = dots(machine);
    }
    return dots;
  }

  private static int[] dots(Machine machine) {
    return IntStream.range(0, Monitor.CELLS.count())
        .map(i -> machine.cell("MON1", Monitor.CELLS, i))
        .toArray();
  }
}
