package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.bench.Price;
import faultfinch.diagnosis.DictionaryBuild;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Origin;
import faultfinch.diagnosis.Row;
import faultfinch.fault.FaultKinds;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Dark screens, of which U2 is three times as often the cause as U3; each look takes 2 minutes. */
class UnlistedTest {
  private static final String RAIL = "meter " + Small.BOARD.supply().regulator() + ".OUT";
  private static final Price RETEST = new Price(10, 0, 0, 10);

  /** What U3 does to its rail, and how it feels then. */
  private static FaultDictionary dictionary(String rail, String finger) {
    Map<String, Map<String, String>> rows =
        Map.of(
            "",
            shows("ready", "5 V", "normal"),
            Small.U2,
            shows("dark", "5 V", "normal"),
            Small.U3,
            shows("dark", rail, finger),
            Small.U9,
            shows("blank", "5 V", "normal"),
            Small.U1,
            shows("ready", "5 V", "normal"));
    return new DictionaryBuild(
            Origin.of(Small.BOARD, "test"),
            List.of(Small.U1, Small.U2, Small.U3, Small.U9).stream()
                .map(f -> FaultKinds.parse(f, Small.BOARD))
                .toList(),
            (wrong, seed) ->
                new Row(new TreeMap<>(rows.get(wrong.isEmpty() ? "" : wrong.get(0).text())), 0))
        .run(1, (done, all) -> true)
        .orElseThrow();
  }

  private static Map<String, String> shows(String screen, String rail, String finger) {
    return Map.of("screen", screen, RAIL, rail, "finger U2", "normal", "finger U3", finger);
  }

  private static Bill bill(FaultDictionary dictionary) {
    Population population =
        new Population(
            dictionary, Small.suspects(), new Signs(Small.BOARD, dictionary), s -> "dead");
    Job job =
        population.draw(60, 5).stream()
            .filter(j -> j.truth().suspect().fault().equals(Small.U3))
            .findFirst()
            .orElseThrow();
    SymptomFirst symptom =
        new SymptomFirst(population.byComplaint(), population.truths(), Small.prices());
    Practice unlisted = new Unlisted(new Wires(Small.BOARD, dictionary), symptom);
    return Ways.follow(List.of(job), unlisted, new TrueReadings(dictionary), Small.prices(), RETEST)
        .get(job);
  }

  /** The rail, two fingers, the hot chip. */
  @Test
  void go_whereARailIsLowAndAChipHot_exchangesThatChip() {
    Bill bill = bill(dictionary("1.8 V", "hot"));
    assertEquals(3, bill.looks());
    assertEquals(0, bill.innocent());
    assertEquals(3 * 2 + 27 + 10, bill.price().total());
  }

  /** Nobody feels chips whose rail is right: U2 comes first, for it is the likelier. */
  @Test
  void go_whereTheRailIsRight_goesByTheSymptom() {
    Bill bill = bill(dictionary("5 V", "hot"));
    assertEquals(1, bill.looks());
    assertEquals(1, bill.innocent());
    assertEquals(2 + 27 + 27 + 10, bill.price().total());
  }
}
