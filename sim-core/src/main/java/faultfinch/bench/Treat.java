package faultfinch.bench;

import faultfinch.machine.Surroundings;
import faultfinch.machine.Surroundings.Air;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** One part pressed, sprayed cold or blown warm while the board runs; what shows meanwhile. */
record Treat(Way way) implements Act {

  enum Way {
    /** With no place: the whole board is flexed. */
    PRESS,
    SPRAY,
    WARM_AIR
  }

  @Override
  public List<String> places(Patient patient) {
    if (!patient.powered) {
      return List.of();
    }
    List<String> places = new ArrayList<>();
    if (way == Way.PRESS) {
      places.add("");
    }
    patient.board.parts().stream()
        .map(p -> p.ref())
        .filter(ref -> !patient.isOut(ref))
        .forEach(places::add);
    return List.copyOf(places);
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    int minutes = patient.minutesThatCount();
    return Shown.of(
        switch (way) {
          case PRESS -> patient.pressed(ref);
          case SPRAY -> patient.in(draught(minutes, Air.COOLED, ref));
          case WARM_AIR -> patient.in(draught(minutes, Air.WARMED, ref));
        });
  }

  private static Surroundings draught(int minutes, Air air, String ref) {
    return new Surroundings(minutes, air, false, Set.of(), ref);
  }
}
