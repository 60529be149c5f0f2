package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepsTest {
  @Test
  void together_stepsOfOneUnit_standUnderOneNameByFigure() {
    assertEquals(
        Optional.of("900 to 1000 mA"),
        Steps.together(List.of("950 to 1000 mA", "900 to 950 mA", "950 to 1000 mA")));
    assertEquals(Optional.of("1.2 V or 1.4 V"), Steps.together(List.of("1.4 V", "1.2 V")));
  }

  @Test
  void together_whatIsTheSameEverywhere_keepsItsName() {
    assertEquals(Optional.of("pulsing"), Steps.together(List.of("pulsing", "pulsing")));
  }

  @Test
  void together_whatDiffersInMoreThanFigures_hasNoName() {
    assertEquals(Optional.empty(), Steps.together(List.of("pulsing", "low")));
    assertEquals(Optional.empty(), Steps.together(List.of("950 to 1000 mA", "1.2 V")));
  }

  @ParameterizedTest
  @CsvSource({
    "550 to 600 mA, 600 to 650 mA, 50, true",
    "550 to 600 mA, 650 to 700 mA, 50, false",
    "550 to 650 mA, 650 to 700 mA, 50, true",
    "1.2 V, 1.4 V, 0.2, true",
    "1.2 V, 1.2 mA, 50, false",
    "pulsing, low, 50, false",
  })
  void near_figuresOfOneUnit_areNearByWhatLiesBetween(
      String a, String b, double most, boolean near) {
    assertEquals(near, Steps.near(a, b, most + 1e-9));
  }

  /** Two healthy boards on both sides of an edge; a fault on either side is no sign. */
  @Test
  void draft_healthyBoardsAcrossAnEdge_keepTheLook() {
    DictionaryDraft draft =
        new DictionaryDraft(
            new Origin("toy", "0"),
            List.of(
                new TreeMap<>(Map.of("current", "900 to 950 mA", "probe 1", "low")),
                new TreeMap<>(Map.of("current", "950 to 1000 mA", "probe 1", "high"))));
    draft.add("across", departure("950 to 1000 mA"));
    draft.add("more", departure("1000 to 1050 mA"));
    FaultDictionary dictionary = draft.done();
    assertEquals(List.of("current"), dictionary.looks());
    assertEquals(List.of("probe 1"), dictionary.dropped());
    assertEquals(FaultDictionary.HEALTHY, dictionary.row("across"));
    assertEquals(List.of("900 to 1000 mA", "1000 to 1050 mA"), dictionary.outcomes(0));
    assertTrue(dictionary.shows(0, dictionary.row("across"), "900 to 950 mA"));
    assertFalse(dictionary.shows(0, dictionary.row("more"), "900 to 950 mA"));
  }

  private static Departure departure(String current) {
    return new Departure(new TreeMap<>(Map.of("current", current)), true);
  }
}
