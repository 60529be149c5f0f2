package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RetentionTest {
  private static final long MILLISECOND = 1_000_000;

  @Test
  void sound_anyCell_liesBetween150MillisecondsAnd400Seconds() {
    for (int cell = 0; cell < 65_536; cell++) {
      long keeps = Retention.sound(5, cell);
      assertTrue(keeps >= 150 * MILLISECOND && keeps <= 400_000 * MILLISECOND, "cell " + cell);
    }
  }

  @Test
  void defective_anyCell_liesBetween400And1000Microseconds() {
    for (int cell = 0; cell < 65_536; cell++) {
      long keeps = Retention.defective(5, cell);
      assertTrue(keeps >= 2 * MILLISECOND / 5 && keeps <= MILLISECOND, "cell " + cell);
    }
  }

  /** 25 degrees are 250 tenths. */
  @Test
  void warm_eachTenKelvin_halves() {
    assertEquals(8_000, Retention.warm(8_000, 250));
    assertEquals(4_000, Retention.warm(8_000, 350));
    assertEquals(2_000, Retention.warm(8_000, 450));
    assertEquals(16_000, Retention.warm(8_000, 150));
  }

  @Test
  void sound_otherGrain_isAnotherTime() {
    assertEquals(Retention.sound(5, 77), Retention.sound(5, 77));
    assertNotEquals(Retention.sound(5, 77), Retention.sound(6, 77));
    assertNotEquals(Retention.sound(5, 77), Retention.sound(5, 78));
  }
}
