package faultfinch.symptom;

import static faultfinch.symptom.Marginal.TAMARISK;
import static faultfinch.symptom.Marginal.onBrick;
import static faultfinch.symptom.Marginal.reached;
import static faultfinch.symptom.Marginal.setup;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.machine.Power;
import faultfinch.machine.Setup;
import faultfinch.machine.Surroundings;
import faultfinch.machine.Surroundings.Air;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Slow parts and races. The processor's half lasts 182 + 91 + 90 = 363 ns, its column and end 181.
 * A delay grows by 0.3 % a kelvin and by 2.4 % for each 0.1 V that is missing. On these boards the
 * memory's regulator gives 4.94 to 4.96 V: 1.2 % more than nominal.
 */
class TamariskDelayTest {
  private static final long SEED =
      LongStream.range(0, 1000)
          .filter(
              seed -> {
                int rail = Power.of(Setup.healthy(TAMARISK, seed)).railMillivolts();
                return rail >= 4940 && rail <= 4960;
              })
          .findFirst()
          .orElseThrow();

  /** A late part is played phase by phase on either machine; two tests hold them to it. */
  private static final Machine.Kind FAST = Machine.Kind.FAST;

  private static final Surroundings COOLED = new Surroundings(0, Air.COOLED, false);
  private static final Surroundings WARMED = new Surroundings(0, Air.WARMED, false);

  private static Surroundings probed(Surroundings around, String ref, String pin) {
    return new Surroundings(
        around.minutes(), around.air(), around.shaken(), Set.of(new Pad(ref, pin)));
  }

  /** Until the banner is due and a little longer. */
  private static Machine run(Setup setup, Machine.Kind kind) {
    Machine machine = new Machine(setup, kind);
    machine.runTo(150_000_000);
    return machine;
  }

  private static boolean works(Machine.Kind kind, Surroundings around, String fault) {
    return reached(run(setup(TAMARISK, SEED, around, fault), kind), "M_BANNER");
  }

  /** 345 * 1.012 = 349 ns are in time; with the air at 50 degrees 375 are not. */
  @Test
  void slowRom_works_andIsTooLateWarm() {
    assertTrue(works(FAST, Surroundings.BENCH, "U2: slow at 345 ns"));
    Machine warm = run(setup(TAMARISK, SEED, WARMED, "U2: slow at 345 ns"), FAST);
    assertFalse(reached(warm, "M_RESET"));
  }

  /** At 4.65 V 345 ns become 374; without the fault such a board runs its ROM. */
  @Test
  void slowRom_atLowVolts_isTooLate() {
    Machine sound = run(setup(onBrick(7700), SEED, Surroundings.BENCH), FAST);
    Machine slow = run(setup(onBrick(7700), SEED, Surroundings.BENCH, "U2: slow at 345 ns"), FAST);
    int rail = slow.power().railMillivolts();
    assertTrue(rail > 4600 && rail < 4690, "rail " + rail);
    assertTrue(reached(sound, "M_RESET"));
    assertFalse(reached(slow, "M_RESET"));
  }

  /** 340 * 1.087 = 370 ns warm: freezer spray brings it to 318. */
  @Test
  void slowRom_cooled_isInTimeAgain() {
    assertFalse(works(FAST, WARMED, "U2: slow at 340 ns"));
    assertTrue(works(FAST, COOLED, "U2: slow at 340 ns"));
  }

  /** 355 * 1.012 = 359.3 ns leave 3.7; a probe on a data line takes 5. */
  @Test
  void slowRom_probed_failsByTheProbe() {
    String fault = "U2: slow at 355 ns";
    assertTrue(works(FAST, Surroundings.BENCH, fault));
    assertFalse(works(FAST, probed(Surroundings.BENCH, "U2", "D0"), fault));
    assertTrue(works(FAST, probed(Surroundings.BENCH, "U2", "CE/"), fault));
  }

  /**
   * One memory of eight is late warm: 170 * 1.087 = 185 ns of 181. Firmware finds its one line bad.
   */
  @EachMachine
  void slowMemory_works_andWarmItsLineIsBad(Machine.Kind kind) {
    assertTrue(works(kind, Surroundings.BENCH, "U4: slow at 170 ns"));
    Machine warm = run(setup(TAMARISK, SEED, WARMED, "U4: slow at 170 ns"), kind);
    assertTrue(reached(warm, "M_NO_MEMORY"));
  }

  /**
   * The address has turned 100 ns after the row strobe. The column strobe comes at 104 * 1.012 =
   * 105.3 ns; at 0 degrees at 97.5, and the memory takes the row again. A probe on the strobe makes
   * that 102.5: the fault goes away when it is looked for.
   */
  @EachMachine
  void race_failsCold_andAProbeOnTheStrobeCuresIt(Machine.Kind kind) {
    String fault = "U4: races at 104 ns";
    assertTrue(works(kind, Surroundings.BENCH, fault));
    assertTrue(works(kind, WARMED, fault));
    assertFalse(works(kind, COOLED, fault));
    assertFalse(works(kind, probed(COOLED, "U4", "D"), fault));
    assertTrue(works(kind, probed(COOLED, "U4", "CAS/"), fault));
  }

  /** At 5.5 V 104 ns become 91.5, less than the 100 the address takes. */
  @Test
  void race_atHighVolts_fails() {
    String[] high = {"VR1.GND: open joint", "U4: races at 104 ns"};
    Machine sound = run(setup(onBrick(8626), SEED, Surroundings.BENCH, high[0]), FAST);
    Machine race = run(setup(onBrick(8626), SEED, Surroundings.BENCH, high), FAST);
    assertTrue(reached(sound, "M_BANNER"));
    assertTrue(reached(race, "M_NO_MEMORY"));
  }

  /** Within 2 ns of the limit each sample is a throw, the same on both machines. */
  @Test
  void slowMemory_onItsLimit_failsByChanceAndTheSameOnBothMachines() {
    // 179 * 1.012 = 181.1 ns of 181.
    Setup limit = setup(TAMARISK, SEED, Surroundings.BENCH, "U4: slow at 179 ns");
    long plain = run(limit, Machine.Kind.PLAIN).digest();
    assertEquals(plain, run(limit, FAST).digest());
    Setup again = new Setup(TAMARISK, limit.faults(), Set.of(), SEED, 1, limit.surroundings());
    assertNotEquals(plain, run(again, Machine.Kind.PLAIN).digest());
    assertFalse(reached(run(limit, FAST), "M_BANNER"));
  }
}
