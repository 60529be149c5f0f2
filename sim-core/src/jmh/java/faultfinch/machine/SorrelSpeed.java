package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.KeyPress;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.part.mpu6502.Bus;
import faultfinch.part.mpu6502.Mpu6502;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Simulated bus cycles a second on Sorrel: boot and a two-second key script, healthy and with drawn
 * faults, beside the same core and the same firmware over a flat array. Run it after {@code mvn
 * -Pbench -pl sim-core package} with {@code java -jar sim-core/target/benchmarks.jar SorrelSpeed}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class SorrelSpeed {
  private static final long RUN_NS = 2_000_000_000L;
  static final long FLAT_CYCLES = 2_457_600L;

  private Board board;
  private List<Fault> drawn;

  /** Simulated cycles, reported as cycles per second of the benchmark's own clock. */
  @AuxCounters(AuxCounters.Type.OPERATIONS)
  @State(Scope.Thread)
  public static class Cycles {
    public long cycles;

    @Setup(Level.Iteration)
    public void clear() {
      cycles = 0;
    }
  }

  /** The drawn faults, one after another. */
  @State(Scope.Thread)
  public static class Faulty {
    @Param({"0"})
    public int index;
  }

  @Setup
  public void board() {
    board = BoardReader.shipped("sorrel");
    drawn = new Draw(FaultUniverse.of(board), 1).overKinds(50);
  }

  @Benchmark
  public int flat(Cycles counter) {
    byte[] memory = new byte[0x10000];
    byte[] image = board.firmware().get(0).image();
    System.arraycopy(image, 0, memory, 0x10000 - image.length, image.length);
    Mpu6502 core = new Mpu6502(new Flat(memory));
    core.requestReset();
    core.run(FLAT_CYCLES);
    counter.cycles += core.cycle;
    return core.a;
  }

  @Benchmark
  public long healthy(Cycles counter) {
    return run(List.of(), counter);
  }

  @Benchmark
  public long faulty(Cycles counter, Faulty which) {
    return run(List.of(drawn.get(which.index)), counter);
  }

  private long run(List<Fault> faults, Cycles counter) {
    Machine machine =
        new Machine(faultfinch.machine.Setup.healthy(board, 1).with(faults), Machine.Kind.FAST);
    script(machine, board);
    counter.cycles += machine.cycles();
    return machine.cycles();
  }

  static void script(Machine machine, Board board) {
    Map<Long, Runnable> keys = new TreeMap<>();
    for (KeyPress k : board.exercise()) {
      keys.put(k.atMilliseconds() * 1_000_000L, () -> machine.hold(k.ref(), true));
      long up = (k.atMilliseconds() + k.forMilliseconds()) * 1_000_000L;
      keys.put(up, () -> machine.hold(k.ref(), false));
    }
    keys.forEach(
        (at, move) -> {
          machine.runTo(at);
          move.run();
        });
    machine.runTo(RUN_NS);
  }

  record Flat(byte[] memory) implements Bus {
    @Override
    public int fetch(int address) {
      return memory[address] & 0xFF;
    }

    @Override
    public int read(int address) {
      return memory[address] & 0xFF;
    }

    @Override
    public void write(int address, int value) {
      memory[address] = (byte) value;
    }
  }
}
