package faultfinch.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds two faults of a list that cannot stand together, so that no run starts from nonsense. */
public final class Contradictions {
  private Contradictions() {}

  /**
   * The first two that contradict each other.
   *
   * @param says one line that names both and the reason
   */
  public record Pair(Fault one, Fault other, String says) {}

  /** The first two of the list that cannot stand together, if there are any. */
  public static Optional<Pair> in(List<Fault> faults) {
    List<Fault> before = new ArrayList<>();
    for (Fault fault : faults) {
      for (Fault other : before) {
        Optional<String> reason = reason(other, fault).or(() -> silenced(other, fault));
        if (reason.isPresent()) {
          String both = "'" + other.text() + "' and '" + fault.text() + "'";
          return Optional.of(new Pair(other, fault, both + " cannot both be: " + reason.get()));
        }
      }
      before.add(fault);
    }
    return Optional.empty();
  }

  private static Optional<String> reason(Fault one, Fault other) {
    if (one.base().equals(other.base())) {
      return Optional.of("it is the same fault twice");
    }
    return one.decides()
        .filter(d -> other.decides().equals(Optional.of(d)))
        .map(d -> "each says " + d);
  }

  private static Optional<String> silenced(Fault one, Fault other) {
    return silences(one.base(), other.base())
        .or(() -> silences(other.base(), one.base()))
        .map(ref -> ref + " does nothing at all, so nothing inside it can show");
  }

  /** A part that is dead, reversed or elsewhere hides what is wrong inside it, loads apart. */
  private static Optional<String> silences(Fault one, Fault other) {
    boolean hidden = other.seat() == Seat.INSIDE && !(other instanceof Clamp);
    if (!hidden || one.equals(other)) {
      return Optional.empty();
    }
    if (one instanceof Misplaced m) {
      boolean inside = other.place().equals(m.ref()) || other.place().equals(m.other());
      return inside ? Optional.of(other.place()) : Optional.empty();
    }
    boolean dumb = one instanceof Dead || one instanceof Reversed;
    return dumb && one.place().equals(other.place()) ? Optional.of(one.place()) : Optional.empty();
  }
}
