package faultfinch.part.mpu6502;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Stops each instruction at each of its bus calls, loads the state from before it and runs it again
 * with the reads already made: nothing may tell it from an instruction that was never stopped.
 */
class ReplayTest {

  private static final int ROUNDS = 12;

  /** Preallocated by the bus that throws it, as a machine would. */
  private static final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1;

    private Stopped() {
      super("stopped", null, false, false);
    }
  }

  /** Answers the calls it has seen from its list, and stops once before the call it is told. */
  private static final class StoppingBus implements Bus {
    private final Stopped stopped = new Stopped();
    private final CycleLog memory;
    private int stopAt;
    private int calls;

    StoppingBus(byte[] memory, int stopAt) {
      this.memory = new CycleLog(memory);
      this.stopAt = stopAt;
    }

    void replay() {
      calls = 0;
      stopAt = -1;
    }

    List<String> cycles() {
      return memory.texts();
    }

    private boolean made(int address, boolean write) {
      if (calls == stopAt) {
        throw stopped;
      }
      boolean made = calls < memory.count();
      if (made) {
        assertEquals(memory.address(calls), address);
        assertEquals(memory.wrote(calls), write);
      }
      calls++;
      return made;
    }

    @Override
    public int fetch(int address) {
      return made(address, false) ? memory.value(calls - 1) : memory.fetch(address);
    }

    @Override
    public int read(int address) {
      return made(address, false) ? memory.value(calls - 1) : memory.read(address);
    }

    @Override
    public void write(int address, int value) {
      if (made(address, true)) {
        assertEquals(memory.value(calls - 1), value);
      } else {
        memory.write(address, value);
      }
    }
  }

  private static long[] saved(Mpu6502 mpu) {
    long[] words = new long[mpu.words() + 1];
    mpu.save(words, 1);
    return words;
  }

  private static void assertReplays(byte[] memory, Consumer<Mpu6502> before) {
    byte[] straightMemory = memory.clone();
    CycleLog log = new CycleLog(straightMemory);
    Mpu6502 straight = new Mpu6502(log);
    before.accept(straight);
    straight.step();

    for (int k = 0; k < log.count(); k++) {
      byte[] stoppedMemory = memory.clone();
      StoppingBus bus = new StoppingBus(stoppedMemory, k);
      Mpu6502 mpu = new Mpu6502(bus);
      before.accept(mpu);
      long[] start = saved(mpu);
      assertThrows(Stopped.class, mpu::step);
      mpu.load(start, 1);
      bus.replay();
      mpu.step();
      assertEquals(log.texts(), bus.cycles());
      assertArrayEquals(straightMemory, stoppedMemory);
      assertArrayEquals(saved(straight), saved(mpu));
      assertEquals(straight.locked, mpu.locked);
    }
  }

  private static void randomRegisters(Mpu6502 mpu, SplittableRandom random) {
    mpu.pc = random.nextInt(0x10000);
    mpu.s = random.nextInt(0x100);
    mpu.a = random.nextInt(0x100);
    mpu.x = random.nextInt(0x100);
    mpu.y = random.nextInt(0x100);
    mpu.p = random.nextInt(0x100) & ~Alu.BREAK | Alu.UNUSED;
    mpu.cycle = 1_000;
  }

  private static byte[] randomMemory(SplittableRandom random) {
    byte[] memory = new byte[0x10000];
    random.nextBytes(memory);
    return memory;
  }

  @Test
  void instruction_stoppedAtAnyCall_replaysToTheSameCyclesAndState() {
    SplittableRandom random = new SplittableRandom(6502);
    for (int opcode = 0; opcode < 256; opcode++) {
      byte[] memory = randomMemory(random);
      for (int round = 0; round < ROUNDS; round++) {
        SplittableRandom registers = random.split();
        Mpu6502 probe = new Mpu6502(new CycleLog(memory));
        randomRegisters(probe, registers.split());
        int pc = probe.pc;
        memory[pc] = (byte) opcode;
        long[] start = saved(probe);
        assertReplays(memory, mpu -> mpu.load(start, 1));
      }
    }
  }

  @Test
  void sequence_stoppedAtAnyCall_replaysToTheSameCyclesAndState() {
    SplittableRandom random = new SplittableRandom(1975);
    for (int round = 0; round < ROUNDS; round++) {
      byte[] memory = randomMemory(random);
      Mpu6502 probe = new Mpu6502(new CycleLog(memory));
      randomRegisters(probe, random);
      long[] start = saved(probe);
      Consumer<Mpu6502> registers = mpu -> mpu.load(start, 1);
      assertReplays(memory, registers.andThen(mpu -> mpu.nmiFellAt = 900));
      assertReplays(memory, registers.andThen(Mpu6502::requestReset));
      assertReplays(memory, registers.andThen(mpu -> mpu.locked = true));
      Consumer<Mpu6502> unmasked = registers.andThen(mpu -> mpu.p &= ~Alu.IRQ_DISABLE);
      assertReplays(memory, unmasked.andThen(mpu -> mpu.irqSince = 900));
      // An NMI in the middle of the IRQ's sequence, in time and too late.
      for (long nmiFellAt = 1_000; nmiFellAt < 1_007; nmiFellAt++) {
        long fell = nmiFellAt;
        assertReplays(
            memory,
            unmasked.andThen(
                mpu -> {
                  mpu.irqSince = 900;
                  mpu.nmiFellAt = fell;
                }));
      }
    }
  }

  @Test
  void state_savedAndLoadedAtEveryBoundary_runsAsIfNeverMoved() {
    // Every rule of the poll is pending at some boundary: CLI, SEI, PLP, branches, BRK, a release.
    String program = "58 78 58 08 28 18 90 02 EA EA 00 00 8D 00 30 EA 90 80";
    for (int irq = 0; irq < 60; irq++) {
      for (int nmi = 0; nmi < 60; nmi += 3) {
        Breadboard straight = Breadboard.running(0x0400, program).set("f=I 7000=40 5000=40");
        Breadboard moved = Breadboard.running(0x0400, program).set("f=I 7000=40 5000=40");
        Mpu6502 mpu = new Mpu6502(moved.log);
        mpu.load(saved(moved.mpu), 1);
        straight.mpu.irqSince = irq;
        straight.mpu.nmiFellAt = nmi;
        mpu.irqSince = irq;
        mpu.nmiFellAt = nmi;
        for (int step = 0; step < 30; step++) {
          straight.mpu.step();
          mpu.step();
          if (mpu.irqSince < mpu.cycle - 9) {
            straight.mpu.irqReleased(mpu.cycle - 1);
            mpu.irqReleased(mpu.cycle - 1);
          }
          Mpu6502 next = new Mpu6502(moved.log);
          long[] words = saved(mpu);
          next.load(words, 1);
          assertArrayEquals(words, saved(next));
          mpu = next;
        }
        assertEquals(straight.log.texts(), moved.log.texts());
      }
    }
  }

  @Test
  void words_saved_coverEveryRegister() {
    Mpu6502 mpu = new Mpu6502(new CycleLog(new byte[0x10000]));
    List<long[]> states = new ArrayList<>(List.of(saved(mpu)));
    List<Consumer<Mpu6502>> changes =
        List.of(
            m -> m.pc = 0xFFFF,
            m -> m.s = 0xFF,
            m -> m.a = 0xFF,
            m -> m.x = 0xFF,
            m -> m.y = 0xFF,
            m -> m.p = 0xEF,
            m -> m.locked = true,
            m -> m.cycle = Long.MAX_VALUE - 10,
            m -> m.irqSince = 12,
            m -> m.nmiFellAt = 34,
            Mpu6502::requestReset);
    for (Consumer<Mpu6502> change : changes) {
      change.accept(mpu);
      long[] state = saved(mpu);
      for (long[] earlier : states) {
        assertTrue(!Arrays.equals(earlier, state));
      }
      states.add(state);
    }
    Mpu6502 other = new Mpu6502(new CycleLog(new byte[0x10000]));
    other.load(states.get(states.size() - 1), 1);
    assertArrayEquals(states.get(states.size() - 1), saved(other));
    assertEquals(0xFFFF, other.pc);
    assertEquals(0xEF, other.p);
  }
}
