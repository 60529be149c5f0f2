package faultfinch.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.workbench.ScriptedPlay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CasebookViewModelTest {

  private final List<Integer> opened = new ArrayList<>();
  private final CasebookViewModel model = new CasebookViewModel(ScriptedPlay.cases(), opened::add);

  @Test
  void next_afterTheLast_isTheFirst() {
    model.open(9);
    model.openNext();
    model.openNext();
    assertEquals(List.of(9, 10, 1), opened);
  }

  @Test
  void case_solved_saysSo() {
    model.open(2);
    assertEquals("on the bench", model.state(model.cases().get(1)));
    model.solvedNow();
    assertEquals("\u2713 solved", model.state(model.cases().get(1)));
    assertEquals("", model.state(model.cases().get(0)));
  }
}
