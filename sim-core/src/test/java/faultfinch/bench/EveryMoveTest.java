package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A move disturbs what it states and nothing else, whatever the bench is like. */
class EveryMoveTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Prices PRICES = Prices.shipped();

  /** Ways to get a bench ready, so that each kind of move can be made on one of them. */
  private static final List<List<String>> STATES =
      List.of(
          List.of(),
          List.of("swap the supply", "power on"),
          List.of("take out: U2", "take out: U3"),
          List.of("piggyback: U4"));

  private static Bench bench(List<String> moves) {
    Bench bench =
        new Bench(
            new Job(
                SORREL,
                List.of(FaultKinds.parse("U9.D0: open joint", SORREL)),
                1,
                new Intake("wrong letters", Map.of("since when?", "since Monday")),
                PRICES));
    moves.forEach(m -> bench.perform(Move.parse(m)));
    return bench;
  }

  private static Set<Move> some(Bench bench, Moves kind) {
    List<Move> all = bench.possible(kind);
    Set<Move> some = new LinkedHashSet<>();
    if (!all.isEmpty()) {
      some.add(all.get(0));
      some.add(all.get(all.size() - 1));
    }
    return some;
  }

  private static String shown(Bench bench) {
    List<String> shown = new ArrayList<>();
    for (String look : List.of("screen", "listen", "lamp", "current", "meter U1.D0")) {
      shown.add(bench.perform(Move.parse("look: " + look)).reading().feature());
    }
    return String.join("; ", shown);
  }

  /** What a move that only looks leaves behind: nothing, but the board may be on afterwards. */
  @ParameterizedTest
  @EnumSource(Moves.class)
  void look_anyPlace_leavesBoardFaultsAndPlacesAsTheyWere(Moves kind) {
    if (kind.use() != Moves.Use.LOOK) {
      return;
    }
    boolean made = false;
    for (List<String> state : STATES) {
      for (Move move : some(bench(state), kind)) {
        Bench bench = bench(state);
        boolean asItCame = bench.asItCame();
        String before = shown(bench);
        boolean was = bench.powered();
        Reading reading = bench.perform(move).reading();
        assertFalse(reading.text().isEmpty(), move.text());
        assertEquals(1, bench.remaining().size(), move.text());
        assertEquals(asItCame, bench.asItCame(), move.text());
        if (was == bench.powered()) {
          assertEquals(before, shown(bench), move.text());
        }
        made = true;
      }
    }
    // Sorrel has no drive, no key beyond its exercise and no drills; see CaseAndSoundTest.
    boolean elsewhere =
        Set.of(Moves.FILES, Moves.EVERY_KEY, Moves.STICKS, Moves.TAPE).contains(kind);
    assertTrue(made || elsewhere, kind + " could not be made anywhere");
  }

  /**
   * On a board off its bench, a look may not switch on what was off unless a start is its sense.
   */
  @ParameterizedTest
  @EnumSource(Moves.class)
  void look_boardSwitchedOff_staysOffUnlessItIsAStart(Moves kind) {
    Set<Moves> starts =
        Set.of(Moves.COLD_STARTS, Moves.HOLD, Moves.LOAD, Moves.SUPPLY_MARGIN, Moves.QUICK_CHECK);
    if (kind.use() == Moves.Use.LOOK && !starts.contains(kind)) {
      for (Move move : some(bench(List.of()), kind)) {
        Bench bench = bench(List.of());
        bench.perform(move);
        assertFalse(bench.powered(), move.text());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Moves.class)
  void text_anyPossibleMove_isReadBackAndHasAPrice(Moves kind) {
    for (List<String> state : STATES) {
      for (Move move : bench(state).possible(kind)) {
        assertEquals(move, Move.parse(move.text()));
        assertTrue(PRICES.of(move).total() >= 0, move.text());
      }
    }
  }

  /** What a hand puts on or off can be taken back, and then the board is as it came. */
  @Test
  void handle_anyThingTakenBack_isTheBoardAsItCame() {
    Map<String, String> pairs =
        Map.of(
            "piggyback: U4", "take the chip off: U4",
            "lift: U1.D0", "reflow: U1.D0",
            "cut track: U1.D0-U2.D0", "link track: U1.D0-U2.D0",
            "take out: U9", "put back: U9");
    pairs.forEach(
        (there, back) -> {
          Bench bench = bench(List.of());
          String before = shown(bench);
          bench.perform(Move.parse(there));
          assertFalse(bench.asItCame(), there);
          bench.perform(Move.parse(back));
          assertTrue(bench.asItCame(), back);
          assertEquals(before, shown(bench), back);
          assertEquals(1, bench.remaining().size(), back);
        });
  }

  @Test
  void lid_onAndOff_changesNothingElse() {
    Bench bench = bench(List.of());
    bench.perform(Move.parse("lid on"));
    bench.perform(Move.parse("lid off"));
    assertTrue(bench.asItCame());
    assertTrue(bench.can(Move.parse("reseat: U9")));
  }
}
