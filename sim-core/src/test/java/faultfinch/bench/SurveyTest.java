package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every passive look at a few hand-worked boards. */
class SurveyTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Survey SURVEY = Survey.on(SORREL);
  private static final SortedMap<Look, String> HEALTHY = SURVEY.features(Setup.healthy(SORREL, 1));

  private static SortedMap<Look, String> broken(String fault) {
    return SURVEY.features(Setup.healthy(SORREL, 1).with(List.of(FaultKinds.parse(fault, SORREL))));
  }

  private static String at(SortedMap<Look, String> features, String look) {
    return features.get(Look.parse(look));
  }

  @Test
  void features_healthyBoard_haveOneForEveryPassiveLook() {
    assertEquals(new TreeSet<>(Looks.passive(SORREL)), HEALTHY.keySet());
  }

  @Test
  void features_healthyBoard_areThoseOfItsDrawing() {
    assertEquals("5 V", at(HEALTHY, "meter U1.VCC"));
    // Typical currents of its parts sum to about 580 mA.
    assertEquals("550 to 600 mA", at(HEALTHY, "current"));
    assertEquals("high", at(HEALTHY, "probe U1.NMI/ at the pin"));
    assertEquals("low", at(HEALTHY, "probe U4.G2A/ at the pin"));
    // 2.4576 MHz by two.
    assertEquals("1.23 MHz", at(HEALTHY, "counter U1.PHI0"));
    assertEquals("2.46 MHz", at(HEALTHY, "counter X1.OUT"));
    assertEquals("pulsing", at(HEALTHY, "probe U9.CS/ at the pin"));
    assertEquals("pulsing", at(HEALTHY, "probe U8.IRQ/ at the pin"));
    assertEquals("conducts", at(HEALTHY, "continuity U9.D0"));
    // Only the 4k7 of the pack leads away from a key line.
    assertEquals("1 k to 10 k", at(HEALTHY, "ohms U10.1A1"));
    assertEquals("over 100 k", at(HEALTHY, "ohms U1.A0"));
  }

  @Test
  void probe_contactOfTheDisplayOpen_pulsesEverywhereButOnTheLeg() {
    SortedMap<Look, String> open = broken("U9.D0: open contact");
    assertEquals("pulsing", at(open, "probe U1.D0 at the pin"));
    assertEquals("pulsing", at(open, "probe U9.D0 at the pad"));
    assertEquals("no light", at(open, "probe U9.D0 at the pin"));
    assertEquals("open", at(open, "continuity U9.D0"));
    assertEquals("reads 'RNRRDL'", at(open, "screen"));
  }

  @Test
  void probe_pinOpenInsideTheDisplay_pulsesOnTheLegTooAndReadsTheSame() {
    SortedMap<Look, String> open = broken("U9.D0: open pin");
    assertEquals("pulsing", at(open, "probe U9.D0 at the pin"));
    assertEquals("conducts", at(open, "continuity U9.D0"));
    assertEquals("reads 'RNRRDL'", at(open, "screen"));
  }

  @Test
  void probe_keySelectStuckHigh_showsFromTheDecoderToTheBuffer() {
    SortedMap<Look, String> stuck = broken("U4.Y3/: drives high");
    assertEquals("high", at(stuck, "probe U4.Y3/ at the pin"));
    assertEquals("high", at(stuck, "probe U10.1G/ at the pin"));
    assertEquals("pulsing", at(stuck, "probe U4.Y5/ at the pin"));
  }

  @Test
  void continuity_cutTrack_isOpenThereAndNowhereElse() {
    SortedMap<Look, String> cut = broken("track U2.D0-U9.D0: open");
    assertEquals("open", at(cut, "continuity U2.D0-U9.D0"));
    assertEquals("conducts", at(cut, "continuity U1.D0-U2.D0"));
    assertEquals("conducts", at(cut, "continuity U9.D0"));
    assertEquals("no light", at(cut, "probe U9.D0 at the pad"));
  }

  @Test
  void counter_oscillatorDead_countsNothingAndTheProbeIsStill() {
    SortedMap<Look, String> dead = broken("X1: dead");
    assertEquals("0 Hz", at(dead, "counter U1.PHI0"));
    assertEquals("0 Hz", at(dead, "counter U1.PHI2"));
    assertEquals("high", at(dead, "probe U1.RW at the pin"));
  }

  @Test
  void counter_whatTheProcessorMakesOfItsClock_isAsFast() {
    assertEquals("1.23 MHz", at(HEALTHY, "counter U1.PHI2"));
    assertEquals("1.23 MHz", at(HEALTHY, "counter U8.PHI2"));
    SortedMap<Look, String> stuck = broken("U1.PHI2: drives low");
    assertEquals("0 Hz", at(stuck, "counter U8.PHI2"));
    assertEquals("1.23 MHz", at(stuck, "counter U1.PHI0"));
  }

  /** 11 MHz by eight, by two more, and by sixteen more. */
  @Test
  void counter_behindDividersThatTheProcessorTurns_showsWhatTheyDivide() {
    SortedMap<Look, String> tamarisk = Survey.of(Setup.healthy(BoardReader.shipped("tamarisk"), 1));
    assertEquals("11.00 MHz", at(tamarisk, "counter X1.OUT"));
    assertEquals("1.38 MHz", at(tamarisk, "counter U1.PHI2"));
    assertEquals("688 kHz", at(tamarisk, "counter U13.2Q0"));
    assertEquals("43.0 kHz", at(tamarisk, "counter U14.1Q3"));
  }

  /**
   * A picture has 312 lines; its sync is low for four of them and the cursor is strobed in one row.
   * Once a picture the program looks for keys, row by row: a row is pulled by an open collector and
   * driven by nothing else, a read of the columns is a single cycle. A select that is used by
   * commands alone has pulsed when they were typed.
   */
  @Test
  void probe_whatAWaitingBoardDoesOnceAPicture_pulses() {
    Board tamarisk = BoardReader.shipped("tamarisk");
    Survey survey = Survey.on(tamarisk);
    SortedMap<Look, String> healthy = survey.features(Setup.healthy(tamarisk, 1));
    for (String once : List.of("U21.VS/", "U21.CUR", "U30.Y0/", "U30.Y6/", "U31.1G/", "U3.CE/")) {
      assertEquals("pulsing", at(healthy, "probe " + once + " at the pin"), once);
    }
    // Rows of the joysticks are read by a program, which nobody has started.
    assertEquals("no light", at(healthy, "probe U30.Y8/ at the pin"));
    Fault cut = FaultKinds.parse("U30.Y2/: open joint", tamarisk);
    SortedMap<Look, String> open = survey.features(Setup.healthy(tamarisk, 1).with(List.of(cut)));
    assertEquals("pulsing", at(open, "probe U30.Y2/ at the pin"));
    assertEquals("no light", at(open, "probe U30.Y2/ at the pad"));
    assertEquals("pulsing", at(open, "probe U30.Y3/ at the pad"));
  }

  @Test
  void probe_deadController_showsItsToneLineInTheAir() {
    SortedMap<Look, String> dead = broken("U8: dead");
    assertEquals("normal", at(HEALTHY, "finger U8"));
    assertEquals("pulsing", at(HEALTHY, "probe U8.TO at the pin"));
    assertEquals("no light", at(dead, "probe U8.TO at the pin"));
    assertEquals("silent", at(dead, "listen"));
  }

  @Test
  void meter_regulatorDead_showsNoRailButItsInput() {
    SortedMap<Look, String> dead = broken("VR1: dead");
    assertEquals("0.0 V", at(dead, "meter U1.VCC"));
    assertEquals("dark", at(dead, "screen"));
    assertEquals("0 to 50 mA", at(dead, "current"));
  }

  @Test
  void features_otherSeedsOfAHealthyBoard_areTheSame() {
    SortedMap<Look, String> other = SURVEY.features(Setup.healthy(SORREL, 99));
    List<String> different =
        HEALTHY.keySet().stream()
            .filter(look -> !HEALTHY.get(look).equals(other.get(look)))
            .map(Look::text)
            .toList();
    assertEquals(List.of(), different);
  }
}
