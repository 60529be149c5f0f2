package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.Watching;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A look disturbs nothing. */
class EveryInstrumentTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final long PART_OF_BOOT_NS = 150_000_000;

  @Test
  void windows_watchedPhaseByPhase_leaveTheMachineAsOneThatWasNotWatched() {
    Machine plain = new Machine(Setup.healthy(SORREL, 1), Watching.KIND);
    Machine watched = new Machine(Setup.healthy(SORREL, 1), Watching.KIND);
    List<Look> meters =
        Looks.passive(SORREL).stream().filter(l -> l.kind() == Instruments.METER).toList();
    Levels levels =
        new Levels(
            meters.stream().map(l -> Looks.pad(l.place())).toList(),
            SORREL.phaseNanoseconds(),
            Legs.of(watched.setup()),
            new Trail(watched.setup()));
    for (long at = 10_000_000; at < PART_OF_BOOT_NS; at += 7_000_000) {
      watched.runTo(at);
      levels.play(watched, Window.STEP);
    }
    watched.runTo(PART_OF_BOOT_NS);
    plain.runTo(PART_OF_BOOT_NS);
    // The two may stop some cycles apart, inside or behind an instruction: bring both together.
    long end = Math.max(plain.cycles(), watched.cycles()) + 16;
    for (Machine m : List.of(plain, watched)) {
      while (m.cycles() < end) {
        m.play(end - m.cycles(), (phase, nanoseconds) -> {});
      }
    }
    assertEquals(plain.cycles(), watched.cycles());
    assertEquals(plain.digest(), watched.digest());
  }

  @Test
  void looks_everyOneTwiceOnTheSameBench_showTheSame() {
    Bench bench = new Bench(new Job(SORREL, List.of(), 5, Intake.none(), Prices.shipped()));
    bench.perform(Move.parse("power on"));
    List<Move> looks =
        bench.possible().stream()
            .map(Offer::move)
            .filter(m -> m.kind() == Moves.LOOK && !m.asLook().kind().unpowered())
            .toList();
    List<String> first = looks.stream().map(m -> feature(bench, m)).toList();
    for (int i = 0; i < looks.size(); i++) {
      assertEquals(first.get(i), feature(bench, looks.get(i)), looks.get(i).text());
    }
    assertTrue(bench.powered());
    assertEquals(List.of(), bench.remaining());
  }

  private static String feature(Bench bench, Move move) {
    return bench.perform(move).reading().feature();
  }
}
