package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.ShippedDictionaries;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is offered for completion is understood, as a look of the kind it is offered for. */
class ExamplesTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  @ParameterizedTest
  @ValueSource(strings = {"every key", "sticks", "continuity", "flow"})
  void example_isReadAsItsKind(String kind) {
    Vocabulary vocabulary = Vocabulary.shipped();
    Phrases phrases =
        new Phrases(
            TAMARISK, Lookbook.of(ShippedDictionaries.of(TAMARISK).orElseThrow()), vocabulary);
    List<Saying> examples = Saying.examples(kind);
    assertFalse(examples.isEmpty());
    for (Saying saying : examples) {
      Phrases.Read read = phrases.read(new Plain(vocabulary).of(saying.words()));
      assertEquals(Optional.empty(), read.trouble(), saying.words());
      assertFalse(read.findings().isEmpty(), saying.words());
      assertTrue(
          read.findings().stream()
              .flatMap(f -> f.sights().stream())
              .flatMap(s -> s.looks().stream())
              .allMatch(look -> look.startsWith(kind)),
          saying.words() + " " + read.findings());
    }
  }
}
