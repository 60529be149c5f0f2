package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.symptom.EveryKey;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A keyboard of six signs and a SHIFT, on a set whose title is HELLO. */
class KeyWordsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final String WHOLE = picture("# qwe", "# asd", "# qW");
  private static final String NO_W = picture("# qe", "# asd", "# q");
  private static final String NO_SHIFT = picture("# qwe", "# asd", "# qw");
  private static final String NO_W_NOR_D = picture("# qe", "# as", "# q");
  private static final String S_STICKS = picture("# sqswse", "# sassd", "# sqsWs");
  private static final String SPOILT =
      "'HXLLO | # qe | That is unknown. | # asd | That is unknown. | # q' in white";
  private static final String NO_A_IN_THE_EXERCISE =
      "'HELLO | # s | That is unknown. | #' in white";
  private static final Map<String, List<String>> SHOWN =
      Map.of(
          EveryKey.NAME,
          List.of(WHOLE, NO_W, NO_SHIFT, NO_W_NOR_D, S_STICKS, SPOILT, "nothing comes"),
          Phrases.SCREEN,
          List.of("'HELLO | #' in white"),
          Phrases.TYPED,
          List.of("'HELLO | # as | That is unknown. | #' in white", NO_A_IN_THE_EXERCISE));

  private static final Lookbook LOOKBOOK = new TestLookbook(SHOWN, Map.of("K1: open", NO_SHIFT));

  private static String picture(String first, String second, String last) {
    return "'HELLO | "
        + first
        + " | That is unknown. | "
        + second
        + " | That is unknown. | "
        + last
        + "#' in white";
  }

  private static List<String> meant(String says) {
    Vocabulary vocabulary = Vocabulary.shipped();
    KeyWords words = new KeyWords(LOOKBOOK, vocabulary, new Places(TAMARISK, vocabulary));
    Optional<Phrases.Finding> found =
        new Keystrokes(LOOKBOOK, vocabulary, words).find(new Plain(vocabulary).of(says));
    return found.map(f -> f.sights().get(0).outcomes()).orElse(List.of());
  }

  @Test
  void keyDead_othersCome_isTheOneThatIsNamed() {
    assertEquals(List.of(NO_W), meant("key W is dead"));
    assertEquals(List.of(NO_W_NOR_D), meant("keys W and D do nothing"));
  }

  /** "A" behind it is no key. */
  @Test
  void keyThatCannotBeTyped_isTheOneThatIsNamed() {
    assertEquals(List.of(NO_W), meant("Can't type a W!"));
    assertEquals(List.of(NO_W), meant("I cannot get the letter w"));
    assertEquals(List.of(), meant("cannot type a"));
  }

  /** No board lacks just E: of those that lack it none is left. */
  @Test
  void keyDead_thatNoBoardLacks_isNothing() {
    assertEquals(List.of(), meant("key E is dead"));
  }

  @Test
  void keyWithoutSignDead_isToldByTheLastLine() {
    assertEquals(List.of(NO_SHIFT), meant("shift does nothing"));
  }

  @Test
  void keysNotNamed_areSoMany() {
    assertEquals(List.of(NO_W), meant("one key is dead"));
    assertEquals(List.of(NO_W_NOR_D), meant("some keys are dead"));
    assertEquals(List.of(WHOLE), meant("every key works"));
  }

  @Test
  void keySticks_isWhatStandsBetweenOthers() {
    assertEquals(List.of(S_STICKS), meant("key S is stuck"));
  }

  /** Letters of the exercise may be all that was typed. */
  @Test
  void letterOfTheExercise_isReadFromIt() {
    assertEquals(List.of(NO_A_IN_THE_EXERCISE), meant("the letter a is missing"));
  }
}
