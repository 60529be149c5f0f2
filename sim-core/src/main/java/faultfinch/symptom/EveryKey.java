package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import faultfinch.part.PartCatalog;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Every key of a board pressed in its turn, as somebody does who wants to know which are dead: the
 * keys with a sign row by row from the left, each row closed with the key that ends a line, then
 * the keys without a sign, each between two letters that show what it did. What stands on the set
 * in the end tells it all. If nothing comes of the first row the others are not tried.
 */
public final class EveryKey implements HandsOn {
  /** Its name among the looks and the moves. */
  public static final String NAME = "every key";

  /** What is said when the first row changed nothing on the set. */
  public static final String NOTHING = "nothing comes of the first row";

  /** Before what a key is marked with: one sign, the name of one, or a word in capitals. */
  private static final String MARK = "key ";

  private static final String END_OF_LINE = MARK + "ENTER";

  /** Held while the next letter is typed. */
  private static final String HELD = MARK + "SHIFT";

  private static final int DOWN_MS = 80;
  private static final int UP_MS = 40;
  private static final long MILLISECOND = 1_000_000;

  private final List<List<PlacedPart>> rows;
  private final List<PlacedPart> withoutSign;
  private final List<PlacedPart> first;
  private final List<PlacedPart> others = new ArrayList<>();
  private final int ready;

  /** The keys of a board, in the order in which they are pressed. */
  public EveryKey(Board board) {
    ready = Watching.readyMilliseconds(board);
    List<PlacedPart> keys = keys(board);
    rows =
        List.copyOf(
            keys.stream()
                .filter(EveryKey::hasSign)
                .collect(Collectors.groupingBy(PlacedPart::y, TreeMap::new, Collectors.toList()))
                .values());
    Optional<PlacedPart> end = keys.stream().filter(k -> k.role().equals(END_OF_LINE)).findFirst();
    List<List<PlacedPart>> closed =
        rows.stream().map(row -> Stream.concat(row.stream(), end.stream()).toList()).toList();
    first = closed.isEmpty() ? List.of() : closed.get(0);
    closed.stream().skip(1).forEach(others::addAll);
    withoutSign = keys.stream().filter(k -> !hasSign(k)).toList();
    List<PlacedPart> letters = keys.stream().filter(k -> k.role().matches(MARK + "[A-Z]")).toList();
    int next = 0;
    for (PlacedPart key : withoutSign) {
      if (end.filter(key::equals).isEmpty() && next + 1 < letters.size()) {
        others.add(letters.get(next++));
        others.add(key);
      }
    }
    letters.stream().skip(next).findFirst().ifPresent(others::add);
  }

  /** Keys that type, row by row; a button of another sort has a role of another sort. */
  private static List<PlacedPart> keys(Board board) {
    return board.parts().stream()
        .filter(p -> p.type() == PartCatalog.KEY && p.role().startsWith(MARK))
        .sorted(Comparator.comparing(PlacedPart::y).thenComparing(PlacedPart::x))
        .toList();
  }

  private static boolean hasSign(PlacedPart key) {
    String mark = key.role().substring(MARK.length());
    return mark.length() == 1 || mark.chars().anyMatch(Character::isLowerCase);
  }

  /** Whether a board has a set to look at and keys that its exercise does not press. */
  public static boolean offered(Board board) {
    List<String> pressed = board.exercise().stream().map(KeyPress::ref).toList();
    return Screen.of(board).isPresent()
        && !pressed.isEmpty()
        && keys(board).stream().anyMatch(k -> !pressed.contains(k.ref()));
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String says(Machine machine, Frames frames) {
    machine.runTo((ready - Screen.LOOK_MS) * MILLISECOND);
    Screen before = Screen.look(machine, frames);
    if (!before.synced() || before.dark()) {
      return BLIND;
    }
    press(machine, first);
    Screen after = Screen.look(machine, frames);
    if (PictureChange.none(before, after)) {
      return NOTHING;
    }
    press(machine, others);
    return Screen.look(machine, frames).says();
  }

  /**
   * Keys whose signs come otherwise than they do on a healthy board. Of one that stays down more
   * come and others get lost, so where any sign comes too often those that do are meant. Where most
   * signs are gone it is a key without one that stays down.
   *
   * @param usual what a healthy board's set shows in the end
   * @param seen the same of this board
   * @return how many too many or too few, by key
   */
  @Override
  public Map<String, Integer> otherwise(String usual, String seen) {
    Map<String, Integer> more = new LinkedHashMap<>();
    Map<String, Integer> fewer = new LinkedHashMap<>();
    if (seen.equals(BLIND) || seen.equals(NOTHING)) {
      return more;
    }
    signs(usual)
        .forEach(
            (ref, sign) -> {
              int times = times(sign, seen) - times(sign, usual);
              (times > 0 ? more : fewer).put(ref, Math.abs(times));
            });
    fewer.values().removeIf(times -> times == 0);
    if (more.isEmpty() && 2 * fewer.size() > signs(usual).size()) {
      return withoutSign.stream().collect(Collectors.toMap(PlacedPart::ref, key -> 1));
    }
    return more.isEmpty() ? fewer : more;
  }

  /** What each key types: of a row of keys so many signs end a row of the set. */
  private Map<String, String> signs(String usual) {
    Map<String, String> signs = new LinkedHashMap<>();
    for (List<PlacedPart> row : rows) {
      text(usual)
          .map(line -> line.substring(Math.max(0, line.length() - row.size())))
          .filter(line -> types(row, line))
          .findFirst()
          .ifPresent(
              line -> {
                for (int i = 0; i < row.size(); i++) {
                  signs.put(row.get(i).ref(), line.substring(i, i + 1));
                }
              });
    }
    return signs;
  }

  /** Whether these are the signs of a row of keys, of which some are marked with a name. */
  private static boolean types(List<PlacedPart> row, String line) {
    boolean types = line.length() == row.size();
    for (int i = 0; types && i < row.size(); i++) {
      String mark = row.get(i).role().substring(MARK.length());
      types = mark.length() > 1 || mark.equalsIgnoreCase(line.substring(i, i + 1));
    }
    return types;
  }

  /** Rows on a set, which stand in quotes, without the colours behind. */
  private static Stream<String> text(String shown) {
    int end = shown.lastIndexOf('\'');
    return Stream.of((end < 1 ? "" : shown.substring(1, end)).split(" \\| "));
  }

  private static int times(String sign, String shown) {
    return text(shown)
        .map(row -> row.toLowerCase(Locale.ROOT))
        .mapToInt(row -> row.length() - row.replace(sign, "").length())
        .sum();
  }

  private static void press(Machine machine, List<PlacedPart> keys) {
    Fingers fingers = new Fingers(machine, DOWN_MS, UP_MS);
    Optional<PlacedPart> held = Optional.empty();
    for (PlacedPart key : keys) {
      fingers.down(key.ref());
      if (key.role().equals(HELD)) {
        held = Optional.of(key);
        continue;
      }
      fingers.up(key.ref());
      held.ifPresent(h -> fingers.up(h.ref()));
      held = Optional.empty();
    }
  }
}
