package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Drill;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two sticks, each pushed up and over, then down with its button; a tape loaded, one written. */
class DrillWordsTest {
  private static final String FIRST_UP = "Stick 1 U - - - -  level 3F";
  private static final String SECOND_DOWN = "Stick 2 - D - - F  level 20";
  private static final String FIRST_DOWN = "Stick 1 - D - - F  level 20";
  private static final String SECOND_UP = "Stick 2 U - - - -  level 3F";

  private static final String PUSHED = sticks(FIRST_UP, SECOND_DOWN, FIRST_DOWN, SECOND_UP);
  private static final String NO_FIRST_UP =
      sticks("Stick 1 - - - - -  level 3F", SECOND_DOWN, FIRST_DOWN, SECOND_UP);
  private static final String NO_SECOND_FIRE =
      sticks(FIRST_UP, "Stick 2 - D - - -  level 20", FIRST_DOWN, SECOND_UP);
  private static final String NOTHING_OF_FIRST =
      sticks("Stick 1 - - - - -  level 3F", SECOND_DOWN, "Stick 1 - - - - -  level 20", SECOND_UP);
  private static final String FIRST_ALWAYS_UP =
      sticks(FIRST_UP, SECOND_DOWN, "Stick 1 U D - - F  level 20", SECOND_UP);
  private static final String FIRST_LEVEL_LOW =
      sticks("Stick 1 U - - - -  level 00", SECOND_DOWN, "Stick 1 - D - - F  level 00", SECOND_UP);
  private static final String OTHER_KEYS =
      "'HELLO | # sticks | "
          + FIRST_UP
          + " | "
          + SECOND_DOWN
          + " | # ghickg | Unknown. | #' in red";

  private static final String BOTH = tape("Heard 48.", "Heard 8.");
  private static final String SILENT = tape("The tape is silent.", "The tape is silent.");
  private static final String SPOILT = tape("The tape's sum is another.", "Heard 8.");
  private static final String NOT_WRITTEN = tape("Heard 48.", "The tape is silent.");
  private static final String NEVER = SILENT + ", the tape never runs";
  private static final String FROM_THE_START = SILENT + ", the tape runs from the start";

  private static final String CANNOT_BE_ASKED =
      "'HELLO | # stiks | Unknown. | # stiks | Unknown. | # #' in red";
  private static final String NOTHING_TYPED = "nothing comes of the first line";

  private static final Map<String, List<String>> SHOWN =
      Map.of(
          Phrases.SCREEN,
          List.of("'HELLO | #' in red"),
          Drill.STICKS,
          List.of(
              PUSHED,
              NO_FIRST_UP,
              NO_SECOND_FIRE,
              NOTHING_OF_FIRST,
              FIRST_ALWAYS_UP,
              FIRST_LEVEL_LOW,
              OTHER_KEYS,
              CANNOT_BE_ASKED,
              NOTHING_TYPED),
          Drill.TAPE,
          List.of(BOTH, SILENT, SPOILT, NOT_WRITTEN, NEVER, FROM_THE_START, "no picture"));

  private static final Lookbook LOOKBOOK = new TestLookbook(SHOWN, Map.of());

  private static String sticks(String a, String b, String c, String d) {
    return "'HELLO | # sticks | " + String.join(" | ", a, b, "# sticks", c, d) + " | # #' in red";
  }

  private static String tape(String loaded, String again) {
    String typed =
        String.join(" | ", "# hear a00", loaded, "# hum 200 8", "Hummed 8.", "# hear a00");
    return "'HELLO | " + typed + " | " + again + " | # #' in red";
  }

  private static List<String> meant(String says) {
    Vocabulary vocabulary = Vocabulary.shipped();
    String plain = new Plain(vocabulary).of(says);
    Optional<Phrases.Finding> found =
        new StickWords(LOOKBOOK, vocabulary)
            .find(plain)
            .or(() -> new TapeWords(LOOKBOOK, vocabulary).find(plain));
    return found.map(f -> f.sights().get(0).outcomes()).orElse(List.of());
  }

  @Test
  void way_thatDoesNotCome_isTheOneThatIsNamed() {
    assertEquals(List.of(NO_FIRST_UP), meant("joystick 1 won't go up"));
    assertEquals(List.of(NO_FIRST_UP), meant("First joystick port does not see UP"));
    assertEquals(List.of(NO_SECOND_FIRE), meant("fire on joystick 2 doesn't work"));
    assertEquals(List.of(), meant("neither joystick goes up"));
    assertEquals(List.of(NO_FIRST_UP, NO_SECOND_FIRE), meant("the other directions work"));
    assertEquals(List.of(NO_SECOND_FIRE), meant("no fire button"));
  }

  /** Who says that something else is dead may not be able to type the word. */
  @Test
  void way_thatDoesNotComeEither_isNotAgainstABoardThatCannotBeAsked() {
    assertEquals(List.of(NO_FIRST_UP, CANNOT_BE_ASKED), meant("up on joystick 1 is dead too"));
  }

  /** Of these boards none lacks the way up of the second. */
  @Test
  void way_thatNoBoardLacks_isNothing() {
    assertEquals(List.of(), meant("second joystick does not go up"));
  }

  @Test
  void stick_ofWhichNothingComes_isDead() {
    assertEquals(List.of(NOTHING_OF_FIRST, NOTHING_TYPED), meant("joystick 1 is dead"));
    // Where nothing can be typed no stick is seen.
    assertEquals(List.of(NOTHING_TYPED), meant("both joysticks dead"));
  }

  @Test
  void way_thatComesByItself_isStuck() {
    assertEquals(List.of(FIRST_ALWAYS_UP), meant("joystick 1 always goes up"));
    assertEquals(List.of(OTHER_KEYS), meant("with the joystick pushed wrong letters come"));
  }

  @Test
  void sticks_thatWork_areAsOnAGoodBoard() {
    assertEquals(List.of(PUSHED), meant("joysticks fine"));
    assertEquals(List.of(PUSHED, FIRST_LEVEL_LOW), meant("directions and fire fine"));
    assertEquals(List.of(PUSHED, NO_SECOND_FIRE), meant("joystick 1 works"));
  }

  @Test
  void level_thatDoesNotMove_isOfThatStick() {
    assertEquals(List.of(FIRST_LEVEL_LOW), meant("the pot of joystick 1 does not move"));
    assertEquals(List.of(FIRST_LEVEL_LOW), meant("one potentiometer reads zero"));
    assertEquals(List.of(), meant("both pots read zero"));
  }

  @Test
  void tape_thatDoesNotLoad_isSilentOrSpoilt() {
    assertEquals(List.of(SILENT, SPOILT, NEVER, FROM_THE_START), meant("tape will not load"));
    assertEquals(List.of(SPOILT), meant("load error from tape"));
    // Which tape it was is not said.
    assertEquals(
        List.of(SILENT, NOT_WRITTEN, NEVER, FROM_THE_START), meant("the tape stays silent"));
  }

  @Test
  void tape_thatLoadsAndIsNotWritten_isToldFromOneThatDoesNot() {
    assertEquals(List.of(NOT_WRITTEN), meant("saving to tape fails"));
    assertEquals(List.of(NOT_WRITTEN), meant("what I recorded is silent on the tape"));
    assertEquals(List.of(BOTH), meant("tape works"));
    assertEquals(List.of(BOTH, NOT_WRITTEN), meant("it says it heard 048"));
    assertEquals(List.of(BOTH, NOT_WRITTEN), meant("cassette loads fine"));
  }

  @Test
  void motor_thatDoesNotTurnOrDoesNotStop_isToldByTheEnd() {
    assertEquals(List.of(NEVER), meant("tape motor does not turn"));
    assertEquals(List.of(NEVER), meant("cassette never starts turning by itself"));
    assertEquals(List.of(BOTH, SILENT, SPOILT, NOT_WRITTEN), meant("the tape motor turns"));
    assertEquals(List.of(FROM_THE_START), meant("the tape runs all the time"));
  }

  @Test
  void otherThings_areNotOfThem() {
    assertEquals(List.of(), meant("the picture moves up"));
    assertEquals(List.of(), meant("keys do nothing"));
    assertEquals(List.of(), meant("the A key sticks all the time"));
  }
}
