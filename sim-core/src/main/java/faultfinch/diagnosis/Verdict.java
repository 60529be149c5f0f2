package faultfinch.diagnosis;

import faultfinch.bench.Price;
import java.util.List;
import java.util.Optional;

/**
 * What the observations say of one hypothesis.
 *
 * @param hypothesis a fault, or several in words
 * @param fit likelihood of all observations under it over that of the likeliest reading of each, 0
 *     to 1
 * @param mismatches observations that are not what it predicts
 * @param contradicting a smallest set of them: without the set it is not contradicted, with any one
 *     of it put back it is; empty if it is not contradicted
 * @param notWeighed observations of looks that the dictionary does not know
 * @param alike other faults that no look can tell from it
 * @param deciding the look that tells it best from the rest for its price, if any does
 */
public record Verdict(
    String hypothesis,
    Finding finding,
    double fit,
    List<Mismatch> mismatches,
    List<Mismatch> contradicting,
    List<Observation> notWeighed,
    List<String> alike,
    Optional<Deciding> deciding) {

  public Verdict {
    mismatches = List.copyOf(mismatches);
    contradicting = List.copyOf(contradicting);
    notWeighed = List.copyOf(notWeighed);
    alike = List.copyOf(alike);
  }

  /** What a hypothesis can be found to be. */
  public enum Finding {
    PREDICTED,
    CANNOT_RULE_OUT,
    CONTRADICTED
  }

  /**
   * An observation that is not what the hypothesis predicts.
   *
   * @param expected what the look would show
   */
  public record Mismatch(Observation seen, String expected) {}

  /**
   * A look that tells a hypothesis from the rest.
   *
   * @param bits 1 if each outcome is either its or theirs, 0 if it tells nothing
   * @param ifSo what it shows if the hypothesis is right
   * @param ifNot the likeliest outcome if it is not
   */
  public record Deciding(String look, Price price, double bits, String ifSo, String ifNot) {}
}
