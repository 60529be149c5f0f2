package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.PlacedPart;
import faultfinch.part.Element;
import java.util.List;

/**
 * The rails set some five per cent low and high by regulators of the bench, and what shows at each;
 * then the board's own regulators feed it again. One of them that is bad does not matter meanwhile.
 */
final class SupplyMargin implements Act {
  /** The lower one is just below the 4.75 V that every part must stand: a marginal one shows. */
  private static final int[] ENDS_MV = {4700, 5250};

  @Override
  public List<String> places(Patient patient) {
    return List.of("");
  }

  @Override
  public Reading perform(Patient patient, String place) {
    patient.switchOff();
    StringBuilder says = new StringBuilder();
    for (int millivolts : ENDS_MV) {
      patient.switchOn();
      says.append(says.length() == 0 ? "" : " | ")
          .append("at " + millivolts / 1000 + "." + millivolts % 1000 / 10 + " V: ")
          .append(Shown.says(patient.refitted(trimmed(patient, millivolts))));
      patient.switchOff();
    }
    patient.switchOn();
    return new Words(says.toString(), says.toString());
  }

  private static List<PlacedPart> trimmed(Patient patient, int millivolts) {
    return patient.board.parts().stream()
        .filter(p -> p.type().part() instanceof Element e && e.kind() == Element.Kind.REGULATOR)
        .map(
            p ->
                new PlacedPart(
                    p.ref(),
                    p.type(),
                    p.role(),
                    p.x(),
                    p.y(),
                    p.turn(),
                    p.socketed(),
                    millivolts + "mV",
                    p.share()))
        .toList();
  }
}
