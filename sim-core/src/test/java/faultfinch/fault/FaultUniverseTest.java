package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class FaultUniverseTest {
  private static final Board BOARD = TestBoards.small();
  private static final FaultUniverse ALL = FaultUniverse.of(BOARD);

  @Test
  void weights_wholeUniverse_areAboveZeroAndSumToOne() {
    ALL.entries().forEach(e -> assertTrue(e.weight() > 0, e.fault().text()));
    assertEquals(1, ALL.entries().stream().mapToDouble(FaultUniverse.Entry::weight).sum(), 1e-9);
  }

  @Test
  void weights_twoStuckLevelsOfOneOutput_areAsTheTableHasThem() {
    assertEquals(weight("U4.Y0/: drives low"), weight("U4.Y0/: drives high"), 1e-12);
    // U4 drives Y0/ Y1/ Y7/ (3) and reads A B C G1 G2A/ G2B/ (6). Outputs open: 22 per cent, 85 of
    // a hundred of them inside, over 3 pins. Stuck low: 28 per cent, 60 of a hundred over 3 + 6.
    double open = 22 * 0.85 / 3;
    double stuck = 28 * 0.6 / (3 + 6);
    assertEquals(open / stuck, weight("U4.Y0/: open pin") / weight("U4.Y0/: drives low"), 1e-9);
    assertEquals(15.0 / 85, weight("U4.Y0/: open leg") / weight("U4.Y0/: open pin"), 1e-9);
  }

  @Test
  void weights_clampsOfOneLevel_haveFourTenthsOfTheMode() {
    double clamps = sum("U4.", "clamps to ground");
    double rest = sum("U4.", "s low");
    assertEquals(40.0 / 60.0, clamps / rest, 1e-9);
  }

  /** Pins of a chip have 1.34 mm of board between them, the two tracks that are laid 0.4. */
  @Test
  void weights_bridgeOfTracks_standsToOneOfPinsAsTheGaps() {
    double tracks = weight("track U1.A0-U2.A0 and U1.A1-U2.A1: bridge");
    assertEquals(1.34 / 0.4, tracks / weight("U4.A-U4.B: bridge"), 1e-9);
  }

  @Test
  void groups_bridgesOfTheSameTwoNets_areOneRun() {
    assertEquals(group("track U1.A0-U2.A0 and U1.A1-U2.A1: bridge"), group("U1.A0-U1.A1: bridge"));
  }

  @Test
  void repair_everyFault_isCuredByItsOwnAction() {
    ALL.entries().forEach(e -> assertTrue(e.repair().cures(e.fault()), e.fault().text()));
  }

  @Test
  void groups_together_holdEveryFaultOnce() {
    List<Fault> members = ALL.groups().stream().flatMap(List::stream).toList();
    assertEquals(ALL.size(), members.size());
    assertEquals(new HashSet<>(ALL.faults()), new HashSet<>(members));
    assertEquals(ALL.collapsedSize(), ALL.representatives().size());
    assertTrue(ALL.collapsedSize() < ALL.size());
  }

  @Test
  void groups_oneWayBroken_areOneRunWhereverItBreaks() {
    for (String other :
        List.of(
            "U3.CE/: open leg",
            "U3.CE/: bent leg",
            "U3.CE/: open contact",
            "U3.CE/: open joint",
            "U4.Y0/: open pin",
            "track U4.Y0/-U3.CE/: open")) {
      assertEquals(group("U3.CE/: open pin"), group(other), other);
    }
  }

  @Test
  void groups_middlePadOfALongerNet_isNotItsTrack() {
    // The track goes on behind U2, so a cut there takes U3 and U8 too.
    assertNotEquals(group("U2.D0: open pin"), group("track U1.D0-U2.D0: open"));
    assertNotEquals(group("U2.D0: open pin"), group("track U2.D0-U3.D0: open"));
    assertEquals(group("U8.D0: open pin"), group("track U3.D0-U8.D0: open"));
  }

  @Test
  void groups_seriesChain_isOneRun() {
    // TO drives the beeper through R2 and nothing else: R2, either terminal, the beeper, any joint.
    for (String other :
        List.of("U8.TO: open pin", "R2.2: open joint", "LS1: open", "LS1.2: open joint")) {
      assertEquals(group("R2: open"), group(other), other);
    }
  }

  @Test
  void groups_nandInputLow_isOutputHighAndNotLow() {
    assertEquals(group("U5.1A: reads low"), group("U5.1Y: drives high"));
    assertEquals(group("U5.1A: reads low"), group("U5.1B: reads low"));
    assertNotEquals(group("U5.1A: reads high"), group("U5.1Y: drives low"));
    assertNotEquals(group("U5.1A: reads low"), group("U5.2A: reads low"));
  }

  @Test
  void groups_clampsOfOneNet_shareARunByOhmsAndRail() {
    assertEquals(
        group("U1.D0: clamps to ground through 470 ohms"),
        group("U8.D0: clamps to ground through 470 ohms"));
    assertNotEquals(
        group("U1.D0: clamps to ground through 470 ohms"),
        group("U1.D0: clamps to supply through 470 ohms"));
    assertNotEquals(
        group("U1.D0: clamps to ground through 470 ohms"),
        group("U1.D0: clamps to ground through 1 ohm"));
  }

  @Test
  void groups_breaksBeforeTheRegulator_areOneRun() {
    for (String other :
        List.of("F1: open", "D1.K: open joint", "J1: open", "track D1.K-C1.+: open")) {
      assertEquals(group("lead: open"), group(other), other);
    }
    assertNotEquals(group("lead: open"), group("C1.+: open joint"));
    assertEquals(group("VR1: dead"), group("VR1.OUT: open joint"));
  }

  @Test
  void draw_sameSeed_isTheSameAndAnotherSeedIsNot() {
    assertEquals(new Draw(ALL, 7).byWeight(50), new Draw(ALL, 7).byWeight(50));
    assertEquals(new Draw(ALL, 7).overKinds(50), new Draw(ALL, 7).overKinds(50));
    assertNotEquals(new Draw(ALL, 7).byWeight(50), new Draw(ALL, 8).byWeight(50));
    assertEquals(50, new HashSet<>(new Draw(ALL, 7).byWeight(50)).size());
    assertEquals(50, new HashSet<>(new Draw(ALL, 7).overKinds(50)).size());
  }

  @Test
  void draw_overKinds_bringsUpEveryKind() {
    // 33 kinds, 600 draws: one of them is missed with (32/33)^600, one in a hundred million.
    long kinds = new Draw(ALL, 1).overKinds(600).stream().map(Fault::kind).distinct().count();
    assertEquals(FaultKinds.values().length, kinds);
  }

  private static double weight(String text) {
    return ALL.entry(FaultKinds.parse(text, BOARD)).weight();
  }

  private static int group(String text) {
    return ALL.entry(FaultKinds.parse(text, BOARD)).group();
  }

  private static double sum(String place, String says) {
    return ALL.entries().stream()
        .filter(e -> e.fault().text().startsWith(place) && e.fault().text().contains(says))
        .mapToDouble(FaultUniverse.Entry::weight)
        .sum();
  }
}
