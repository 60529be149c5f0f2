package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import faultfinch.signal.Phase;
import org.junit.jupiter.api.Test;

/** Pitch, noise and decay, by the register list. A cycle on the bench is 1 us. */
class ToneGeneratorTest {
  private final BenchPins bench = new BenchPins(new ToneGenerator());
  private final Registers registers = new Registers(bench);

  @Test
  void voice_halfPeriodOfTwelveBits_togglesEveryEightTimesThatManyCycles() {
    // 103h is 259: the pin turns every 2072 cycles, low first.
    registers.write(1, 1);
    registers.write(0, 3);
    assertEquals('L', bench.out("AO"));
    bench.passMicroseconds(2071);
    assertEquals('L', bench.out("AO"));
    bench.passMicroseconds(1);
    assertEquals('H', bench.out("AO"));
    assertEquals(4144, bench.part().nextChange(bench));
    bench.passMicroseconds(2072);
    assertEquals('L', bench.out("AO"));
    assertEquals('L', bench.out("BO"));
  }

  @Test
  void voices_bothSet_runByThemselves() {
    registers.write(0, 10);
    bench.passMicroseconds(7);
    registers.write(2, 25);
    // A turns at 80, 160, ...; B was written at 7 and turns at 207.
    bench.passMicroseconds(194);
    assertEquals('L', bench.out("AO"));
    assertEquals('L', bench.out("BO"));
    assertEquals(207, bench.part().nextChange(bench));
    bench.passMicroseconds(6);
    assertEquals('H', bench.out("BO"));
    assertEquals(240, bench.part().nextChange(bench));
  }

  @Test
  void time_anything_storesNothing() {
    registers.write(0, 1);
    registers.write(4, 1);
    registers.write(7, 1);
    BenchPins before = bench.copy();
    for (int i = 0; i < 1000; i++) {
      bench.passMicroseconds(97);
      bench.elapse();
      bench.commit(Phase.C_ROW);
    }
    assertEquals(true, bench.sameState(before));
    assertEquals(Part.NEVER, bench.part().nextStored(bench));
  }

  @Test
  void noise_oneRound_hasOneMoreHighThanLowAndThenRepeats() {
    // A shift register of 15 bits runs through all states but zero: 16,384 ones of 32,767.
    int ones = 0;
    for (int i = 0; i < Noise.ROUND; i++) {
      ones += Noise.high(i) ? 1 : 0;
    }
    assertEquals(16_384, ones);
    int differ = 0;
    for (int i = 0; i < Noise.ROUND; i++) {
      assertEquals(Noise.high(i), Noise.high(i + Noise.ROUND));
      differ += Noise.high(i) != Noise.high(i + 1) ? 1 : 0;
    }
    assertEquals(16_384, differ);
  }

  @Test
  void noise_nextChange_isWhereTheNextOtherBitComes() {
    registers.write(4, 2);
    char was = bench.out("NO");
    for (int i = 0; i < 50; i++) {
      long next = bench.part().nextChange(bench);
      assertEquals(0, next % 128);
      bench.passMicroseconds(next - bench.now() - 1);
      assertEquals(was, bench.out("NO"));
      bench.passMicroseconds(1);
      assertNotEquals(was, bench.out("NO"));
      was = bench.out("NO");
    }
  }

  @Test
  void noise_newPace_goesOnWhereTheShiftRegisterStands() {
    registers.write(4, 1);
    bench.passMicroseconds(64 * 100);
    char was = bench.out("NO");
    registers.write(4, 31);
    assertEquals(was, bench.out("NO"));
    assertEquals(Noise.high(100) ? 'H' : 'L', was);
  }

  @Test
  void reset_low_clearsEveryRegister() {
    for (int i = 0; i < 9; i++) {
      registers.write(i, 0xFF);
    }
    bench.low("RES/");
    bench.commit(Phase.V_ROW);
    bench.high("RES/");
    for (int i = 0; i < 16; i++) {
      assertEquals(0, registers.read(i), "register " + i);
    }
    assertEquals(Part.NEVER, bench.part().nextChange(bench));
  }

  @Test
  void registers_written_readBackTheBitsThereAre() {
    int[] bits = {0xFF, 0x0F, 0xFF, 0x0F, 0x1F, 0xFF, 0x7F, 0x3F, 1, 0, 0, 0, 0, 0, 0, 0};
    for (int i = 0; i < bits.length; i++) {
      registers.write(i, 0xFF);
      assertEquals(bits[i], registers.read(i), "register " + i);
    }
  }

  @Test
  void sum_anyVoice_isTheMeanOfItsLevelsTimesItsLoudness() {
    registers.write(0, 10);
    registers.write(5, 0x0F);
    // Voice A at full is a third of the sum: low for 80 cycles, then high for 80.
    Voices voices = Voices.of(bench::state);
    assertEquals(-1.0 / 3, voices.mean(0, 80), 1e-9);
    assertEquals(1.0 / 3, voices.mean(80, 160), 1e-9);
    assertEquals(0, voices.mean(40, 200), 1e-9);
    assertEquals(-1.0 / 6, voices.mean(1600 + 40, 1600 + 100) * 1.5, 1e-9);
    // Loudness 5 of 15 for voice B adds a ninth.
    registers.write(2, 10);
    registers.write(5, 0x5F);
    assertEquals(-4.0 / 9, Voices.of(bench::state).mean(0, 80), 1e-9);
  }

  @Test
  void decay_sharedByA_fallsByASixteenthEveryStepAndLeavesBAlone() {
    registers.write(0, 10);
    registers.write(2, 10);
    registers.write(5, 0xFF);
    registers.write(6, 0x10);
    registers.write(7, 3);
    // A step is 6144 cycles; each 80 cycles from a multiple of 160 on are low.
    Voices voices = Voices.of(bench::state);
    assertEquals(-2.0 / 3, voices.mean(0, 80), 1e-9);
    assertEquals(-(1 + 15 / 16.0) / 3, voices.mean(6240, 6320), 1e-9);
    assertEquals(-(1 + 8 / 16.0) / 3, voices.mean(49_280, 49_360), 1e-9);
    assertEquals(-1.0 / 3, voices.mean(98_400, 98_480), 1e-9);
    assertEquals(-1.0 / 3, voices.mean(980_000, 980_080), 1e-9);
  }

  @Test
  void noise_inTheSum_hasTheLevelOfItsPin() {
    registers.write(4, 1);
    registers.write(6, 0x0F);
    Voices voices = Voices.of(bench::state);
    for (int i = 0; i < 40; i++) {
      double level = Noise.high(i) ? 1.0 / 3 : -1.0 / 3;
      assertEquals(level, voices.mean(64.0 * i, 64.0 * i + 64), 1e-9);
    }
    double two = (Noise.high(3) ? 1 : -1) + (Noise.high(4) ? 1 : -1);
    assertEquals(two / 6, voices.mean(64.0 * 3 + 32, 64.0 * 4 + 32), 1e-9);
  }
}
