package faultfinch.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.DictionaryBuild;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Origin;
import faultfinch.diagnosis.SurveyRows;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.format.Case;
import faultfinch.library.Library;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each shipped case against the planner. The dictionary of a whole board takes many minutes; here
 * it is one of the faults of all cases and every eightieth other one, computed on the spot.
 */
class EveryCaseSolvedTest {
  private static final int EVERY = 80;

  private static Adviser adviser;

  static List<Integer> numbers() {
    return Library.labels().stream().map(Case.Label::number).toList();
  }

  @BeforeAll
  static void dictionary() {
    Board board = BoardReader.shipped("sorrel");
    FaultUniverse universe = FaultUniverse.of(board);
    Set<Fault> faults = new LinkedHashSet<>();
    for (int i = 0; i < universe.representatives().size(); i += EVERY) {
      faults.add(universe.representatives().get(i));
    }
    numbers().forEach(n -> faults.addAll(Library.numbered(n).orElseThrow().faults()));
    List<String> texts = faults.stream().map(Fault::text).toList();
    FaultDictionary dictionary =
        new DictionaryBuild(Origin.of(board, "part"), List.copyOf(faults), new SurveyRows(board))
            .run(2, (done, all) -> true)
            .orElseThrow();
    Suspects suspects =
        new Suspects(
            Suspects.of(universe).all().stream().filter(s -> texts.contains(s.fault())).toList());
    adviser = new DictionaryAdviser(dictionary, suspects, Prices.shipped());
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void case_byThePlannersRoute_isCuredWithinItsBudget(int number) {
    Case job = Library.numbered(number).orElseThrow();
    Debrief.Best best = adviser.best(job);
    assertEquals(Optional.empty(), best.why(), best.route().toString());
    assertTrue(best.price().minutes() <= job.minutes(), best.price() + " " + best.route());
    assertTrue(best.price().total() > 0);
  }

  /** RNRRDL fits this display and not a board that shows its right name. */
  @Test
  void field_afterALook_isSmallerAndKeepsTheFault() {
    Facts seen = Facts.NONE.and("screen", "reads 'RNRRDL'");
    int all = adviser.field(Facts.NONE).orElseThrow();
    int left = adviser.field(seen).orElseThrow();
    assertTrue(left < all && left > 0, left + " of " + all);
    assertEquals("U9", adviser.suspects(seen).get(0).place());
    assertEquals(OptionalInt.of(0), adviser.field(seen.and("lamp", "lit")));
  }
}
