package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds for every kind of fault, tested by being in the registry. */
class EveryFaultTest {
  private static final Board BOARD = TestBoards.small();
  private static final Anatomy ANATOMY = new Anatomy(BOARD);
  private static final Pattern LINE = Pattern.compile("(track )?[^:]+: \\S.*\\S");

  @ParameterizedTest
  @EnumSource
  void sites_smallBoard_areThereAndDistinct(FaultKinds kind) {
    List<Fault> sites = kind.sites(BOARD);
    assertFalse(sites.isEmpty());
    assertEquals(sites.size(), new HashSet<>(sites).size());
    assertEquals(sites.size(), sites.stream().map(Fault::text).distinct().count());
  }

  @ParameterizedTest
  @EnumSource
  void text_everySite_readsBackAsTheSameFaultOfTheSameKind(FaultKinds kind) {
    for (Fault fault : kind.sites(BOARD)) {
      assertTrue(LINE.matcher(fault.text()).matches(), fault.text());
      assertEquals(fault, FaultKinds.parse(fault.text(), ANATOMY));
      assertEquals(kind, fault.kind(), fault.text());
    }
  }

  @ParameterizedTest
  @EnumSource
  void text_underEveryCondition_readsBack(FaultKinds kind) {
    Fault base = kind.sites(BOARD).get(0);
    for (Condition.Kind when : Condition.Kind.values()) {
      int figure =
          switch (when) {
            case AFTER_MINUTES -> 3;
            case ONE_POWER_ON_IN -> 4;
            case ALWAYS, WARM, COLD, LOW_VOLTS, SHAKEN -> 0;
          };
      if (when != Condition.Kind.ALWAYS) {
        Fault fault = new Conditional(base, new Condition(when, figure));
        assertEquals(fault, FaultKinds.parse(fault.text(), ANATOMY));
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void harm_everySite_isAsked(FaultKinds kind) {
    kind.sites(BOARD).forEach(f -> assertFalse(Traces.of(f, ANATOMY).isEmpty(), f.text()));
  }

  @ParameterizedTest
  @EnumSource
  void place_everySite_isPartNetBrickOrLead(FaultKinds kind) {
    for (Fault f : kind.sites(BOARD)) {
      boolean known =
          BOARD.part(f.place()).isPresent()
              || BOARD.net(f.place()).isPresent()
              || f.place().equals("brick")
              || f.place().equals("lead");
      assertTrue(known, f.text());
    }
  }

  @Test
  void names_allKinds_differ() {
    assertEquals(
        FaultKinds.values().length,
        Arrays.stream(FaultKinds.values()).map(FaultKinds::title).distinct().count());
  }

  @Test
  void sight_figures_nameKindsThatExist() {
    // Each line of the figures is found by some fault of the small board, so none is misspelt.
    long seen =
        FaultUniverse.of(BOARD).faults().stream()
            .flatMap(f -> Sight.of(f, BOARD).stream())
            .map(Sight::sign)
            .distinct()
            .count();
    // 16 lines; the two of the electrolytic say the same.
    assertEquals(15, seen);
  }
}
