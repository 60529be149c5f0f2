package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Board;
import faultfinch.board.KeyPress;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Setup;
import faultfinch.part.PartCatalog;
import faultfinch.symptom.Typing;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Keys pressed one after the other, {@code K1 K2}, on a board that has just become ready. */
final class TypeKeys implements Act {
  private static final int MOST = 40;
  private static final int EACH_MS = 120;
  private static final int HELD_MS = 80;

  @Override
  public List<String> places(Patient patient) {
    return patient.powered && !patient.rig.benchRom() ? keys(patient.board) : List.of();
  }

  private static List<String> keys(Board board) {
    return board.parts().stream()
        .filter(p -> p.type() == PartCatalog.KEY)
        .map(PlacedPart::ref)
        .toList();
  }

  @Override
  public boolean takes(Patient patient, String place) {
    List<String> typed = Arrays.asList(place.split(" "));
    return typed.size() <= MOST && places(patient).containsAll(typed);
  }

  @Override
  public Reading perform(Patient patient, String place) {
    Setup now = patient.setup();
    int at = Watching.readyMilliseconds(now.board());
    List<KeyPress> presses = new ArrayList<>();
    for (String key : place.split(" ")) {
      presses.add(new KeyPress(key, at, HELD_MS));
      at += EACH_MS;
    }
    Setup typed =
        new Setup(
            now.board().exercised(presses),
            now.faults(),
            now.out(),
            now.seed(),
            now.powerOn(),
            now.surroundings());
    String says = Typing.says(typed);
    return new Words(says, says);
  }
}
