package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sentences part where one thing ends and the next begins. */
class PiecesTest {

  @Test
  void commas_butsAndThoughs_partPieces() {
    assertEquals(
        List.of("display black", "chord plays", "lamp out", "no keys"),
        Pieces.of("display black though chord plays, lamp out but no keys"));
  }

  @Test
  void fullStopsAndCalls_partPieces_whereAnotherBegins() {
    assertEquals(
        List.of("No sound", "Picture fine", "5.0 V there"),
        Pieces.of("No sound. Picture fine! 5.0 V there"));
  }

  @Test
  void pairsOfLinesAndFigures_partPieces_andCodesOfALampDoNot() {
    assertEquals(
        List.of("D0 1.1", "D1 1.0 V", "U16 3Y 3.0"), Pieces.of("D0 1.1 D1 1.0 V, U16 3Y 3.0"));
    assertEquals(List.of("bench ROM blinks 1, then 2"), Pieces.of("bench ROM blinks 1, 2"));
    assertEquals(List.of("lamp 1", "2 V at U9"), Pieces.of("lamp 1, 2 V at U9"));
  }

  @Test
  void quotes_stayWhole() {
    assertEquals(
        List.of("it says \"no, but yes\"", "and stops"),
        Pieces.of("it says \"no, but yes\", and stops"));
  }

  @Test
  void whatIsSaidOfAGoodBoardInBrackets_staysWhole() {
    assertEquals(
        List.of("0.1 V (good one 1.8, pulsing)", "U9 warm"),
        Pieces.of("0.1 V (good one 1.8, pulsing), U9 warm"));
  }

  @Test
  void namesInARow_stayTogether() {
    assertEquals(List.of("keys A and E and I dead"), Pieces.of("keys A, E and I dead"));
  }

  @Test
  void exceptions_areNoPieceOfTheirOwn() {
    assertEquals(List.of("all dead but for the lamp"), Pieces.of("all dead but for the lamp"));
    assertEquals(
        Optional.of(new Pieces.Except("all dead", "the lamp")),
        Pieces.except("all dead but for the lamp"));
    assertEquals(Optional.empty(), Pieces.except("all dead"));
  }

  @Test
  void halves_areWhatStandsRoundAnAnd() {
    assertEquals(
        List.of(List.of("no picture", "no sound")), Pieces.halves("no picture and no sound"));
    assertEquals(List.of(), Pieces.halves("it says \"this and that\""));
  }
}
