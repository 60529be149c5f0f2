package faultfinch.bench;

import faultfinch.fault.Fault;
import faultfinch.fault.Sight;
import java.util.ArrayList;
import java.util.List;

/** One look over everything a hand has had out: in its place, right way round, straight, joined. */
final class RefitCheck implements Act {

  @Override
  public List<String> places(Patient patient) {
    return List.of("");
  }

  @Override
  public Reading perform(Patient patient, String place) {
    List<String> wrong = new ArrayList<>(patient.notBack());
    for (Fault f : patient.faults()) {
      boolean handled =
          switch (f.seat()) {
            case SEATING, BENT_LEG, SOCKET_OF_ANOTHER -> true;
            case INSIDE, LEG, CONTACT, JOINT, TRACK, BETWEEN_PADS, DIRT, SETTING, SUPPLY -> false;
          };
      if (handled) {
        Sight.of(f.base(), patient.board)
            .filter(s -> Inspect.leaves(patient, f, s))
            .ifPresent(s -> wrong.add(s.sign() + " at " + f.spot()));
      }
    }
    return new Reading.Check(wrong.isEmpty(), wrong);
  }
}
