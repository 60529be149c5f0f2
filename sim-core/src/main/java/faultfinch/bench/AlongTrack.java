package faultfinch.bench;

import faultfinch.bench.Reading.Amount;
import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.Supply;
import faultfinch.machine.Machine;
import faultfinch.machine.TrackMesh;
import faultfinch.symptom.Watching;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * From one pad of a net to another: millivolts while the board is on, which tell where a current
 * goes, or milliohms while it is off. Any two pads of a net can be written; offered are those next
 * to each other.
 */
record AlongTrack(boolean milliohms) implements Act {
  private static final long MILLISECOND = 1_000_000;
  private static final int CYCLES = 512;

  @Override
  public List<String> places(Patient patient) {
    return nets(patient.board).flatMap(n -> n.segments().stream()).map(s -> s.text()).toList();
  }

  @Override
  public boolean takes(Patient patient, String place) {
    return ends(patient.board, place).isPresent();
  }

  /** What is before a regulator is measured at the jack. */
  private static Stream<Net> nets(Board board) {
    List<Pad> inputs =
        board.supply().rails().stream().map(r -> new Pad(r.regulator(), "IN")).toList();
    return board.nets().stream()
        .filter(n -> !n.name().equals(board.supply().jackNet()) || isPole(board, n))
        .filter(n -> n.pads().stream().noneMatch(inputs::contains));
  }

  private static boolean isPole(Board board, Net net) {
    return board.supply().poles().stream().map(Supply.Pole::net).anyMatch(net.name()::equals);
  }

  private record Ends(Pad from, Pad to) {}

  private static Optional<Ends> ends(Board board, String place) {
    return nets(board)
        .flatMap(
            n ->
                n.pads().stream()
                    .filter(from -> place.startsWith(from.text() + "-"))
                    .flatMap(
                        from ->
                            n.pads().stream()
                                .filter(to -> place.equals(from.text() + "-" + to.text()))
                                .filter(to -> !to.equals(from))
                                .map(to -> new Ends(from, to))))
        .findFirst();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    Ends ends = ends(patient.board, place).orElseThrow();
    Machine machine = new Machine(patient.setup(), Watching.KIND);
    if (milliohms) {
      return patient.powered
          ? new Amount("jumps about and means nothing", "nothing")
          : Dial.milliohms(
              TrackMesh.of(machine, machine.power(), ends.from).ohms(ends.from, ends.to));
    }
    if (!patient.powered) {
      return Dial.microvolts(OptionalDouble.of(0), place);
    }
    machine.runTo(Watching.readyMilliseconds(patient.board) * MILLISECOND);
    TrackMesh mesh = TrackMesh.of(machine, patient.power(machine), ends.from);
    List<Integer> lengths = patient.board.phaseNanoseconds();
    double[] time = new double[1];
    machine.play(
        CYCLES,
        (phase, nanoseconds) -> {
          int length = lengths.get(phase.ordinal());
          time[0] += length;
          mesh.sample(length);
        });
    return Dial.microvolts(mesh.millivolts(ends.from, ends.to, time[0]), place);
  }
}
