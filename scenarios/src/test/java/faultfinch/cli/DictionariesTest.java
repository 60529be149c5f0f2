package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.DictionaryBuild;
import faultfinch.diagnosis.DictionaryFile;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Origin;
import faultfinch.diagnosis.Row;
import faultfinch.diagnosis.RowSource;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DictionariesTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");

  private final StringWriter err = new StringWriter();
  private final Terminal terminal =
      new Terminal(
          new BufferedReader(new StringReader("")),
          new PrintWriter(new StringWriter(), true),
          new PrintWriter(err, true),
          arguments -> OptionalInt.empty(),
          new Words());

  @Test
  void shipped_ofSorrel_isWholeAndSaysNothing(@TempDir Path cache) {
    Known known = new Dictionaries(terminal, cache).of(SORREL);
    assertTrue(known.whole());
    assertEquals(1.0, known.weightRun(), 1e-9);
    assertEquals("", err.toString());
  }

  /** A kept dictionary of two faults: only they are candidates, and what is missing is said. */
  @Test
  void kept_ofTwoFaults_saysWhatShareItHas(@TempDir Path cache) throws IOException {
    List<Fault> two =
        List.of(FaultKinds.parse("X1: dead", SORREL), FaultKinds.parse("U9: dead", SORREL));
    Origin origin = Origin.of(SORREL, ShippedDictionaries.MODELS);
    RowSource rows =
        (faults, seed) -> new Row(new TreeMap<>(Map.of("screen", faults.toString())), 0);
    DictionaryFile.write(
        new DictionaryBuild(origin, two, rows).run(1, (done, all) -> true).orElseThrow(),
        cache.resolve("sorrel-" + origin.digest() + ".dictionary"));
    Known known = new Dictionaries(terminal, cache).of(SORREL);
    assertFalse(known.whole());
    Suspects all = Suspects.of(FaultUniverse.of(SORREL));
    double right = (all.of("X1: dead").weight() + all.of("U9: dead").weight()) / all.weight();
    assertEquals(right, known.weightRun(), 1e-9);
    assertTrue(
        err.toString().startsWith("Note: the dictionary has 2 of the 3752 faults"), err::toString);
    assertEquals(2, known.diagnosis().belief(Evidence.NONE).faults().size());
  }
}
