package faultfinch.cli;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.diagnosis.BenchPrices;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.DictionaryBuild;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Origin;
import faultfinch.diagnosis.SurveyRows;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import java.util.List;

/** Three faults of Sorrel, truly run, as all that can be wrong: enough to ask about. */
final class SmallDictionary {
  static final List<String> FAULTS =
      List.of("U9.D0: open contact", "U4.Y5/: drives high", "X1: dead");

  private SmallDictionary() {}

  static Known of(Board board) {
    List<Fault> faults = FAULTS.stream().map(text -> FaultKinds.parse(text, board)).toList();
    FaultDictionary dictionary =
        new DictionaryBuild(Origin.of(board, "test"), faults, new SurveyRows(board))
            .run(1, (done, all) -> true)
            .orElseThrow();
    List<Suspect> suspects =
        Suspects.of(FaultUniverse.of(board)).all().stream()
            .filter(s -> FAULTS.contains(s.fault()))
            .toList();
    return new Known(
        board,
        dictionary,
        Diagnosis.of(dictionary, new Suspects(suspects), new BenchPrices(Prices.shipped())));
  }
}
