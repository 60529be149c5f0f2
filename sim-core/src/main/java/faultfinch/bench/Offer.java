package faultfinch.bench;

import java.util.List;

/** A move that can be made now, its price, and the rules it would break now. */
public record Offer(Move move, Price price, List<Breach> breaches) {
  public Offer {
    breaches = List.copyOf(breaches);
  }
}
