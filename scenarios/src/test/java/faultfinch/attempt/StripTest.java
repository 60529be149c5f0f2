package faultfinch.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class StripTest {

  /** S is 53, R is 52: they differ in bit 0 alone. O is 4F, N is 4E: the same. */
  @Test
  void strip_lettersOneBitApart_marksThatColumnAlone() {
    Strip strip = Strip.of(List.of(0x52, 0x4E, 0x20), "SO");
    assertEquals(2, strip.cells().size());
    assertEquals(List.of(false, false, false, false, false, false, true), strip.differs());
  }

  /** Bit 7 is the dot below and no part of the letter. */
  @Test
  void strip_dotBelow_doesNotCount() {
    Strip strip = Strip.of(List.of(0x53 | 0x80), "S");
    assertEquals(0x53, strip.cells().get(0).shown());
    assertEquals(false, strip.differs().contains(true));
  }
}
