package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import faultfinch.signal.BadInput;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Routes that are not right, each told in one line. */
class RouteFileTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final String GOOD = RouteFile.written(SORREL.tracks());

  /** The first two lines of tracks; J1.+ lies at 6, 11 and F1.1 behind it. */
  private static String first() {
    return GOOD.split("\n")[3].strip();
  }

  private static String says(String file) {
    return assertThrows(
            BadInput.class,
            () ->
                new RouteFile("routes.json", file.getBytes(StandardCharsets.UTF_8))
                    .tracks(SORREL.parts(), SORREL.nets()))
        .getMessage();
  }

  @Test
  void tracks_onePieceMissing_isNamedWithItsNet() {
    assertEquals(
        "routes.json:3:13: found no track J1.+-F1.1 of net 9V, right would be one for each piece",
        says(GOOD.replace(first() + "\n", "")));
  }

  @Test
  void tracks_onePieceTooMany_isNamed() {
    String more = "\"U1.D0-U99.D0\": \"0.3 P 1,1 2,2\",\n    ";
    assertEquals(
        "routes.json:4:21: found track 'U1.D0-U99.D0', right would be a piece of track of the"
            + " board's nets",
        says(GOOD.replace(first(), more + first())));
  }

  @Test
  void track_notAsWritten_isShownWithAnExample() {
    String bad = first().replaceFirst("\": \".*\"", "\": \"wide P 1,1\"");
    assertEquals(
        "routes.json:4:18: found 'wide P 1,1', right would be width, side and corners, such as"
            + " '0.3 P 10,20 S 10,31.5'",
        says(GOOD.replace(first(), bad)));
  }

  @Test
  void track_beginningBesideItsPad_isToldWhereThePadIs() {
    PadPlace pad = Footprint.of(SORREL.part("J1").orElseThrow()).pads().get(0);
    String bad = first().replaceFirst("\": \".*\"", "\": \"0.8 P 1,1 2,1\"");
    String at = String.format("%s,%s", trimmed(pad.x()), trimmed(pad.y()));
    assertEquals(
        "routes.json:4:18: found a track from 1,1, right would be " + at + ", the pad J1.+",
        says(GOOD.replace(first(), bad)));
  }

  private static String trimmed(double millimetres) {
    return Double.toString(millimetres).replaceFirst("\\.0$", "");
  }
}
