package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * A key that is let go leaves the board as it was wired before, and nothing of what it was since.
 */
class KeptWiringTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  /** Keys that move, one after the other; more wirings than are kept, and most of them again. */
  private static final List<String> MOVES =
      List.of(
          "K5", "K5", "K5", "K33", "K5", "K33", "K12", "K40", "K12", "K40", "K5", "K5", "K40",
          "K40");

  @Test
  void hold_keysMovedOverAndOver_fastMachineStandsWherePlainOneStands() {
    Machine fast = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    Machine plain = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.PLAIN);
    long at = 120_000_000;
    fast.runTo(at);
    plain.runTo(at);
    for (String key : MOVES) {
      fast.hold(key, !fast.closed(key));
      plain.hold(key, !plain.closed(key));
      at += 3_000_000;
      fast.runTo(at);
      plain.runTo(at);
      fast.rest();
      assertEquals(plain.cycles(), fast.cycles(), key);
      assertEquals(plain.programCounter(), fast.programCounter(), key);
      assertArrayEquals(levels(plain), levels(fast), key);
    }
  }

  @Test
  void hold_keyLetGo_boardIsNotCompiledAgain() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    Circuit before = machine.plain().circuit;
    machine.hold("K5", true);
    assertNotSame(before, machine.plain().circuit);
    machine.hold("K5", false);
    assertSame(before, machine.plain().circuit);
  }

  @Test
  void hold_keyLetGo_levelsAreThoseOfABoardCompiledAnew() {
    Machine kept = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.PLAIN);
    kept.runTo(60_000_000);
    kept.hold("K5", true);
    kept.runTo(62_000_000);
    Levels held = kept.plain().levels;
    kept.hold("K5", false);
    assertNotSame(held, kept.plain().levels);
    Levels anew = new Levels(kept.plain().circuit, kept.store(), held.cycleNanoseconds());
    anew.follow(held);
    assertArrayEquals(anew.mv, kept.plain().levels.mv);
    assertArrayEquals(anew.kind, kept.plain().levels.kind);
    assertArrayEquals(anew.releasedAt, kept.plain().levels.releasedAt);
    assertArrayEquals(anew.driven, kept.plain().levels.driven);
    assertArrayEquals(anew.bits, kept.plain().levels.bits);
    assertEquals(anew.nextExpiry(), kept.plain().levels.nextExpiry());
  }

  private static int[] levels(Machine machine) {
    return IntStream.range(0, machine.points()).map(machine::millivolts).toArray();
  }
}
