package faultfinch.signal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringTokenizer;
import java.util.TreeMap;

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
 *
 * <p>Plain loops throughout: every start of the program reads all drawings, and what links a lambda
 * or compiles a pattern would take longer than the reading.
 */
final class PinoutReader {
  private static final String ARROWS = "-> <- <> --";
  private static final int ARROW = 2;

  /** Each Q follows D. */
  private static final int LANE_WORDS = 4;

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
    boolean left = left(line, line.indexOf('|'));
    boolean right = right(line, line.lastIndexOf('|'));
    if (!left && !right) {
      throw wrong("row '" + line.strip() + "'", "NAME ->|1 14|<- NAME");
    }
  }

  /** A name, a blank, an arrow up to the edge, then a number with a blank behind it. */
  private boolean left(String line, int edge) {
    if (edge <= ARROW || !Character.isWhitespace(line.charAt(edge - ARROW - 1))) {
      return false;
    }
    String arrow = line.substring(edge - ARROW, edge);
    String name = line.substring(0, edge - ARROW).strip();
    int from = edge + 1;
    while (from < line.length() && Character.isWhitespace(line.charAt(from))) {
      from++;
    }
    int to = from;
    while (to < line.length() && isDigit(line.charAt(to))) {
      to++;
    }
    boolean numbered = to > from && to < line.length() && Character.isWhitespace(line.charAt(to));
    if (!numbered || !isArrow(arrow) || !isOneWord(name)) {
      return false;
    }
    place(name, Integer.parseInt(line.substring(from, to)), inward(arrow, "->", "<-"));
    return true;
  }

  /** A blank, a number up to the edge, an arrow from it on, then a name. */
  private boolean right(String line, int edge) {
    int from = edge;
    while (from > 0 && isDigit(line.charAt(from - 1))) {
      from--;
    }
    int arrowEnds = edge + 1 + ARROW;
    boolean numbered = from < edge && from > 0 && Character.isWhitespace(line.charAt(from - 1));
    if (!numbered || arrowEnds > line.length()) {
      return false;
    }
    String arrow = line.substring(edge + 1, arrowEnds);
    String name = line.substring(arrowEnds).strip();
    if (!isArrow(arrow) || name.isEmpty() || !isOneWord(name)) {
      return false;
    }
    place(name, Integer.parseInt(line.substring(from, edge)), inward(arrow, "<-", "->"));
    return true;
  }

  private static boolean isArrow(String text) {
    return ARROWS.contains(text) && !text.contains(" ");
  }

  private static boolean isOneWord(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isWhitespace(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDigit(char letter) {
    return letter >= '0' && letter <= '9';
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
    String[] words = words(clause);
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
      case "schmitt" -> putAll(named(words, 1, words.length), Technology.SCHMITT, schmitts);
      case "clock" -> role(words, 1, words.length - 1, edge(words, clause));
      case "enable" -> enable(words);
      case "each" -> lanes(clause);
      default -> sentence(words, clause);
    }
  }

  /** Words stand apart by blanks or commas. */
  private static String[] words(String text) {
    StringTokenizer words = new StringTokenizer(text, " \t,");
    String[] all = new String[words.countTokens()];
    for (int i = 0; i < all.length; i++) {
      all[i] = words.nextToken();
    }
    return all;
  }

  private void sentence(String[] words, String clause) {
    if (words.length < 3) {
      throw wrong("role line '" + clause + "'", "for example 'select CE/' or 'Q drives LS gate'");
    }
    List<String> subject = named(words, 0, 1);
    switch (words[1]) {
      case "follows" -> {
        List<String> on = named(words, 2, words.length);
        for (String name : subject) {
          added(name, on, follows);
        }
      }
      case "drives" -> {
        boolean open = clause.endsWith("open collector");
        String named = clause.substring(clause.indexOf("drives") + 6).replace("open collector", "");
        DriveClass c = driveClass(named.strip());
        putAll(subject, c, drives);
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
    for (String gate : gates) {
      roles.putIfAbsent(gate, Pin.Role.ENABLE);
    }
    if (of >= 0) {
      for (String out : named(words, of + 1, words.length)) {
        added(out, gates, enables);
        added(out, gates, follows);
      }
    }
  }

  private void lanes(String clause) {
    int comma = clause.indexOf(',');
    String[] words = words(comma < 0 ? clause : clause.substring(0, comma));
    if (words.length != LANE_WORDS || !words[2].equals("follows")) {
      throw wrong("role line '" + clause + "'", "'each Q follows D, LE'");
    }
    List<String> out = expand(words[1]);
    List<String> in = expand(words[3]);
    if (out.size() != in.size()) {
      throw wrong("lanes of '" + clause + "'", "as many lines on either side");
    }
    String[] common = words(comma < 0 ? "" : clause.substring(comma));
    List<String> all = named(common, 0, common.length);
    for (int i = 0; i < out.size(); i++) {
      added(out.get(i), List.of(in.get(i)), follows);
      added(out.get(i), all, follows);
    }
  }

  private void role(String[] words, int from, int to, Pin.Role role) {
    putAll(named(words, from, to), role, roles);
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
    List<LineName> lines = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (String name : directions.keySet()) {
      if (LineName.in(name, word)) {
        sortIn(name, names, lines);
      }
    }
    if (names.isEmpty()) {
      throw wrong("'" + word + "' in a role line", "a pin or bus of the drawing");
    }
    return names;
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
    List<String> order = new ArrayList<>();
    List<LineName> lines = new ArrayList<>();
    for (String name : names.values()) {
      sortIn(name, order, lines);
    }
    if (order.size() > 64) {
      throw wrong(order.size() + " pins", "64 at most");
    }
    Map<String, Integer> numbers = new LinkedHashMap<>();
    for (Map.Entry<Integer, String> name : names.entrySet()) {
      numbers.put(name.getValue(), name.getKey());
    }
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
    for (Pin pin : pins) {
      masks.put(pin.name(), pin.mask());
    }
    List<Output> outputs = new ArrayList<>();
    for (Pin pin : pins) {
      if (pin.drives()) {
        long on = mask(follows.getOrDefault(pin.name(), Set.of()), masks);
        long gates = mask(enables.getOrDefault(pin.name(), Set.of()), masks);
        join(pin.mask(), on, gates, outputs);
      }
    }
    return outputs;
  }

  /** To the outputs that depend on the same, or as the first of them. */
  private static void join(long pin, long on, long gates, List<Output> outputs) {
    for (int i = 0; i < outputs.size(); i++) {
      Output other = outputs.get(i);
      if (other.follows() == on && other.enables() == gates) {
        outputs.set(i, new Output(other.pins() | pin, on, gates));
        return;
      }
    }
    outputs.add(new Output(pin, on, gates));
  }

  private static long mask(Set<String> names, Map<String, Long> masks) {
    long mask = 0;
    for (String name : names) {
      mask |= masks.get(name);
    }
    return mask;
  }

  private static <T> void putAll(List<String> names, T of, Map<String, T> all) {
    for (String name : names) {
      all.put(name, of);
    }
  }

  private static void added(String name, List<String> more, Map<String, Set<String>> all) {
    Set<String> some = all.get(name);
    if (some == null) {
      some = new LinkedHashSet<>();
      all.put(name, some);
    }
    some.addAll(more);
  }

  /** By bus and line; behind those that are alike. */
  private static void sortIn(String name, List<String> names, List<LineName> lines) {
    LineName line = LineName.of(name);
    int at = names.size();
    while (at > 0 && line.compareTo(lines.get(at - 1)) < 0) {
      at--;
    }
    names.add(at, name);
    lines.add(at, line);
  }

  private IllegalArgumentException wrong(String found, String right) {
    return new IllegalArgumentException("drawing: found " + found + ", right would be " + right);
  }
}
