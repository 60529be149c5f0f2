package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.diagnosis.Sight;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FuseWordsTest {
  private static final String F1 = "continuity F1.1-F1.2";
  private static final String F2 = "continuity F2.1-F2.2";
  private static final Lookbook LOOKBOOK =
      new Lookbook() {
        @Override
        public Set<String> looks() {
          return new LinkedHashSet<>(List.of(F1, F2, "continuity U1.A0-U2.A0"));
        }

        @Override
        public List<String> outcomes(String look) {
          return List.of("conducts", "open");
        }

        @Override
        public Set<String> differing() {
          return Set.of();
        }
      };
  private static final FuseWords WORDS = new FuseWords(LOOKBOOK, Vocabulary.shipped());

  @Test
  void named_isThatOne() {
    Phrases.Finding blown = WORDS.find("F1 blown").orElseThrow();
    assertEquals(List.of(new Sight(List.of(F1), List.of("open"))), blown.sights());
    Phrases.Finding good = WORDS.find("fuse F2 is good").orElseThrow();
    assertEquals(List.of(new Sight(List.of(F2), List.of("conducts"))), good.sights());
  }

  /** One of them is blown; all of them are good. */
  @Test
  void notNamed_blownIsSomeAndGoodIsEvery() {
    Phrases.Finding blown = WORDS.find("the fuse has gone").orElseThrow();
    assertEquals(2, blown.sights().size());
    assertTrue(!blown.every());
    assertTrue(WORDS.find("fuse fine").orElseThrow().every());
  }

  /** "Not blown" has "blown" in it: the longer way of speaking is meant. */
  @Test
  void denied_isTheContrary() {
    assertEquals(
        List.of("conducts"), WORDS.find("fuse not blown").orElseThrow().sights().get(0).outcomes());
  }

  @Test
  void otherThings_areNone() {
    assertTrue(WORDS.find("U1 is open").isEmpty());
    assertTrue(WORDS.find("the fuse").isEmpty());
  }
}
