package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Fault;
import faultfinch.fault.Sight;
import faultfinch.machine.Chance;
import faultfinch.machine.Surroundings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looking the board over by eye: the whole of it, or one part and what is around it. */
final class Inspect implements Act {
  private static final int PER_CENT = 100;
  private static final int HARMLESS = 2;
  private static final List<String> HARMLESS_MARKS =
      List.of("old flux", "a mended track", "a pencilled date", "a faded sticker");

  @Override
  public List<String> places(Patient patient) {
    List<String> places = new ArrayList<>(List.of(""));
    patient.board.parts().forEach(p -> places.add(p.ref()));
    return List.copyOf(places);
  }

  @Override
  public Reading perform(Patient patient, String place) {
    List<String> marks = new ArrayList<>();
    for (Fault f : patient.faults()) {
      Optional<Sight> sight = Sight.of(f.base(), patient.board).filter(s -> leaves(patient, f, s));
      if (sight.isPresent() && (place.isEmpty() || Surroundings.isAt(f, place))) {
        marks.add(sight.get().sign() + " at " + f.spot());
      }
    }
    marks.addAll(harmless(patient, place));
    for (String ref : patient.out()) {
      if (place.isEmpty() || place.equals(ref)) {
        marks.add("an empty socket at " + ref);
      }
    }
    marks.sort(String::compareTo);
    String says = marks.isEmpty() ? "nothing strikes the eye" : String.join("; ", marks);
    return new Words(says, says);
  }

  static boolean leaves(Patient patient, Fault fault, Sight sight) {
    return Chance.below(
            PER_CENT, patient.job.seed(), Chance.of("seen"), Chance.of(fault.base().text()))
        < sight.percent();
  }

  private static List<String> harmless(Patient patient, String place) {
    List<PlacedPart> parts = patient.board.parts();
    List<String> marks = new ArrayList<>();
    for (int i = 0; i < HARMLESS; i++) {
      long seed = patient.job.seed();
      String at = parts.get(Chance.below(parts.size(), seed, Chance.of("mark at"), i)).ref();
      String mark =
          HARMLESS_MARKS.get(Chance.below(HARMLESS_MARKS.size(), seed, Chance.of("mark"), i));
      if (place.isEmpty() || place.equals(at)) {
        marks.add(mark + " at " + at);
      }
    }
    return marks;
  }
}
