package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.fault.Fault;
import faultfinch.fault.Harm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Writes down what the faults do to a board, for {@link Wiring} to carry out. */
final class HarmNotes implements Harm {

  record Load(Pad pin, int millivolts, int ohms) {}

  record Bridge(Pad one, Pad other, int ohms) {}

  record Cell(String ref, int index, int clear, int set) {}

  record CellDefect(String ref, int index, String way) {}

  record Programmed(String ref, int index, int value) {}

  record Brick(int noLoadMillivolts, int milliohms) {}

  final Map<Pad, Boolean> reads = new LinkedHashMap<>();
  final Map<Pad, Boolean> drives = new LinkedHashMap<>();
  final List<Load> loads = new ArrayList<>();
  final Set<Pad> opens = new LinkedHashSet<>();
  final Set<Set<Pad>> cuts = new LinkedHashSet<>();
  final List<Bridge> bridges = new ArrayList<>();
  final Set<String> dead = new LinkedHashSet<>();
  final Set<String> absent = new LinkedHashSet<>();
  final List<Cell> cells = new ArrayList<>();
  final List<Programmed> programmed = new ArrayList<>();
  final List<CellDefect> cellDefects = new ArrayList<>();
  final Map<String, Set<String>> defects = new LinkedHashMap<>();
  final Map<String, Integer> slow = new LinkedHashMap<>();
  final Map<String, Integer> races = new LinkedHashMap<>();
  final Set<String> elementsOpen = new LinkedHashSet<>();
  final Map<String, Integer> elementsShort = new LinkedHashMap<>();
  final Map<String, Integer> elementsDrift = new LinkedHashMap<>();
  boolean clockDead;
  int clockPerMille = 1000;
  Optional<Brick> brick = Optional.empty();
  int brickCapacitorPercent = 100;
  final Map<String, RegulatorHarm> regulators = new LinkedHashMap<>();
  boolean supplyOpen;

  HarmNotes(Board board, List<Fault> faults) {
    faults.forEach(f -> f.applyTo(this));
    absent.removeIf(ref -> board.part(ref).isEmpty());
  }

  /** Whether something is wrong inside a part that is on the board. */
  boolean inside() {
    return Stream.of(
            cells.stream().map(Cell::ref),
            programmed.stream().map(Programmed::ref),
            cellDefects.stream().map(CellDefect::ref),
            defects.keySet().stream(),
            slow.keySet().stream(),
            races.keySet().stream())
        .flatMap(refs -> refs)
        .anyMatch(ref -> !absent.contains(ref));
  }

  @Override
  public void reads(Pad pin, boolean high) {
    reads.put(pin, high);
  }

  @Override
  public void drives(Pad pin, boolean high) {
    drives.put(pin, high);
  }

  @Override
  public void load(Pad pin, int millivolts, int ohms) {
    loads.add(new Load(pin, millivolts, ohms));
  }

  @Override
  public void open(Pad pin) {
    opens.add(pin);
  }

  @Override
  public void cut(Pad from, Pad to) {
    cuts.add(Set.of(from, to));
  }

  @Override
  public void bridge(Pad one, Pad other, int ohms) {
    bridges.add(new Bridge(one, other, ohms));
  }

  @Override
  public void dead(String ref) {
    dead.add(ref);
  }

  @Override
  public void absent(String ref) {
    absent.add(ref);
  }

  @Override
  public void cell(String ref, int index, int clear, int set) {
    cells.add(new Cell(ref, index, clear, set));
  }

  @Override
  public void cellDefect(String ref, int index, String way) {
    cellDefects.add(new CellDefect(ref, index, way));
  }

  @Override
  public void programmed(String ref, int index, int value) {
    programmed.add(new Programmed(ref, index, value));
  }

  @Override
  public void defect(String ref, String name) {
    defects.computeIfAbsent(ref, k -> new LinkedHashSet<>()).add(name);
  }

  @Override
  public void slow(String ref, int nanoseconds) {
    slow.put(ref, nanoseconds);
  }

  @Override
  public void race(String ref, int nanoseconds) {
    races.put(ref, nanoseconds);
  }

  @Override
  public void elementOpen(String ref) {
    elementsOpen.add(ref);
  }

  @Override
  public void elementShort(String ref, int ohms) {
    elementsShort.put(ref, ohms);
  }

  @Override
  public void elementDrift(String ref, int percent) {
    elementsDrift.put(ref, percent);
  }

  @Override
  public void clockDead() {
    clockDead = true;
  }

  @Override
  public void clockOff(int perMille) {
    clockPerMille = perMille;
  }

  @Override
  public void brick(int noLoadMillivolts, int milliohms) {
    brick = Optional.of(new Brick(noLoadMillivolts, milliohms));
  }

  @Override
  public void brickCapacitor(int percent) {
    brickCapacitorPercent = percent;
  }

  @Override
  public void regulator(String ref, RegulatorHarm harm) {
    regulators.put(ref, harm);
  }

  @Override
  public void supplyOpen() {
    supplyOpen = true;
  }
}
