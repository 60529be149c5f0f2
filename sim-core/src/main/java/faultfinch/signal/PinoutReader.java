package faultfinch.signal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a drawn package. A row is {@code NAME ->|1 14|<- NAME}; arrows show where signals go,
 * {@code <>} both ways, {@code --} none.
 *
 * <p>Role lines follow, clauses parted by semicolons: the technology first, then {@code select
 * CE/}, {@code register A}, {@code direction RW}, {@code data D}, {@code clock PHI2 falls}, {@code
 * write WE/}, {@code enable OE/ of Q}, {@code latch LE}, {@code input A}, {@code level IN}, {@code
 * supply VCC}, {@code ground GND}, {@code terminal 1 2}, {@code unconnected NC}, {@code Q drives LS
 * gate}, {@code IRQ/ drives NMOS LSI open collector}, {@code PA pulled up}, {@code schmitt TRIG},
 * {@code Q follows D LE}, {@code each Q follows D, LE}: line n of Q follows line n of D and all of
 * LE.
 */
final class PinoutReader {
  private static final Pattern LEFT =
      Pattern.compile("^\\s*(\\S*)\\s+(->|<-|<>|--)\\|\\s*(\\d+)\\s");
  private static final Pattern LANES = Pattern.compile("each (\\S+) follows (\\S+?)(?:,(.*))?$");
  private static final Pattern RIGHT = Pattern.compile("\\s(\\d+)\\|(->|<-|<>|--)\\s*(\\S+)\\s*$");

  private static final String TECHNOLOGIES = "LS, NMOS, MOS memory, CMOS or passive";

  private final String drawing;
  private final Map<Integer, String> names = new TreeMap<>();
  private final Map<String, Pin.Direction> directions = new LinkedHashMap<>();
  private final Map<String, Pin.Role> roles = new LinkedHashMap<>();
  private final Map<String, Technology> schmitts = new LinkedHashMap<>();
  private final Map<String, DriveClass> drives = new LinkedHashMap<>();
  private final Set<String> collectors = new LinkedHashSet<>();
  private final Set<String> pulled = new LinkedHashSet<>();
  private final Map<String, Set<String>> follows = new LinkedHashMap<>();
  private final Map<String, Set<String>> enables = new LinkedHashMap<>();
  private Technology technology;
  private String notModelled = "";

  PinoutReader(String drawing) {
    this.drawing = drawing;
  }

  Pinout pinout() {
    StringBuilder clauses = new StringBuilder();
    for (String line : drawing.split("\n")) {
      if (line.strip().startsWith("Not modelled:")) {
        notModelled = line.strip().substring("Not modelled:".length()).strip();
      } else if (!notModelled.isEmpty()) {
        notModelled += " " + line.strip();
      } else if (line.contains("|")) {
        row(line);
      } else if (!line.contains("+--")) {
        clauses.append(line.strip()).append(' ');
      }
    }
    for (String clause : clauses.toString().split(";")) {
      if (!clause.isBlank()) {
        clause(clause.strip());
      }
    }
    return assemble();
  }

  private void row(String line) {
    Matcher left = LEFT.matcher(line);
    Matcher right = RIGHT.matcher(line);
    boolean any = false;
    if (left.find()) {
      any = true;
      place(left.group(1), Integer.parseInt(left.group(3)), inward(left.group(2), "->", "<-"));
    }
    if (right.find()) {
      any = true;
      place(right.group(3), Integer.parseInt(right.group(1)), inward(right.group(2), "<-", "->"));
    }
    if (!any) {
      throw wrong("row '" + line.strip() + "'", "NAME ->|1 14|<- NAME");
    }
  }

  private static Pin.Direction inward(String arrow, String in, String out) {
    if (arrow.equals(in)) {
      return Pin.Direction.IN;
    }
    if (arrow.equals(out)) {
      return Pin.Direction.OUT;
    }
    return arrow.equals("<>") ? Pin.Direction.BOTH : Pin.Direction.NONE;
  }

  private void place(String name, int number, Pin.Direction direction) {
    if (names.containsValue(name) || names.put(number, name) != null) {
      throw wrong("pin '" + name + "' number " + number + " twice", "each name and number once");
    }
    directions.put(name, direction);
  }

  private void clause(String clause) {
    if (technology == null) {
      technology = technologyOf(clause);
      return;
    }
    String[] words = clause.split("[\\s,]+");
    switch (words[0]) {
      case "select" -> role(words, 1, words.length, Pin.Role.SELECT);
      case "register" -> role(words, 1, words.length, Pin.Role.REGISTER);
      case "direction" -> role(words, 1, words.length, Pin.Role.DIRECTION);
      case "data" -> role(words, 1, words.length, Pin.Role.DATA);
      case "write" -> role(words, 1, words.length, Pin.Role.WRITE);
      case "latch" -> role(words, 1, words.length, Pin.Role.LATCH);
      case "input" -> role(words, 1, words.length, Pin.Role.INPUT);
      case "level" -> role(words, 1, words.length, Pin.Role.LEVEL);
      case "supply" -> role(words, 1, words.length, Pin.Role.SUPPLY);
      case "ground" -> role(words, 1, words.length, Pin.Role.GROUND);
      case "terminal" -> role(words, 1, words.length, Pin.Role.TERMINAL);
      case "unconnected" -> role(words, 1, words.length, Pin.Role.UNCONNECTED);
      case "schmitt" ->
          named(words, 1, words.length).forEach(n -> schmitts.put(n, Technology.SCHMITT));
      case "clock" -> role(words, 1, words.length - 1, edge(words, clause));
      case "enable" -> enable(words);
      case "each" -> lanes(clause);
      default -> sentence(words, clause);
    }
  }

  private void sentence(String[] words, String clause) {
    if (words.length < 3) {
      throw wrong("role line '" + clause + "'", "for example 'select CE/' or 'Q drives LS gate'");
    }
    List<String> subject = named(words, 0, 1);
    switch (words[1]) {
      case "follows" ->
          subject.forEach(
              n ->
                  follows
                      .computeIfAbsent(n, k -> new LinkedHashSet<>())
                      .addAll(named(words, 2, words.length)));
      case "drives" -> {
        boolean open = clause.endsWith("open collector");
        String named = clause.substring(clause.indexOf("drives") + 6).replace("open collector", "");
        DriveClass c = driveClass(named.strip());
        subject.forEach(n -> drives.put(n, c));
        if (open) {
          collectors.addAll(subject);
        }
      }
      case "pulled" -> pulled.addAll(subject);
      default -> throw wrong("role line '" + clause + "'", "'follows', 'drives' or 'pulled up'");
    }
  }

  private static DriveClass driveClass(String words) {
    try {
      return DriveClass.named(words);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("drawing: " + e.getMessage(), e);
    }
  }

  private Pin.Role edge(String[] words, String clause) {
    return switch (words[words.length - 1]) {
      case "falls" -> Pin.Role.CLOCK_FALLS;
      case "rises" -> Pin.Role.CLOCK_RISES;
      default -> throw wrong("role line '" + clause + "'", "'clock CK rises' or 'clock CK falls'");
    };
  }

  private void enable(String[] words) {
    int of = List.of(words).indexOf("of");
    List<String> gates = named(words, 1, of < 0 ? words.length : of);
    gates.forEach(n -> roles.putIfAbsent(n, Pin.Role.ENABLE));
    if (of >= 0) {
      for (String out : named(words, of + 1, words.length)) {
        enables.computeIfAbsent(out, k -> new LinkedHashSet<>()).addAll(gates);
        follows.computeIfAbsent(out, k -> new LinkedHashSet<>()).addAll(gates);
      }
    }
  }

  private void lanes(String clause) {
    Matcher m = LANES.matcher(clause);
    if (!m.find()) {
      throw wrong("role line '" + clause + "'", "'each Q follows D, LE'");
    }
    List<String> out = expand(m.group(1));
    List<String> in = expand(m.group(2));
    if (out.size() != in.size()) {
      throw wrong("lanes of '" + clause + "'", "as many lines on either side");
    }
    String common = m.group(3) == null ? "" : m.group(3).strip();
    List<String> all =
        common.isEmpty()
            ? List.of()
            : named(common.split("[\\s,]+"), 0, common.split("[\\s,]+").length);
    for (int i = 0; i < out.size(); i++) {
      Set<String> on = follows.computeIfAbsent(out.get(i), k -> new LinkedHashSet<>());
      on.add(in.get(i));
      on.addAll(all);
    }
  }

  private void role(String[] words, int from, int to, Pin.Role role) {
    named(words, from, to).forEach(n -> roles.put(n, role));
  }

  private List<String> named(String[] words, int from, int to) {
    List<String> all = new ArrayList<>();
    for (int i = from; i < to; i++) {
      all.addAll(expand(words[i]));
    }
    return all;
  }

  private List<String> expand(String word) {
    if (directions.containsKey(word)) {
      return List.of(word);
    }
    List<String> lines =
        directions.keySet().stream()
            .filter(n -> LineName.in(n, word))
            .sorted(Comparator.comparingInt(n -> LineName.of(n).line()))
            .toList();
    if (lines.isEmpty()) {
      throw wrong("'" + word + "' in a role line", "a pin or bus of the drawing");
    }
    return lines;
  }

  private Technology technologyOf(String word) {
    return switch (word) {
      case "LS" -> Technology.LS;
      case "NMOS", "MOS memory" -> Technology.NMOS;
      case "CMOS" -> Technology.CMOS;
      case "passive" -> Technology.PASSIVE;
      default -> throw wrong("technology '" + word + "'", TECHNOLOGIES);
    };
  }

  private Pinout assemble() {
    if (technology == null) {
      throw wrong("no technology", TECHNOLOGIES);
    }
    List<String> order = new ArrayList<>(names.values());
    order.sort(
        Comparator.comparing((String n) -> LineName.of(n).bus())
            .thenComparingInt(n -> LineName.of(n).line()));
    if (order.size() > 64) {
      throw wrong(order.size() + " pins", "64 at most");
    }
    Map<String, Integer> numbers = new LinkedHashMap<>();
    names.forEach((number, name) -> numbers.put(name, number));
    List<Pin> pins = new ArrayList<>();
    for (String name : order) {
      pins.add(pin(name, numbers.get(name), pins.size()));
    }
    return new Pinout(pins, outputs(pins), technology, notModelled, drawing);
  }

  private Pin pin(String name, int number, int bit) {
    Pin.Role role = roles.get(name);
    if (role == null && drives.containsKey(name)) {
      role = Pin.Role.OUTPUT;
    }
    if (role == null) {
      throw wrong("pin '" + name + "' without a role", "a role line that names it");
    }
    return new Pin(
        name,
        number,
        bit,
        directions.get(name),
        role,
        schmitts.getOrDefault(name, technology),
        Optional.ofNullable(drives.get(name)),
        collectors.contains(name),
        pulled.contains(name) ? Electrical.figure("port.pullup.ohm") : 0);
  }

  private List<Output> outputs(List<Pin> pins) {
    Map<String, Long> masks = new LinkedHashMap<>();
    pins.forEach(p -> masks.put(p.name(), p.mask()));
    Map<List<Long>, Long> grouped = new LinkedHashMap<>();
    for (Pin pin : pins) {
      if (pin.drives()) {
        long on = mask(follows.getOrDefault(pin.name(), Set.of()), masks);
        long gates = mask(enables.getOrDefault(pin.name(), Set.of()), masks);
        grouped.merge(List.of(on, gates), pin.mask(), (a, b) -> a | b);
      }
    }
    List<Output> outputs = new ArrayList<>();
    grouped.forEach((key, out) -> outputs.add(new Output(out, key.get(0), key.get(1))));
    return outputs;
  }

  private static long mask(Set<String> names, Map<String, Long> masks) {
    return names.stream().mapToLong(masks::get).reduce(0, (a, b) -> a | b);
  }

  private IllegalArgumentException wrong(String found, String right) {
    return new IllegalArgumentException("drawing: found " + found + ", right would be " + right);
  }
}
