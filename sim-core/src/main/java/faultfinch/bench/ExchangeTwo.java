package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.List;

/** Two like chips change places; what is wrong inside one goes with it. */
final class ExchangeTwo implements Act {

  @Override
  public List<String> places(Patient patient) {
    List<PlacedPart> chips =
        patient.board.parts().stream()
            .filter(p -> Looks.chip(p) && patient.isSocketed(p.ref()) && !patient.isOut(p.ref()))
            .filter(p -> patient.board.firmware().stream().noneMatch(f -> f.ref().equals(p.ref())))
            .toList();
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < chips.size(); i++) {
      for (int j = i + 1; j < chips.size(); j++) {
        if (chips.get(i).type() == chips.get(j).type()) {
          pairs.add(chips.get(i).ref() + "-" + chips.get(j).ref());
        }
      }
    }
    return List.copyOf(pairs);
  }

  @Override
  public Reading perform(Patient patient, String pair) {
    String[] refs = pair.split("-", 2);
    patient.exchange(refs[0], refs[1]);
    String says = refs[0] + " and " + refs[1] + " have changed places";
    return new Words(says, says);
  }
}
