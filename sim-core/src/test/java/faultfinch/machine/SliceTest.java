package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SliceTest {
  private static final List<Integer> SEVEN = List.of(1, 2, 3, 4, 5, 6, 7);

  @Test
  void slices_ofSeven_takeEachOnce() {
    assertEquals(List.of(1, 4, 7), Slice.of(SEVEN, n -> n, "1/3"));
    assertEquals(List.of(2, 5), Slice.of(SEVEN, n -> n, "2/3"));
    assertEquals(List.of(3, 6), Slice.of(SEVEN, n -> n, "3/3"));
    assertEquals(SEVEN, Slice.of(SEVEN, n -> n, "1/1"));
  }

  /** Runs by the half of a number: 0, 1, 1, 2, 2, 3, 3. */
  @Test
  void thoseThatShareARun_stayTogether() {
    assertEquals(List.of(1, 4, 5), Slice.of(SEVEN, n -> n / 2, "1/2"));
    assertEquals(List.of(2, 3, 6, 7), Slice.of(SEVEN, n -> n / 2, "2/2"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0/3", "4/3", "2", "2/0", "half", ""})
  void slice_thatIsNone_isRefused(String slice) {
    assertThrows(IllegalArgumentException.class, () -> Slice.of(SEVEN, n -> n, slice));
  }
}
