package faultfinch.machine;

import java.util.Arrays;

/**
 * Whether what next happens by itself is quiet, so that the tables may be used right up to it and
 * it may be let happen afterwards, at its own cycle. Asked only when it is near: until then much
 * may still put it off.
 */
final class Foresight {
  /** Cycles before an event at which it is looked at. */
  private static final int SOON = 64;

  private final PlainCycle plain;
  private final Shortcuts shortcuts;
  private final int apart;

  /** The scheduling for which the answer was found. */
  private long foreseen = -1;

  private boolean quiet;
  private int talk;

  /** Per part the count of stored words' moves while which its own output changes are quiet. */
  private final long[] quietWhile;

  /**
   * Foresees the events of a machine.
   *
   * @param apart cycles that two events have to be apart, twice
   */
  Foresight(PlainCycle plain, Shortcuts shortcuts, int apart) {
    this.plain = plain;
    this.shortcuts = shortcuts;
    this.apart = apart;
    this.quietWhile = new long[plain.circuit.parts.length];
    forget();
  }

  /** Something outside moved: all is to be asked anew. */
  void forget() {
    foreseen = -1;
    Arrays.fill(quietWhile, -1);
  }

  /** Whether the next event moves nothing that a cycle or the processor sees, as far as known. */
  boolean quiet() {
    return quiet;
  }

  /** Cycles for which parts talk of it among themselves, if it is quiet. */
  int talk() {
    return talk;
  }

  /** Looks, on a copy, at what the next event will move, if it is near. */
  void look(long cycle, boolean wanted) {
    if (foreseen == plain.schedulings) {
      return;
    }
    long event = plain.nextEvent;
    if (!wanted || event - SOON > cycle) {
      quiet = false;
      return;
    }
    boolean outputsOnly = event + 2L * apart <= plain.nextStored;
    int due = outputsOnly ? plain.dueAlone(event) : -1;
    quiet = due >= 0 && quietWhile[due] == plain.movings;
    talk = 0;
    if (!quiet) {
      talk = shortcuts.quiet(event, apart);
      quiet = talk != Chatter.LOUD;
      if (due >= 0) {
        quietWhile[due] = talk == 0 ? plain.movings : -1;
      }
    }
    foreseen = plain.schedulings;
  }
}
