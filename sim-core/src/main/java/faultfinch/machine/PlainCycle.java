package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.M6502;
import faultfinch.part.Part;
import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * One processor cycle by its six phases: settle, commit on the settled levels, settle again for
 * parts whose clock pin moved. This is the definition; the fast machine asks it and falls back on
 * it.
 */
final class PlainCycle {
  private static final Phase[] PHASES = Phase.values();
  private static final int CLOCK_ROUNDS = 16;
  private static final Bus DATA = new M6502().pinout().bus("D");

  final Circuit circuit;
  final Levels levels;
  final Store store;
  private final Committers committers;
  private final Marks marks;
  private final int[] edged;
  private final int[] devices;
  private final int[] phased;
  private final int[] timed;

  /** Cycle at which a part can next change by itself. */
  long nextEvent;

  /** Cycle at which a part next stores something by itself. */
  long nextStored;

  /** The same for each part. */
  private final long[] nextOf;

  /** How often stored words moved. */
  long movings;

  /** Whether parts stored another word in the last cycle played. */
  boolean stirred;

  /** How often that was worked out: state moved in between. */
  long schedulings;

  private PhaseTap phases = PhaseTap.NOBODY;

  /** The data lines as the processor's pins read them at the end of the last cycle. */
  int read;

  PlainCycle(Circuit circuit, Levels levels, Store store) {
    this.circuit = circuit;
    this.levels = levels;
    this.store = store;
    this.nextOf = new long[circuit.parts.length];
    int[] living = IntStream.range(0, circuit.parts.length).filter(p -> circuit.alive[p]).toArray();
    this.timed = IntStream.of(living).filter(p -> circuit.parts[p].keepsTime()).toArray();
    Arrays.fill(nextOf, Part.NEVER);
    this.committers = new Committers(circuit, levels);
    this.marks = levels.marks;
    this.edged = marks.clocked;
    this.phased = IntStream.of(living).filter(p -> circuit.parts[p].followsPhase()).toArray();
    this.devices =
        IntStream.of(living).filter(p -> circuit.parts[p] instanceof BusDevice).toArray();
    schedule();
  }

  /** Goes on, after another wiring of the board has, as one just made would. */
  void resume() {
    read = 0;
    stirred = false;
    movings = 0;
    schedule();
  }

  /** Shows every settled phase to an instrument from now on. */
  void watchPhases(PhaseTap tap) {
    phases = tap;
  }

  /** Works out when a part next changes by itself. */
  void schedule() {
    schedulings++;
    nextEvent = Part.NEVER;
    nextStored = Part.NEVER;
    for (int p : timed) {
      nextOf[p] = circuit.parts[p].nextChange(levels.pins[p]);
      nextEvent = Math.min(nextEvent, nextOf[p]);
      nextStored = Math.min(nextStored, circuit.parts[p].nextStored(levels.pins[p]));
    }
    movings += levels.moved ? 1 : 0;
    levels.moved = false;
  }

  /** The parts that change by themselves by this cycle. */
  int[] due(long cycle) {
    return IntStream.of(timed).filter(p -> nextOf[p] <= cycle).toArray();
  }

  /** The one part that changes by itself by this cycle, or -1 if it is not one alone. */
  int dueAlone(long cycle) {
    int due = -1;
    for (int p : timed) {
      if (nextOf[p] <= cycle) {
        if (due >= 0) {
          return -1;
        }
        due = p;
      }
    }
    return due;
  }

  /** What happens next, to be put back after a trial. */
  static final class Agenda {
    private final long[] nextOf;
    private long nextEvent;
    private long nextStored;
    private long movings;

    Agenda(PlainCycle of) {
      nextOf = new long[of.nextOf.length];
    }
  }

  void save(Agenda agenda) {
    System.arraycopy(nextOf, 0, agenda.nextOf, 0, nextOf.length);
    agenda.nextEvent = nextEvent;
    agenda.nextStored = nextStored;
    agenda.movings = movings;
  }

  void load(Agenda agenda) {
    System.arraycopy(agenda.nextOf, 0, nextOf, 0, nextOf.length);
    nextEvent = agenda.nextEvent;
    nextStored = agenda.nextStored;
    movings = agenda.movings;
  }

  /** Lets time-driven parts catch up with the cycle about to begin. */
  void events() {
    if (levels.now < nextEvent) {
      return;
    }
    for (int p : timed) {
      if (nextOf[p] <= levels.now) {
        circuit.parts[p].elapse(levels.pins[p]);
        levels.touch(p);
      }
    }
    schedule();
  }

  /** What the processor puts on its pins. */
  void present(int address, boolean reads, int data, boolean sync) {
    PartPins cpu = levels.pins[circuit.cpu];
    cpu.hold(M6502.ADDRESS, address);
    cpu.hold(M6502.READ, reads ? 1 : 0);
    cpu.hold(M6502.DATA, data);
    cpu.hold(M6502.SYNC, sync ? 1 : 0);
    levels.touch(circuit.cpu);
  }

  /** Plays the cycle and counts it. */
  void play(int address, boolean reads, int data, boolean sync) {
    boolean moved = levels.moved;
    events();
    present(address, reads, data, sync);
    levels.moved = false;
    for (Phase phase : PHASES) {
      phase(phase);
    }
    stirred = levels.moved;
    levels.moved |= moved;
    // Asked in this cycle, not in the next: what changes at the start of that one is still to come.
    if (levels.moved) {
      schedule();
    }
    levels.now++;
  }

  /**
   * Plays one more cycle of the access now on the pins, with all that happens by itself in time
   * left out.
   */
  void turn() {
    for (Phase phase : PHASES) {
      phase(phase);
    }
    levels.now++;
    levels.moved = false;
  }

  /**
   * Whether the last cycle, played once more and shown to nobody, makes parts store other words.
   */
  boolean stirs() {
    PhaseTap shown = phases;
    phases = PhaseTap.NOBODY;
    levels.moved = false;
    for (Phase phase : PHASES) {
      phase(phase);
    }
    phases = shown;
    return levels.moved;
  }

  private void phase(Phase phase) {
    levels.phase = phase;
    if (levels.timing != null) {
      levels.timing.begin(phase);
    }
    levels.retryOscillating();
    // The halves show on its clock outputs, and from the column on it drives what it writes.
    if (circuit.cpu >= 0
        && (phase == Phase.V_ROW || phase == Phase.C_ROW || phase == Phase.C_COL)) {
      levels.touch(circuit.cpu);
    }
    touchPhased();
    levels.settle();
    if (phases != PhaseTap.NOBODY) {
      phases.settled(phase, levels.nanosecondsAt(levels.now));
    }
    if (phase == Phase.V_LATCH) {
      for (int p : devices) {
        levels.pins[p].before = levels.pins[p].in;
      }
    }
    if (phase == Phase.C_END && circuit.cpu >= 0) {
      read = DATA.of(levels.pins[circuit.cpu].in);
    }
    commit(phase);
  }

  /** The phase is another: what follows it may move. */
  void touchPhased() {
    for (int p : phased) {
      levels.touch(p);
    }
  }

  /** Commits a phase on its settled levels, then follows clock edges until none is left. */
  private void commit(Phase phase) {
    committers.commit(phase);
    commitEdges(phase);
    levels.settle();
    followEdges(phase);
  }

  /** Commits parts whose clock pin has moved until none has; at most so many rounds. */
  void followEdges(Phase phase) {
    for (int round = 0; round < CLOCK_ROUNDS; round++) {
      if (!commitEdges(phase)) {
        return;
      }
      levels.settle();
    }
  }

  /** Of the edges that pins have seen, keeps those of these pins: the others are long past. */
  void forgetEdges(long[] kept) {
    for (int p = 0; p < kept.length; p++) {
      levels.pins[p].rose &= kept[p];
      levels.pins[p].fell &= kept[p];
    }
  }

  private boolean edge(int p, PartPins pins) {
    return (pins.rose & circuit.risePins[p] | pins.fell & circuit.fallPins[p]) != 0;
  }

  /** Commits the parts whose clock has moved since they were last asked; whether there are any. */
  private boolean commitEdges(Phase phase) {
    boolean any = false;
    for (int w = 0; w << 6 < edged.length; w++) {
      long left = marks.all[marks.words + w];
      marks.all[marks.words + w] = 0;
      while (left != 0) {
        int at = (w << 6) + Long.numberOfTrailingZeros(left);
        left &= left - 1;
        any |= at < edged.length && commitEdge(edged[at], phase);
      }
    }
    return any;
  }

  private boolean commitEdge(int p, Phase phase) {
    PartPins pins = levels.pins[p];
    boolean edge = edge(p, pins);
    if (edge) {
      circuit.parts[p].commit(pins, phase);
    }
    pins.rose = 0;
    pins.fell = 0;
    return edge;
  }

  /** Settles once while the oscillators are turned; of the parts only clocked ones commit. */
  void tick() {
    levels.phase = Phase.V_ROW;
    levels.settle();
    for (int p : edged) {
      circuit.parts[p].commit(levels.pins[p], Phase.V_ROW);
      levels.pins[p].rose = 0;
      levels.pins[p].fell = 0;
    }
    levels.settle();
    followEdges(Phase.V_ROW);
  }

  /** One epoch without a clock: levels settle and parts commit once. */
  void idle(long cycles) {
    events();
    phase(Phase.V_ROW);
    schedule();
    levels.now += cycles;
  }
}
