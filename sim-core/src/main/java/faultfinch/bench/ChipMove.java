package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.PlacedPart;
import java.util.List;

/** A socketed chip leaves its place or comes to it. */
record ChipMove(Way way) implements Act {

  enum Way {
    TAKE_OUT,
    PUT_BACK,
    FIT_NEW,
    EXCHANGE
  }

  @Override
  public List<String> places(Patient patient) {
    return patient.board.parts().stream()
        .map(PlacedPart::ref)
        .filter(ref -> patient.isSocketed(ref) && !patient.rig.doubled(ref))
        .filter(
            ref ->
                switch (way) {
                  case TAKE_OUT, EXCHANGE -> !patient.isOut(ref);
                  case FIT_NEW -> patient.isOut(ref);
                  case PUT_BACK -> patient.isOut(ref) && patient.liesAside(ref);
                })
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    switch (way) {
      case TAKE_OUT -> {
        patient.takeOut(ref);
        patient.changed();
      }
      case PUT_BACK -> patient.putBack(ref);
      case FIT_NEW -> patient.fitNew(ref);
      case EXCHANGE -> {
        patient.takeOut(ref);
        patient.fitNew(ref);
      }
    }
    String says =
        switch (way) {
          case TAKE_OUT -> ref + " lies beside the board";
          case PUT_BACK -> "the old " + ref + " is back in its socket";
          case FIT_NEW, EXCHANGE -> "a new " + ref + " is in the socket";
        };
    return new Words(says, says);
  }
}
