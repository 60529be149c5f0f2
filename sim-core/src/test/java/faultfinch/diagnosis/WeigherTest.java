package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.diagnosis.Verdict.Finding;
import faultfinch.diagnosis.Verdict.Mismatch;
import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WeigherTest {
  private static final Observation DARK = Observation.bench("screen", "dark");
  private static final Observation LOW = Observation.bench("probe 1", "low");
  private static final Observation HIGH = Observation.bench("probe 2", "high");

  /** All three are dark; b is low at 1, c is low at 1 and high at 2. */
  private static Toy three() {
    return new Toy()
        .look("probe 1", 2)
        .look("probe 2", 3)
        .look("screen", 1)
        .fault("a", "U1", 1, "screen", "dark")
        .fault("b", "U2", 1, "screen", "dark", "probe 1", "low")
        .fault("c", "U3", 1, "screen", "dark", "probe 1", "low", "probe 2", "high");
  }

  @Test
  void weigh_allAsExpected_isPredictedWithFitOne() {
    Verdict verdict = three().diagnosis().weigh("b", Evidence.of(DARK, LOW));
    assertEquals(Finding.PREDICTED, verdict.finding());
    assertEquals(1, verdict.fit(), 1e-12);
    assertEquals(List.of(), verdict.mismatches());
  }

  @Test
  void weigh_oneProbeOnTheBenchAgainstIt_isContradictedByThatProbe() {
    Verdict verdict = three().diagnosis().weigh("a", Evidence.of(DARK, LOW));
    assertEquals(Finding.CONTRADICTED, verdict.finding());
    assertEquals(List.of(new Mismatch(LOW, "normal")), verdict.contradicting());
    // 0.01 of errors, 0.2 of them not confusions, one other outcome; over 0.99.
    assertEquals(0.01 * 0.2 / 0.99, verdict.fit(), 1e-12);
  }

  @Test
  void weigh_oneToldEntryAgainstIt_cannotRuleOut() {
    Evidence told = Evidence.of(DARK, Observation.told("probe 1", "low"));
    Verdict verdict = three().diagnosis().weigh("a", told);
    assertEquals(Finding.CANNOT_RULE_OUT, verdict.finding());
    assertEquals(0.1, verdict.fit(), 1e-12);
    assertEquals(1, verdict.mismatches().size());
    assertEquals(List.of(), verdict.contradicting());
  }

  @Test
  void weigh_twoToldEntriesAgainstIt_needsOnlyOneOfThemGone() {
    Observation low = Observation.told("probe 1", "low");
    Observation high = Observation.told("probe 2", "high");
    // 1:100 together, below 1:20, and c explains both; 1:10 with either gone. The first is named.
    Verdict verdict = three().diagnosis().weigh("a", Evidence.of(low, high));
    assertEquals(Finding.CONTRADICTED, verdict.finding());
    assertEquals(List.of(new Mismatch(low, "normal")), verdict.contradicting());
    assertEquals(2, verdict.mismatches().size());
  }

  @Test
  void weigh_twoProbesAgainstIt_needsBothGone() {
    Verdict verdict = three().diagnosis().weigh("a", Evidence.of(LOW, HIGH));
    assertEquals(
        List.of(new Mismatch(LOW, "normal"), new Mismatch(HIGH, "normal")),
        verdict.contradicting());
  }

  @Test
  void weigh_nothingElseExplainsItBetter_isNotContradicted() {
    // Mid at probe 2 is what no fault shows; each has the same 0.01 x 0.2, or outside explains it.
    Toy toy = new Toy().look("probe 2", 1).fault("a", "U1", 1).fault("b", "U2", 1);
    Verdict verdict = toy.diagnosis().weigh("a", Evidence.of(Observation.bench("probe 2", "mid")));
    // Outside: half a row in two rows, so 0.25 / 1.25 (one row for the two faults, one healthy):
    // more than 20 times likelier than 0.01 x 0.2, so outside contradicts it after all.
    assertEquals(Finding.CONTRADICTED, verdict.finding());
  }

  @Test
  void weigh_manyProbesAgainstIt_namesASetOfWhichEachIsNeeded() {
    Toy toy = new Toy();
    String[] shows = new String[32];
    Evidence evidence = Evidence.NONE;
    for (int i = 0; i < 16; i++) {
      toy.look("probe " + (10 + i), 1);
      shows[2 * i] = "probe " + (10 + i);
      shows[2 * i + 1] = "low";
      evidence = evidence.and(Observation.told("probe " + (10 + i), "low"));
    }
    toy.fault("a", "U1", 1).fault("b", "U2", 1, shows);
    // Each told entry counts 1:10; one may stay, fifteen must go.
    assertEquals(15, toy.diagnosis().weigh("a", evidence).contradicting().size());
  }

  @Test
  void weigh_boardWithTwoFaults_isWeighedByWhatItShows() {
    Map<String, String> both = Map.of("probe 1", "low", "probe 2", "normal", "screen", "normal");
    Verdict verdict =
        three().diagnosis().weigh("two", List.of(both), action -> false, Evidence.of(LOW), 20);
    assertEquals(Finding.PREDICTED, verdict.finding());
  }

  @Test
  void deciding_cheapLookThatPartsItFromAll_isNamedWithBothOutcomes() {
    Verdict.Deciding deciding =
        three().diagnosis().weigh("c", Evidence.of(DARK)).deciding().orElseThrow();
    // probe 2 is high for c alone: 1 bit for 3 min. probe 1 is low for half of the rest too:
    // 1 - 0.75 H(2/3) = 0.31 bit for 2 min.
    assertEquals("probe 2", deciding.look());
    assertEquals("high", deciding.ifSo());
    assertEquals("normal", deciding.ifNot());
    assertEquals(1, deciding.bits(), 1e-9);
  }

  @Test
  void deciding_lookAlreadyMade_isNotNamedAgain() {
    Verdict verdict = three().diagnosis().weigh("c", Evidence.of(HIGH));
    assertTrue(verdict.deciding().filter(d -> d.look().equals("probe 2")).isEmpty());
  }

  @Test
  void alike_faultsOfOneRow_areNamed() {
    Toy toy = new Toy().look("screen", 1).fault("a", "U1", 1).fault("b", "U2", 1);
    assertEquals(List.of("b"), toy.diagnosis().weigh("a", Evidence.NONE).alike());
  }

  /** A new part is bad one time in a hundred, less than the one in twenty that contradicts. */
  @Test
  void weigh_repairInVainThatWouldHaveCuredIt_isContradictedByIt() {
    RepairAction exchange = Toy.exchange("U1");
    Evidence evidence = new Evidence(List.of(DARK), List.of(exchange));
    Verdict a = three().diagnosis().weigh("a", evidence);
    assertEquals(Finding.CONTRADICTED, a.finding());
    assertEquals(0.01, a.fit(), 1e-12);
    assertEquals(
        List.of(new Mismatch(Observation.bench(exchange.text(), "not cured"), "cured")),
        a.contradicting());
    assertEquals(Finding.PREDICTED, three().diagnosis().weigh("b", evidence).finding());
  }

  /** Who says that all three are low and is wrong of two of them has erred once, not twice. */
  @Test
  void weigh_oneEntryInWords_countsNoMoreThanOneInTenThousand() {
    Toy toy =
        new Toy()
            .look("probe 1", 2)
            .look("probe 2", 2)
            .look("probe 3", 2)
            .fault("a", "U1", 1, "probe 1", "low")
            .fault("b", "U2", 1, "probe 1", "low", "probe 2", "low", "probe 3", "low");
    Evidence words = Evidence.of(allLow(Observation.Source.WORDS));
    assertEquals(1e-4, toy.diagnosis().weigh("a", words).fit(), 1e-12);
    assertEquals(1, toy.diagnosis().weigh("b", words).fit(), 1e-12);
    Evidence outcomes = Evidence.of(allLow(Observation.Source.BENCH));
    // Twice one of a hundred goes astray, a fifth of that to what is no confusion; 0.99 is due.
    double missed = 0.002 * 0.002 / 0.99;
    assertEquals(missed, toy.diagnosis().weigh("a", outcomes).fit(), 1e-12);
  }

  private static Observation allLow(Observation.Source source) {
    List<Sight> low =
        List.of("probe 1", "probe 2", "probe 3").stream()
            .map(look -> new Sight(List.of(look), List.of("low")))
            .toList();
    return new Observation(
        "probes",
        "all low",
        source,
        Observation.Doubt.SURE,
        new Observation.Reach(low, true, Tally.ONCE),
        0);
  }
}
