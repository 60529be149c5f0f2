package faultfinch.signal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A package as its page draws it. The drawing is the declaration: it names the pins, the lines
 * under it give each a role, and the masks a part works with come from here.
 *
 * <p>Bits are sorted by bus: the lines of a bus stand side by side, whatever their package numbers.
 */
public final class Pinout {
  private final List<Pin> pins;
  private final Map<String, Pin> byName;
  private final List<Output> outputs;
  private final Technology technology;
  private final String notModelled;
  private final String drawing;
  private final long[] roles = new long[Pin.Role.values().length];
  private final List<State> words = new ArrayList<>();
  private final List<State> cells = new ArrayList<>();

  Pinout(
      List<Pin> pins,
      List<Output> outputs,
      Technology technology,
      String notModelled,
      String drawing) {
    this.pins = List.copyOf(pins);
    this.byName = new LinkedHashMap<>();
    this.outputs = List.copyOf(outputs);
    this.technology = technology;
    this.notModelled = notModelled;
    this.drawing = drawing;
    for (Pin pin : pins) {
      byName.put(pin.name(), pin);
      roles[pin.role().ordinal()] |= pin.mask();
    }
  }

  /**
   * Reads a drawing with its role lines.
   *
   * @throws IllegalArgumentException naming the line, what was found and what would be right
   */
  public static Pinout drawn(String drawing) {
    return new PinoutReader(drawing).pinout();
  }

  /** All pins in bit order. */
  public List<Pin> pins() {
    return pins;
  }

  /** The pin of this name, if there is one. */
  public Optional<Pin> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** The pin of this package number, if there is one. */
  public Optional<Pin> numbered(int number) {
    return pins.stream().filter(p -> p.number() == number).findFirst();
  }

  /** One pin as a bit mask. */
  public long pin(String name) {
    Pin pin = byName.get(name);
    if (pin == null) {
      throw new IllegalArgumentException("no pin '" + name + "' in this drawing");
    }
    return pin.mask();
  }

  /** The lines of a bus: pins named by the prefix and a number from 0 or 1 on. */
  public Bus bus(String prefix) {
    List<Pin> lines = lines(prefix);
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("no bus '" + prefix + "' in this drawing");
    }
    return new Bus(prefix, lines.get(0).bit(), lines.size());
  }

  List<Pin> lines(String prefix) {
    List<Pin> lines = new ArrayList<>();
    for (Pin pin : pins) {
      if (LineName.in(pin.name(), prefix)) {
        lines.add(pin);
      }
    }
    return lines;
  }

  /** Groups of outputs with what they depend on, in bit order. */
  public List<Output> outputs() {
    return outputs;
  }

  /** The outputs that nothing about the part ever makes let go, as one mask. */
  public long alwaysDriven() {
    long mask = 0;
    for (Pin pin : pins) {
      boolean enabled =
          outputs.stream().anyMatch(o -> (o.pins() & pin.mask()) != 0 && o.enables() != 0);
      if (pin.direction() == Pin.Direction.OUT
          && pin.drives()
          && !pin.openCollector()
          && !enabled) {
        mask |= pin.mask();
      }
    }
    return mask;
  }

  /** All pins with this role as one mask. */
  public long role(Pin.Role role) {
    return roles[role.ordinal()];
  }

  /** Of these enable pins those that, each by itself, let an output go while they read high. */
  public long silentWhileHigh(long enables) {
    return sum(p -> p.activeLow() && p.role() != Pin.Role.WRITE, enables);
  }

  /** Of these enable pins those that, each by itself, let an output go while they read low. */
  public long silentWhileLow(long enables) {
    return sum(p -> p.activeLow() == (p.role() == Pin.Role.WRITE), enables);
  }

  // A direction pin lets one side go and has the other drive.
  private long sum(Predicate<Pin> which, long of) {
    return pins.stream()
        .filter(p -> (p.mask() & of) != 0 && p.role() != Pin.Role.DIRECTION)
        .filter(which)
        .mapToLong(Pin::mask)
        .reduce(0, (a, b) -> a | b);
  }

  public Technology technology() {
    return technology;
  }

  /** What the part's page says it leaves out. */
  public String notModelled() {
    return notModelled;
  }

  /** The drawing as it stands on the part's page. */
  public String drawing() {
    return drawing;
  }

  /** Declares a stored word; called once while the part's class is set up. */
  public State state(String name, int width) {
    State word = new State(name, width, 1, words.size());
    words.add(word);
    return word;
  }

  /** Declares stored cells of up to 8 bits; called once while the part's class is set up. */
  public State cells(String name, int width, int count) {
    State array = new State(name, width, count, cellCount());
    cells.add(array);
    return array;
  }

  /** The declared words. */
  public List<State> words() {
    return Collections.unmodifiableList(words);
  }

  /** The declared cell arrays. */
  public List<State> cellArrays() {
    return Collections.unmodifiableList(cells);
  }

  /** How many cells the part has in all. */
  public int cellCount() {
    int count = 0;
    for (State array : cells) {
      count += array.count();
    }
    return count;
  }
}
