package faultfinch.machine;

import faultfinch.part.M6502;
import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Follows both machines and holds what the fast one's tables say of every part's pins against what
 * the plain one's pins read at the end of the same cycle. Pins on slow nets are left out: a table
 * takes those as they are.
 */
final class PinReports {
  private static final Bus DATA = new M6502().pinout().bus("D");

  /** Answers that say of every pin what it reads. */
  private static final Set<Shortcut.Kind> SAID =
      EnumSet.of(Shortcut.Kind.MEMORY, Shortcut.Kind.WIDE, Shortcut.Kind.DEVICE);

  private final long[][] expected;
  private final long[] cycleOf;
  private long expects = -1;
  private Machine fast;
  private long fromCycle = Long.MAX_VALUE;
  private long byPhases;
  private Tables tables;
  private int compared;
  private Optional<String> difference = Optional.empty();

  PinReports(int cycles) {
    expected = new long[cycles][];
    cycleOf = new long[cycles];
    Arrays.fill(cycleOf, -1);
  }

  /** From here on the plain machine runs ahead of the fast one, by as many cycles as are kept. */
  void begin(Machine fast, Machine plain) {
    fromCycle = fast.cycles();
    byPhases = fast.byPhases();
    if (!(fast.bus() instanceof FastBus bus)) {
      return; // Played plainly throughout: there are no tables to ask.
    }
    this.fast = fast;
    tables = bus.tables();
    Levels levels = plain.plain().levels;
    plain
        .plain()
        .watchPhases(
            (phase, ns) -> {
              if (phase == Phase.C_END) {
                int at = (int) (levels.now % expected.length);
                cycleOf[at] = levels.now;
                expected[at] = Arrays.stream(levels.pins).mapToLong(p -> p.in).toArray();
              }
            });
  }

  /** The fast machine made this cycle. */
  void cycle(long cycle, int address, int value, boolean reads, boolean sync) {
    if (cycle < fromCycle || fast == null) {
      return;
    }
    boolean tabled = fast.byPhases() == byPhases;
    Tables before = tables;
    byPhases = fast.byPhases();
    tables = ((FastBus) fast.bus()).tables();
    int at = (int) (cycle % expected.length);
    if (tabled && cycleOf[at] == cycle) {
      Shortcut s = before.find(address, Tables.Access.of(reads, sync));
      if (s != null && SAID.contains(s.kind())) {
        compare(s, expected[at], address, value);
      }
    }
  }

  private void compare(Shortcut s, long[] plain, int address, int value) {
    Circuit c = fast.plain().circuit;
    Reach reach = ((FastBus) fast.bus()).reach();
    compared++;
    for (int p = 0; p < plain.length; p++) {
      long follows = s.seen().low()[p] ^ s.seen().high()[p];
      long in = s.seen().low()[p] | follows & spread(c, reach, p, value);
      long looked =
          ~reach.slowPins[p] & ~ownEcho(c, reach, p) & ~(follows & unseen(c, reach, p, s.and()));
      int differs = (address ^ s.seen().base()) & s.seen().lines();
      for (int bit = 0; bit < s.seen().sways()[p].length; bit++) {
        int set = s.seen().sways()[p][bit];
        if (set >= Influence.CLOCKWORK || Integer.bitCount(set) > 1) {
          looked &= ~(1L << bit);
        } else if ((set & differs) != 0) {
          in ^= 1L << bit;
        }
      }
      if (((in ^ plain[p]) & looked) != 0 && difference.isEmpty()) {
        difference =
            Optional.of(
                String.format(
                    "pins of %s at %04X: %x against %x", c.refs[p], address, in, plain[p]));
      }
    }
  }

  /** Pins on which a part alone reads what it drives itself: nobody is told, and no table says. */
  private static long ownEcho(Circuit c, Reach reach, int part) {
    long pins = 0;
    for (int bit = 0; bit < c.parts[part].pinout().pins().size(); bit++) {
      int net = c.netOf[c.pinBase[part] + bit];
      boolean own = reach.holds[net];
      for (int g : c.receivers[net]) {
        own &= c.partOf[g] == part;
      }
      pins |= own ? 1L << bit : 0;
    }
    return pins;
  }

  /** Data pins of a part as the processor's value tells them. */
  private static long spread(Circuit c, Reach reach, int part, int value) {
    long in = 0;
    for (int i = 0; i < DATA.width(); i++) {
      if ((value >>> i & 1) != 0) {
        in |= pinsOnLine(c, reach, part, i);
      }
    }
    return in;
  }

  /** Pins of a part on lines that the processor's value tells nothing of. */
  private static long unseen(Circuit c, Reach reach, int part, int seen) {
    long pins = 0;
    for (int i = 0; i < DATA.width(); i++) {
      if ((seen >>> i & 1) == 0) {
        pins |= pinsOnLine(c, reach, part, i);
      }
    }
    return pins;
  }

  private static long pinsOnLine(Circuit c, Reach reach, int part, int line) {
    long pins = 0;
    for (int bit = 0; bit < c.parts[part].pinout().pins().size(); bit++) {
      if (reach.lineOf[c.netOf[c.pinBase[part] + bit]] == line + 1) {
        pins |= 1L << bit;
      }
    }
    return pins;
  }

  /** How many cycles from tables were compared. */
  int compared() {
    return compared;
  }

  Optional<String> difference() {
    return difference;
  }
}
