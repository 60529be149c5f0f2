package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faultfinch.signal.Bus;
import faultfinch.signal.Output;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What every part of the catalogue keeps to: a new row is tested by existing. */
class EveryPartTest {
  private static final int TRIALS = 400;
  private static final Phase[] PHASES = Phase.values();

  @ParameterizedTest
  @EnumSource
  void pins_anyPart_haveARoleThatFitsTheirArrow(PartCatalog row) {
    Set<Integer> numbers = new LinkedHashSet<>();
    for (Pin pin : row.part().pinout().pins()) {
      boolean drawnAsOutput =
          pin.direction() == Pin.Direction.OUT || pin.direction() == Pin.Direction.BOTH;
      assertEquals(drawnAsOutput, pin.drives(), pin.name() + " drives as drawn");
      assertTrue(numbers.add(pin.number()) && pin.number() > 0, pin.name() + " has its own number");
      switch (pin.role()) {
        case SUPPLY, GROUND, TERMINAL, UNCONNECTED ->
            assertEquals(Pin.Direction.NONE, pin.direction(), pin.name());
        case OUTPUT -> assertTrue(pin.drives(), pin.name());
        case DATA -> assertTrue(pin.drives() || pin.receives(), pin.name());
        case SELECT,
            REGISTER,
            DIRECTION,
            CLOCK_FALLS,
            CLOCK_RISES,
            WRITE,
            ENABLE,
            LATCH,
            INPUT,
            LEVEL ->
            assertTrue(pin.receives(), pin.name());
      }
    }
    assertFalse(row.part().pinout().notModelled().isBlank(), "says what it does not model");
  }

  @ParameterizedTest
  @EnumSource
  void supply_anyChip_hasItsPins(PartCatalog row) {
    Pinout pinout = row.part().pinout();
    if (!(row.part() instanceof Element)) {
      assertTrue(pinout.role(Pin.Role.SUPPLY) != 0 && pinout.role(Pin.Role.GROUND) != 0);
    }
  }

  @ParameterizedTest
  @EnumSource
  void outputs_anyDrivingPin_belongToExactlyOneGroup(PartCatalog row) {
    Pinout pinout = row.part().pinout();
    long seen = 0;
    for (Output output : pinout.outputs()) {
      assertEquals(0, seen & output.pins(), "a pin in two groups");
      assertEquals(0, output.enables() & ~output.follows(), "an enable that is not followed");
      seen |= output.pins();
      for (Pin pin : pinout.pins()) {
        boolean followed = (output.follows() & pin.mask()) != 0;
        assertTrue(!followed || pin.receives(), pin.name() + " is followed and receives");
      }
    }
    long drivers =
        pinout.pins().stream().filter(Pin::drives).mapToLong(Pin::mask).reduce(0, (a, b) -> a | b);
    assertEquals(drivers, seen);
  }

  @ParameterizedTest
  @EnumSource
  void settle_twice_isOnceAndStoresNothing(PartCatalog row) {
    SplittableRandom random = random(row, "twice");
    for (int trial = 0; trial < TRIALS; trial++) {
      BenchPins bench = anywhere(row.part(), random);
      BenchPins untouched = bench.copy();
      bench.settle();
      long driven = bench.driven();
      long levels = bench.levels();
      bench.settle();
      assertEquals(driven, bench.driven());
      assertEquals(levels, bench.levels());
      assertTrue(bench.sameState(untouched));
    }
  }

  @ParameterizedTest
  @EnumSource
  void settle_anyState_drivesOnlyDeclaredOutputs(PartCatalog row) {
    long outputs = 0;
    for (Output output : row.part().pinout().outputs()) {
      outputs |= output.pins();
    }
    SplittableRandom random = random(row, "outputs");
    for (int trial = 0; trial < TRIALS; trial++) {
      BenchPins bench = anywhere(row.part(), random);
      bench.settle();
      assertEquals(0, bench.driven() & ~outputs);
    }
  }

  /** What a machine leaves out: outputs that an enable pin by itself lets go of. */
  @ParameterizedTest
  @EnumSource
  void settle_enablePinThatSilences_drivesNothing(PartCatalog row) {
    SplittableRandom random = random(row, "silent");
    Pinout pinout = row.part().pinout();
    for (Output output : pinout.outputs()) {
      long high = pinout.silentWhileHigh(output.enables());
      long low = pinout.silentWhileLow(output.enables());
      for (long left = high | low; left != 0; left &= left - 1) {
        long pin = left & -left;
        for (int trial = 0; trial < TRIALS / 8; trial++) {
          BenchPins bench = anywhere(row.part(), random);
          bench.set((high & pin) != 0 ? bench.in() | pin : bench.in() & ~pin);
          bench.settle();
          assertEquals(0, bench.driven() & output.pins(), () -> names(row, output.pins()));
        }
      }
    }
  }

  /** What a machine leaves out: commits that a pin by itself keeps from doing anything. */
  @ParameterizedTest
  @EnumSource
  void commit_pinThatLeavesItNothingToDo_storesNothing(PartCatalog row) {
    SplittableRandom random = random(row, "rests");
    Pinout pinout = row.part().pinout();
    long clock = pinout.role(Pin.Role.CLOCK_RISES) | pinout.role(Pin.Role.CLOCK_FALLS);
    for (Phase phase : PHASES) {
      for (long left = row.part().restsWhileHigh(phase); left != 0; left &= left - 1) {
        long pin = left & -left;
        for (int trial = 0; trial < TRIALS / 8; trial++) {
          BenchPins bench = anywhere(row.part(), random);
          bench.commit(phase);
          bench.set(bench.in() & clock | random.nextLong() & ~clock | pin);
          bench.before(random.nextLong());
          BenchPins untouched = bench.copy();
          bench.commit(phase);
          assertTrue(bench.sameState(untouched), () -> names(row, pin));
        }
      }
    }
  }

  /** What a machine leaves out: commits of a part that stood still, while nothing moves. */
  @ParameterizedTest
  @EnumSource
  void commit_partThatStoodStill_storesNothingInAnyPhaseUntilAPinMoves(PartCatalog row) {
    assumeTrue(row.part().standsStill());
    SplittableRandom random = random(row, "still");
    for (int trial = 0; trial < TRIALS; trial++) {
      BenchPins bench = used(row.part(), random);
      bench.commit(PHASES[random.nextInt(PHASES.length)]);
      BenchPins stands = bench.copy();
      bench.commit(PHASES[random.nextInt(PHASES.length)]);
      if (bench.sameState(stands)) {
        bench.passMicroseconds(random.nextInt(1_000_000));
        bench.before(random.nextLong());
        bench.commit(PHASES[random.nextInt(PHASES.length)]);
        assertTrue(bench.sameState(stands));
      }
    }
  }

  /** What a machine does not note: edges of pins that are no clocks. */
  @ParameterizedTest
  @EnumSource
  void commit_partThatAsksForNoEdges_storesTheSameWhateverPinsMovedBesideItsClocks(
      PartCatalog row) {
    assumeTrue(!row.part().asksForEdges());
    SplittableRandom random = random(row, "edges");
    Pinout pinout = row.part().pinout();
    long clock = pinout.role(Pin.Role.CLOCK_RISES) | pinout.role(Pin.Role.CLOCK_FALLS);
    for (int trial = 0; trial < TRIALS; trial++) {
      BenchPins bench = used(row.part(), random);
      Phase phase = PHASES[random.nextInt(PHASES.length)];
      bench.commit(phase);
      BenchPins quiet = bench.copy();
      long moves = random.nextLong() & ~clock;
      bench.set(bench.in() ^ moves);
      bench.set(bench.in() ^ moves);
      bench.commit(phase);
      quiet.commit(phase);
      assertTrue(bench.sameState(quiet));
    }
  }

  /** What a machine does not ask: when a part without a sense of time changes by itself. */
  @ParameterizedTest
  @EnumSource
  void nextChange_partThatKeepsNoTime_isNever(PartCatalog row) {
    SplittableRandom random = random(row, "time");
    for (int trial = 0; trial < TRIALS && !row.part().keepsTime(); trial++) {
      BenchPins bench = anywhere(row.part(), random);
      assertEquals(Part.NEVER, row.part().nextChange(bench));
      assertEquals(Part.NEVER, row.part().nextStored(bench));
    }
  }

  @ParameterizedTest
  @EnumSource
  void settle_pinsThatAnOutputDoesNotFollow_leaveItAlone(PartCatalog row) {
    SplittableRandom random = random(row, "others");
    for (Output output : row.part().pinout().outputs()) {
      for (int trial = 0; trial < TRIALS; trial++) {
        BenchPins bench = anywhere(row.part(), random);
        bench.settle();
        long driven = bench.driven() & output.pins();
        long levels = bench.levels() & output.pins();
        for (long others : new long[] {-1, random.nextLong(), random.nextLong()}) {
          BenchPins turned = bench.copy();
          turned.set(bench.in() ^ (others & ~output.follows()));
          turned.before(random.nextLong());
          turned.settle();
          assertEquals(driven, turned.driven() & output.pins(), () -> names(row, output.pins()));
          assertEquals(levels, turned.levels() & output.pins(), () -> names(row, output.pins()));
        }
      }
    }
  }

  /** A pin declared without need would make loops where there are none. */
  @ParameterizedTest
  @EnumSource
  void settle_eachPinAnOutputFollows_canMoveEachOfItsPins(PartCatalog row) {
    SplittableRandom random = random(row, "each");
    for (Output output : row.part().pinout().outputs()) {
      for (Pin cause : row.part().pinout().pins()) {
        if ((output.follows() & cause.mask()) == 0) {
          continue;
        }
        long idle = output.pins();
        for (int trial = 0; trial < 20 * TRIALS && idle != 0; trial++) {
          BenchPins bench = anywhere(row.part(), random);
          enable(bench, output);
          bench.settle();
          BenchPins turned = bench.copy();
          turned.set(bench.in() ^ cause.mask());
          turned.settle();
          idle &= ~((bench.driven() ^ turned.driven()) | (bench.levels() ^ turned.levels()));
        }
        long left = idle;
        assertEquals(0, idle, () -> names(row, left) + " never moves with " + cause.name());
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void enables_atRest_letGoWhateverElseIsThere(PartCatalog row) {
    SplittableRandom random = random(row, "enables");
    for (Output output : row.part().pinout().outputs()) {
      if (output.enables() == 0) {
        continue;
      }
      for (Pin pin : row.part().pinout().pins()) {
        if ((output.enables() & pin.mask()) == 0 || !rests(pin)) {
          continue;
        }
        for (int trial = 0; trial < TRIALS; trial++) {
          BenchPins bench = anywhere(row.part(), random);
          bench.set(pin.name(), pin.activeLow());
          bench.settle();
          assertEquals(0, bench.driven() & output.pins(), pin.name() + " at rest");
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void enables_sameLevels_decideAloneWhetherTheOutputDrives(PartCatalog row) {
    SplittableRandom random = random(row, "alone");
    for (Output output : row.part().pinout().outputs()) {
      if (output.enables() == 0) {
        continue;
      }
      int on = 0;
      int off = 0;
      for (int trial = 0; trial < TRIALS; trial++) {
        BenchPins bench = anywhere(row.part(), random);
        enable(bench, output);
        if (trial % 2 == 0) {
          bench.set(bench.in() ^ (random.nextLong() & output.enables()));
        }
        bench.settle();
        long driven = bench.driven() & output.pins();
        assertTrue(driven == 0 || driven == output.pins(), "all of the group or none");
        on += driven == 0 ? 0 : 1;
        off += driven == 0 ? 1 : 0;
        BenchPins turned = bench.copy();
        turned.set(bench.in() ^ (random.nextLong() & ~output.enables()));
        turned.settle();
        assertEquals(driven, turned.driven() & output.pins(), () -> names(row, output.pins()));
      }
      assertTrue(on > 0 && off > 0, names(row, output.pins()) + " drives and lets go");
    }
  }

  @ParameterizedTest
  @EnumSource
  void data_deselected_areSilent(PartCatalog row) {
    Pinout pinout = row.part().pinout();
    long data = pinout.role(Pin.Role.DATA);
    SplittableRandom random = random(row, "deselected");
    for (Pin pin : pinout.pins()) {
      if (pin.role() != Pin.Role.SELECT) {
        continue;
      }
      for (int trial = 0; trial < TRIALS; trial++) {
        BenchPins bench = anywhere(row.part(), random);
        bench.set(pin.name(), pin.activeLow());
        bench.settle();
        assertEquals(0, bench.driven() & data, pin.name() + " at rest");
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void state_copied_goesOnAsTheFirstDid(PartCatalog row) {
    for (long seed = 0; seed < 4; seed++) {
      BenchPins first = poweredOn(row.part(), seed);
      run(first, new SplittableRandom(seed), TRIALS);
      BenchPins copy = first.copy();
      long led = run(first, new SplittableRandom(~seed), TRIALS);
      run(poweredOn(row.part(), seed + 100), new SplittableRandom(seed + 100), TRIALS);
      long followed = run(copy, new SplittableRandom(~seed), TRIALS);
      assertEquals(led, followed);
      assertTrue(first.sameState(copy));
    }
  }

  @ParameterizedTest
  @EnumSource
  void powerOn_sameChance_wakesTheSame(PartCatalog row) {
    assertTrue(poweredOn(row.part(), 7).sameState(poweredOn(row.part(), 7)));
  }

  /** What loads and opens on a net do is told from this. */
  @ParameterizedTest
  @EnumSource
  void outputs_saidToBeDrivenAlways_areDrivenWhateverThePinsAndState(PartCatalog row) {
    long always = row.part().pinout().alwaysDriven();
    BenchPins bench = poweredOn(row.part(), 3);
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; always != 0 && i < 2_000; i++) {
      run(bench, random, 1 + i % PHASES.length);
      assertEquals(always, bench.driven() & always, () -> row.type());
    }
  }

  /** Runs with and without must part in what is driven or stored. */
  @ParameterizedTest
  @EnumSource
  void defect_any_showsAndIsNamedOnce(PartCatalog row) {
    Set<String> names = new LinkedHashSet<>();
    for (Defect defect : row.part().defects()) {
      assertTrue(names.add(defect.name()), defect.name() + " twice");
      assertTrue(defect.name().matches("[a-z]+(-[a-z]+)*"), defect.name());
      assertFalse(defect.says().isBlank());
      boolean shows = false;
      for (long seed = 0; seed < 8 && !shows; seed++) {
        BenchPins sound = poweredOn(row.part(), seed);
        BenchPins harmed = poweredOn(row.part(), seed).with(defect);
        long right = run(sound, new SplittableRandom(seed), 20_000);
        long wrong = run(harmed, new SplittableRandom(seed), 20_000);
        shows = right != wrong || !sound.sameState(harmed);
      }
      assertTrue(shows, defect.name() + " changes nothing");
    }
  }

  @ParameterizedTest
  @MethodSource("memories")
  void memory_driving_drivesTheOneCellItLookedUp(PartCatalog row) {
    Memory memory = (Memory) row.part();
    Bus data = memory.pinout().bus("D");
    SplittableRandom random = random(row, "memory");
    int driving = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      BenchPins bench = anywhere(memory, random);
      bench.settle();
      if ((bench.driven() & data.mask()) != 0) {
        driving++;
        List<Integer> looked = bench.looked();
        assertEquals(1, looked.size());
        int index = looked.get(0) - memory.array().offset();
        assertEquals(bench.cell(memory.array(), index), data.of(bench.levels()));
      }
    }
    assertTrue(driving > 0);
  }

  @ParameterizedTest
  @MethodSource("memories")
  void memory_storing_storesWhatItsDataPinsReadInOneCell(PartCatalog row) {
    Memory memory = (Memory) row.part();
    Bus data = memory.pinout().bus("D");
    SplittableRandom random = random(row, "store");
    int storing = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      BenchPins bench = anywhere(memory, random);
      bench.commit(PHASES[random.nextInt(PHASES.length)]);
      if (!bench.stored().isEmpty()) {
        storing++;
        assertEquals(1, bench.stored().size());
        int index = bench.stored().get(0) - memory.array().offset();
        assertEquals(data.of(bench.in()), bench.cell(memory.array(), index));
      }
    }
    assertEquals(
        memory.pinout().role(Pin.Role.WRITE) != 0, storing > 0, "stores if it has a write");
  }

  /** What a machine takes from its tables: a write is one cell and nothing besides. */
  @ParameterizedTest
  @MethodSource("dualPorts")
  void dualPortMemory_written_storesWhatItsDataPinsReadInTheCellNamed(PartCatalog row) {
    State array = ((DualPortMemory) row.part()).array();
    Pinout pinout = row.part().pinout();
    Bus register = busOf(pinout, Pin.Role.REGISTER);
    Bus data = busOf(pinout, Pin.Role.DATA);
    Pin select =
        pinout.pins().stream()
            .filter(pin -> pin.role() == Pin.Role.SELECT && pin.activeLow())
            .findFirst()
            .orElseThrow();
    SplittableRandom random = random(row, "written");
    int storing = 0;
    for (int trial = 0; trial < 40 * TRIALS; trial++) {
      BenchPins bench = anywhere(row.part(), random);
      Phase phase = PHASES[random.nextInt(PHASES.length)];
      BenchPins apart = bench.copy();
      apart.set(select.name(), true);
      apart.commit(phase);
      bench.commit(phase);
      if (!bench.stored().isEmpty()) {
        storing++;
        int at = array.offset() + register.of(bench.in());
        assertEquals(List.of(at), bench.stored());
        assertEquals(data.of(bench.in()), bench.cell(array, register.of(bench.in())));
        for (State word : pinout.words()) {
          assertEquals(apart.state(word), bench.state(word), word.name());
        }
      }
    }
    assertTrue(storing > 0, "is written");
  }

  @ParameterizedTest
  @MethodSource("busDevices")
  void registers_anyLevels_calledOnlyWhereASelectedClockFalls(PartCatalog row) {
    BusDevice device = (BusDevice) row.part();
    Pinout pinout = device.pinout();
    long clock = pinout.role(Pin.Role.CLOCK_FALLS);
    long direction = pinout.role(Pin.Role.DIRECTION);
    Bus register = busOf(pinout, Pin.Role.REGISTER);
    Bus data = busOf(pinout, Pin.Role.DATA);
    SplittableRandom random = random(row, "registers");
    Map<String, Integer> times = new LinkedHashMap<>();
    for (int trial = 0; trial < 40 * TRIALS; trial++) {
      Calls calls = new Calls(device);
      BenchPins bench = new BenchPins(calls);
      bench.set(random.nextLong());
      bench.before(random.nextLong());
      long in = bench.in();
      boolean selected = selected(pinout, in);
      boolean reads = (in & direction) != 0;
      int at = register.of(in);

      bench.settle();
      List<String> looks = new ArrayList<>();
      if (selected && reads && (in & clock) != 0) {
        looks.add("look " + at);
      }
      assertEquals(looks, calls.made);
      assertEquals(looks.isEmpty() ? 0 : data.mask(), bench.driven() & data.mask());

      calls.made.clear();
      Phase phase = PHASES[random.nextInt(PHASES.length)];
      boolean falls = phase == Phase.C_END && (in & clock) != 0 && (bench.before() & clock) == 0;
      bench.commit(phase);
      List<String> right = new ArrayList<>();
      if (selected && falls) {
        right.add(reads ? "read " + at : "write " + at + " " + data.of(in));
        times.merge(reads ? "read" : "write", 1, Integer::sum);
      }
      assertEquals(right, calls.made);
    }
    assertEquals(Set.of("read", "write"), times.keySet());
  }

  /** Many steps at once are the steps one by one, and stop where a watched output has moved. */
  @ParameterizedTest
  @MethodSource("counting")
  void counting_manySteps_areTheClockedOnes(PartCatalog row) {
    Pinout pinout = row.part().pinout();
    long clock = pinout.role(Pin.Role.CLOCK_RISES);
    SplittableRandom random = random(row, "counting");
    int stopped = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      BenchPins jumps = anywhere(row.part(), random);
      jumps.set(jumps.in() & ~clock);
      jumps.commit(Phase.V_ROW);
      long watched = random.nextInt(4) == 0 ? random.nextLong() : 0;
      if (trial % 2 == 0) {
        Pin one = pinout.pins().get(random.nextInt(pinout.pins().size()));
        watched = one.role() == Pin.Role.DATA ? 0 : one.mask();
      }
      watched &= ~pinout.role(Pin.Role.DATA);
      BenchPins steps = jumps.copy();
      int most = random.nextInt(2_000);
      steps.settle();
      long before = steps.shown() & watched;
      long taken = 0;
      while (taken < most && (steps.shown() & watched) == before) {
        steps.set(steps.in() | clock);
        steps.commit(Phase.C_ROW);
        steps.set(steps.in() & ~clock);
        steps.commit(Phase.V_ROW);
        steps.settle();
        taken++;
      }
      stopped += taken < most ? 1 : 0;
      assertEquals(taken, jumps.advance(most, watched));
      assertTrue(jumps.sameState(steps));
    }
    assertTrue(stopped > 0, "something watched moves");
  }

  /** What is no part of that on which its picture depends moves nothing but an interrupt. */
  @ParameterizedTest
  @MethodSource("counting")
  void counting_samePicturing_showsTheSameFromThereOn(PartCatalog row) {
    Pinout pinout = row.part().pinout();
    long clock = pinout.role(Pin.Role.CLOCK_RISES);
    long shows =
        pinout.pins().stream()
            .filter(p -> p.drives() && !p.openCollector() && p.role() != Pin.Role.DATA)
            .mapToLong(Pin::mask)
            .reduce(0, (a, b) -> a | b);
    SplittableRandom random = random(row, "picturing");
    int held = 0;
    for (int trial = 0; trial < 4 * TRIALS; trial++) {
      BenchPins one = anywhere(row.part(), random);
      one.set(one.in() & ~clock);
      one.commit(Phase.V_ROW);
      BenchPins other = one.copy();
      other.scrambleOne(random);
      if (one.sameState(other) || !Arrays.equals(one.picturing(), other.picturing())) {
        continue;
      }
      held++;
      for (int step = 0; step < 500; step++) {
        for (BenchPins bench : List.of(one, other)) {
          bench.set(bench.in() | clock);
          bench.commit(Phase.C_ROW);
          bench.set(bench.in() & ~clock);
          bench.commit(Phase.V_ROW);
          bench.settle();
        }
        assertEquals(one.shown() & shows, other.shown() & shows);
        assertArrayEquals(one.picturing(), other.picturing());
      }
    }
    assertTrue(held > 0, "something stored does not matter");
  }

  static List<PartCatalog> counting() {
    return rows(Counting.class);
  }

  static List<PartCatalog> memories() {
    return rows(Memory.class);
  }

  static List<PartCatalog> dualPorts() {
    return rows(DualPortMemory.class);
  }

  static List<PartCatalog> busDevices() {
    return rows(BusDevice.class);
  }

  private static List<PartCatalog> rows(Class<?> kind) {
    return List.of(PartCatalog.values()).stream().filter(r -> kind.isInstance(r.part())).toList();
  }

  /** Notes the register calls in place of a device, behind the device's own adapter. */
  private static final class Calls extends BusDevice {
    private final BusDevice device;
    private final List<String> made = new ArrayList<>();

    private Calls(BusDevice device) {
      this.device = device;
    }

    @Override
    public Pinout pinout() {
      return device.pinout();
    }

    @Override
    public BusAdapter adapter() {
      return device.adapter();
    }

    @Override
    public int look(Pins pins, int register) {
      made.add("look " + register);
      return 0;
    }

    @Override
    public void afterRead(Pins pins, int register) {
      made.add("read " + register);
    }

    @Override
    public void write(Pins pins, int register, int value) {
      made.add("write " + register + " " + value);
    }

    @Override
    public void outputs(Pins pins) {}
  }

  private static boolean selected(Pinout pinout, long in) {
    return pinout.pins().stream()
        .filter(p -> p.role() == Pin.Role.SELECT)
        .allMatch(p -> p.activeLow() == ((in & p.mask()) == 0));
  }

  private static Bus busOf(Pinout pinout, Pin.Role role) {
    Pin first = pinout.pins().stream().filter(p -> p.role() == role).findFirst().orElseThrow();
    return pinout.bus(first.name().replaceFirst("\\d+/?$", ""));
  }

  /** Whether a pin has a level of its own at which it switches off. */
  private static boolean rests(Pin pin) {
    return switch (pin.role()) {
      case SELECT, ENABLE -> true;
      case REGISTER,
          DIRECTION,
          DATA,
          CLOCK_FALLS,
          CLOCK_RISES,
          WRITE,
          LATCH,
          INPUT,
          LEVEL,
          OUTPUT,
          SUPPLY,
          GROUND,
          TERMINAL,
          UNCONNECTED ->
          false;
    };
  }

  /** Puts enables and selects of an output at their active level, the rest of its gates anyhow. */
  private static void enable(BenchPins bench, Output output) {
    for (Pin pin : bench.part().pinout().pins()) {
      if ((output.enables() & pin.mask()) != 0 && rests(pin)) {
        bench.set(pin.name(), !pin.activeLow());
      }
    }
  }

  /** A part with any levels on its pins, any state and any time. */
  /** A part some phases after power-on. */
  private static BenchPins used(Part part, SplittableRandom random) {
    BenchPins bench = new BenchPins(part);
    bench.powerOn(i -> random.nextLong());
    for (int steps = random.nextInt(8); steps > 0; steps--) {
      bench.set(random.nextLong());
      bench.before(random.nextLong());
      bench.passMicroseconds(random.nextInt(1_000_000));
      bench.commit(PHASES[random.nextInt(PHASES.length)]);
    }
    bench.set(random.nextLong());
    bench.before(random.nextLong());
    return bench;
  }

  private static BenchPins anywhere(Part part, SplittableRandom random) {
    BenchPins bench = new BenchPins(part);
    bench.scramble(random);
    bench.set(random.nextLong());
    bench.before(random.nextLong());
    bench.phase(PHASES[random.nextInt(PHASES.length)]);
    bench.passMicroseconds(random.nextInt(1_000_000));
    return bench;
  }

  private static BenchPins poweredOn(Part part, long seed) {
    BenchPins bench = new BenchPins(part);
    bench.powerOn(index -> new SplittableRandom(seed * 100_003 + index).nextLong());
    return bench;
  }

  /** Drives a part through random levels, phase by phase; a digest of all it drove. */
  private static long run(BenchPins bench, SplittableRandom random, int steps) {
    long digest = 0;
    for (int i = 0; i < steps; i++) {
      Phase phase = PHASES[i % PHASES.length];
      bench.phase(phase);
      bench.set(random.nextLong());
      if (phase == Phase.C_ROW) {
        bench.before(bench.in() ^ random.nextLong());
        bench.passMicroseconds(random.nextInt(5_000));
        bench.elapse();
      }
      bench.settle();
      bench.commit(phase);
      bench.settle();
      digest = digest * 0x9E3779B97F4A7C15L + bench.driven() * 31 + bench.levels();
    }
    return digest;
  }

  private static String names(PartCatalog row, long pins) {
    return row.type()
        + " "
        + row.part().pinout().pins().stream()
            .filter(p -> (pins & p.mask()) != 0)
            .map(Pin::name)
            .toList();
  }

  private static SplittableRandom random(PartCatalog row, String what) {
    return new SplittableRandom(row.type().hashCode() * 31L + what.hashCode());
  }
}
