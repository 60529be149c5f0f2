package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What an owner could say of a board, as features: the display when it is ready, the lamp, the
 * sound, what each key brings about.
 */
public final class Symptoms {
  /** The display, or what the set shows, before the first key is pressed. */
  public static final String DISPLAY = "display";

  /** What sounds before the first key is pressed. */
  public static final String SOUND = "sound";

  /** The lamp from ready on. */
  public static final String LAMP = "lamp";

  /** Before the reference of a key: what its presses bring about. */
  public static final String KEY = "key ";

  /** Before the reference of a key: what its presses change in the picture, if somebody looked. */
  public static final String PICTURE = "picture after ";

  /** A display that shows something else this shortly before is moving. */
  private static final int STILL_MS = 100;

  private static final char MOVING = '~';

  private final SortedMap<String, String> features = new TreeMap<>();

  private Symptoms(Watching seen, Dots font) {
    Board board = seen.board();
    int ready = Watching.readyMilliseconds(board);
    int end = Watching.endMilliseconds(board);
    if (seen.hasDisplay()) {
      features.put(DISPLAY, display(seen, font, ready));
    }
    seen.screen().ifPresent(s -> features.put(DISPLAY, s.says()));
    features.put(SOUND, sound(seen.says(0, ready)));
    if (!seen.lamp().isEmpty()) {
      features.put(
          LAMP,
          Lamp.seen(
                  seen.lamp().subList(ready / Watching.SAMPLE_MS - 1, seen.lamp().size()),
                  Watching.SAMPLE_MS)
              .says());
    }
    List<KeyPress> presses = board.exercise();
    for (int i = 0; i < presses.size(); i++) {
      int from = presses.get(i).atMilliseconds();
      int to = i + 1 < presses.size() ? presses.get(i + 1).atMilliseconds() : end;
      features.merge(
          KEY + presses.get(i).ref(), press(seen, font, from, to), (a, b) -> a + ", then " + b);
    }
    for (int i = 0; i < seen.afterKeys().size(); i++) {
      Screen before = i == 0 ? seen.screen().orElseThrow() : seen.afterKeys().get(i - 1);
      features.merge(
          PICTURE + presses.get(i).ref(),
          PictureChange.between(before, seen.afterKeys().get(i)),
          (a, b) -> a + ", then " + b);
    }
  }

  /** Reads the features off what was watched. */
  public static Symptoms of(Watching seen) {
    return new Symptoms(seen, Dots.shipped());
  }

  private static String display(Watching seen, Dots font, int at) {
    return moves(seen, at) ? moving(seen, font, at) : seen.glassAt(at).says(font);
  }

  private static boolean moves(Watching seen, int at) {
    for (int ms = at - STILL_MS; ms < at; ms += Watching.SAMPLE_MS) {
      if (!seen.glassAt(ms).equals(seen.glassAt(at))) {
        return true;
      }
    }
    return false;
  }

  /** Cells that change stand as a wave, so that chance content does not count. */
  private static String moving(Watching seen, Dots font, int at) {
    List<Glass> lately = new ArrayList<>();
    for (int ms = at - STILL_MS; ms <= at; ms += Watching.SAMPLE_MS) {
      lately.add(seen.glassAt(ms));
    }
    if (lately.stream().anyMatch(g -> !g.lit())) {
      return lately.stream().allMatch(g -> !g.lit()) ? "dark" : "flickers";
    }
    StringBuilder text = new StringBuilder();
    for (int cell = 0; cell < lately.get(0).cells().size(); cell++) {
      int c = cell;
      long different = lately.stream().map(g -> g.cells().get(c)).distinct().count();
      text.append(different > 1 ? MOVING : font.character(lately.get(0).cells().get(c)));
    }
    return "moves, '" + text.toString().stripTrailing() + "'";
  }

  private static String press(Watching seen, Dots font, int from, int to) {
    Glass before = seen.glassAt(from);
    Glass after = seen.glassAt(to);
    String shown =
        moves(seen, to)
            ? moving(seen, font, to)
            : after.equals(before) ? "display unchanged" : after.says(font);
    List<String> sounds = seen.says(from, to);
    String heard = sounds.isEmpty() ? "no sound" : sound(sounds);
    return seen.hasDisplay() ? shown + " with " + heard : heard;
  }

  private static String sound(List<String> sounds) {
    return sounds.isEmpty() ? "silent" : String.join(", ", sounds);
  }

  /** One feature; empty if the board has nothing of the kind. */
  public String feature(String name) {
    return features.getOrDefault(name, "");
  }

  /** All features by name. */
  public SortedMap<String, String> features() {
    return Collections.unmodifiableSortedMap(features);
  }
}
