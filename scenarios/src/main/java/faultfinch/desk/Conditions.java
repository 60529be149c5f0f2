package faultfinch.desk;

import faultfinch.bench.BenchRom;
import faultfinch.diagnosis.Observation;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How the board stood when something was seen.
 *
 * @param out parts taken out
 * @param volts of the supply, if not the usual
 * @param rom how the bench ROM was in, if it was
 * @param also what else is not as usual, in words
 */
public record Conditions(
    List<String> out,
    Optional<BigDecimal> volts,
    Observation.Climate climate,
    Optional<BenchRom> rom,
    List<String> also) {

  /** As it came: complete, on its own supply, as warm as it gets by itself. */
  public static final Conditions USUAL =
      new Conditions(
          List.of(), Optional.empty(), Observation.Climate.USUAL, Optional.empty(), List.of());

  public Conditions {
    out = List.copyOf(out);
    also = List.copyOf(also);
  }

  Conditions without(List<String> parts) {
    return new Conditions(parts, volts, climate, rom, also);
  }

  Conditions at(BigDecimal supply) {
    return new Conditions(out, Optional.of(supply), climate, rom, also);
  }

  Conditions in(Observation.Climate warmth) {
    return new Conditions(out, volts, warmth, rom, also);
  }

  Conditions with(BenchRom plugged) {
    return new Conditions(out, volts, climate, Optional.of(plugged), also);
  }

  Conditions besides(String words) {
    return new Conditions(out, volts, climate, rom, List.of(words));
  }

  boolean benchRom() {
    return rom.isPresent();
  }

  /** Whether the bench ROM is in with the return leads on, and all else is as usual. */
  boolean onlyLeads() {
    return onlyBenchRom() && rom.get() == BenchRom.WITH_LEADS;
  }

  /** Whether parts are out and all else is as usual. */
  boolean onlyOut() {
    return !out.isEmpty()
        && volts.isEmpty()
        && climate == Observation.Climate.USUAL
        && rom.isEmpty();
  }

  /** Whether the bench ROM is in and all else is as usual. */
  boolean onlyBenchRom() {
    return rom.isPresent()
        && out.isEmpty()
        && volts.isEmpty()
        && climate == Observation.Climate.USUAL
        && also.isEmpty();
  }

  /** Whether it is at most warmer or colder than usual, which is weighed too. */
  boolean complete() {
    return out.isEmpty() && volts.isEmpty() && rom.isEmpty() && also.isEmpty();
  }
}
