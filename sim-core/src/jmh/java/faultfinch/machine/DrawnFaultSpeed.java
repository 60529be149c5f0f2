package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.part.mpu6502.Mpu6502;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How fast boards with a fault run, one line a fault: the same workload as {@link SorrelSpeed},
 * each fault beside the flat array in the same minute. Faults of data and address lines are told
 * apart, as are boards whose processor stands still. Run it with {@code java -cp
 * sim-core/target/benchmarks.jar faultfinch.machine.DrawnFaultSpeed [HOW MANY [SEED]]}.
 */
public final class DrawnFaultSpeed {
  private static final int WARM_UP = 60;
  private static final int REPEATS = 3;
  private static final long MOVING = 1_000_000;

  private DrawnFaultSpeed() {}

  /** Prints the table. */
  public static void main(String[] arguments) {
    int howMany = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 50;
    int seed = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
    Board board = BoardReader.shipped("sorrel");
    for (int i = 0; i < WARM_UP; i++) {
      megahertz(board, List.of());
      flat(board);
    }
    List<Double> others = new ArrayList<>();
    List<Double> buses = new ArrayList<>();
    for (Fault fault : new Draw(FaultUniverse.of(board), seed).overKinds(howMany)) {
      double flat = flat(board);
      Machine probe = machine(board, List.of(fault));
      double speed = megahertz(board, List.of(fault));
      boolean still = probe.cycles() < MOVING || probe.held() || probe.locked();
      boolean bus = onBus(board, fault);
      double tabled = 1 - (double) probe.byPhases() / Math.max(1, probe.cycles());
      System.out.printf(
          Locale.ROOT,
          "%6.3f of flat %7.1f MHz %5.1f %% from tables  %s%s%s%n",
          speed / flat,
          speed,
          100 * tabled,
          fault.text(),
          bus ? " [bus]" : "",
          still ? " [stands still]" : "");
      if (!still) {
        (bus ? buses : others).add(speed / flat);
      }
    }
    median("other faults", others);
    median("bus faults", buses);
    double healthy = megahertz(board, List.of());
    System.out.printf(Locale.ROOT, "healthy %.3f%n", healthy / flat(board));
  }

  private static void median(String what, List<Double> ratios) {
    Collections.sort(ratios);
    if (!ratios.isEmpty()) {
      System.out.printf(
          Locale.ROOT,
          "%s: %d, median %.3f of flat, slowest %.4f%n",
          what,
          ratios.size(),
          ratios.get(ratios.size() / 2),
          ratios.get(0));
    }
  }

  /** Whether a fault names a pad, or a net, of an address or data line. */
  private static boolean onBus(Board board, Fault fault) {
    Stream<String> pads =
        board.netOfPad().entrySet().stream()
            .filter(
                e ->
                    fault
                        .text()
                        .matches("(.*\\W)?" + Pattern.quote(e.getKey().text()) + "([^\\w/].*)?"))
            .map(e -> e.getValue().name());
    Stream<String> place = Stream.of(fault.place());
    return Stream.concat(pads, place).anyMatch(name -> name.matches("[AD][0-9]+"));
  }

  private static double flat(Board board) {
    double best = 0;
    for (int i = 0; i < REPEATS; i++) {
      byte[] memory = new byte[0x10000];
      byte[] image = board.firmware().get(0).image();
      System.arraycopy(image, 0, memory, 0x10000 - image.length, image.length);
      long start = System.nanoTime();
      Mpu6502 core = new Mpu6502(new SorrelSpeed.Flat(memory));
      core.requestReset();
      core.run(SorrelSpeed.FLAT_CYCLES);
      best = Math.max(best, 1e3 * core.cycle / (System.nanoTime() - start));
    }
    return best;
  }

  private static Machine machine(Board board, List<Fault> faults) {
    Machine machine = new Machine(Setup.healthy(board, 1).with(faults), Machine.Kind.FAST);
    SorrelSpeed.script(machine, board);
    return machine;
  }

  private static double megahertz(Board board, List<Fault> faults) {
    double best = 0;
    for (int i = 0; i < REPEATS; i++) {
      long start = System.nanoTime();
      Machine machine = machine(board, faults);
      long spent = System.nanoTime() - start;
      best = Math.max(best, 1e3 * machine.cycles() / spent);
      if (spent > 500_000_000) {
        break;
      }
    }
    return best;
  }
}
