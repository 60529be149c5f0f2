package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.BoardReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** U30 has 16 pins, U1 40; VR1 has an output. */
class BackwardsTest {
  private static Backwards backwards() {
    return new Backwards(new Places(BoardReader.shipped("tamarisk"), Vocabulary.shipped()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "inputs of U30 (pins 12 to 14) pulse; U30.12 and U30.13 and U30.14 pulse",
        "U30 pins 4, 7 and 9 still; U30.4 and U30.7 and U30.9 still",
        "pins 3 and 6 of U30 high; U30.3 and U30.6 high",
        "U27 low, its output too; U27 low, U27 output too",
        "U30 low, pin 6 of that chip high; U30 low, U30 pin 6 high",
        "U1 hot but pin 7 pulses; U1 hot but U1 pin 7 pulses",
        "U34 out, pin 14 of that socket dead; U34 out, U34 pin 14 dead",
        "outputs on the 74LS138 I can reach (15, 14 and 13) high; U44.15 and U44.14 and U44.13 high",
        // What stands beside the part that was spoken of is not that part.
        "U1 low, the gate in front of it has its input high; U1 low, the gate in front of it has its input high",
        // Of other parts, with a unit behind it, or no pin of the part.
        "pin 4 of the memories pulses; pin 4 of the memories pulses",
        "U30 between 1 and 2 V; U30 between 1 and 2 V",
        "U30 pins 40 and 41 high; U30 pins 40 and 41 high",
        "U30 pins 9 to 4 high; U30 pins 9 to 4 high",
        "pin 22 of the video controller low; pin 22 of U21 low",
        "its output, its input and its output of U1 at the same chip; its output, its input and its output of U1 at U1",
        "U30 low, its lamp dark; U30 low, its lamp dark",
        "U30 low, its Y0/ too; U30 low, U30 Y0/ too",
        "pin 7 pulses; pin 7 pulses",
        // By their names alone, where no line is called so: U15 has a 2Y, U24 an A2 and U1 too.
        "U15's 3Y has 0.4 V but 2Y and 4Y pulse; U15.3Y has 0.4 V but U15.2Y and U15.4Y pulse",
        "U15 warm, 2Y of U16 low; U15 warm, 2Y of U16 low",
        "U24 warm, A2 low; U24 warm, A2 low",
        "A0, A1 and A4 of U9 low; U9.A0 and U9.A1 and U9.A4 low",
        "Y0 Y1 Y4 of U30 flat; U30.Y0 and U30.Y1 and U30.Y4 flat",
        "A0 A1 Q9 of U9 low; A0 A1 Q9 of U9 low",
        "On U24 I took the probe to A5, then U22 Q1; On U24 I took the probe to U24.A5, then U22 Q1",
        "U32 LV2 0.0 V, probe there: no light; U32 LV2 0.0 V, probe at U32.LV2: no light",
        "pin 1 of K1 to K3 low; K1.1 and K2.1 and K3.1 low",
        "RAM legs compared: A6 is high; RAM legs compared: ram A6 is high",
        "so I went round the character ROM: A2 low, 9C high; so I went round the character ROM: U24.A2 low, 9C high"
      })
  void inFull_namesThePinsOfThePartSpokenOfLast(String said, String full) {
    assertEquals(full, backwards().inFull(said));
  }

  @Test
  void inFull_goesOnFromTheSentenceBefore() {
    Backwards backwards = backwards();
    backwards.inFull("U1 gets its clock");
    assertEquals("U1 pin 7 never pulses", backwards.inFull("pin 7 never pulses"));
    assertEquals("VR1 is hot", backwards.inFull("VR1 is hot"));
    assertEquals("VR1 output is low", backwards.inFull("its output is low"));
  }

  /** What a sentence is about stands first in it. */
  @Test
  void its_isOfWhatTheSentenceBeforeBeganWith() {
    Backwards backwards = backwards();
    backwards.inFull("VR1 is hot while U1 and U2 stay cold");
    assertEquals("VR1 output measures 1.8 V", backwards.inFull("its output measures 1.8 V"));
  }
}
