package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import faultfinch.fault.Open;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Lets faults that harm alike and are looked at alike share one run: a leg, a contact and a joint
 * that is open parts the same pin from the same pad, and a probe on the pin is behind the break in
 * all three. A break inside the package is not among them: there the leg still meets the pad.
 */
public final class SharedRows implements RowSource {
  private final RowSource source;
  private final Map<String, Row> known = new ConcurrentHashMap<>();

  public SharedRows(RowSource source) {
    this.source = source;
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    if (faults.size() == 1 && faults.get(0) instanceof Open open && open.at() != Open.Break.PIN) {
      Open alike = new Open(open.pad(), Open.Break.JOINT);
      return known.computeIfAbsent(
          alike.text() + " " + boardSeed, k -> source.row(List.of(alike), boardSeed));
    }
    return source.row(faults, boardSeed);
  }
}
