package faultfinch.machine;

import faultfinch.board.Pad;
import faultfinch.part.BusDevice;
import faultfinch.part.M6502;
import faultfinch.part.Memory;
import faultfinch.signal.Level;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * A healthy and a faulty machine of the same parts, played plainly side by side a few cycles at a
 * time; what both show in the same phase of the same cycle can be compared pin by pin.
 *
 * <p>Phases that only one of them plays are passed over: in reset, or while it waits, a machine
 * leaves out cycles in which nothing stirs.
 */
public final class Lockstep {
  private static final int SLICE = 16;
  private static final int PHASES = Phase.values().length;
  private static final long DATA_LINES = new M6502().pinout().bus("D").mask();

  /** What both showed in one phase, still to be compared. */
  @FunctionalInterface
  public interface Look {

    /**
     * A phase that both have played.
     *
     * @return whether to go on comparing
     */
    boolean phase(Shown shown);
  }

  /** One machine as a phase left it. */
  private record Still(
      long cycle, Phase phase, long nanoseconds, int[] mv, byte[] kind, long[] in, long[] driven) {}

  /** One phase of both. */
  public final class Shown {
    private final Still expected;
    private final Still had;

    private Shown(Still expected, Still had) {
      this.expected = expected;
      this.had = had;
    }

    public long cycle() {
      return had.cycle;
    }

    public Phase phase() {
      return had.phase;
    }

    public long nanoseconds() {
      return had.nanoseconds;
    }

    /** All pins that differ, in the order of the board. */
    public List<PinDifference> differences() {
      return alike() ? List.of() : compared();
    }

    /** References of the parts that the healthy processor reads in this phase. */
    public List<String> shouldAnswer() {
      return answering(healthy.plain().circuit, expected);
    }

    /** References of the parts that the faulty one's processor reads in this phase. */
    public List<String> answers() {
      return answering(faulty.plain().circuit, had);
    }

    private boolean alike() {
      for (int i = 0; i < one.length; i++) {
        if (expected.mv[one[i]] != had.mv[other[i]]
            || expected.kind[one[i]] != had.kind[other[i]]) {
          return false;
        }
      }
      return Arrays.equals(expected.in, had.in);
    }

    private List<PinDifference> compared() {
      Circuit a = healthy.plain().circuit;
      Circuit b = faulty.plain().circuit;
      List<PinDifference> differ = new ArrayList<>();
      for (int pin = 0; pin < b.netOf.length; pin++) {
        int p = b.partOf[pin];
        Pin drawn = b.parts[p].pinout().pins().get(b.bitOf[pin]);
        Level right = level(expected, a.netOf[pin]);
        Level level = level(had, b.netOf[pin]);
        boolean reads = drawn.receives() && a.alive[p] && b.alive[p];
        boolean bit = reads && ((expected.in[p] ^ had.in[p]) >>> b.bitOf[pin] & 1) != 0;
        if (bit || right != level) {
          differ.add(
              new PinDifference(
                  new Pad(b.refs[p], drawn.name()),
                  right,
                  expected.mv[a.netOf[pin]],
                  level,
                  had.mv[b.netOf[pin]],
                  bit,
                  (had.in[p] >>> b.bitOf[pin] & 1) != 0));
        }
      }
      return differ;
    }
  }

  private final Machine healthy;
  private final Machine faulty;
  private final int[] one;
  private final int[] other;

  /** From where two machines stand; they are played on, so let them be nobody else's. */
  public Lockstep(Machine healthy, Machine faulty) {
    this.healthy = healthy;
    this.faulty = faulty;
    int[] a = healthy.plain().circuit.netOf;
    int[] b = faulty.plain().circuit.netOf;
    long[] pairs = new long[a.length];
    for (int pin = 0; pin < a.length; pin++) {
      pairs[pin] = (long) a[pin] << 32 | b[pin];
    }
    pairs = Arrays.stream(pairs).sorted().distinct().toArray();
    one = Arrays.stream(pairs).mapToInt(pair -> (int) (pair >>> 32)).toArray();
    other = Arrays.stream(pairs).mapToInt(pair -> (int) pair).toArray();
  }

  /** The cycle both stand before; a machine that stands inside an instruction counts by cycles. */
  public long cycle() {
    return faulty.cycles();
  }

  /** Plays both until this cycle, or until the look has seen enough. */
  public void playTo(long end, Look look) {
    boolean more = true;
    while (more && faulty.cycles() < end && healthy.cycles() < end) {
      long to = Math.min(end, faulty.cycles() + SLICE);
      List<Still> right = played(healthy, to);
      List<Still> seen = played(faulty, to);
      int i = 0;
      for (Still s : seen) {
        while (i < right.size() && at(right.get(i)) < at(s)) {
          i++;
        }
        if (more && i < right.size() && at(right.get(i)) == at(s)) {
          more = look.phase(new Shown(right.get(i), s));
        }
      }
    }
  }

  private static long at(Still s) {
    return s.cycle * PHASES + s.phase.ordinal();
  }

  private static List<Still> played(Machine machine, long to) {
    List<Still> stills = new ArrayList<>();
    if (machine.cycles() < to) {
      machine.play(
          to - machine.cycles(),
          (phase, nanoseconds) -> stills.add(still(machine.plain().levels, phase, nanoseconds)));
    }
    return stills;
  }

  private static Still still(Levels levels, Phase phase, long nanoseconds) {
    long[] in = new long[levels.pins.length];
    long[] driven = new long[levels.pins.length];
    for (int p = 0; p < in.length; p++) {
      in[p] = levels.pins[p].in;
      driven[p] = levels.driven[p];
    }
    return new Still(
        levels.now, phase, nanoseconds, levels.mv.clone(), levels.kind.clone(), in, driven);
  }

  private static Level level(Still still, int net) {
    if (still.kind[net] == Levels.FLOATS || still.kind[net] == Levels.FLOATS_ON_LS) {
      return Level.FLOATING;
    }
    if (still.kind[net] == Levels.OSCILLATES || Levels.mid(still.mv[net])) {
      return Level.MID;
    }
    return Levels.high(still.mv[net]) ? Level.HIGH : Level.LOW;
  }

  /** Who drives the processor's data lines; of what comes through a bus buffer, who is behind. */
  private static List<String> answering(Circuit c, Still still) {
    BitSet nets = nets(c, c.cpu, DATA_LINES);
    List<String> refs = new ArrayList<>();
    for (int p : drivers(c, still, nets)) {
      List<Integer> behind = behind(c, still, p);
      if (behind.isEmpty()) {
        refs.add(c.refs[p]);
      }
      behind.forEach(q -> refs.add(c.refs[q]));
    }
    return refs;
  }

  private static List<Integer> drivers(Circuit c, Still still, BitSet nets) {
    List<Integer> parts = new ArrayList<>();
    for (int p = 0; p < c.parts.length; p++) {
      if (p != c.cpu && nets(c, p, still.driven[p]).intersects(nets)) {
        parts.add(p);
      }
    }
    return parts;
  }

  private static List<Integer> behind(Circuit c, Still still, int part) {
    boolean buffer =
        c.parts[part].pinout().role(Pin.Role.DIRECTION) != 0
            && !(c.parts[part] instanceof BusDevice)
            && !(c.parts[part] instanceof Memory);
    if (!buffer) {
      return List.of();
    }
    long far = c.parts[part].pinout().role(Pin.Role.DATA) & ~still.driven[part];
    return drivers(c, still, nets(c, part, far)).stream().filter(p -> p != part).toList();
  }

  private static BitSet nets(Circuit c, int part, long pins) {
    BitSet nets = new BitSet();
    for (long left = pins; left != 0; left &= left - 1) {
      int net = c.netOf[c.pinBase[part] + Long.numberOfTrailingZeros(left)];
      if (c.source[net] == Circuit.NO_SOURCE) {
        nets.set(net);
      }
    }
    return nets;
  }
}
