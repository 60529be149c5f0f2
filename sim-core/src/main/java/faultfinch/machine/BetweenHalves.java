package faultfinch.machine;

import faultfinch.part.Part;
import faultfinch.part.RowMemory;
import faultfinch.part.Strobes;
import faultfinch.part.StrobesBetween;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;

/**
 * The instant between two halves of a cycle, which is no phase: the row strobe is high there. A
 * memory is strobed by its fall, so one whose strobe pin does not read high between the halves is
 * never strobed: for it the pin is taken to read high for good. What its net carries stays as it
 * is.
 *
 * <p>All other lines stand there as they do while the processor is in reset.
 */
final class BetweenHalves {
  private static final int MIDDLE_MV = 1300;

  private BetweenHalves() {}

  /** Notes in a circuit just wired what moves only between halves, and who is never strobed. */
  static void note(Circuit c) {
    c.betweenHalves = new boolean[c.netCount];
    if (!strobed(c)) {
      return;
    }
    boolean[] high = new boolean[c.netCount];
    boolean[] low = new boolean[c.netCount];
    Levels levels = levels(c);
    for (Phase phase : Phase.values()) {
      levels.phase = phase;
      for (int p = 0; p < c.parts.length; p++) {
        levels.touch(p);
      }
      levels.settle();
      for (int net = 0; net < c.netCount; net++) {
        high[net] |= high(levels, net);
        low[net] |= !high(levels, net);
      }
    }
    Part[] sound = c.parts;
    c.parts = between(sound);
    Levels rest = levels(c);
    rest.settle();
    c.parts = sound;
    for (int net = 0; net < c.netCount; net++) {
      c.betweenHalves[net] = high(rest, net) ? !high[net] : !low[net];
    }
    rests(c, rest);
  }

  private static boolean strobed(Circuit c) {
    boolean memories = false;
    boolean strobes = false;
    for (int p = 0; p < c.parts.length; p++) {
      memories |= c.alive[p] && c.parts[p] instanceof RowMemory;
      strobes |= c.alive[p] && c.parts[p] instanceof Strobes;
    }
    return memories && strobes;
  }

  private static Levels levels(Circuit c) {
    return new Levels(c, new Store(c.wordCount, c.cellCount), 1);
  }

  private static boolean high(Levels levels, int net) {
    return levels.kind[net] == Levels.DRIVEN && levels.mv[net] > MIDDLE_MV;
  }

  private static Part[] between(Part[] parts) {
    Part[] between = parts.clone();
    for (int p = 0; p < between.length; p++) {
      if (between[p] instanceof Strobes) {
        between[p] = new StrobesBetween();
      }
    }
    return between;
  }

  private static void rests(Circuit c, Levels rest) {
    c.readMask = c.readMask.clone();
    c.readBits = c.readBits.clone();
    for (int p = 0; p < c.parts.length; p++) {
      long strobe = c.parts[p].pinout().role(Pin.Role.LATCH);
      if (c.alive[p] && c.parts[p] instanceof RowMemory && (rest.pins[p].in & strobe) != strobe) {
        c.readMask[p] |= strobe;
        c.readBits[p] |= strobe;
      }
    }
  }
}
