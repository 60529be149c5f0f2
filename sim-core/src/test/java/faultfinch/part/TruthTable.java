package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.signal.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * A data sheet's truth table as text: a heading of pins, inputs left of the bar and outputs right
 * of it, then a row a line. A {@code #} in a pin's name stands for a lane.
 *
 * <p>Inputs: L, H, X (either; both are tried), ^ and v (a rising and a falling edge). Outputs: L,
 * H, Z (lets go), = (as in the row before). Rows are worked from the top with a commit after each.
 */
final class TruthTable {
  private final List<String> inputs;
  private final List<String> outputs;
  private final List<String> rows;

  private TruthTable(List<String> lines) {
    this.inputs = words(lines.get(0).split("\\|")[0]);
    this.outputs = words(lines.get(0).split("\\|")[1]);
    this.rows = lines.subList(1, lines.size());
  }

  static TruthTable of(String text) {
    return new TruthTable(text.strip().lines().toList());
  }

  /** Works the table once for each lane on a fresh part. */
  void holdsFor(Part part, String... lanes) {
    for (String lane : lanes) {
      for (boolean either : new boolean[] {false, true}) {
        work(part, lane, either);
      }
    }
  }

  private void work(Part part, String lane, boolean either) {
    BenchPins bench = new BenchPins(part);
    List<Character> last = new ArrayList<>();
    for (String row : rows) {
      List<String> in = words(row.split("\\|")[0]);
      List<String> out = words(row.split("\\|")[1]);
      for (int i = 0; i < inputs.size(); i++) {
        String pin = inputs.get(i).replace("#", lane);
        switch (in.get(i)) {
          case "L", "^" -> bench.low(pin);
          case "H", "v" -> bench.high(pin);
          case "X" -> bench.set(pin, either);
          default -> throw new IllegalArgumentException("input " + in.get(i));
        }
      }
      if (in.contains("^") || in.contains("v")) {
        bench.commit(Phase.C_COL);
        for (int i = 0; i < inputs.size(); i++) {
          if ("^v".contains(in.get(i))) {
            bench.set(inputs.get(i).replace("#", lane), in.get(i).equals("^"));
          }
        }
      }
      List<Character> seen = new ArrayList<>();
      bench.commit(Phase.C_COL);
      for (int o = 0; o < outputs.size(); o++) {
        seen.add(bench.out(outputs.get(o).replace("#", lane)));
        char right = out.get(o).equals("=") ? last.get(o) : out.get(o).charAt(0);
        assertEquals(right, seen.get(o), "lane " + lane + ", row " + row + ", " + outputs.get(o));
      }
      last = seen;
    }
  }

  private static List<String> words(String text) {
    return List.of(text.strip().split("\\s+"));
  }
}
