package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.SoundNet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Networks whose answer a page of paper gives. */
class TransientTest {
  private static final double STEP = 1e-6;
  private static final int GROUND = SoundNet.GROUND;

  private static SoundNet net(
      int nodes,
      List<SoundNet.Resistance> resistances,
      List<SoundNet.Capacity> capacities,
      List<SoundNet.Amplifier> amplifiers,
      SoundNet.Resistance speaker) {
    return new SoundNet(
        nodes,
        resistances,
        capacities,
        amplifiers,
        Optional.of(new SoundNet.Source(0, 1000)),
        Optional.of(speaker));
  }

  @Test
  void step_twoResistances_divide() {
    SoundNet.Resistance load = new SoundNet.Resistance(0, GROUND, 3000);
    Transient path = new Transient(net(1, List.of(load), List.of(), List.of(), load), STEP);
    assertEquals(0.75, path.step(1), 1e-5);
  }

  @Test
  void step_resistanceAndCapacitor_chargeByTheirTime() {
    // 1 kohm and 100 nF are 100 us: after as long 1 - 1/e stands there.
    SoundNet.Resistance ear = new SoundNet.Resistance(0, GROUND, 1e8);
    SoundNet.Capacity c = new SoundNet.Capacity(0, GROUND, 1e-7);
    Transient path = new Transient(net(1, List.of(ear), List.of(c), List.of(), ear), STEP);
    double volts = 0;
    for (int i = 0; i < 100; i++) {
      volts = path.step(1);
    }
    assertEquals(1 - 1 / Math.E, volts, 0.003);
    assertTrue(path.moving(1e-6));
    for (int i = 0; i < 3000; i++) {
      path.step(0);
    }
    assertFalse(path.moving(1e-6));
  }

  @Test
  void step_invertingAmplifier_multipliesByTheRatioWhateverTheSpeakerDraws() {
    // 1k + 9k in, 20k back: -2, even into 64 ohms behind the amplifier's 600.
    SoundNet.Resistance speaker = new SoundNet.Resistance(2, GROUND, 64);
    SoundNet net =
        net(
            3,
            List.of(
                new SoundNet.Resistance(0, 1, 9000),
                new SoundNet.Resistance(1, 2, 20_000),
                speaker),
            List.of(),
            List.of(new SoundNet.Amplifier(GROUND, 1, 2, 600)),
            speaker);
    assertEquals(-2, new Transient(net, STEP).step(1), 0.001);
  }

  @Test
  void step_couplingCapacitor_letsNothingSteadyThrough() {
    SoundNet.Resistance speaker = new SoundNet.Resistance(1, GROUND, 1000);
    SoundNet net =
        net(2, List.of(speaker), List.of(new SoundNet.Capacity(0, 1, 1e-8)), List.of(), speaker);
    Transient path = new Transient(net, STEP);
    assertEquals(0.5, path.step(1), 0.03);
    for (int i = 0; i < 1000; i++) {
      path.step(1);
    }
    assertEquals(0, path.step(1), 1e-6);
  }
}
