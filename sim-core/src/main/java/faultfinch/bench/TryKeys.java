package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.EveryKey;
import faultfinch.symptom.Watching;
import java.util.List;

/** Every key of the board pressed once, on a board that has just become ready. */
final class TryKeys implements Act {

  @Override
  public List<String> places(Patient patient) {
    boolean types = patient.powered && !patient.rig.benchRom();
    return types && EveryKey.offered(patient.board) ? List.of("") : List.of();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    return of(patient.setup());
  }

  /** What a board shows; of one that offers the look. */
  static Words of(Setup setup) {
    Machine machine = new Machine(setup, Watching.KIND);
    String says = new EveryKey(setup.board()).says(machine, Frames.NONE);
    return new Words(says, says);
  }
}
