package faultfinch.machine;

import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import java.util.stream.IntStream;

/**
 * When rows of forgetting memories were last strobed, as far as the tables leave that out: kept for
 * the rows that only accesses strobe, looked up for those of the picture.
 */
final class RowClocks {
  private final PlainCycle plain;
  private final int[] memories;

  RowClocks(PlainCycle plain) {
    this.plain = plain;
    Circuit c = plain.circuit;
    memories =
        IntStream.range(0, c.parts.length)
            .filter(p -> c.alive[p] && c.parts[p] instanceof RowMemory)
            .toArray();
  }

  /** Whether no memory here forgets. */
  boolean none() {
    return memories.length == 0;
  }

  /** Strobes the rows of an access that need a clock, before the column of it is looked at. */
  void strobe(Rows rows, int address, Orbit way, long cycle) {
    Levels levels = plain.levels;
    long now = levels.now;
    levels.now = cycle;
    for (int kind = 0; kind < rows.parts().length; kind++) {
      int row = rows.at(kind, address);
      for (int p : rows.parts()[kind]) {
        RowMemory memory = (RowMemory) plain.circuit.parts[p];
        if (way.strobed()[p][row]) {
          continue;
        }
        if (way.pictured(p, row)) {
          memory.strobed(levels.pins[p], row, levels.nanosecondsAt(cycle));
        } else {
          memory.strobe(levels.pins[p], row);
        }
      }
    }
    levels.now = now;
  }

  /**
   * Strobes the row of the access that is on the processor's pins. Where no clock is kept for it,
   * its lines may float and read what they do not in the cycle as it was: no time is noted.
   */
  void strobe() {
    plain.levels.settle();
    for (int p : memories) {
      RowMemory memory = (RowMemory) plain.circuit.parts[p];
      PartPins pins = plain.levels.pins[p];
      if (pins.refreshed(memory.address().of(pins.in))) {
        memory.takeRow(pins);
      } else {
        memory.commit(pins, Phase.C_ROW);
      }
    }
  }

  /**
   * Cycles are left out in which the last one is played again and again, nothing running by itself:
   * what it strobed, each of them does.
   */
  void repeat(long from, long to) {
    long then = plain.levels.nanosecondsAt(from - 1);
    long last = plain.levels.nanosecondsAt(to - 1);
    for (int p : memories) {
      RowMemory memory = (RowMemory) plain.circuit.parts[p];
      for (int row = 0; row < 1 << memory.address().width(); row++) {
        if (memory.strobedAt(plain.levels.pins[p], row) >= then) {
          memory.strobed(plain.levels.pins[p], row, last);
        }
      }
    }
  }

  /** Cycles are left out in each of which the processor strobes these rows. */
  void repeat(int[] rows, long to) {
    long last = plain.levels.nanosecondsAt(to - 1);
    for (int p : memories) {
      if (rows[p] >= 0) {
        ((RowMemory) plain.circuit.parts[p]).strobed(plain.levels.pins[p], rows[p], last);
      }
    }
  }

  /** Writes down, for whoever looks, when rows were last strobed that no clock is kept for. */
  void note(Orbit way) {
    way.noteRows(plain.levels.now, true);
    way.noteStrobed(plain.levels.now);
  }
}
