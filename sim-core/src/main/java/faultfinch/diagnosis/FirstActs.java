package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Fault;
import faultfinch.machine.Lockstep;
import faultfinch.machine.Machine;
import faultfinch.machine.PinDifference;
import faultfinch.machine.Setup;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks for the first moment at which a faulty board is not as the healthy one, but at the fault
 * itself. Both are looked at plainly from power-on and at marks; where a mark finds anything
 * otherwise, all since the mark before is played plainly, so that what is told is the first of it.
 *
 * <p>Not found: what differs between two marks only and leaves no trace, neither in what is stored
 * nor on the processor's bus, nor as an instruction is run for the first time.
 */
final class FirstActs {
  private static final int COLD_CYCLES = 256;

  private final Board board;
  private final Map<Pad, Net> netOf;
  private final Set<Pad> own = new LinkedHashSet<>();
  private final Set<String> ownParts = new LinkedHashSet<>();
  private Optional<Why.Act> stands = Optional.empty();
  private Optional<Why.Act> reads = Optional.empty();
  private Optional<Why.Act> misreads = Optional.empty();

  /** Where both stood last and nothing was otherwise; empty when there is no going on. */
  private Optional<Lockstep> before = Optional.empty();

  private boolean storedAlike;

  FirstActs(Setup setup) {
    board = setup.board();
    netOf = board.netOfPad();
    for (Fault fault : setup.faults()) {
      List<String> spots = Arrays.asList(fault.spot().split("-(?=[A-Z])| "));
      for (PlacedPart part : board.parts()) {
        boolean whole = spots.contains(part.ref());
        for (Pin pin : part.type().part().pinout().pins()) {
          Pad pad = new Pad(part.ref(), pin.name());
          if (whole || spots.contains(pad.text())) {
            own.add(pad);
            ownParts.add(part.ref());
          }
        }
      }
    }
    for (String ref : setup.out()) {
      board.part(ref).ifPresent(this::isOut);
    }
  }

  private void isOut(PlacedPart part) {
    ownParts.add(part.ref());
    part.type().part().pinout().pins().forEach(pin -> own.add(new Pad(part.ref(), pin.name())));
  }

  /** Both have just been switched on. */
  void begin(Machine healthy, Machine faulty) {
    if (healthy.processorHertz() == 0 || faulty.processorHertz() == 0) {
      return;
    }
    storedAlike = healthy.digest() == faulty.digest();
    Lockstep cold = new Lockstep(healthy, faulty);
    cold.playTo(COLD_CYCLES, this::look);
    if (healthy.processorHertz() == faulty.processorHertz()) {
      before = Optional.of(cold);
    }
  }

  /** Whether marks may find more. */
  boolean unfinished() {
    return before.isPresent() && (stands.isEmpty() || reads.isEmpty());
  }

  /**
   * Both stand at a mark.
   *
   * @param cycles how far to look from here
   */
  void mark(Machine healthy, Machine faulty, long cycles) {
    long cycle = faulty.cycles();
    if (cycle <= before.orElseThrow().cycle()) {
      before.get().playTo(cycle + cycles, this::look);
      return;
    }
    boolean another = storedAlike && healthy.digest() != faulty.digest();
    Lockstep now = new Lockstep(healthy, faulty);
    Optional<Why.Act> stood = stands;
    Optional<Why.Act> read = reads;
    now.playTo(cycle + cycles, this::look);
    if (another || !stood.equals(stands) || !read.equals(reads)) {
      Optional<Why.Act> late = stands;
      Optional<Why.Act> lateRead = reads;
      stands = stood;
      reads = read;
      before.get().playTo(cycle, this::look);
      stands = stands.or(() -> late);
      reads = reads.or(() -> lateRead);
      storedAlike &= !another || reads.isPresent();
    }
    before = Optional.of(now);
  }

  /** From the last mark to the end of the cycle in which the two processors part. */
  void part(long cycle) {
    before.orElseThrow().playTo(cycle + 1, this::look);
    before = Optional.empty();
  }

  private boolean look(Lockstep.Shown shown) {
    if (stands.isEmpty() || reads.isEmpty()) {
      List<PinDifference> differences = shown.differences();
      if (!differences.isEmpty()) {
        misreads = misreads.or(() -> ownAct(shown, differences));
        boolean first = stands.isEmpty() && reads.isEmpty();
        reads = reads.or(() -> act(shown, differences, true));
        // Of all that changes in one phase, what is read tells more than what only stands.
        boolean both = first && reads.filter(a -> a.source().level()).isPresent();
        stands = both ? reads : stands.or(() -> act(shown, differences, false));
      }
    }
    return stands.isEmpty() || reads.isEmpty();
  }

  /** What is first to be told of a phase: the net nearest to the fault, then in board order. */
  private Optional<Why.Act> act(Lockstep.Shown shown, List<PinDifference> all, boolean bits) {
    Map<Net, List<PinDifference>> byNet = new LinkedHashMap<>();
    for (PinDifference d : all) {
      Net net = netOf.get(d.pad());
      if (net != null && !supplies(net)) {
        byNet.computeIfAbsent(net, n -> new ArrayList<>()).add(d);
      }
    }
    byNet.values().removeIf(pins -> pins.stream().noneMatch(d -> foreign(d, bits)));
    Optional<Map.Entry<Net, List<PinDifference>>> nearest =
        byNet.entrySet().stream()
            .min((a, b) -> Integer.compare(distance(a.getKey()), distance(b.getKey())));
    return nearest.map(
        e ->
            new Why.Act(
                new Why.Moment(shown.cycle(), shown.phase(), shown.nanoseconds()),
                e.getKey().name(),
                source(e.getValue()),
                e.getValue().stream().filter(d -> !own.contains(d.pad())).toList(),
                byNet.size()));
  }

  /** A pin of the fault itself that takes another bit. */
  private Optional<Why.Act> ownAct(Lockstep.Shown shown, List<PinDifference> all) {
    return all.stream()
        .filter(d -> d.bit() && own.contains(d.pad()) && netOf.containsKey(d.pad()))
        .findFirst()
        .map(
            d ->
                new Why.Act(
                    new Why.Moment(shown.cycle(), shown.phase(), shown.nanoseconds()),
                    netOf.get(d.pad()).name(),
                    d,
                    List.of(d),
                    1));
  }

  private boolean foreign(PinDifference d, boolean bits) {
    return !own.contains(d.pad()) && (bits ? d.bit() : d.level());
  }

  private boolean supplies(Net net) {
    return net.pads().stream()
        .map(this::drawn)
        .anyMatch(p -> p.role() == Pin.Role.SUPPLY || p.role() == Pin.Role.GROUND);
  }

  private int distance(Net net) {
    int nearest = 2;
    for (Pad pad : net.pads()) {
      if (own.contains(pad) && drawn(pad).role() != Pin.Role.UNCONNECTED) {
        nearest = Math.min(nearest, drawn(pad).drives() || ownParts.size() > 1 ? 0 : 1);
      } else if (ownParts.contains(pad.ref()) && drawn(pad).drives()) {
        nearest = Math.min(nearest, 1);
      }
    }
    return nearest;
  }

  private PinDifference source(List<PinDifference> pins) {
    return pins.stream()
        .filter(d -> own.contains(d.pad()))
        .findFirst()
        .or(
            () ->
                pins.stream()
                    .filter(d -> ownParts.contains(d.pad().ref()) && drawn(d.pad()).drives())
                    .findFirst())
        .or(() -> pins.stream().filter(d -> drawn(d.pad()).drives()).findFirst())
        .orElse(pins.get(0));
  }

  private Pin drawn(Pad pad) {
    return board
        .part(pad.ref())
        .flatMap(p -> p.type().part().pinout().find(pad.pin()))
        .orElseThrow();
  }

  Optional<Why.Act> stands() {
    return stands;
  }

  Optional<Why.Act> misreads() {
    return misreads;
  }

  Optional<Why.Act> reads() {
    return reads;
  }
}
