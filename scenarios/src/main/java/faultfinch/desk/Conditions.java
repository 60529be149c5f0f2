package faultfinch.desk;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How the board stood when something was seen.
 *
 * @param out parts taken out
 * @param volts of the supply, if not the usual
 */
public record Conditions(
    List<String> out, Optional<BigDecimal> volts, Climate climate, boolean benchRom) {

  /** As it came: complete, on its own supply, as warm as it gets by itself. */
  public static final Conditions USUAL =
      new Conditions(List.of(), Optional.empty(), Climate.USUAL, false);

  /** How warm the board is. */
  public enum Climate {
    USUAL,
    COLD,
    WARM
  }

  public Conditions {
    out = List.copyOf(out);
  }

  boolean usual() {
    return equals(USUAL);
  }
}
