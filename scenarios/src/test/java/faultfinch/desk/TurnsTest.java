package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurnsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "only 0,3 V at D7            | only 0.3 V at D7",
        "takes 1,54 A, hot           | takes 1.54 A, hot",
        "R4 reads 4,7k               | R4 reads 4.7k",
        "stations 1,2 fail           | stations 1,2 fail",
        "K11,12 V there              | K11,12 V there",
        "took out U34, now it starts | with U34 out it starts",
        "with the power off, 3 ohms across C1 | 3 ohms across C1",
        "switched off, nothing more  | switched off, nothing more",
        "flatter than on my other board | flatter than usual",
        "'A' comes out as 'C', \"page\" as \"qwe\" | 'A' comes out as 'C', typed reads 'qwe'",
        "\"Works\" is missing         | the word Works is missing",
        "station 9: AA sent, 2A came back | station 9: wrote AA read 2A",
        "F2 was blown. Put in a new one and that blew at once. | F2 blown; exchanged F2, no change.",
        "Usually there is no chord   | there is no chord",
        "of the colour bar I see red, a gap, red again, then white | only red, red, white in the picture",
        "from the colour bar downwards all is rubbish | from the colour bar downwards all is rubbish",
        "usually there is a chord    | usually there is a chord",
        "RES/ is low first and then goes high, fine | RES/ is pulsing, fine",
        "Pins 4 and 5 of U29, the page number, are both low, as they should be after a reset. | Pins 4 and 5 of U29 are both low.",
        "Switched on and nothing: no chord | dead, no chord",
        "Lamp out, then nothing, no chord | Lamp out, no chord",
        "stations 01 and 06 are ok but 02 and 03 differ | stations 01 and 06 are ok but stations 02 and 03 differ",
        "The bench ROM fails 02 to 05 | The bench ROM fails stations 02 to 05",
        "Where it should say Tamarisk you get T m r s | you get T m r s",
        "U43 pin 8 pulses too, but pin 11 of U23 doesn't. | U43 pin 8 pulses too, but pin 11 of U23 does not move.",
        "every letter is right except the capital I: a dot too many | the letter I looks wrong: a dot too many",
        "Lines all over. Underneath the lines everything is right: readable. | Lines all over. .",
      })
  void whole_figureWithAComma_hasAPoint(String typed, String whole) {
    assertEquals(whole, Turns.whole(typed));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a little black cursor bar   | a little cursor bar",
        "black box behind            | box behind",
        "black screen                | black screen",
        "U44 is about 149 deg        | U44 is hot",
        "some thousand ohms          | 1 to 9.9 kohms",
        "only a few k                | 1 to 9.9 kohms",
        "tens of ohms                | 10 to 99 ohms",
        "reset goes low and then high within a blink | reset is pulsing",
        "reset goes high then back low | reset is pulsing",
        "reset goes low and then low again | reset goes low and then low again",
        "pulling U32 makes it boot   | with U32 out it boots",
        "chip selects of U2          | selects of U2",
        "U2's select                 | U2 select",
        "U34 supply present          | U34.VCC high",
        "a whole tone flatter        | pitch too low",
        "ROM 0 is selected for good  | select of ROM 0 low",
        "dips low for some microseconds each time | pulses each time",
        "counter on X1.OUT: nothing  | counter X1.OUT no frequency",
        "there cold and warm         | 'there '",
        "the caps lamp stays lit     | ''",
        "Monitor is good with another computer | ''",
        "at VR1 the difference between input and output is 2 V | ''",
        "I measure a volt or so      | I measure 1 V",
        "Memory without complaint    | Memory ok",
        "The drive itself is good    | disc drive itself is good",
        "Drive and cable tested on another machine | disc drive tested on another machine",
        "drive works                 | drive works",
        "all 000 differ              | no error",
        "clean, 000 of 512 differ    | clean, no error",
        "my tuner says 302 and 507 Hz | 302 and 507 Hz",
        "about 5 mA goes through it  | ''",
        "nothing shorted on LK5      | no short on LK5",
        "nothing that looks like a short | no short",
        "a few hundred ohms or more and rising | over 100 ohms",
        "black except the cursor     | cursor alone",
        "track between them buzzes   | ''",
        "two relays always click together | ''",
        "in games both sticks go up  | ''",
        "BO pin 19 is flat the whole time | BO pin 19 does not move the whole time",
        "no short to ground or 5 V   | no short to ground",
        "12 V and 5VS are fine       | 5VS are fine",
      })
  void plain_turnOfSpeech_isSaidPlainly(String typed, String plain) {
    assertEquals(plain, Turns.plain(typed));
  }
}
