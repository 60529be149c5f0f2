package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.BoardReader;
import faultfinch.diagnosis.Share;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Parts of one type that are about as likely are one row of a ranking. */
class AlikeTest {
  private static final Alike TAMARISK = new Alike(BoardReader.shipped("tamarisk"));

  private static Ranking.Row row(String part, double belief) {
    return new Ranking.Row(
        List.of(new Share(part, belief)),
        List.of(new Share("exchange " + part, belief)),
        List.of());
  }

  private static List<String> gathered(Ranking.Row... rows) {
    return TAMARISK.gathered(List.of(rows)).stream()
        .map(r -> String.join(" ", r.parts().stream().map(Share::what).toList()))
        .toList();
  }

  @Test
  void threeMemoriesAboutAlike_areOneRow_andItComesFirst() {
    List<Ranking.Row> rows =
        TAMARISK.gathered(
            List.of(row("U1", 0.25), row("U5", 0.125), row("U6", 0.125), row("U7", 0.125)));
    assertEquals("U5", rows.get(0).part());
    assertEquals(0.375, rows.get(0).belief());
    assertEquals(List.of("U1"), rows.get(1).parts().stream().map(Share::what).toList());
  }

  @Test
  void oneThatIsMuchLikelier_standsByItself() {
    assertEquals(
        List.of("U8", "U5 U6 U7"),
        gathered(row("U8", 0.5), row("U5", 0.1), row("U6", 0.1), row("U7", 0.1)));
  }

  @Test
  void two_orThoseOfOtherTypes_areNamedOneByOne() {
    assertEquals(
        List.of("U5", "U6", "U1"), gathered(row("U5", 0.2), row("U6", 0.2), row("U1", 0.2)));
  }

  @Test
  void placesThatAreNoParts_areNamedOneByOne() {
    assertEquals(
        List.of("brick", "lead", "F1"),
        gathered(row("brick", 0.2), row("lead", 0.2), row("F1", 0.2)));
  }

  /** Sixty keys are not sixty names. */
  @Test
  void manyAlike_areNamedInPart() {
    List<Ranking.Row> keys =
        IntStream.rangeClosed(10, 19).mapToObj(i -> row("K" + i, 0.05)).toList();
    assertEquals(
        "one of K10, K11, K12, K13, K14, K15, K16, K17 and 2 more",
        TAMARISK.gathered(keys).get(0).called(new Words()));
    assertEquals(
        "one of K10, K11, K12", TAMARISK.gathered(keys.subList(0, 3)).get(0).called(new Words()));
  }
}
