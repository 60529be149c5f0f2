package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.PlacedPart;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The whole universe of the first board. */
class SorrelFaultsTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Anatomy ANATOMY = new Anatomy(SORREL);
  private static final FaultUniverse ALL = FaultUniverse.of(SORREL);

  @Test
  void text_everyFault_readsBack() {
    for (Fault fault : ALL.faults()) {
      assertEquals(fault, FaultKinds.parse(fault.text(), ANATOMY));
    }
  }

  @Test
  void kinds_allButThoseOfAFastBoardLaidOutWithDynamicMemory_haveSites() {
    // Half a cycle is 407 ns: a ROM of 350 is in time even at 50 degrees and 4.7 V (402 ns).
    Set<FaultKinds> none =
        Set.of(FaultKinds.SLOW, FaultKinds.RACE, FaultKinds.TRACK_BRIDGE, FaultKinds.CELL_DEFECT);
    ALL.byKind()
        .forEach((kind, faults) -> assertEquals(none.contains(kind), faults.isEmpty(), kind + ""));
  }

  @Test
  void counts_socketsAndMemories_areThoseOfTheBoard() {
    // Five sockets with two rows each; U2 and U8 are the only two of one size.
    assertEquals(10, ALL.byKind().get(FaultKinds.BADLY_SEATED).size());
    assertEquals(1, ALL.byKind().get(FaultKinds.MISPLACED).size());
    // 2,048 bytes are 8 pages; of 8 bits and two levels each.
    assertEquals(8 * 8 * 2, ALL.byKind().get(FaultKinds.CELL_STUCK).size());
    long pads =
        SORREL.nets().stream()
            .flatMap(n -> n.pads().stream())
            .filter(p -> SORREL.part(p.ref()).map(PlacedPart::socketed).orElse(false))
            .count();
    assertEquals(pads, ALL.byKind().get(FaultKinds.OPEN_CONTACT).size());
    // Every piece of track can be cut, before the regulator as a break of the supply.
    int pieces = SORREL.nets().stream().mapToInt(n -> n.segments().size()).sum();
    long cuts = ALL.faults().stream().filter(f -> f.seat() == Seat.TRACK).count();
    assertEquals(pieces, cuts);
  }

  @Test
  void collapse_aDozenChips_needsNoMoreThanThreeThousandRuns() {
    assertTrue(ALL.collapsedSize() <= 3000, "runs: " + ALL.collapsedSize());
    assertTrue(ALL.size() > ALL.collapsedSize());
  }

  @Test
  void weights_all_areAboveZeroAndSumToOne() {
    ALL.entries().forEach(e -> assertTrue(e.weight() > 0, e.fault().text()));
    assertEquals(1, ALL.entries().stream().mapToDouble(FaultUniverse.Entry::weight).sum(), 1e-9);
  }

  @Test
  void repairs_everyFault_isSurelyCuredByOneOfThem() {
    for (FaultUniverse.Entry e : ALL.entries()) {
      assertTrue(ALL.repairs().stream().anyMatch(r -> r.cures(e.fault())), e.fault().text());
    }
  }
}
