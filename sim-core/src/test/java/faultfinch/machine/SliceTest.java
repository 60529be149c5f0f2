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
    assertEquals(List.of(1, 4, 7), Slice.of(SEVEN, "1/3"));
    assertEquals(List.of(2, 5), Slice.of(SEVEN, "2/3"));
    assertEquals(List.of(3, 6), Slice.of(SEVEN, "3/3"));
    assertEquals(SEVEN, Slice.of(SEVEN, "1/1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0/3", "4/3", "2", "2/0", "half", ""})
  void slice_thatIsNone_isRefused(String slice) {
    assertThrows(IllegalArgumentException.class, () -> Slice.of(SEVEN, slice));
  }
}
