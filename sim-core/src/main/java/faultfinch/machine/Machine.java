package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Firmware;
import faultfinch.board.Milestone;
import faultfinch.board.Pad;
import faultfinch.fault.Dead;
import faultfinch.fault.ElementOpen;
import faultfinch.fault.Fault;
import faultfinch.part.Monitor;
import faultfinch.part.RowMemory;
import faultfinch.part.mpu6502.Mpu6502;
import faultfinch.signal.Electrical;
import faultfinch.signal.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;

/**
 * A board that is switched on. Time goes forward by {@link #runTo}; between two calls everything an
 * instrument may want to know stands still.
 */
public final class Machine {

  /** Which of the two machines plays the cycles. */
  public enum Kind {
    /** Six phases a cycle, the definition. */
    PLAIN,
    /** Tables asked of the plain one. */
    FAST
  }

  private static final int HEAT_CYCLES = 512;

  /** Wirings kept: no key, a key, and the two that a chord goes through. */
  private static final int WIRED = 4;

  private static final long IDLE_EPOCH_NS = 20_000_000;

  private final Setup setup;
  private final Kind kind;
  private final Store store;
  private final Set<String> closed = new LinkedHashSet<>();
  private final List<Watch> watches = new ArrayList<>();
  private final Map<String, Long> milestones = new LinkedHashMap<>();
  private final Mpu6502 core;
  private final ProcessorPins processor = new ProcessorPins();
  private final CycleBus bus;

  /** Wirings of this run by the switches closed in them, the one used last at the end. */
  private final Map<Set<String>, PlainCycle> wired = new LinkedHashMap<>();

  private int[] unreached;

  /** Made when the first circuit is. */
  private Wiring wiring;

  private Circuit circuit;
  private Levels levels;
  private PlainCycle plain;
  private ClockRates rates;
  private double processorHertz;
  private final Power power;

  /** What too few volts do to sound parts. */
  private final List<Fault> margins;

  /** Who follows this run, if anybody does. */
  private Optional<Witness> witness = Optional.empty();

  private int[] still = {};
  private boolean keepsOnlyWhat = true;
  private Heat heat;
  private long heatAt = -1;

  /** Switches a board on. */
  public Machine(Setup setup, Kind kind) {
    this(setup, kind, CycleTap.NONE);
  }

  /** Switches a board on with something that follows every bus cycle of the processor. */
  public Machine(Setup asked, Kind kind, CycleTap tap) {
    this.setup = Showing.of(asked);
    this.kind = kind;
    power = Power.of(setup);
    margins = Margins.of(setup, power);
    this.unreached =
        setup.board().milestones().stream().mapToInt(Milestone::address).sorted().toArray();
    circuit = compile();
    store = new Store(circuit.wordCount, circuit.cellCount);
    load();
    levels = new Levels(circuit, store, 1);
    wakeUp();
    rates();
    levels.clock(cycleNanoseconds());
    plain = new PlainCycle(circuit, levels, store);
    levels.settle();
    // What a late part drives depends on phases gone by, which no table holds.
    boolean tabled = kind == Kind.FAST && circuit.delays.isEmpty();
    bus = tabled ? new FastBus(this) : new PlainBus(this);
    core = new Mpu6502(tap == CycleTap.NONE ? bus : new TappedBus(bus, tap));
    wakeUpCore();
    bus.attach(core, processor);
    keep(Set.of());
    bus.rewired(plain);
  }

  /** Goes on, plainly, from where another machine stands. */
  private Machine(Machine from, CycleTap tap) {
    setup = from.setup;
    kind = Kind.PLAIN;
    power = from.power;
    margins = from.margins;
    closed.addAll(from.closed);
    milestones.putAll(from.milestones);
    unreached = from.unreached.clone();
    circuit = from.circuit;
    store = from.store.copy();
    rates = from.rates;
    processorHertz = from.processorHertz;
    levels = new Levels(circuit, store, 1);
    levels.continueFrom(from.levels);
    plain = new PlainCycle(circuit, levels, store);
    plain.nextEvent = from.plain.nextEvent;
    plain.read = from.plain.read;
    bus = new PlainBus(this);
    core = new Mpu6502(tap == CycleTap.NONE ? bus : new TappedBus(bus, tap));
    long[] words = new long[core.words()];
    from.core.save(words, 0);
    core.load(words, 0);
    bus.attach(core, processor);
    processor.continueFrom(from.processor);
    bus.plain = plain;
    keep(joins());
    bus.continueFrom(from.bus);
  }

  /** A plain machine that stands where this one stands and goes its own way from here. */
  Machine continuedPlainly(CycleTap tap) {
    leave();
    return new Machine(this, tap);
  }

  /**
   * A plain machine that stands where this one stands; this one goes on as if nobody had looked.
   */
  public Machine moment() {
    if (processorHertz > 0) {
      bus.show();
    }
    return new Machine(this, CycleTap.NONE);
  }

  /**
   * Whether this board, wired otherwise at some net, can be believed to do what another does for as
   * long as no pin reads another level: its supplies hurt no part that those of the other spare.
   */
  public boolean doublesFor(Machine other) {
    return margins.equals(other.margins)
        && power.killed().equals(other.power.killed())
        && power.blown().equals(other.power.blown())
        && power.up().equals(other.power.up())
        && circuit.delays.isEmpty()
        && other.circuit.delays.isEmpty()
        && processorHertz == other.processorHertz;
  }

  /**
   * Whether this board, just switched on, can do nothing else than another just switched on: of the
   * wiring nothing differs but what hangs on parts that are out of both.
   */
  public boolean wiredAs(Machine other) {
    return doublesFor(other)
        && suppliedAs(other)
        && !circuit.harm.inside()
        && !other.circuit.harm.inside()
        && new SameWiring(other.circuit, circuit).wholly();
  }

  /**
   * Stands where another machine of the same parts stands: what is stored, the processor and what
   * nets hold are the other's; what is driven settles anew on the wiring of this board. Of the two
   * only a plain machine can.
   */
  public void standWhere(Machine other) {
    if (kind != Kind.PLAIN) {
      throw new IllegalStateException("found the fast machine, right would be the plain one");
    }
    if (!closed.equals(other.closed)) {
      closed.clear();
      closed.addAll(other.closed);
      PlainCycle known = wired.get(joins());
      circuit = known == null ? compile() : known.circuit;
    }
    heatAt = -1;
    store.set(other.store);
    program(store);
    Levels after = new Levels(circuit, store, other.levels.cycleNanoseconds());
    after.follow(other.levels);
    keepsOnlyWhat = after.keepsOnlyWhat(other.levels);
    for (int pin : still) {
      after.held(circuit.netOf[pin], 0, 0);
    }
    levels = after;
    plain = new PlainCycle(circuit, levels, store);
    plain.read = other.plain.read;
    keep(joins());
    long[] words = new long[core.words()];
    other.core.save(words, 0);
    core.load(words, 0);
    processor.continueFrom(other.processor);
    bus.continueFrom(other.bus);
    bus.rewired(plain);
    milestones.clear();
    milestones.putAll(other.milestones);
    unreached = other.unreached.clone();
  }

  /**
   * Whether all that its nets keep by themselves is known from where it was told to stand: a net
   * that nothing drives here and something drove there has a past of its own.
   */
  public boolean keepsOnlyWhatIsKnown() {
    return keepsOnlyWhat;
  }

  /** Whether every part gets just the volts that it has on another board, ripple included. */
  boolean suppliedAs(Machine other) {
    for (String ref : circuit.refs) {
      if (!Arrays.equals(power.milliseconds(ref), other.power.milliseconds(ref))) {
        return false;
      }
    }
    return true;
  }

  /** Is followed from here on; of the two only a plain machine can. */
  void followedBy(Witness by) {
    witness = Optional.of(by);
    by.follow(joins(), levels);
    levels.noteAtRest(() -> {});
  }

  /** Nets of these pins carry nothing wherever this board stands: nothing ever drove them. */
  void keepStill(int[] pins) {
    still = pins.clone();
  }

  /** This board's wiring with these switches closed. */
  Circuit wiredFor(Set<String> joins) {
    return compile(joins);
  }

  /** Puts into a store of this board what its memories were programmed with wrongly. */
  void program(Store into) {
    for (HarmNotes.Programmed byteWrong : circuit.harm.programmed) {
      int p = circuit.index(byteWrong.ref());
      into.cells()[circuit.cellBase[p] + byteWrong.index()] = (byte) byteWrong.value();
    }
  }

  /** Cycles since power-on that were played phase by phase; the fast machine's others were not. */
  long byPhases() {
    return bus.byPhases();
  }

  private Circuit compile() {
    return compile(closed);
  }

  private Circuit compile(Set<String> closed) {
    if (wiring == null) {
      wiring = wiring();
    }
    Circuit made = wiring.circuit(closed);
    made.delays = Delays.of(made, setup, power);
    warm(made);
    return made;
  }

  private Wiring wiring() {
    List<Fault> all = new ArrayList<>(setup.faults());
    power.killed().forEach(ref -> all.add(new Dead(ref)));
    all.addAll(margins);
    power.blown().stream()
        .filter(this::feedsFromARail)
        .forEach(ref -> all.add(new ElementOpen(ref)));
    return new Wiring(setup.board(), all, setup.out(), setup.seed(), power.up());
  }

  /** Memories are as warm as the supply's heat makes them; a board just switched on is cold. */
  private void warm(Circuit made) {
    boolean cold =
        setup.surroundings().minutes() == 0 && setup.surroundings().air() == Surroundings.Air.ROOM;
    Optional<Heat> heat = cold ? Optional.empty() : Optional.of(Heat.of(power, setup));
    for (int p = 0; p < made.parts.length; p++) {
      if (heat.isPresent() && made.parts[p] instanceof RowMemory) {
        made.caseTenths[p] = setup.surroundings().caseTenths(made.refs[p], heat.get());
      }
    }
  }

  private boolean feedsFromARail(String fuse) {
    return setup.board().nets().stream()
        .filter(n -> setup.board().supply().feeds(n.name()))
        .anyMatch(n -> n.pads().stream().anyMatch(p -> p.ref().equals(fuse)));
  }

  private void load() {
    for (Firmware f : setup.board().firmware()) {
      int p = circuit.index(f.ref());
      byte[] image = f.image();
      System.arraycopy(image, 0, store.cells(), circuit.cellBase[p], image.length);
    }
    program(store);
  }

  private void wakeUp() {
    for (int p = 0; p < circuit.parts.length; p++) {
      long part = Chance.of(circuit.refs[p]);
      circuit.parts[p].powerOn(
          levels.pins[p], i -> Chance.draw(setup.seed(), setup.powerOn(), part, i));
    }
  }

  private void wakeUpCore() {
    long part = Chance.of("core");
    core.a = Chance.below(256, setup.seed(), setup.powerOn(), part, 0);
    core.x = Chance.below(256, setup.seed(), setup.powerOn(), part, 1);
    core.y = Chance.below(256, setup.seed(), setup.powerOn(), part, 2);
    core.s = Chance.below(256, setup.seed(), setup.powerOn(), part, 3);
    core.pc = Chance.below(65536, setup.seed(), setup.powerOn(), part, 4);
    int from = Electrical.figure("start.from.us");
    int spread = Electrical.figure("start.to.us") - from;
    long micros = from + Chance.below(spread, setup.seed(), setup.powerOn(), part, 5);
    boolean wakesReset = Chance.below(2, setup.seed(), setup.powerOn(), part, 6) == 1;
    processor.wakeUp(levels.cycleAfter(micros * 1000), wakesReset);
  }

  private void rates() {
    rates = new ClockRates(circuit, store);
    processorHertz =
        circuit.cpu >= 0 && circuit.alive[circuit.cpu] ? rates.processorHertz(crystalHertz()) : 0;
  }

  private double crystalHertz() {
    return setup.board().hertz() * (circuit.harm.clockPerMille / 1000.0);
  }

  private double cycleNanoseconds() {
    return processorHertz > 0 ? 1e9 / processorHertz : setup.board().cycleNanoseconds();
  }

  /** Runs until at least this many nanoseconds after power-on, to the next instruction boundary. */
  public void runTo(long nanoseconds) {
    runTo(nanoseconds, until -> bus.run(until));
  }

  /** The same for who asks for nothing then but what the processor's registers of parts hold. */
  public void passTo(long nanoseconds) {
    runTo(nanoseconds, until -> bus.pass(until));
  }

  private void runTo(long nanoseconds, LongConsumer run) {
    while (core.cycle < levels.cycleAfter(nanoseconds)) {
      long until = levels.cycleAfter(nanoseconds);
      if (processorHertz == 0) {
        long epoch = Math.max(1, (long) (IDLE_EPOCH_NS / levels.cycleNanoseconds()));
        plain.idle(Math.min(epoch, until - levels.now));
        look();
        core.cycle = levels.now;
      } else {
        run.accept(until);
      }
    }
  }

  /** Closes or opens a switch (a key, a link) at this moment. */
  public void hold(String ref, boolean close) {
    boolean moved = close ? closed.add(ref) : closed.remove(ref);
    if (moved && circuit.railSwitch(ref) >= 0) {
      materialise();
      levels.close(circuit.railSwitch(ref), close);
      levels.settle();
      look();
      if (processorHertz > 0) {
        bus.slowChanged();
      }
    } else if (moved) {
      rewire();
    }
  }

  // Without a clock the levels always stand as the last epoch left them.
  private void materialise() {
    if (processorHertz > 0) {
      bus.materialise();
    }
  }

  private void leave() {
    if (processorHertz > 0) {
      bus.leave();
    }
  }

  private void rewire() {
    heatAt = -1;
    leave();
    Set<String> joins = joins();
    PlainCycle known = wired.remove(joins);
    if (known == null) {
      Circuit next = compile();
      Levels after = new Levels(next, store, levels.cycleNanoseconds());
      witness.ifPresent(w -> w.follow(joins, after));
      after.noteAtRest(() -> after.follow(levels));
      known = new PlainCycle(next, after, store);
    } else {
      PlainCycle back = known;
      back.levels.noteAtRest(() -> back.levels.resume(levels));
      known.resume();
    }
    plain = known;
    circuit = plain.circuit;
    levels = plain.levels;
    keep(joins);
    look();
    bus.rewired(plain);
  }

  /** The closed switches that a circuit is compiled for. */
  private Set<String> joins() {
    return closed.stream()
        .filter(ref -> circuit.railSwitch(ref) < 0)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Keeps the wiring now used; of those not used for longest, no more than so many. */
  private void keep(Set<String> joins) {
    wired.put(joins, plain);
    if (wired.size() > WIRED) {
      bus.forget(wired.remove(wired.keySet().iterator().next()));
    }
  }

  void look() {
    for (Watch w : watches) {
      w.look(levels);
    }
  }

  PlainCycle plain() {
    return plain;
  }

  /** Addresses whose first fetch would be a milestone, ascending. */
  int[] unreached() {
    return unreached;
  }

  /** Notes a fetch; true if it was the first of a milestone. */
  boolean reached(int address, long cycle) {
    if (Arrays.binarySearch(unreached, address) < 0) {
      return false;
    }
    for (Milestone m : setup.board().milestones()) {
      if (m.address() == address) {
        milestones.put(m.label(), levels.nanosecondsAt(cycle));
      }
    }
    unreached = Arrays.stream(unreached).filter(a -> a != address).toArray();
    return true;
  }

  /** Nanoseconds since power-on at the end of the last cycle run. */
  public long nanoseconds() {
    return levels.nanosecondsAt(core.cycle);
  }

  /** Processor cycles since power-on. */
  public long cycles() {
    return core.cycle;
  }

  /** Milestones of the firmware reached so far, with the nanosecond each was first fetched. */
  public Map<String, Long> milestones() {
    return Map.copyOf(milestones);
  }

  /** Follows the net at a part's pin from now on; high is above this many millivolts. */
  public Trace watch(Pad pad, int millivolts) {
    Watch w = new Watch(pin(pad), millivolts);
    watches.add(w);
    materialise();
    w.look(levels);
    return w.trace;
  }

  /** One of a part's stored words, or empty if it has no such part or word. */
  public Optional<Long> word(String ref, State word) {
    int p = circuit.index(ref);
    return p < 0
        ? Optional.empty()
        : Optional.of(store.words()[circuit.wordBase[p] + word.offset()]);
  }

  /** A set that gets no frame sync begins a frame by itself. */
  public void flyBack(String set) {
    Monitor.flyBack(levels.pins[circuit.index(set)]);
  }

  /** One of a part's stored cells, 0 to 255. */
  public int cell(String ref, State cells, int index) {
    int p = circuit.index(ref);
    int stored = store.cells()[circuit.cellBase[p] + cells.offset() + index];
    return (stored & circuit.cellMask[p]) >>> circuit.cellShift[p];
  }

  /** Whether the processor has no clock, is in reset or waits: no instruction goes on. */
  boolean held() {
    return processorHertz == 0
        || processor.inReset()
        || !processor.ready(levels.pins[circuit.cpu].in);
  }

  /** What the processor is about. */
  public Standing standing() {
    if (processorHertz == 0) {
      return Standing.NO_CLOCK;
    }
    if (processor.inReset()) {
      return Standing.IN_RESET;
    }
    if (core.locked) {
      return Standing.LOCKED;
    }
    return held() ? Standing.WAITS : Standing.RUNS;
  }

  /** What the supply makes of the board. */
  public Power power() {
    return power;
  }

  /**
   * How warm the board runs, measured over the next {@value #HEAT_CYCLES} cycles; asked again at
   * the same moment it plays nothing.
   */
  public Heat heat() {
    if (heatAt != core.cycle) {
      heat = Heat.of(this, HEAT_CYCLES);
      heatAt = core.cycle;
    }
    return heat;
  }

  /** Milliamperes at the jack, signal currents included; measured as {@link #heat} does. */
  public int currentMilliamps() {
    return heat().currentMilliamps();
  }

  /**
   * Case temperature in tenths of a degree Celsius this many seconds after power-on from cold, at
   * the activity {@link #heat} measures.
   */
  public int caseTenths(String ref, int seconds) {
    return heat().caseTenths(ref, seconds);
  }

  /** Whether the processor has run into an opcode that locks it. */
  public boolean locked() {
    return core.locked;
  }

  /** The processor's program counter. */
  public int programCounter() {
    return core.pc;
  }

  /** The board and what was done to it. */
  public Setup setup() {
    return setup;
  }

  /** The board as described. */
  public Board board() {
    return setup.board();
  }

  /** Hertz of the net at a pin, where a clock makes it move; else 0. */
  public double clockHertz(Pad pad, boolean atPad) {
    return rates.hertz(net(pad, atPad), crystalHertz());
  }

  /** Share of time a clock net is high. */
  public double clockDuty(Pad pad, boolean atPad) {
    return rates.duty(net(pad, atPad));
  }

  /** Hertz at the processor's clock pin; 0 when it stands still. */
  public double processorHertz() {
    return processorHertz;
  }

  /**
   * Plays whole cycles one phase at a time and reports each settled phase; what an instrument sees.
   *
   * @param cycles how many, at least 1; an instruction may stand half done at the end
   */
  public void play(long cycles, PhaseTap tap) {
    if (processorHertz > 0) {
      bus.observe(cycles, tap);
    } else {
      plain.watchPhases(tap);
      plain.idle(cycles);
      plain.watchPhases(PhaseTap.NOBODY);
      look();
      core.cycle = levels.now;
    }
  }

  /**
   * Number of the net at a pin, or at the pad it ought to meet; two points of one number conduct.
   * It holds until a switch moves.
   */
  public int point(Pad pad, boolean atPad) {
    return net(pad, atPad);
  }

  /** Whether a switch joins its two ends now: held closed, or never open. */
  public boolean closed(String ref) {
    return closed.contains(ref) || circuit.harm.elementsShort.containsKey(ref);
  }

  /** How many nets there are; {@link #point} stays below it. */
  public int points() {
    return circuit.netCount;
  }

  /** Millivolts of a net by its number, in the phase now settled. */
  public int millivolts(int point) {
    return levels.mv[point];
  }

  /**
   * What a net carries in the phase now settled, by its number: four times its millivolts, and 1 if
   * nothing drives it, 2 if it does not come to rest.
   */
  public int carries(int point) {
    byte kind = levels.kind[point];
    return levels.mv[point] << 2 | (kind == Levels.DRIVEN ? 0 : kind == Levels.OSCILLATES ? 2 : 1);
  }

  /** Whether nothing drives a net, by its number. */
  public boolean floating(int point) {
    return levels.kind[point] == Levels.FLOATS || levels.kind[point] == Levels.FLOATS_ON_LS;
  }

  /** Whether a net does not come to rest within a phase, by its number. */
  public boolean oscillating(int point) {
    return levels.kind[point] == Levels.OSCILLATES;
  }

  /** Whether a part is there, sound in itself and supplied; an element, whether it conducts. */
  public boolean works(String ref) {
    int p = circuit.index(ref);
    return p >= 0
        && !circuit.harm.absent.contains(ref)
        && !circuit.harm.dead.contains(ref)
        && !circuit.harm.elementsOpen.contains(ref)
        && circuit.powered[p];
  }

  /** Ohms from a net to ground with the power off; empty if nothing leads there. */
  public OptionalInt ohmsToGround(int point) {
    if (circuit.source[point] == Circuit.GROUND) {
      return OptionalInt.of(0);
    }
    double siemens = 0;
    for (int i = 0; i < circuit.loadOhm[point].length; i++) {
      siemens += levels.loads(point, i) ? 1.0 / circuit.loadOhm[point][i] : 0;
    }
    return siemens == 0 ? OptionalInt.empty() : OptionalInt.of((int) StrictMath.round(1 / siemens));
  }

  /**
   * A hash of all stored state and of the processor; equal runs have equal digests. When rows of
   * memories were last strobed is left out, for where they are strobed in time nobody keeps count;
   * so is a set at the end of the picture lead, which is up to date after a look at it only.
   */
  public long digest() {
    long h = Chance.draw(core.cycle, core.a, core.x, core.y, core.s, core.pc);
    int done = 0;
    for (int p = 0; p < circuit.parts.length; p++) {
      if (circuit.parts[p] instanceof Monitor) {
        continue;
      }
      if (!(circuit.parts[p] instanceof RowMemory)) {
        int from = circuit.wordBase[p];
        int size = circuit.parts[p].pinout().words().size();
        h = Chance.draw(h, Arrays.copyOfRange(store.words(), from, from + size));
      }
      int end = circuit.cellBase[p] + circuit.parts[p].pinout().cellCount();
      // Memories that lie side by side in the same bytes are looked at once.
      for (int cell = Math.max(done, circuit.cellBase[p]); cell < end; cell++) {
        h = h * 31 + store.cells()[cell];
      }
      done = Math.max(done, end);
    }
    return h;
  }

  /** Millivolts at a pin's net in the phase now settled. */
  public int millivolts(Pad pad, boolean atPad) {
    return levels.mv[net(pad, atPad)];
  }

  /** Whether the net at a pin carries nothing that drives it. */
  public boolean floating(Pad pad, boolean atPad) {
    return levels.kind[net(pad, atPad)] == Levels.FLOATS
        || levels.kind[net(pad, atPad)] == Levels.FLOATS_ON_LS;
  }

  /** Whether the net at a pin does not come to rest within a phase. */
  public boolean oscillating(Pad pad, boolean atPad) {
    return levels.kind[net(pad, atPad)] == Levels.OSCILLATES;
  }

  /** Brings the levels of the last cycle up for looking at. */
  public void rest() {
    materialise();
  }

  private int net(Pad pad, boolean atPad) {
    int pin = pin(pad);
    return atPad ? circuit.padNetOf[pin] : circuit.netOf[pin];
  }

  private int pin(Pad pad) {
    int pin = circuit.pin(pad.ref(), pad.pin());
    if (pin < 0) {
      throw new IllegalArgumentException("no pad " + pad.text() + " on " + setup.board().name());
    }
    return pin;
  }

  /** The stored state, for tests that compare machines. */
  Store store() {
    return store;
  }

  CycleBus bus() {
    return bus;
  }

  Mpu6502 core() {
    return core;
  }
}
