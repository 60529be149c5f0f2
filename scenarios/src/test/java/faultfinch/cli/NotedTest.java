package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;

import faultfinch.desk.Statement;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NotedTest {
  @ParameterizedTest
  @EnumSource
  void everyReason_whyWordsAreKept_isToldToPeopleAndToMachines(Statement.Why why) {
    Words words = new Words();
    for (String start : new String[] {"seen.why.", "seen.nearest.", "json.why."}) {
      assertFalse(words.say(start + why, "it", "others").isBlank(), start);
    }
  }
}
