package faultfinch.bench;

import faultfinch.machine.Feed;
import faultfinch.machine.Machine;
import faultfinch.machine.Power;
import faultfinch.part.Element;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.List;

/** Whether the supply's lead passes, and which switches are closed with nobody at them. */
final class CheckLeads implements Act {

  @Override
  public List<String> places(Patient patient) {
    return List.of("");
  }

  @Override
  public Reading perform(Patient patient, String place) {
    List<String> wrong = new ArrayList<>();
    if (Power.brick(patient.asItCame()) instanceof Feed.Nothing) {
      wrong.add("the supply's lead passes nothing");
    }
    Machine machine = new Machine(patient.setup(), Watching.KIND);
    patient.board.parts().stream()
        .filter(p -> p.type().part() instanceof Element e && e.kind() == Element.Kind.SWITCH)
        .filter(p -> machine.closed(p.ref()))
        .forEach(p -> wrong.add(p.ref() + ", " + p.role() + ", is closed"));
    return new Reading.Check(wrong.isEmpty(), wrong);
  }
}
