package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.KeyPress;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import faultfinch.part.RowMemory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A board whose picture is shared stands, set and all, as one whose frames are played. */
class SharedFramesTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long MS = 1_000_000;
  private static final long SEED = 1;

  /** As long as a look: a frame is 312 lines of 88 cycles. */
  private static final int PASSES = 330;

  private static final int LINE = 88;

  /** Before the keys; while one is typed and its letter comes up; after them all. */
  private static final List<Long> LOOKS = List.of(754 * MS, 806 * MS, 1_407 * MS, 1_834 * MS);

  private static final Frames FRAMES = Frames.of(TAMARISK, SEED, 700 * MS);

  private static Setup with(String... faults) {
    return Setup.healthy(TAMARISK, SEED)
        .with(Arrays.stream(faults).map(f -> FaultKinds.parse(f, TAMARISK)).toList());
  }

  /** Cycles played by a run that shares its frames, of which the other plays all. */
  private static long looked(Setup setup) {
    Machine shares = new Machine(setup, Machine.Kind.FAST);
    Machine plays = new Machine(setup, Machine.Kind.FAST);
    long played = 0;
    for (long look : LOOKS) {
      typed(shares, look);
      typed(plays, look);
      long before = shares.byPhases();
      pass(FRAMES.lead(shares));
      pass(Frames.NONE.lead(plays));
      played += shares.byPhases() - before;
      alike(plays, shares);
    }
    return played;
  }

  /** Runs to a time, keys of the exercise held as they are due. */
  private static void typed(Machine machine, long until) {
    for (long ms = machine.nanoseconds() / MS + 1; ms <= until / MS; ms++) {
      for (KeyPress key : TAMARISK.exercise()) {
        if (ms == key.atMilliseconds() || ms == key.atMilliseconds() + key.forMilliseconds()) {
          machine.runTo(ms * MS);
          machine.hold(key.ref(), ms == key.atMilliseconds());
        }
      }
    }
    machine.runTo(until);
  }

  private static void pass(Lead lead) {
    for (int i = 1; i <= PASSES; i++) {
      lead.pass(LINE, i == PASSES);
    }
    lead.end();
  }

  private static void alike(Machine right, Machine is) {
    right.rest();
    is.rest();
    assertEquals(right.cycles(), is.cycles());
    assertEquals(right.digest(), is.digest());
    assertArrayEquals(right.store().cells(), is.store().cells());
    assertArrayEquals(right.plain().levels.mv, is.plain().levels.mv);
    assertArrayEquals(right.plain().levels.kind, is.plain().levels.kind);
    Circuit c = is.plain().circuit;
    for (int p = 0; p < c.parts.length; p++) {
      // When rows were last strobed is noted at other times.
      if (!(c.parts[p] instanceof RowMemory)) {
        int from = c.wordBase[p];
        int to = from + c.parts[p].pinout().words().size();
        assertArrayEquals(
            Arrays.copyOfRange(right.store().words(), from, to),
            Arrays.copyOfRange(is.store().words(), from, to),
            c.refs[p]);
      }
    }
  }

  /** The second board of a kind plays next to nothing of four looks of 330 lines. */
  @Test
  void healthyBoard_lookedAtAgain_playsHardlyAnything() {
    looked(with());
    long played = looked(with("R2: short"));
    assertTrue(played < LOOKS.size() * PASSES * LINE / 4, played + " cycles played");
  }

  /** Another text, a processor that is locked, one in reset for good, one that calls for help. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "U28.CS/: reads high",
        "U1.RDY: clamps to ground through 1 ohm",
        "U1.A6: drives high"
      })
  void faultOutsideThePictureHalf_standsAsIfPlayed(String fault) {
    looked(with(fault));
  }

  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(strings = {"U28.D5: drives low", "U28.PA4: clamps to supply through 4k7"})
  void theLikeOutsideThePictureHalf_standsAsIfPlayed(String fault) {
    looked(with(fault));
  }

  /** What draws the letters, fetches them, colours them and strobes memory for them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "U24.A5: reads high",
        "U22.D6: clamps to supply through 470 ohms",
        "U27.2B-U27.2Y: bridge",
        "U26.VA4: reads high",
        "U4.A0-U4.A2: bridge",
        "U17.S: leaks to supply through 4k7",
        "U12.PIC: leaks to supply through 1k",
        "U21: defect line-sync-dead",
        "U24: mis-programmed at 0410 as 00"
      })
  void faultInThePictureHalf_sharesNothing(String fault) {
    assertFalse(FRAMES.sharedBy(new Machine(with(fault), Machine.Kind.FAST)));
  }

  @Test
  void healthyBoardOfTheSeed_shares() {
    assertTrue(FRAMES.sharedBy(new Machine(with(), Machine.Kind.FAST)));
  }

  @Test
  @Tag("sweep")
  @Timeout(value = 120, unit = TimeUnit.MINUTES)
  void faultsOfEveryKind_standAsIfPlayed() {
    List<String> shared = new ArrayList<>();
    for (Fault fault : new Draw(FaultUniverse.of(TAMARISK), SEED).overKinds(400)) {
      Setup setup = Setup.healthy(TAMARISK, SEED).with(List.of(fault));
      if (FRAMES.sharedBy(new Machine(setup, Machine.Kind.FAST))) {
        shared.add(fault.text());
        looked(setup);
      }
    }
    assertTrue(shared.size() >= 100, shared::toString);
  }
}
