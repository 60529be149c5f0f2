package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearCopyTest {
  private static final List<String> ROWS =
      List.of("Ready and waiting", "ready and waiting", "R#ady and waiting", "########");

  private static List<String> of(String copied) {
    return NearCopy.of(copied, List.of("healthy", "small", "spoilt", "solid"), ROWS);
  }

  @Test
  void textThatIsMostLikeOneOutcome_isThat() {
    assertEquals(List.of("spoilt"), of("R#ady and w#iting"));
  }

  @Test
  void textThatIsNoLessLikeTheHealthy_isNone() {
    assertEquals(List.of(), of("Ready ind waiting"));
  }

  @Test
  void textThatIsLikeNothing_isNone() {
    assertEquals(List.of(), of("something else"));
  }

  @Test
  void shortText_isNone() {
    assertEquals(List.of(), of("R#ady"));
  }
}
