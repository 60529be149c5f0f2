package faultfinch.machine;

import faultfinch.part.mpu6502.Bus;
import faultfinch.part.mpu6502.Mpu6502;

/**
 * What stands between the processor's core and the wiring, in either machine: plays cycles plainly,
 * holds the core while it is not ready, in reset or at the end of a window, and lets it come back
 * by replaying the instruction from its start with the reads already made.
 */
abstract class CycleBus implements Bus {
  private static final int LONGEST_INSTRUCTION = 8;
  private static final int IDLE_ADDRESS = 0xFFFF;
  private static final int QUIET_CYCLES = 4;

  protected final Machine machine;
  protected Mpu6502 core;
  protected ProcessorPins processor;
  protected PlainCycle plain;
  private long window = Long.MAX_VALUE;
  private long[] start = new long[0];
  private final int[] replay = new int[LONGEST_INSTRUCTION];
  private final long[] replayEnd = new long[LONGEST_INSTRUCTION];
  protected boolean watched;
  private int played;
  private int replaying;
  private long resumeAt = -1;
  private long byPhases;

  CycleBus(Machine machine) {
    this.machine = machine;
  }

  void attach(Mpu6502 core, ProcessorPins processor) {
    this.core = core;
    this.processor = processor;
    this.start = new long[core.words()];
    core.save(start, 0);
  }

  /** Stands where another bus of the same board stands, be it inside an instruction. */
  void continueFrom(CycleBus other) {
    System.arraycopy(other.start, 0, start, 0, start.length);
    System.arraycopy(other.replay, 0, replay, 0, replay.length);
    System.arraycopy(other.replayEnd, 0, replayEnd, 0, replayEnd.length);
    played = other.played;
    replaying = other.replaying;
    resumeAt = other.resumeAt;
    byPhases = other.byPhases;
  }

  /** Cycles since power-on that were played phase by phase. */
  long byPhases() {
    return byPhases;
  }

  /** The board was compiled anew; levels are live. */
  void rewired(PlainCycle plain) {
    this.plain = plain;
    processor.sample(cpuIn(), core, core.cycle);
  }

  /** A wiring of the board will not come back; what is known of it may go. */
  void forget(PlainCycle wiring) {
    // The plain machine knows nothing of a wiring.
  }

  /** Something outside moved slow levels between two instructions. */
  void slowChanged() {
    processor.sample(cpuIn(), core, core.cycle);
  }

  /** Makes the levels stand as the last cycle left them. */
  abstract void materialise();

  /** Runs whole instructions until this cycle or the first boundary after. */
  abstract void run(long until);

  /** The same for who does not look at what takes data for a picture; it may not stand right. */
  void pass(long until) {
    run(until);
  }

  protected long cpuIn() {
    // A socket for one chip has no processor; nothing runs there.
    return plain.circuit.cpu < 0 ? 0 : plain.levels.pins[plain.circuit.cpu].in;
  }

  /** One instruction with every cycle played plainly, or as much of it as the window allows. */
  protected void careful(long windowEnd) {
    if (processor.inReset()) {
      reset(windowEnd);
      return;
    }
    if (replaying == 0) {
      resumeAt = -1;
      core.save(start, 0);
    } else {
      reload(Mpu6502.NEVER);
    }
    window = windowEnd;
    played = 0;
    try {
      core.step();
      replaying = 0;
    } catch (Stop stop) {
      replaying = played;
      resumeAt = core.cycle;
      reload(core.cycle);
    }
    window = Long.MAX_VALUE;
  }

  /** Whether the core stopped inside an instruction that has to be replayed. */
  protected boolean interrupted() {
    return resumeAt >= 0;
  }

  /** Has the pins told whatever happened by itself up to the end of the cycle at hand. */
  void overtake() {
    // The plain machine's pins are told in every cycle.
  }

  /** Whether the call now answered only repeats what was seen before. */
  boolean replays() {
    return played < replaying;
  }

  /** Puts the core back to the start of its instruction, with what its pins have told it since. */
  private void reload(long cycle) {
    long irq = core.irqSince;
    long nmi = core.nmiFellAt;
    core.load(start, 0);
    core.irqSince = irq;
    core.nmiFellAt = nmi == Mpu6502.NEVER ? core.nmiFellAt : nmi;
    core.cycle = cycle == Mpu6502.NEVER ? core.cycle : cycle;
  }

  /** Nothing happens before this cycle: it may be the next. */
  protected void skipTo(long cycle) {
    core.cycle = Math.max(core.cycle, cycle);
  }

  /** Makes the levels and all stored state stand as the last cycle left them, for good. */
  void leave() {
    materialise();
  }

  /** Makes them stand so for whoever looks now, and goes on as before. */
  void show() {
    materialise();
  }

  /** In reset the processor reads one address and runs nothing. */
  private void reset(long until) {
    int quiet = 0;
    while (processor.inReset() && core.cycle < until) {
      plain.levels.now = core.cycle;
      boolean event = core.cycle >= plain.nextEvent;
      plain.play(IDLE_ADDRESS, true, 0, false);
      byPhases++;
      core.cycle = plain.levels.now;
      settled(core.cycle - 1);
      quiet = event || plain.stirred ? 0 : quiet + 1;
      if (quiet >= QUIET_CYCLES && processor.inReset()) {
        long next = Math.min(Math.min(plain.nextEvent, plain.levels.nextExpiry()), until);
        skipTo(next);
        plain.levels.now = core.cycle;
        quiet = 0;
      }
    }
    afterReset(IDLE_ADDRESS);
  }

  /** The processor has last read this address in reset, and the levels stand so. */
  protected void afterReset(int address) {
    // The plain machine's levels always stand as the last cycle left them.
  }

  /** One cycle by its six phases; a read is repeated while the processor is not ready. */
  protected int played(int address, boolean reads, int data, boolean sync) {
    if (played < replaying) {
      core.cycle = replayEnd[played];
      return replay[played++];
    }
    if (resumeAt >= 0) {
      core.cycle = resumeAt;
      resumeAt = -1;
    }
    int value;
    int quiet = 0;
    do {
      plain.levels.now = core.cycle;
      boolean event = core.cycle >= plain.nextEvent;
      plain.play(address, reads, data, sync);
      byPhases++;
      value = reads ? plain.read : data;
      settled(core.cycle);
      if (reads && !processor.ready(cpuIn())) {
        core.cycle++;
        quiet = event || plain.stirred ? 0 : quiet + 1;
        if (quiet >= QUIET_CYCLES) {
          long next = Math.min(plain.nextEvent, plain.levels.nextExpiry());
          skipTo(Math.min(next, window));
          quiet = 0;
        }
        if (core.cycle >= window) {
          throw Stop.NOW;
        }
      } else {
        break;
      }
    } while (true);
    if (sync) {
      machine.reached(address, core.cycle);
    }
    note(value);
    return value;
  }

  /** Writes down a cycle of the instruction at hand, should it have to be replayed. */
  protected void note(int value) {
    if (played < replay.length) {
      replayEnd[played] = core.cycle;
      replay[played++] = value;
    }
  }

  /** How many cycles of the instruction at hand are written down. */
  protected int noted() {
    return played;
  }

  private void settled(long cycle) {
    processor.sample(cpuIn(), core, cycle);
    machine.look();
  }

  /** Takes the way that holds now; the plain machine has but one. */
  protected void choose() {
    // Nothing to choose.
  }

  /** Plays cycles plainly and shows every settled phase. */
  void observe(long cycles, PhaseTap phases) {
    long end = core.cycle + cycles;
    materialise();
    watched = true;
    plain.watchPhases(phases);
    try {
      while (core.cycle < end) {
        choose();
        careful(end);
      }
    } finally {
      plain.watchPhases(PhaseTap.NOBODY);
      watched = false;
    }
  }
}
