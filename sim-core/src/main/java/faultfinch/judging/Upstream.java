package faultfinch.judging;

import faultfinch.board.Net;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Probes rails, clocks, resets and selects until one is wrong, and goes upstream from there as long
 * as something that goes into it is wrong too. What was looked at before is not looked at again.
 */
final class Upstream {
  private final Wires wires;
  private final Visit visit;
  private final Set<Net> probed = new LinkedHashSet<>();

  Upstream(Wires wires, Visit visit) {
    this.wires = wires;
    this.visit = visit;
  }

  /** The rails that are wrong; all of them are looked at. */
  Set<Net> rails() {
    return wires.rails().stream()
        .filter(this::wrong)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The last net that was wrong on the way; empty if none of the first is. */
  Optional<Net> source() {
    Optional<Net> source = Optional.empty();
    Optional<Net> next = wires.vital().stream().filter(this::wrong).findFirst();
    while (next.isPresent()) {
      source = next;
      next = wires.before(source.get()).stream().filter(this::wrong).findFirst();
    }
    return source;
  }

  /** Probes a net nobody has probed yet. */
  private boolean wrong(Net net) {
    Optional<String> look = wires.look(net);
    return look.isPresent() && probed.add(net) && wires.wrong(look.get(), shown(look.get()));
  }

  private String shown(String look) {
    return visit.seen().containsKey(look) ? visit.seen().get(look) : visit.look(look);
  }
}
