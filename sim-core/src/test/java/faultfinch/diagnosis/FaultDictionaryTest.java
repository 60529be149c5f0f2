package faultfinch.diagnosis;

import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.signal.BadInput;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultDictionaryTest {
  private static final Origin ORIGIN = new Origin("sorrel", "1234");
  private static final List<Fault> FAULTS =
      FaultUniverse.of(BoardReader.shipped("sorrel")).faults().subList(0, 40);

  /** Two looks part the faults by the length of their text, one by the first letters. */
  private static Row row(List<Fault> faults, long seed) {
    return new Row(shows(faults, seed), faults.isEmpty() ? 0 : faults.get(0).text().length() % 2);
  }

  private static SortedMap<String, String> shows(List<Fault> faults, long seed) {
    String text = faults.isEmpty() ? "" : faults.get(0).text();
    SortedMap<String, String> row = new TreeMap<>();
    row.put("listen", "noise " + seed);
    row.put("meter U1.VCC", text.length() % 3 + " V");
    row.put("probe U1.D0 at the pin", "level " + text.length() % 3);
    row.put("screen", text.isEmpty() ? "READY" : text.substring(0, 2));
    return row;
  }

  private static FaultDictionary built(int threads) {
    return new DictionaryBuild(ORIGIN, FAULTS, FaultDictionaryTest::row)
        .run(threads, (done, all) -> true)
        .orElseThrow();
  }

  @Test
  void build_anyNumberOfThreads_givesTheSameBytes() {
    assertArrayEquals(DictionaryFile.bytes(built(1)), DictionaryFile.bytes(built(2)));
    assertArrayEquals(DictionaryFile.bytes(built(1)), DictionaryFile.bytes(built(4)));
  }

  /** What a kill leaves of the journal is some first part of it. */
  @Test
  void build_killedAtAnyByteAndBegunAgain_givesTheSameBytes(@TempDir Path folder)
      throws IOException {
    Path journal = folder.resolve("journal");
    DictionaryBuild build =
        new DictionaryBuild(ORIGIN, FAULTS, FaultDictionaryTest::row).noting(journal);
    byte[] right = DictionaryFile.bytes(build.run(2, (done, all) -> true).orElseThrow());
    assertArrayEquals(DictionaryFile.bytes(built(1)), right);
    byte[] whole = Files.readAllBytes(journal);
    Random random = new Random(5);
    for (int kill = 0; kill < 10; kill++) {
      Files.write(journal, Arrays.copyOf(whole, random.nextInt(whole.length)));
      FaultDictionary again = build.run(1, (done, all) -> true).orElseThrow();
      assertArrayEquals(right, DictionaryFile.bytes(again));
    }
  }

  @Test
  void build_begunAgain_runsOnlyWhatIsNotDone(@TempDir Path folder) {
    Path journal = folder.resolve("journal");
    List<String> ran = new ArrayList<>();
    int[] most = {20};
    RowSource counting =
        (faults, seed) -> {
          if (ran.size() == most[0]) {
            throw new IllegalArgumentException("the lights went out");
          }
          faults.forEach(f -> ran.add(f.text()));
          return row(faults, seed);
        };
    DictionaryBuild build = new DictionaryBuild(ORIGIN, FAULTS, counting).noting(journal);
    assertThrows(IllegalArgumentException.class, () -> build.run(1, (done, all) -> true));
    assertEquals(20, ran.size());
    most[0] = FAULTS.size() + 1;
    build.run(1, (done, all) -> true);
    assertEquals(FAULTS.stream().map(Fault::text).toList(), ran);
  }

  @Test
  void build_journalOfAnotherOrigin_isBegunAnew(@TempDir Path folder) {
    Path journal = folder.resolve("journal");
    RowSource other = (faults, seed) -> new Row(shows(List.of(), seed), 0);
    new DictionaryBuild(new Origin("sorrel", "5678"), FAULTS, other)
        .noting(journal)
        .run(1, (done, all) -> true);
    FaultDictionary built =
        new DictionaryBuild(ORIGIN, FAULTS, FaultDictionaryTest::row)
            .noting(journal)
            .run(1, (done, all) -> true)
            .orElseThrow();
    assertArrayEquals(DictionaryFile.bytes(built(1)), DictionaryFile.bytes(built));
  }

  @Test
  void build_firstGroups_hasThoseFaultsOnlyAndTheSameOutcomes() {
    FaultDictionary some =
        new DictionaryBuild(ORIGIN, FAULTS, FaultDictionaryTest::row)
            .first(7)
            .run(1, (done, of) -> true)
            .orElseThrow();
    FaultDictionary all = built(1);
    List<String> first = FAULTS.subList(0, 7).stream().map(Fault::text).toList();
    assertEquals(first, some.faults());
    first.forEach(f -> assertEquals(all.shows(all.row(f)), some.shows(some.row(f)), f));
  }

  @Test
  void build_partKnown_runsTheRestAndGivesTheSameBytes(@TempDir Path folder) {
    DictionaryBuild all =
        new DictionaryBuild(ORIGIN, FAULTS, FaultDictionaryTest::row)
            .noting(folder.resolve("journal"));
    RowSource first =
        (faults, seed) -> {
          if (!faults.isEmpty() && FAULTS.indexOf(faults.get(0)) >= 15) {
            throw new IllegalArgumentException("the lights went out");
          }
          return row(faults, seed);
        };
    DictionaryBuild begun =
        new DictionaryBuild(ORIGIN, FAULTS, first).noting(folder.resolve("journal"));
    assertThrows(IllegalArgumentException.class, () -> begun.run(1, (done, of) -> true));
    FaultDictionary part = all.soFar();
    assertEquals(FAULTS.subList(0, 15).stream().map(Fault::text).toList(), part.faults());
    List<String> ran = new ArrayList<>();
    RowSource counting =
        (faults, seed) -> {
          faults.forEach(f -> ran.add(f.text()));
          return row(faults, seed);
        };
    FaultDictionary whole =
        new DictionaryBuild(ORIGIN, FAULTS, counting)
            .having(part)
            .run(1, (done, of) -> true)
            .orElseThrow();
    assertEquals(FAULTS.subList(15, 40).stream().map(Fault::text).toList(), ran);
    assertArrayEquals(DictionaryFile.bytes(built(1)), DictionaryFile.bytes(whole));
  }

  @Test
  void build_groupsInStages_givesTheSameAsEachFaultInOne() {
    RowSource looks = (faults, seed) -> part(row(faults, seed), true);
    RowSource screen = (faults, seed) -> part(row(faults, seed), false);
    FaultDictionary built =
        new DictionaryBuild(
                ORIGIN,
                List.of(FAULTS.subList(20, 40), FAULTS.subList(0, 20)),
                FAULTS,
                List.of(
                    new DictionaryBuild.Stage("looks", looks),
                    new DictionaryBuild.Stage("screen", screen)))
            .run(2, (done, all) -> true)
            .orElseThrow();
    assertArrayEquals(DictionaryFile.bytes(built(1)), DictionaryFile.bytes(built));
  }

  private static Row part(Row row, boolean looks) {
    SortedMap<String, String> some = new TreeMap<>(row.shows());
    some.keySet().removeIf(look -> look.equals("screen") == looks);
    return new Row(some, row.trail());
  }

  @Test
  void build_lookThatDiffersBetweenHealthyBoards_isDropped() {
    assertEquals(List.of("listen"), built(1).dropped());
    assertTrue(built(1).look("listen").isEmpty());
  }

  @Test
  void build_looksOfOnePartition_shareAColumn() {
    FaultDictionary built = built(1);
    assertEquals(3, built.looks().size());
    assertEquals(2, built.partitions());
  }

  @Test
  void build_everyFault_showsWhatItsRowSays() {
    FaultDictionary built = built(2);
    for (Fault fault : FAULTS) {
      Map<String, String> right = shows(List.of(fault), 1);
      right.remove("listen");
      assertEquals(right, built.shows(built.row(fault.text())));
    }
  }

  @Test
  void build_toldToStop_givesNothingAndAsksNoMore() {
    List<Integer> asked = new ArrayList<>();
    Optional<FaultDictionary> built =
        new DictionaryBuild(ORIGIN, FAULTS, FaultDictionaryTest::row)
            .run(
                1,
                (done, all) -> {
                  asked.add(done);
                  return done < 3;
                });
    assertTrue(built.isEmpty());
    assertEquals(List.of(0, 1, 2, 3), asked);
  }

  @Test
  void build_rowWithoutOneLook_isRefusedWithItsName() {
    RowSource lacking =
        (faults, seed) -> {
          SortedMap<String, String> row = shows(faults, seed);
          if (!faults.isEmpty()) {
            row.put("finger U1", row.remove("screen"));
          }
          return new Row(row, 0);
        };
    DictionaryBuild build = new DictionaryBuild(ORIGIN, FAULTS, lacking);
    Exception e =
        assertThrows(IllegalArgumentException.class, () -> build.run(1, (done, all) -> true));
    assertEquals(
        "found no 'screen' for " + FAULTS.get(0).text() + ", right would be its outcome",
        e.getMessage());
  }

  @Test
  void rows_threeFaultsOfWhichTwoAreAlike_areTwoAndTheHealthyOne() {
    FaultDictionary dictionary =
        new Toy()
            .look("probe 1", 1)
            .fault("a", "U1", 1, "probe 1", "low")
            .fault("b", "U2", 1, "probe 1", "low")
            .fault("c", "U3", 1, "probe 1", "high")
            .dictionary();
    assertEquals(3, dictionary.rows());
    assertEquals(dictionary.row("a"), dictionary.row("b"));
    assertEquals(List.of("normal", "low", "high"), dictionary.outcomes(0));
  }

  @Test
  void cells_moreThan256Outcomes_areKeptApart() throws IOException {
    Toy toy = new Toy().look("screen", 1);
    for (int i = 0; i < 700; i++) {
      toy.fault("f" + i, "U1", 1, "screen", "picture " + i);
    }
    FaultDictionary read = reread(toy.dictionary());
    for (int i = 0; i < 700; i++) {
      assertEquals("picture " + i, read.outcome(0, read.row("f" + i)));
    }
  }

  @Test
  void file_writtenAndRead_isTheSame(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("toy.dictionary");
    DictionaryFile.write(built(1), file);
    FaultDictionary read = DictionaryFile.read(file);
    assertEquals(List.of(), built(1).differences(read, 10));
    assertEquals(ORIGIN, read.origin());
  }

  /** By its text's length every other fault leaves another trail than the healthy board. */
  @Test
  void file_writtenAndRead_tellsWhichFaultsAreExcited() throws IOException {
    Set<String> odd =
        FAULTS.stream().map(Fault::text).filter(t -> t.length() % 2 == 1).collect(toSet());
    assertTrue(!odd.isEmpty() && odd.size() < FAULTS.size());
    assertEquals(Optional.of(odd), reread(built(1)).excited());
  }

  @Test
  void file_ofTheTimeBeforeExcitation_isReadAndTellsNothingOfIt() throws IOException {
    FaultDictionary now = built(1);
    Map<String, Integer> rows = new LinkedHashMap<>();
    now.faults().forEach(f -> rows.put(f, now.row(f)));
    FaultDictionary before =
        new FaultDictionary(
            ORIGIN, now.columns(), now.dropped(), rows, Optional.empty(), now.cells());
    FaultDictionary read = reread(before);
    assertEquals(Optional.empty(), read.excited());
    assertEquals(now.shows(5), read.shows(5));
    assertEquals(1, read.differences(now, 10).size());
    assertTrue(read.differences(now, 10).get(0).startsWith("excited faults: stored 'unknown'"));
  }

  @Test
  void file_oneByteWrongOrMissing_isRefused() {
    byte[] bytes = DictionaryFile.bytes(built(1));
    byte[] damaged = bytes.clone();
    damaged[bytes.length / 2] ^= 1;
    byte[] shortened = java.util.Arrays.copyOf(bytes, bytes.length - 1);
    for (byte[] bad :
        List.of(
            damaged,
            shortened,
            new byte[3],
            "another file, no dictionary".getBytes(java.nio.charset.StandardCharsets.US_ASCII))) {
      BadInput e =
          assertThrows(
              BadInput.class, () -> DictionaryFile.read("x", new ByteArrayInputStream(bad)));
      assertTrue(e.getMessage().startsWith("x:1:1: found "), e.getMessage());
    }
  }

  @Test
  void differences_oneCellChanged_namesFaultAndLook() {
    Toy stored = new Toy().look("probe 1", 1).fault("a", "U1", 1, "probe 1", "low");
    Toy computed = new Toy().look("probe 1", 1).fault("a", "U1", 1, "probe 1", "high");
    assertEquals(
        List.of("a, probe 1: stored 'low', computed 'high'"),
        stored.dictionary().differences(computed.dictionary(), 10));
  }

  @Test
  void origin_sameBoardReadTwice_isEqualAndOtherModelsAreNot() {
    Origin one = Origin.of(BoardReader.shipped("sorrel"), "1");
    assertEquals(one, Origin.of(BoardReader.shipped("sorrel"), "1"));
    assertFalse(one.equals(Origin.of(BoardReader.shipped("sorrel"), "2")));
  }

  private static FaultDictionary reread(FaultDictionary dictionary) throws IOException {
    byte[] bytes = DictionaryFile.bytes(dictionary);
    return DictionaryFile.read("x", new ByteArrayInputStream(bytes));
  }
}
