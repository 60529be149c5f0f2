package faultfinch.machine;

import faultfinch.part.Part;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;

/**
 * What parts say to each other on nets that no access moves: one changes by itself, another stores
 * something in the same cycle and answers in the next, and so on for a few cycles.
 *
 * <p>Those cycles need not be played. The parts that hear anything are asked to commit phase by
 * phase, as if nobody had selected them, and all others are left alone. First it is tried on a copy
 * whether that is all: whether nothing moves that somebody else listens to, and it comes to rest.
 * If the processor asks a device meanwhile, that cycle is played after all.
 */
final class Chatter {
  /** In no talk of ours is anything stored in so many cycles on end. */
  private static final int LONGEST = 8;

  /** What {@link #tried} answers where they do not talk among themselves. */
  static final int LOUD = -1;

  private static final Phase[] PHASES = Phase.values();

  private final PlainCycle plain;
  private final Circuit c;
  private final Levels levels;

  /** Nets that no table depends on and that show nothing to the processor but an interrupt. */
  private final boolean[] isolated;

  private final boolean[] talks;
  private final long[] selects;
  private final long[] released;

  /** By part the pin that tells it the halves of the processor's cycle. */
  private final long[] clock;

  /** Those who heard anything, and how many. */
  private final int[] members;

  private int count;
  private final boolean[] member;

  /** The levels that they have heard of. */
  private final int[] mv;

  private final byte[] kind;

  /** Whether everybody who heard anything can take part. */
  private boolean known;

  /** The cycle at which they go on talking, if they have begun. */
  private long at = Part.NEVER;

  private int left;

  Chatter(PlainCycle plain, Reach reach, boolean[] isolated) {
    this.plain = plain;
    this.c = plain.circuit;
    this.levels = plain.levels;
    this.isolated = isolated;
    int n = c.parts.length;
    this.talks = new boolean[n];
    this.selects = new long[n];
    this.released = new long[n];
    this.clock = new long[n];
    this.members = new int[n];
    this.member = new boolean[n];
    this.mv = new int[c.netCount];
    this.kind = new byte[c.netCount];
    for (int p = 0; p < n; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        boolean selects = pin.role() == Pin.Role.SELECT;
        this.selects[p] |= selects ? pin.mask() : 0;
        released[p] |= selects && pin.activeLow() ? pin.mask() : 0;
        clock[p] |= pin.role() == Pin.Role.CLOCK_FALLS ? pin.mask() : 0;
      }
      talks[p] = talks(p, reach);
    }
  }

  private boolean talks(int p, Reach reach) {
    return c.alive[p]
        && p != c.cpu
        && !reach.clockwork.parts[p]
        && c.edgePins(p) == 0
        && !c.parts[p].asksForEdges()
        && !c.parts[p].followsPhase()
        && (reach.onlySlow(p) || reach.live(p));
  }

  /**
   * Tries for how many cycles, from this one on, parts store something on account of what just
   * happened by itself; they are left as they end up.
   *
   * @param due the parts that changed by themselves; the levels have settled since
   * @param were the levels before
   * @return cycles, or {@link #LOUD} if others have a part in it or it goes on for long
   */
  int tried(int[] due, Levels.Copy were) {
    for (int i = 0; i < count; i++) {
      member[members[i]] = false;
    }
    count = 0;
    System.arraycopy(were.mv, 0, mv, 0, mv.length);
    System.arraycopy(were.kind, 0, kind, 0, kind.length);
    known = true;
    for (int p : due) {
      known &= takesPart(p);
    }
    hear();
    boolean stirred = true;
    int cycles = 0;
    while (known && stirred && cycles <= LONGEST && levels.now < plain.nextEvent) {
      stirred = cycle(true);
      levels.now++;
      cycles += stirred ? 1 : 0;
    }
    return known && !stirred ? cycles : LOUD;
  }

  private boolean takesPart(int p) {
    if (talks[p] && !member[p]) {
      member[p] = true;
      members[count++] = p;
    }
    return talks[p];
  }

  /** Has all who listen to nets that moved take part, as far as they can. */
  private void hear() {
    for (int net = 0; net < mv.length; net++) {
      if (levels.mv[net] != mv[net] || levels.kind[net] != kind[net]) {
        mv[net] = levels.mv[net];
        kind[net] = levels.kind[net];
        known &= isolated[net];
        for (int g : c.receivers[net]) {
          known &= hears(c.partOf[g], g);
        }
      }
    }
  }

  private boolean hears(int p, int g) {
    boolean edge = (c.edgePins(p) >>> c.bitOf[g] & 1) != 0;
    boolean stores = c.alive[p] && p != c.cpu && c.parts[p].commitsEveryPhase();
    return !edge && (!stores || takesPart(p));
  }

  /** What is due at this cycle happens, and those who take part begin to talk, for so many. */
  void begin(long cycle, int cycles) {
    plain.events();
    at = cycle;
    left = cycles;
  }

  /** The cycle at which somebody goes on talking; {@link Part#NEVER} if nobody talks. */
  long at() {
    return at;
  }

  /** They are played from here on. */
  void stop() {
    at = Part.NEVER;
  }

  /** They talk for a cycle. */
  void go() {
    boolean moved = levels.moved;
    cycle(false);
    levels.moved |= moved;
    left--;
    at = left > 0 ? at + 1 : Part.NEVER;
  }

  /** One cycle of those who take part; whether somebody stored anything. */
  private boolean cycle(boolean trying) {
    levels.moved = false;
    for (Phase phase : PHASES) {
      levels.phase = phase;
      levels.retryOscillating();
      settle(trying);
      for (int i = 0; i < count; i++) {
        commit(members[i], phase);
      }
      settle(trying);
    }
    boolean stirred = levels.moved;
    if (stirred) {
      plain.schedule();
    }
    return stirred;
  }

  private void settle(boolean trying) {
    boolean tells = trying && !levels.atRest();
    levels.settle();
    if (tells) {
      hear();
    }
  }

  private void commit(int p, Phase phase) {
    boolean second = phase.ordinal() >= Phase.C_ROW.ordinal();
    PartPins pins = levels.pins[p];
    long in = pins.in;
    pins.in = in & ~(selects[p] | clock[p]) | released[p] | (second ? clock[p] : 0);
    if (phase == Phase.V_LATCH) {
      pins.before = pins.in;
    }
    if (c.parts[p].commitsEveryPhase()) {
      c.parts[p].commit(pins, phase);
    }
    pins.in = in;
  }
}
