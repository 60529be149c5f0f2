package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CoverageTest {

  @Test
  void coverage_fiveFaultsOfWhichEachTierShowsMore_isAsCountedOnPaper() {
    // Owner: a and b, alike. Bench ROM: parts a from b. Powered: shows c. Any: shows d. e never
    // shows.
    Toy toy =
        new Toy()
            .look("screen", 1)
            .look("bench ROM", 4)
            .look("probe 1", 1)
            .look("ohms 1", 1)
            .fault("a", "U1", 4, "screen", "dark", "probe 1", "low")
            .fault("b", "U2", 2, "screen", "dark", "bench ROM", "lamp no pulse")
            .fault("c", "U3", 1, "probe 1", "low")
            .fault("c2", "U3", 1, "probe 1", "low")
            .fault("d", "U4", 1, "ohms 1", "0")
            .fault("e", "U5", 1);
    List<Coverage> coverage = Coverage.of(toy.dictionary(), toy.suspects(), ErrorRates.shipped());
    assertEquals(
        new Coverage(ErrorRates.Tier.OWNER, 6, 2 / 6.0, 6 / 10.0, 1, 2, 2, 0, 0), coverage.get(0));
    assertEquals(
        new Coverage(ErrorRates.Tier.BENCH_ROM, 6, 2 / 6.0, 6 / 10.0, 2, 1, 1, 1, 1),
        coverage.get(1));
    // Groups {a}, {b}, {c, c2}: a fault has (1 + 1 + 2 + 2) / 4 faults in its group, one repair.
    assertEquals(
        new Coverage(ErrorRates.Tier.POWERED, 6, 4 / 6.0, 8 / 10.0, 3, 1.5, 1, 1, 1),
        coverage.get(2));
    assertEquals(5 / 6.0, coverage.get(3).visible());
    assertEquals(4, coverage.get(3).classes());
  }

  @Test
  void excited_someFaultsAndNotByLook_isTheirShareByWeight() {
    // b is excited and shows, c is excited and shows nowhere; a shows in ohms alone. 2 + 3 of 9.
    Toy toy =
        new Toy()
            .look("ohms 1", 1)
            .look("probe 1", 1)
            .fault("a", "U1", 4, "ohms 1", "0")
            .fault("b", "U2", 2, "probe 1", "low")
            .fault("c", "U3", 3)
            .excited("b", "c");
    assertEquals(OptionalDouble.of(5 / 9.0), Coverage.excited(toy.dictionary(), toy.suspects()));
  }
}
