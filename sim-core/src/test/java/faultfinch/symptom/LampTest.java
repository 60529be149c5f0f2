package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A lamp judged from samples 20 ms apart. */
class LampTest {

  private static String seen(int samples, int half) {
    List<Boolean> lit = new ArrayList<>();
    for (int i = 0; i < samples; i++) {
      lit.add(half > 0 && i / half % 2 == 0);
    }
    return Lamp.seen(lit, 20).says();
  }

  @Test
  void seen_changeEveryHalfSecond_blinksOnceASecond() {
    // 25 samples of 20 ms are 0.5 s, so a period is 1 s.
    assertEquals("blinks once a second", seen(80, 25));
  }

  @Test
  void seen_changeEverySixtyMilliseconds_blinksFast() {
    // 3 samples are 60 ms: 1000 / 120 = 8.3 times a second.
    assertEquals("blinks faster than four times a second", seen(80, 3));
  }

  @Test
  void seen_neverChanging_isLitOrDark() {
    assertEquals("dark", seen(80, 0));
    assertEquals("lit", seen(80, 1000));
  }

  @Test
  void seen_oneChange_isToldByItsEnd() {
    assertEquals("goes out", seen(80, 60));
  }
}
