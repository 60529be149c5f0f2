package faultfinch.machine;

import faultfinch.part.Part;
import faultfinch.part.RowMemory;
import faultfinch.part.Strobes;
import faultfinch.part.StrobesBetween;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The instant between two halves of a cycle, which is no phase: the row strobe is high there. A
 * memory is strobed by its fall, so one whose strobe pin does not read high between the halves is
 * never strobed: for it the pin is taken to read high for good. What its net carries stays as it
 * is.
 *
 * <p>All other lines stand there as they do while the processor is in reset.
 */
final class BetweenHalves {
  private BetweenHalves() {}

  /** Notes in a circuit just wired what moves only between halves, and who is never strobed. */
  static void note(Circuit c) {
    c.betweenHalves = new boolean[c.netCount];
    if (!strobed(c)) {
      return;
    }
    boolean[] high = new boolean[c.netCount];
    boolean[] low = new boolean[c.netCount];
    List<Integer> phased =
        IntStream.range(0, c.parts.length)
            .filter(p -> c.alive[p] && (p == c.cpu || c.parts[p].followsPhase()))
            .boxed()
            .toList();
    Part[] parts = c.parts;
    c.parts = parts.clone();
    Levels levels = new Levels(c, new Store(c.wordCount, c.cellCount), 1);
    for (Phase phase : Phase.values()) {
      levels.phase = phase;
      phased.forEach(levels::touch);
      levels.settle();
      for (int net = 0; net < c.netCount; net++) {
        high[net] |= ClockRates.high(levels, net);
        low[net] |= !ClockRates.high(levels, net);
      }
    }
    Arrays.setAll(c.parts, p -> parts[p] instanceof Strobes ? new StrobesBetween() : parts[p]);
    phased.forEach(levels::touch);
    levels.settle();
    c.parts = parts;
    for (int net = 0; net < c.netCount; net++) {
      c.betweenHalves[net] = ClockRates.high(levels, net) ? !high[net] : !low[net];
    }
    rests(c, levels);
  }

  /** Also where the generator is dead or not there: its strobes do not rise either. */
  private static boolean strobed(Circuit c) {
    boolean memories = false;
    boolean strobes = false;
    for (int p = 0; p < c.parts.length; p++) {
      memories |= c.alive[p] && c.parts[p] instanceof RowMemory;
      strobes |= c.parts[p] instanceof Strobes;
    }
    return memories && strobes;
  }

  private static void rests(Circuit c, Levels between) {
    c.readMask = c.readMask.clone();
    c.readBits = c.readBits.clone();
    for (int p = 0; p < c.parts.length; p++) {
      long strobe = c.parts[p].pinout().role(Pin.Role.LATCH);
      if (c.alive[p]
          && c.parts[p] instanceof RowMemory
          && (between.pins[p].in & strobe) != strobe) {
        c.readMask[p] |= strobe;
        c.readBits[p] |= strobe;
      }
    }
  }
}
