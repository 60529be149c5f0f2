package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the outputs of the amplifier rest, by the levels at its inputs. */
class DualAmplifierTest {
  private final BenchPins bench = new BenchPins(new DualAmplifier());

  @ParameterizedTest
  @CsvSource({"2000, 1500, H", "1500, 2000, L", "1500, 1500, L", "40, 39, H"})
  void comparator_twoLevels_goesToTheEndTheHigherSays(int in, int inv, char out) {
    bench.millivolts("IN2", in).millivolts("INV2", inv);
    assertEquals(out, bench.out("OUT2"));
  }

  @Test
  void filter_biasThere_restsAtItAndFallsWithoutIt() {
    bench.millivolts("IN1", 2500);
    assertEquals('H', bench.out("OUT1"));
    bench.millivolts("IN1", 240);
    assertEquals('L', bench.out("OUT1"));
  }
}
