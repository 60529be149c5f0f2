package faultfinch.bench;

import faultfinch.machine.Finger;
import faultfinch.machine.Machine;
import faultfinch.symptom.Watching;
import java.util.List;

/** A thermometer that reads the case of a part from a distance. */
final class InfraRed implements Act {
  private static final int AIR_TENTHS = 250;
  private static final long MILLISECOND = 1_000_000;

  @Override
  public List<String> places(Patient patient) {
    return patient.looks.stream()
        .filter(l -> l.kind() == Instruments.FINGER)
        .map(Look::place)
        .filter(ref -> !patient.isOut(ref))
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    if (!patient.powered) {
      return Dial.celsius(AIR_TENTHS);
    }
    Machine machine = new Machine(patient.setup(), Watching.KIND);
    machine.runTo(Watching.readyMilliseconds(machine.board()) * MILLISECOND);
    return Dial.celsius(machine.caseTenths(ref, Finger.SETTLED_SECONDS));
  }
}
