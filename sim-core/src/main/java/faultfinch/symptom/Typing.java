package faultfinch.symptom;

import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What shows and sounds after the last key of a board's exercise. */
public final class Typing {
  private static final long MILLISECOND = 1_000_000;

  private Typing() {}

  /** Such as {@code display reads 'K2'; sound short 440 Hz}. */
  public static String says(Setup setup) {
    int end = Watching.endMilliseconds(setup.board());
    List<Screen> screens = new ArrayList<>();
    Map<Long, Consumer<Machine>> stops =
        Screen.of(setup.board()).isEmpty()
            ? Map.of()
            : Map.of(end * MILLISECOND, m -> screens.add(Screen.look(m)));
    Watching seen = Watching.of(setup, stops);
    String shown =
        screens.isEmpty() ? seen.glassAt(end).says(Dots.shipped()) : screens.get(0).says();
    List<String> sounds = seen.says(Watching.readyMilliseconds(setup.board()), end);
    return "display "
        + shown
        + "; sound "
        + (sounds.isEmpty() ? "silent" : String.join(", ", sounds));
  }
}
