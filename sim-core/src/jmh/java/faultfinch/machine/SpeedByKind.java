package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.KeyPress;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import faultfinch.part.mpu6502.Mpu6502;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * How fast a board runs, healthy and with faults drawn of every kind, a line a kind: MHz of the
 * middle and of the slowest, and their ratio to the same core over a flat array in the same minute,
 * by the processor time of the thread, so that others on the machine do not count. Boards whose
 * processor stands still are counted apart. Run it with {@code java -cp
 * sim-core/target/benchmarks.jar faultfinch.machine.SpeedByKind [BOARD [EACH [SEED
 * [MILLISECONDS]]]]}.
 */
public final class SpeedByKind {
  private static final int WARM_UP = 20;
  private static final long MS = 1_000_000;
  private static final int FLAT_CYCLES = 1_375_000;
  private static final long PLAIN_MS = 60;
  private static final int REPEATS = 5;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Board board;
  private final long end;

  private SpeedByKind(Board board, long end) {
    this.board = board;
    this.end = end;
  }

  /** One run. */
  private record Speed(double megahertz, double tabled, boolean still) {}

  /** Prints the table. */
  public static void main(String[] arguments) {
    String name = arguments.length > 0 ? arguments[0] : "tamarisk";
    int each = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 2;
    long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
    long end = arguments.length > 3 ? Long.parseLong(arguments[3]) : 1_000;
    new SpeedByKind(BoardReader.shipped(name), end * MS).table(each, seed);
  }

  private void table(int each, long seed) {
    for (int i = 0; i < WARM_UP; i++) {
      run(List.of());
      flat();
    }
    double flat = flat();
    line("kind", "drawn", "still", "MHz", "slowest", "of flat", "slowest", "from tables");
    row("healthy", List.of(run(List.of())), flat);
    for (Map.Entry<FaultKinds, List<Fault>> kind : FaultUniverse.of(board).byKind().entrySet()) {
      List<Fault> left = new ArrayList<>(kind.getValue());
      List<Speed> speeds = new ArrayList<>();
      for (int i = 0; i < each && !left.isEmpty(); i++) {
        long name = Chance.of(kind.getKey().name());
        speeds.add(run(List.of(left.remove(Chance.below(left.size(), seed, name, i)))));
      }
      if (!speeds.isEmpty()) {
        row(kind.getKey().name().toLowerCase(Locale.ROOT), speeds, flat());
      }
    }
    Machine plain = new Machine(Setup.healthy(board, seed), Machine.Kind.FAST);
    plain.runTo(end);
    Machine on = plain.continuedPlainly(CycleTap.NONE);
    long start = THREADS.getCurrentThreadCpuTime();
    on.runTo(end + PLAIN_MS * MS);
    double megahertz =
        1e3 * (on.cycles() - plain.cycles()) / (THREADS.getCurrentThreadCpuTime() - start);
    row("plain machine, healthy", List.of(new Speed(megahertz, 0, false)), flat());
  }

  private static void row(String kind, List<Speed> all, double flat) {
    double[] moving =
        all.stream().filter(s -> !s.still).mapToDouble(Speed::megahertz).sorted().toArray();
    double tabled =
        all.stream().filter(s -> !s.still).mapToDouble(Speed::tabled).average().orElse(0);
    double middle = moving.length == 0 ? 0 : moving[moving.length / 2];
    double slowest = Arrays.stream(moving).min().orElse(0);
    line(
        kind,
        all.size() + "",
        all.size() - moving.length + "",
        figure(middle),
        figure(slowest),
        figure(middle / flat),
        figure(slowest / flat),
        figure(100 * tabled) + " %");
  }

  private static String figure(double figure) {
    return String.format(Locale.ROOT, figure < 10 ? "%.3f" : "%.1f", figure);
  }

  private static void line(String kind, String... columns) {
    StringBuilder line = new StringBuilder(String.format("%-24s", kind));
    for (String column : columns) {
      line.append(String.format("%12s", column));
    }
    System.out.println(line);
  }

  private Speed run(List<Fault> faults) {
    long start = THREADS.getCurrentThreadCpuTime();
    Machine machine = new Machine(Setup.healthy(board, 1).with(faults), Machine.Kind.FAST);
    TreeMap<Long, Runnable> keys = new TreeMap<>();
    for (KeyPress k : board.exercise()) {
      keys.put(k.atMilliseconds() * MS, () -> machine.hold(k.ref(), true));
      long up = k.atMilliseconds() + k.forMilliseconds();
      keys.put(up * MS, () -> machine.hold(k.ref(), false));
    }
    keys.headMap(end)
        .forEach(
            (at, move) -> {
              machine.runTo(at);
              move.run();
            });
    machine.runTo(end);
    double megahertz = 1e3 * machine.cycles() / (THREADS.getCurrentThreadCpuTime() - start);
    double tabled = 1 - (double) machine.byPhases() / Math.max(1, machine.cycles());
    boolean still = machine.held() || machine.locked();
    return new Speed(megahertz, tabled, still);
  }

  private double flat() {
    double best = 0;
    for (int i = 0; i < REPEATS; i++) {
      byte[] memory = new byte[0x10000];
      byte[] image = board.firmware().get(0).image();
      System.arraycopy(image, 0, memory, 0x10000 - image.length, image.length);
      long start = THREADS.getCurrentThreadCpuTime();
      Mpu6502 core = new Mpu6502(new SorrelSpeed.Flat(memory));
      core.requestReset();
      core.run(FLAT_CYCLES);
      best = Math.max(best, 1e3 * core.cycle / (THREADS.getCurrentThreadCpuTime() - start));
    }
    return best;
  }
}
