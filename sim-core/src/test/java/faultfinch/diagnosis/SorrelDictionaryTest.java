package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class SorrelDictionaryTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final int SAMPLE = 8;
  private static final long SAMPLE_SEED = 11;

  private static FaultDictionary shipped() {
    return ShippedDictionaries.of(SORREL)
        .orElseThrow(() -> new AssertionError("no dictionary of this board and firmware"));
  }

  @Test
  void shippedDictionary_hasARowForEveryFaultOfTheBoard() {
    FaultDictionary dictionary = shipped();
    List<String> missing =
        FaultUniverse.of(SORREL).faults().stream()
            .map(Fault::text)
            .filter(text -> !dictionary.knows(text))
            .toList();
    assertEquals(List.of(), missing);
  }

  @Test
  void sampleOfRows_runAfresh_isAsShipped() {
    FaultDictionary dictionary = shipped();
    RowSource rows = DictionaryRows.of(SORREL, dictionary);
    long healthy = rows.row(List.of(), DictionaryBuild.BOARD_SEEDS.get(0)).trail();
    List<String> wrong = new ArrayList<>();
    for (Fault fault : new Draw(FaultUniverse.of(SORREL), SAMPLE_SEED).overKinds(SAMPLE)) {
      Row run = rows.row(List.of(fault), DictionaryBuild.BOARD_SEEDS.get(0));
      SortedMap<String, String> fresh = run.shows();
      boolean excited = run.trail() != healthy;
      if (dictionary.excited().map(e -> e.contains(fault.text()) != excited).orElse(false)) {
        wrong.add(fault.text() + " is " + (excited ? "excited now" : "not excited now"));
      }
      Map<String, String> stored = dictionary.shows(dictionary.row(fault.text()));
      stored.forEach(
          (look, outcome) -> {
            if (!outcome.equals(fresh.get(look))) {
              wrong.add(fault.text() + ", " + look + ": " + outcome + ", now " + fresh.get(look));
            }
          });
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  @Tag("sweep")
  @Timeout(value = 3, unit = TimeUnit.HOURS)
  void wholeDictionary_rebuilt_isAsShipped() throws IOException {
    FaultDictionary rebuilt =
        DictionaryBuild.of(
                Origin.of(SORREL, ShippedDictionaries.MODELS),
                FaultUniverse.of(SORREL),
                Stages.of(SORREL))
            .run(2, (done, all) -> true)
            .orElseThrow();
    if (Boolean.getBoolean("dictionary.write")) {
      DictionaryFile.write(
          rebuilt,
          Path.of("src/main/resources/faultfinch/boards/sorrel")
              .resolve(ShippedDictionaries.fileName(SORREL)));
    }
    assertTrue(
        Boolean.getBoolean("dictionary.write") || shipped().differences(rebuilt, 20).isEmpty(),
        () -> shipped().differences(rebuilt, 20).toString());
  }
}
