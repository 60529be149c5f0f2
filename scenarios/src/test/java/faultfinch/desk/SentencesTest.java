package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences of a report, with a stroke between them. */
class SentencesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "VR1 roasting. 12 V there. No chip hot.; VR1 roasting|12 V there|No chip hot",
        "clock ok. U34 pin 3 high; clock ok|U34 pin 3 high",
        "VR1 5.0 V. From there on nothing; VR1 5.0 V|From there on nothing",
        "works. 'files' gives up; works|'files' gives up",
        "about 0.5 V... same with the box off; about 0.5 V|same with the box off",
        "approx. 5 V at U9 and 1.5 MHz at U1; approx. 5 V at U9 and 1.5 MHz at U1",
        "station no. 12 fails; station no. 12 fails",
        // A whole saying in single quotes is what somebody says; a word in them is a word.
        "'the light stays on.' Clock good; the light stays on|Clock good",
        "it's 'dead as can be', no beep; it's dead as can be, no beep",
        "'tune' plays, can't load; 'tune' plays, can't load",
        "Customer: nothing works; owner says nothing works",
        "Confirmed: nothing works; nothing works",
        "gives \"The tape is silent.\" Picture fine; gives \"The tape is silent.\"|Picture fine",
        "shows \"No. 12. Next\" only; shows \"No. 12. Next\" only"
      })
  void of_isTheSentences(String report, String sentences) {
    assertEquals(List.of(sentences.split("\\|")), Sentences.of(report));
  }
}
