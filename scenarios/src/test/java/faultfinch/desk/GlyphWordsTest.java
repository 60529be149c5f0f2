package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.symptom.EveryKey;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures drawn on paper: T, r and i as blocks; all as blocks; only s as a block. */
class GlyphWordsTest {
  private static final String RIGHT = "'Tamarisk is ready' in white";
  private static final String THREE = "'#ama##sk #s #eady' in white";
  private static final String ALL = "'######## ## #####' in white";
  private static final String ONE = "'Tamari#k i# ready' in white";

  /** The figures 1 to 3, which stand on the set only when all keys were typed. */
  private static final String KEYS = "'Tamarisk is ready | 123' in white";

  private static final String NO_ONE = "'Tamarisk is ready | #23' in white";
  private static final String NO_TWO = "'Tamarisk is ready | 1#3' in white";
  private static final Map<String, String> NAMES =
      Map.of(THREE, "THREE", ALL, "ALL", ONE, "ONE", NO_ONE, "NO_ONE", NO_TWO, "NO_TWO");

  private static final GlyphWords WORDS =
      new GlyphWords(
          new TestLookbook(
              Map.of(
                  "screen",
                  List.of(RIGHT, THREE, ALL, ONE),
                  EveryKey.NAME,
                  List.of(KEYS, NO_ONE, NO_TWO)),
              Map.of()),
          Vocabulary.shipped());

  private static String read(String says) {
    return WORDS
        .find(says)
        .map(f -> f.sights().get(0).outcomes().stream().map(NAMES::get).toList().toString())
        .orElse("nothing");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the T and every r and i are unreadable     | [THREE]",
        "every r is garbled                         | [THREE]",
        "capital T looks odd                        | [THREE]",
        "the letter s cannot be read                | [ONE]",
        "some letters are unreadable                | [THREE, ONE]",
        "the 1 is spoilt                            | [NO_ONE]",
        "where it writes Stick 1 the 1 is spoilt    | [NO_ONE]",
        "it doesn't look like a 2                   | [NO_TWO]",
        "it is always the same letters that look wrong | [THREE, ONE]",
      })
  void lettersThatLookWrong_whileOthersDoNot_areThoseOfThePicture(String says, String meant) {
    assertEquals(meant, read(says));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "the text is unreadable",
        "the title is garbled",
        "a letter is unreadable",
        "pin 2 is garbled"
      })
  void textThatNamesNoLetters_isNotOfLetters(String says) {
    assertEquals(Optional.empty(), WORDS.find(says));
  }
}
