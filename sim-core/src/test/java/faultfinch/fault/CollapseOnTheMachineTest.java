package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.part.CharDisplay;
import faultfinch.part.Sram6116;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Faults said to share a run are run one by one, and must come out the same. */
class CollapseOnTheMachineTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final FaultUniverse ALL = FaultUniverse.of(SORREL);
  private static final long BOOT_NS = 75_000_000;
  private static final int SAMPLE = 40;

  @Test
  void groups_fewOfThem_runAlike() {
    List<List<Fault>> groups = shared();
    for (int i = 0; i < groups.size(); i += groups.size() / SAMPLE) {
      List<Fault> group = groups.get(i);
      alike(group.get(0), group.get(group.size() - 1));
    }
  }

  @Test
  @Tag("sweep")
  void groups_all_runAlikeMemberByMember() {
    for (List<Fault> group : shared()) {
      group.forEach(f -> alike(group.get(0), f));
    }
  }

  private static List<List<Fault>> shared() {
    return ALL.groups().stream().filter(g -> g.size() > 1).toList();
  }

  private static void alike(Fault one, Fault other) {
    assertEquals(outcome(one), outcome(other), one.text() + " | " + other.text());
  }

  private static List<Object> outcome(Fault fault) {
    Machine machine = new Machine(Setup.healthy(SORREL, 1).with(List.of(fault)), Machine.Kind.FAST);
    machine.runTo(BOOT_NS);
    List<Object> outcome = new ArrayList<>();
    outcome.add(machine.milestones());
    outcome.add(machine.cycles());
    outcome.add(machine.programCounter());
    outcome.add(machine.locked());
    for (int i = 0; i < CharDisplay.CELLS.count(); i++) {
      outcome.add(machine.cell("U9", CharDisplay.CELLS, i));
    }
    for (int i = 0; i < Sram6116.CELLS.count(); i++) {
      outcome.add(machine.cell("U3", Sram6116.CELLS, i));
    }
    return outcome;
  }
}
