package faultfinch.bench;

import java.util.List;

/** What came of one move: what it showed, what it cost, what rules it broke. */
public record Outcome(Move move, Reading reading, Price price, List<Breach> breaches) {
  public Outcome {
    breaches = List.copyOf(breaches);
  }
}
