package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import java.util.List;
import java.util.Set;

/**
 * A sound chip of the same type pressed onto a fitted one, leg on leg, or taken off again. A memory
 * that is programmed gets one with the same contents.
 */
record Piggyback(boolean on) implements Act {
  /** Those whose legs stand free of a wide body, and of which a bench has a drawer full. */
  private static final Set<String> SHARES = Set.of("LS", "DRAM", "EPROM", "SRAM");

  @Override
  public List<String> places(Patient patient) {
    return patient.board.parts().stream()
        .filter(p -> SHARES.contains(p.share()) && Looks.chip(p) && !patient.isOut(p.ref()))
        .map(p -> p.ref())
        .filter(ref -> patient.rig.doubled(ref) != on)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    patient.rig.doubled(ref, on);
    patient.changed();
    String says = on ? "a like chip stands on " + ref : "nothing stands on " + ref;
    return new Words(says, says);
  }
}
