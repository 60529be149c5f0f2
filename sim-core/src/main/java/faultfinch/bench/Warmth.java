package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Machine;
import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/**
 * Current and case warmth of a board from what each part draws, when it is supplied.
 *
 * <p>Not modelled: what a fight or a short adds.
 */
final class Warmth {
  private static final Properties FIGURES = read();

  /** Kelvin above the air from which a finger feels a part warm, and hot. */
  private static final int WARM_FROM = 8;

  private static final int HOT_FROM = 45;

  static final String HOT = "hot";

  private final Machine machine;

  private Warmth(Machine machine) {
    this.machine = machine;
  }

  static Warmth of(Machine machine) {
    return new Warmth(machine);
  }

  private static Properties read() {
    Properties properties = new Properties();
    try (InputStream in = Warmth.class.getResourceAsStream("draws.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new IllegalStateException("draws.properties cannot be read", e);
    }
    return properties;
  }

  private static int figure(PlacedPart part, String what) {
    return Integer.parseInt(FIGURES.getProperty(part.type().type() + "." + what, "0").strip());
  }

  int milliamperes() {
    return machine.board().parts().stream()
        .filter(p -> machine.works(p.ref()))
        .mapToInt(p -> figure(p, "ma"))
        .sum();
  }

  Reading finger(String ref) {
    PlacedPart part = machine.board().part(ref).orElseThrow();
    int rise = machine.works(ref) ? figure(part, "rise") : 0;
    String says = rise < 2 ? "cold" : rise < WARM_FROM ? "normal" : rise < HOT_FROM ? "warm" : HOT;
    return new Words(says, says);
  }
}
