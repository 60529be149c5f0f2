package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Board;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.HandsOn;
import faultfinch.symptom.Watching;
import java.util.List;
import java.util.Optional;

/** Something of a board worked by hand: every key, its joysticks, its tape; from a start on. */
record TryOut(String name) implements Act {

  @Override
  public List<String> places(Patient patient) {
    boolean types = patient.powered && !patient.rig.benchRom();
    return types && on(patient.board).isPresent() ? List.of("") : List.of();
  }

  private Optional<HandsOn> on(Board board) {
    return HandsOn.of(board).stream().filter(h -> h.name().equals(name)).findFirst();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    return of(patient.setup(), on(patient.board).orElseThrow());
  }

  /** What a board shows; of one that offers the look. */
  static Words of(Setup setup, HandsOn tried) {
    Machine machine = new Machine(setup, Watching.KIND);
    String says = tried.says(machine, Frames.NONE);
    return new Words(says, says);
  }
}
