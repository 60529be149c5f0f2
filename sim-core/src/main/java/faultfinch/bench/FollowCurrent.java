package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.machine.Machine;
import faultfinch.machine.Power;
import faultfinch.machine.Setup;
import faultfinch.symptom.Watching;
import java.util.List;

/** Follows what flows along one net, pin by pin: {@link CurrentPaths}. */
final class FollowCurrent implements Act {

  @Override
  public List<String> places(Patient patient) {
    return CurrentPaths.nets(patient.board);
  }

  @Override
  public Reading perform(Patient patient, String net) {
    if (RailPaths.nets(patient.board).contains(net)) {
      Setup setup = patient.setup();
      String rail = RailPaths.of(setup, Power.of(setup), List.of(net)).get(net);
      return new Words(rail, rail);
    }
    if (!patient.powered) {
      return new Words(CurrentPaths.NOTHING, CurrentPaths.NOTHING);
    }
    Machine machine = new Machine(patient.setup(), Watching.KIND);
    machine.runTo(CurrentPaths.begin(patient.board));
    String says = CurrentPaths.of(machine).get(net);
    return new Words(says, says);
  }
}
