package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.part.PartCatalog;
import faultfinch.symptom.Typing;
import java.util.List;

/** The board's own exercise on a board with a drive: the command that asks it for its files. */
final class AskForFiles implements Act {

  @Override
  public List<String> places(Patient patient) {
    boolean drive = patient.board.firstOf(PartCatalog.DRIVE).isPresent();
    boolean types = !patient.board.exercise().isEmpty() && !patient.rig.benchRom();
    return drive && types && patient.powered ? List.of("") : List.of();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    String says = Typing.says(patient.setup());
    return new Words(says, says);
  }
}
