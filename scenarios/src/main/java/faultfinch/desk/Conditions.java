package faultfinch.desk;

import faultfinch.diagnosis.Observation;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How the board stood when something was seen.
 *
 * @param out parts taken out
 * @param volts of the supply, if not the usual
 * @param also what else is not as usual, in words
 */
public record Conditions(
    List<String> out,
    Optional<BigDecimal> volts,
    Observation.Climate climate,
    boolean benchRom,
    List<String> also) {

  /** As it came: complete, on its own supply, as warm as it gets by itself. */
  public static final Conditions USUAL =
      new Conditions(List.of(), Optional.empty(), Observation.Climate.USUAL, false, List.of());

  public Conditions {
    out = List.copyOf(out);
    also = List.copyOf(also);
  }

  /** Whether parts are out and all else is as usual. */
  boolean onlyOut() {
    return !out.isEmpty() && volts.isEmpty() && climate == Observation.Climate.USUAL && !benchRom;
  }

  /** Whether the bench ROM is in and all else is as usual. */
  boolean onlyBenchRom() {
    return benchRom
        && out.isEmpty()
        && volts.isEmpty()
        && climate == Observation.Climate.USUAL
        && also.isEmpty();
  }

  /** Whether it is at most warmer or colder than usual, which is weighed too. */
  boolean complete() {
    return out.isEmpty() && volts.isEmpty() && !benchRom && also.isEmpty();
  }
}
