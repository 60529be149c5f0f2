package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.BenchRom;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class TamariskDictionaryTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final FaultUniverse UNIVERSE = FaultUniverse.of(TAMARISK);
  private static final int SAMPLE = 2;

  private static final int SWEEP_SAMPLE = 400;

  /** So many are drawn for one that is in the dictionary and is held against a fresh run. */
  private static final int DRAWN_FOR_ONE = 10;

  private static final long SAMPLE_SEED = 21;

  /** Rounds take a second each. */
  private static final int ROUNDS = 5;

  private static final long ROUND_SEED = 22;
  private static final long BOARD_SEED = DictionaryBuild.BOARD_SEEDS.get(0);
  private static final double MOST_OF_IT = 0.75;

  private static FaultDictionary shipped() {
    return ShippedDictionaries.of(TAMARISK)
        .orElseThrow(() -> new AssertionError("no dictionary of this board and firmware"));
  }

  @Test
  void shippedDictionary_hasMostOfWhatGoesWrong() {
    Suspects all = Suspects.of(UNIVERSE);
    assertTrue(all.knownTo(shipped()).weight() / all.weight() > MOST_OF_IT);
  }

  @Test
  @Timeout(value = 10, unit = TimeUnit.MINUTES)
  void sampleOfRows_runAfreshEachAlone_isAsShipped() {
    assertEquals(List.of(), differences(SAMPLE));
  }

  @Test
  @Tag("sweep")
  @Timeout(value = 3, unit = TimeUnit.HOURS)
  void largeSampleOfRows_runAfreshEachAlone_isAsShipped() {
    assertEquals(List.of(), differences(SWEEP_SAMPLE));
  }

  /** Faults of all kinds, each run with nothing shared, held against the rows that are shipped. */
  private static List<String> differences(int howMany) {
    FaultDictionary dictionary = shipped();
    RowSource rows = new DictionaryRows(TAMARISK, TamariskDictionaryTest::isNoRound);
    RowSource rounds = DictionaryRows.of(TAMARISK, dictionary);
    Row healthy = rows.row(List.of(), BOARD_SEED);
    List<String> wrong = new ArrayList<>();
    List<Fault> drawn =
        new Draw(UNIVERSE, SAMPLE_SEED)
            .overKinds(DRAWN_FOR_ONE * howMany).stream()
                .filter(f -> dictionary.knows(f.text()))
                .toList();
    for (Fault fault : drawn.subList(0, Math.min(howMany, drawn.size()))) {
      Row run = rows.row(List.of(fault), BOARD_SEED);
      boolean excited = dictionary.excited().orElseThrow().contains(fault.text());
      boolean moved = run.trail() != healthy.trail();
      // What only a round of the bench ROM moves is told by its rounds.
      if (excited && !moved) {
        long quiet = rounds.row(List.of(), BOARD_SEED).trail();
        moved = rounds.row(List.of(fault), BOARD_SEED).trail() != quiet;
      }
      if (excited != moved) {
        wrong.add(fault.text() + " is " + (excited ? "not excited now" : "excited now"));
      }
      dictionary
          .shows(dictionary.row(fault.text()))
          .forEach(
              (look, outcome) -> {
                String now = run.shows().get(look);
                int at = dictionary.look(look).orElseThrow();
                boolean same = now != null && outcome.equals(dictionary.named(at, now));
                if (isNoRound(look) && !same) {
                  wrong.add(fault.text() + ", " + look + ": " + outcome + ", now " + now);
                }
              });
    }
    return wrong;
  }

  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void sampleOfRounds_runAfreshEachAlone_areAsShipped() {
    assertEquals(List.of(), otherRounds(ROUNDS));
  }

  @Test
  @Tag("sweep")
  @Timeout(value = 1, unit = TimeUnit.HOURS)
  void largeSampleOfRounds_runAfreshEachAlone_areAsShipped() {
    assertEquals(List.of(), otherRounds(SWEEP_SAMPLE));
  }

  /** Rounds of the bench ROM, with its leads on and off, that are not those shipped. */
  private static List<String> otherRounds(int howMany) {
    FaultDictionary dictionary = shipped();
    List<String> wrong = new ArrayList<>();
    List<Fault> drawn =
        new Draw(UNIVERSE, ROUND_SEED)
            .overKinds(DRAWN_FOR_ONE * howMany).stream()
                .filter(f -> dictionary.knows(f.text()))
                .limit(howMany)
                .toList();
    for (BenchRom way : BenchRom.of(TAMARISK)) {
      int look = dictionary.look(way.look()).orElseThrow();
      RowSource rounds = new BenchRomRows(TAMARISK, way);
      for (Fault fault : drawn) {
        String now = rounds.row(List.of(fault), BOARD_SEED).shows().get(way.look());
        String shipped = dictionary.outcome(look, dictionary.row(fault.text()));
        if (!shipped.equals(dictionary.named(look, now))) {
          wrong.add(fault.text() + ", " + way.look() + ": " + shipped + ", now " + now);
        }
      }
    }
    return wrong;
  }

  private static boolean isNoRound(String look) {
    return BenchRom.named(look).isEmpty();
  }

  /** One run for the group is what each member's own run would be; the trail too. */
  @Test
  void rowsOfAGroup_runTogether_areThoseOfEachAlone() {
    assertAlikeTogether("U22.Q1: open joint");
  }

  /**
   * The cathode of a lamp: with U33's output open it is pulled up through the lamp, to 4.3 V on a
   * dial of steps of 0.2; with the lamp open it keeps what the output left there when it last was
   * low, during reset.
   */
  @Test
  @Tag("sweep")
  void rowsOfAGroup_netThatOnlyOneOfThemLetsGo_areThoseOfEachAlone() {
    Map<String, Row> rows = assertAlikeTogether("LED1: open");
    assertEquals("0.2 V", rows.get("LED1: open").shows().get("meter LED1.K"));
    assertEquals("4.2 V", rows.get("U33.4Y: open pin").shows().get("meter LED1.K"));
  }

  private static Map<String, Row> assertAlikeTogether(String member) {
    RowSource rows = new SurveyRows(TAMARISK);
    List<Fault> joint =
        UNIVERSE.groups().stream()
            .filter(g -> g.stream().anyMatch(f -> f.text().equals(member)))
            .findFirst()
            .orElseThrow();
    List<Row> together = rows.rows(joint, BOARD_SEED);
    assertTrue(joint.size() > 1);
    Map<String, Row> byFault = new HashMap<>();
    for (int i = 0; i < joint.size(); i++) {
      Row alone = rows.row(List.of(joint.get(i)), BOARD_SEED);
      assertEquals(alone, together.get(i), joint.get(i).text());
      byFault.put(joint.get(i).text(), alone);
    }
    return byFault;
  }

  /** Goes on with the journal for so many minutes and writes a dictionary of what is noted. */
  @Test
  @Tag("sweep")
  @Timeout(value = 12, unit = TimeUnit.HOURS)
  void dictionary_builtOn_isWritten() throws IOException {
    Assumptions.assumeTrue(System.getProperty("dictionary.journal") != null);
    long end =
        System.nanoTime() + TimeUnit.MINUTES.toNanos(Long.getLong("dictionary.minutes", 600));
    List<String> without = List.of(System.getProperty("dictionary.without", "").split(", *"));
    List<DictionaryBuild.Stage> stages =
        Stages.of(TAMARISK).stream().filter(s -> !without.contains(s.name())).toList();
    DictionaryBuild build =
        DictionaryBuild.of(Origin.of(TAMARISK, ShippedDictionaries.MODELS), UNIVERSE, stages)
            .first(Integer.getInteger("dictionary.groups", Integer.MAX_VALUE))
            .noting(Path.of(System.getProperty("dictionary.journal")));
    if (Boolean.getBoolean("dictionary.on")) {
      build = build.having(shipped());
    }
    build.run(2, (done, all) -> System.nanoTime() < end);
    FaultDictionary written = build.soFar();
    for (String left : without) {
      assertTrue(written.look(left).isEmpty(), left);
    }
    DictionaryFile.write(
        written,
        Path.of("src/main/resources/faultfinch/boards/tamarisk")
            .resolve(ShippedDictionaries.fileName(TAMARISK)));
  }
}
