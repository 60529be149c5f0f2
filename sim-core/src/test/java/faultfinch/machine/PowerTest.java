package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Bridge;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of Sorrel's supply: 11.5 V behind 3.1 ohms, 0.1 ohms of fuse, 0.7 V and 0.02 ohms
 * of diode. Its parts take 100 + 90 + 50 + 9 + 4 times 4 + 27 + 3 + 15 + 90 + 180 = 580 mA at 5 V.
 */
class PowerTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  /** 9 V on 2,000 ohms. */
  private static final int QUIESCENT_MILLIWATTS = 40;

  private static final Board BOARD = BoardReader.shipped("sorrel");

  /** Half of all boards regulate at 5 V or more, where the parts take a constant current. */
  private static final long STRONG =
      LongStream.range(1, 1000)
          .filter(seed -> Power.of(Setup.healthy(BOARD, seed)).railMillivolts() >= 5000)
          .findFirst()
          .orElseThrow();

  private static Setup with(String... texts) {
    List<Fault> faults = Stream.of(texts).map(t -> FaultKinds.parse(t, BOARD)).toList();
    return Setup.healthy(BOARD, STRONG).with(faults);
  }

  @Test
  void supply_healthy_givesTheWorkedVoltsAndCurrent() {
    Power power = Power.of(Setup.healthy(BOARD, STRONG));
    // raw = 10800 - 3.22 (580 + raw / 2000), so raw = 8932.4 / 1.00161 = 8918.0 mV;
    // current = 580 + 4.459 mA; jack = 11500 - 3.1 * 584.459 = 9688.2 mV.
    assertEquals(8918, power.afterDiodeMillivolts());
    assertEquals(584, power.currentMilliamps());
    assertEquals(9688, power.jackMillivolts());
    assertEquals(Power.Band.NORMAL, power.band());
    assertEquals(Set.of(), power.blown());
    assertEquals(Set.of(), power.killed());
  }

  @Test
  void regulator_manyHealthyBoards_staysBetween4800And5200AndDiffers() {
    int[] rails =
        LongStream.range(0, 200)
            .mapToInt(seed -> Power.of(Setup.healthy(BOARD, seed)).railMillivolts())
            .sorted()
            .toArray();
    assertTrue(rails[0] >= 4800 && rails[0] < 4850, "lowest " + rails[0]);
    assertTrue(rails[199] <= 5200 && rails[199] > 5150, "highest " + rails[199]);
  }

  @Test
  void regulator_low_isMarginalAndTakesLess() {
    Power power = Power.of(with("VR1: low"));
    // 580 * 4.3 / 5 = 498.8 mA; raw = (10800 - 3.22 * 498.8) / 1.00161 = 9179.1 mV;
    // current = 498.8 + 4.59 = 503.39 mA; jack = 11500 - 3.1 * 503.39 = 9939.5 (9939.49) mV.
    assertEquals(4300, power.railMillivolts());
    assertEquals(9179, power.afterDiodeMillivolts());
    assertEquals(503, power.currentMilliamps());
    assertEquals(9939, power.jackMillivolts());
    assertEquals(Power.Band.MARGINAL, power.band());
    assertTrue(power.railUp());
  }

  @Test
  void regulator_dead_leavesTheRailWithoutVoltsAndTheBrickUnloaded() {
    Power power = Power.of(with("VR1: dead"));
    assertEquals(0, power.railMillivolts());
    // The leak of 10 Mohm takes a microampere, not enough to see.
    assertEquals(0, power.currentMilliamps());
    assertEquals(11500, power.jackMillivolts());
    assertFalse(power.railUp());
  }

  @Test
  void regulator_shorted_putsItsInputOnTheRail() {
    Power power = Power.of(with("VR1: shorted"));
    // 10800 - (3.22 + 0.2) * 580 = 8816.4 mV.
    assertEquals(8816, power.railMillivolts());
    assertEquals(580, power.currentMilliamps());
    assertEquals(Power.Band.DAMAGE, power.band());
  }

  @Test
  void regulator_shortedOnManyBoards_killsPartsByTheirMake() {
    int gates = 0;
    int memories = 0;
    List<Fault> shorted = List.of(FaultKinds.parse("VR1: shorted", BOARD));
    for (long seed = 0; seed < 400; seed++) {
      Set<String> killed = Power.of(Setup.healthy(BOARD, seed).with(shorted)).killed();
      gates += killed.contains("U6") ? 1 : 0;
      memories += killed.contains("U3") ? 1 : 0;
    }
    // LS: 50 + 1.816 * 15 = 77.2 % of 400 is 309, other: 25 + 27.2 = 52.2 % is 209; four sigmas
    // of such a count are 34 and 40.
    assertEquals(309, gates, 34);
    assertEquals(209, memories, 40);
  }

  @Test
  void regulator_groundJointOpen_passesItsInputLessItsDropout() {
    Power power = Power.of(with("VR1.GND: open joint"));
    // raw = 10800 - 3.22 * 580 = 8932.4; less 2000. No quiescent current without a ground.
    assertEquals(6932, power.railMillivolts());
    assertEquals(Power.Band.DAMAGE, power.band());
    assertEquals(Set.of(), power.killed());
  }

  /**
   * On Tamarisk 12 V comes in by a jack of its own, and what it brings is no current of the other.
   */
  @Test
  void currentThroughTheJack_jackOpenWhileAnotherPoleRuns_isNone() {
    Board tamarisk = BoardReader.shipped("tamarisk");
    Setup setup = Setup.healthy(tamarisk, 1).with(List.of(FaultKinds.parse("J1: open", tamarisk)));
    Power power = Power.of(setup);
    assertEquals(0, power.currentMilliamps());
    assertTrue(power.millivolts(new Pad("J2", "+"), true).orElseThrow() > 12_000);
  }

  @Test
  void railCapacitor_shorted_blowsTheFuse() {
    for (String text : List.of("C2: short", "C4: short")) {
      Power power = Power.of(with(text));
      // The regulator drops out: 8800 mV over 3.22 + 0.896 ohms is 2138 mA, above twice 1 A.
      assertEquals(Set.of("F1"), power.blown(), text);
      assertEquals(0, power.railMillivolts(), text);
      assertEquals(0, power.currentMilliamps(), text);
      assertEquals(11500, power.jackMillivolts(), text);
      assertFalse(power.railUp());
    }
  }

  @Test
  void inputCapacitor_shorted_blowsTheFuse() {
    // 10800 mV over 3.1 + 0.1 + 0.02 + 1 ohms is 2559 mA.
    assertEquals(Set.of("F1"), Power.of(with("C1: short")).blown());
  }

  /**
   * 125 K above the air at 15 K a watt are 8.33 W, less than half of what it would turn into heat
   * cold: 2.2 A times some 6 V. With 1.1 A instead of 2.2 into the short the brick gives 10.5 V
   * less 0.6 ohms times 2.1 A, and the other regulator has more than its 2 V.
   */
  @Test
  void regulator_outputShorted_givesInTheMeanWhatKeepsItAtItsHottest() {
    Power power = Power.of(tamarisk("C18: short"));
    assertEquals(8333 + QUIESCENT_MILLIWATTS, power.milliwatts("VR2"), 60);
    assertEquals(Set.of("12V", "5VA", "5VS"), power.up());
  }

  /**
   * Cold it gives 2.2 A, of which parts at 1.9 V take some 250 mA: the rest is too much for 1 A.
   */
  @Test
  void fuse_behindAShortedRegulator_goesBeforeTheRegulatorIsHot() {
    Power power = Power.of(tamarisk("SP1.LK5-SP1.GND: bridge"));
    assertEquals(Set.of("F2"), power.blown());
    assertTrue(power.railUp());
  }

  private static Setup tamarisk(String fault) {
    return Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse(fault, TAMARISK)));
  }

  @Test
  void railCapacitor_shortedOnABenchSupply_meetsItsLimitAndWarms() {
    Power power = Power.of(with("C4: short"), new Feed.Bench(9000, 1000));
    // Parts and short are 1 / 1.116 ohms. Io + (0.896057 Io + 2000) / 2000 = 1000 mA gives
    // Io = 998.55 mA: rail 894.8, raw 2894.8, jack 2894.8 + 700 + 0.12 * 1000 = 3714.8 mV.
    assertEquals(1000, power.currentMilliamps());
    assertEquals(895, power.railMillivolts());
    assertEquals(3715, power.jackMillivolts());
    assertEquals(Set.of(), power.blown());
    // 894.76 mV squared over 1 ohm.
    assertEquals(801, power.milliwatts("C4"));
  }

  @Test
  void benchSupply_healthyBoard_isStiff() {
    Power power = Power.of(Setup.healthy(BOARD, STRONG), new Feed.Bench(9000, 1000));
    assertEquals(9000, power.jackMillivolts());
    // raw = 8300 - 0.12 (580 + raw / 2000) = 8230.4 / 1.00006 = 8229.9; 580 + 4.11 mA.
    assertEquals(8230, power.afterDiodeMillivolts());
    assertEquals(584, power.currentMilliamps());
  }

  @Test
  void benchSupply_brokenLeadOfTheBrick_doesNotMatter() {
    assertTrue(Power.of(with("lead: open"), new Feed.Bench(9000, 1000)).railUp());
    assertFalse(Power.of(with("lead: open")).railUp());
  }

  @Test
  void brick_alone_readsOffLoadAndOnTheDummyLoad() {
    Feed sound = Power.brick(with());
    assertEquals(11500, sound.noLoadMillivolts());
    // 11500 * 10 / 13.1 = 8778.6.
    assertEquals(8779, sound.onDummyLoad());
    Feed sags = Power.brick(with("brick: sags"));
    assertEquals(11500, sags.noLoadMillivolts());
    // 11500 * 10 / 22.4 = 5133.9.
    assertEquals(5134, sags.onDummyLoad());
    // 70 % of 11500, and 8050 * 10 / 13.1 = 6145.04.
    assertEquals(8050, Power.brick(with("brick: low")).noLoadMillivolts());
    assertEquals(6145, Power.brick(with("brick: low")).onDummyLoad());
    assertEquals(0, Power.brick(with("brick: dead")).onDummyLoad());
    assertEquals(0, Power.brick(with("lead: open")).noLoadMillivolts());
    // A bench supply set to 0.5 A: 5000 mV into 10 ohms, as long as it is set to more.
    assertEquals(5000, new Feed.Bench(9000, 500).onDummyLoad());
    assertEquals(4000, new Feed.Bench(4000, 500).onDummyLoad());
  }

  @Test
  void brick_sagging_dropsTheRegulatorOut() {
    Power power = Power.of(with("brick: sags"));
    // 580 mA at 5 V is 8.62069 ohms. raw = 2000 + 8.62069 I and raw = 10800 - 12.52 (I + raw /
    // 2000): I = 8787.48 / 21.19466 = 414.61 mA, rail 3574.2 mV.
    assertEquals(3574, power.railMillivolts());
    assertEquals(Power.Band.DEAD, power.band());
    assertFalse(power.railUp());
  }

  @Test
  void feed_brokenAtEachSpot_isLiveUpToIt() {
    Power fuse = Power.of(with("F1: open"));
    assertEquals(11500, fuse.jackMillivolts());
    assertEquals(0, fuse.afterDiodeMillivolts());
    assertEquals(OptionalInt.of(0), fuse.millivolts(new Pad("F1", "2"), true));
    Power joint = Power.of(with("D1.A: open joint"));
    assertEquals(OptionalInt.of(11500), joint.millivolts(new Pad("D1", "A"), true));
    assertEquals(0, joint.railMillivolts());
    Power out = Power.of(with("VR1.OUT: open joint"));
    assertEquals(0, out.railMillivolts());
    assertTrue(out.millivolts(new Pad("VR1", "OUT"), false).orElseThrow() >= 5000);
    assertEquals(0, Power.of(with("lead: open")).jackMillivolts());
  }

  @Test
  void part_withoutItsSupply_takesAndHeatsNothing() {
    Power open = Power.of(with("U8.VCC: open joint"));
    assertEquals(0, open.milliwatts("U8"));
    // 580 - 90 = 490: raw = (10800 - 3.22 * 490) / 1.00161 = 9207.4; 490 + 4.60 mA.
    assertEquals(495, open.currentMilliamps());
    Setup healthy = Setup.healthy(BOARD, STRONG);
    Setup out = new Setup(BOARD, List.of(), Set.of("U8"), STRONG, 0);
    assertEquals(495, Power.of(out).currentMilliamps());
    // 90 mA at the rail.
    Power sound = Power.of(healthy);
    assertEquals(0.09 * sound.railMillivolts(), sound.milliwatts("U8"), 0.5);
    assertEquals(OptionalInt.empty(), sound.millivolts(new Pad("U1", "A0"), true));
  }

  @Test
  void band_atEachBound_isTheOneOfTheTable() {
    assertEquals(Power.Band.DEAD, Power.Band.of(3999));
    assertEquals(Power.Band.MARGINAL, Power.Band.of(4000));
    assertEquals(Power.Band.MARGINAL, Power.Band.of(4749));
    assertEquals(Power.Band.NORMAL, Power.Band.of(4750));
    assertEquals(Power.Band.NORMAL, Power.Band.of(5250));
    assertEquals(Power.Band.HOT, Power.Band.of(5251));
    assertEquals(Power.Band.HOT, Power.Band.of(6000));
    assertEquals(Power.Band.DAMAGE, Power.Band.of(6001));
  }

  /** What comes in at the jack leaves as heat: a check the solver does not know of. */
  @Test
  void supply_everyFaultOfTheBoard_isSolvedAndKeepsItsEnergy() {
    for (Fault fault : FaultUniverse.of(BOARD).faults()) {
      Power power = Power.of(Setup.healthy(BOARD, 3).with(List.of(fault)));
      double in = power.jackMillivolts() * (power.currentMilliamps() / 1000.0);
      int heat = BOARD.parts().stream().map(PlacedPart::ref).mapToInt(power::milliwatts).sum();
      // Half a milliampere of rounding at 11.5 V is 6 mW, half a milliwatt a part 18 mW.
      if (!(fault.base() instanceof Bridge)) {
        assertEquals(in, heat, 24, fault.text());
      }
      assertTrue(power.railMillivolts() > -100 && power.railMillivolts() < 11500, fault.text());
    }
  }

  @Test
  void figures_everyChipOfTheCatalogue_haveACurrentAndARise() {
    for (PartCatalog type : PartCatalog.values()) {
      if (!(type.part() instanceof Element)) {
        assertTrue(PowerFigures.current(type) > 0, type.type());
        assertTrue(PowerFigures.figure("rise." + type.type()) > 0, type.type());
      }
    }
  }

  @Test
  void supply_sameSetupTwice_isTheSame() {
    Setup setup = with("VR1: shorted");
    assertEquals(Power.of(setup).killed(), Power.of(setup).killed());
    assertEquals(Power.of(setup).railMillivolts(), Power.of(setup).railMillivolts());
  }
}
