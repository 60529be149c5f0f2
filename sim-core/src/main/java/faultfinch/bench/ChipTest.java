package faultfinch.bench;

import faultfinch.board.Firmware;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Surroundings;
import faultfinch.machine.Surroundings.Air;
import faultfinch.machine.TestSocket;
import faultfinch.machine.TestSocket.Bed;
import faultfinch.machine.TestSocket.Chip;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A pulled chip in a chip tester: one pass at room temperature, or round and round: at low volts,
 * warm, shaken and over several power-ons.
 *
 * <p>Not modelled: the tester's own speed, so that a chip that is only slow passes.
 */
record ChipTest(boolean looping) implements Act {
  private static final int RAIL_MV = 5000;
  private static final int LOW_MV = 4700;
  private static final int LOOPING_MINUTES = 15;

  /** Between writing and reading; a dynamic memory must keep 4 ms. */
  private static final int PAUSE_MS = 4;

  private static final int LONG_PAUSE_MS = 100;
  private static final Surroundings COLD = new Surroundings(0, Air.ROOM, false);
  private static final Surroundings WARM = new Surroundings(LOOPING_MINUTES, Air.WARMED, false);
  private static final Surroundings SHAKEN = new Surroundings(LOOPING_MINUTES, Air.WARMED, true);

  @Override
  public List<String> places(Patient patient) {
    return patient.board.parts().stream()
        .filter(p -> patient.liesAside(p.ref()) && TesterProgram.of(p.type()).isPresent())
        .map(PlacedPart::ref)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    Chip chip = pulled(patient, ref);
    TesterProgram program = TesterProgram.of(chip.type()).orElseThrow();
    Set<String> wrong = new LinkedHashSet<>();
    for (Bed bed : beds(patient.job.seed())) {
      wrong.addAll(
          program.differences(
              new TestSocket(chip, bed),
              () -> new TestSocket(chip.sound(), bed),
              looping ? LONG_PAUSE_MS : PAUSE_MS));
    }
    return new Reading.Check(wrong.isEmpty(), new ArrayList<>(wrong));
  }

  private List<Bed> beds(long seed) {
    Bed cold = new Bed(RAIL_MV, COLD, seed, 0);
    return looping
        ? List.of(
            cold,
            new Bed(LOW_MV, COLD, seed, 1),
            new Bed(RAIL_MV, WARM, seed, 2),
            new Bed(RAIL_MV, SHAKEN, seed, 3))
        : List.of(cold);
  }

  /** The chip that lies beside its place, with what is wrong inside it. */
  static Chip pulled(Patient patient, String ref) {
    List<String> inside =
        patient.insideOfPulled(ref).stream()
            .map(f -> TestSocket.CHIP + f.text().substring(ref.length()))
            .toList();
    byte[] contents =
        patient.board.firmware().stream()
            .filter(f -> f.ref().equals(ref))
            .map(Firmware::image)
            .findFirst()
            .orElse(new byte[0]);
    return new Chip(patient.board.part(ref).orElseThrow().type(), inside, contents);
  }
}
