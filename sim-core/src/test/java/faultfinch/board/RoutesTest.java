package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The routes of the shipped boards. With {@code -Droutes.write=true} the tool writes them anew.
 *
 * <p>Sorrel is drawn coarse: no two of its tracks are close enough for solder. Tamarisk is drawn as
 * fine as one track between two pins of a chip asks for.
 */
class RoutesTest {
  private static final Path BOARDS = Path.of("src/main/resources/faultfinch/boards");

  /** Sums of hundredths and roots of them, in millimetres. */
  private static final double ROUNDING = 0.012;

  private static double clear(String board) {
    return board.equals("sorrel") ? 0.53 : 0.2;
  }

  /** Old routes go first: they may not fit the board any more, and then it could not be read. */
  private static void areWhatTheToolWrites(String board) throws IOException {
    Path file = BOARDS.resolve(board).resolve(RouteFile.NAME);
    boolean write = Boolean.getBoolean("routes.write");
    if (write) {
      Files.deleteIfExists(file);
    }
    Board read = BoardReader.read(BOARDS.resolve(board).resolve("board.json"));
    String laid = RouteFile.written(new Router(read, clear(board)).lay());
    if (write) {
      Files.writeString(file, laid);
    }
    assertEquals(Files.readString(file), laid);
  }

  @Test
  void routes_ofSorrel_areWhatTheToolWrites() throws IOException {
    areWhatTheToolWrites("sorrel");
  }

  /** Takes half a minute. */
  @Test
  @Tag("sweep")
  void routes_ofTamarisk_areWhatTheToolWrites() throws IOException {
    areWhatTheToolWrites("tamarisk");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void routes_ofABoard_leaveNoPieceOfItsNetsUnlaid(String name) {
    Board board = BoardReader.shipped(name);
    assertEquals(
        board.nets().stream().flatMap(n -> n.segments().stream()).toList(),
        board.tracks().stream().map(Track::segment).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void track_any_runsUnbrokenFromItsPadToItsPadInsideTheBoard(String name) {
    Board board = BoardReader.shipped(name);
    for (Track track : board.tracks()) {
      PadPlace from = place(board, track.segment().from());
      double x = from.x();
      double y = from.y();
      for (Track.Leg leg : track.legs()) {
        assertEquals(x, leg.fromX(), track.segment().text());
        assertEquals(y, leg.fromY(), track.segment().text());
        x = leg.toX();
        y = leg.toY();
        assertTrue(x > 0 && x < board.width() && y > 0 && y < board.height());
      }
      assertEquals(place(board, track.segment().to()).x(), x, track.segment().text());
      assertEquals(place(board, track.segment().to()).y(), y, track.segment().text());
    }
  }

  /** Also of one net: where two pieces met, cutting one would not part what it says it parts. */
  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void tracks_anyTwo_meetOnlyAtAPadOfBoth(String name) {
    Board board = BoardReader.shipped(name);
    List<Track> tracks = board.tracks();
    List<String> meeting = new ArrayList<>();
    for (int i = 0; i < tracks.size(); i++) {
      for (Track other : tracks.subList(0, i)) {
        double gap = gapApartFromCommonPads(board, tracks.get(i), other);
        if (gap < clear(name) - ROUNDING) {
          meeting.add(other.segment().text() + " " + tracks.get(i).segment().text() + " " + gap);
        }
      }
    }
    assertEquals(List.of(), meeting);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void track_any_touchesNoPadButItsOwn(String name) {
    Board board = BoardReader.shipped(name);
    List<PadPlace> pads =
        board.parts().stream().flatMap(p -> Footprint.of(p).pads().stream()).toList();
    for (Track track : board.tracks()) {
      for (PadPlace pad : pads) {
        boolean own =
            pad.pad().equals(track.segment().from()) || pad.pad().equals(track.segment().to());
        double gap = track.distance(pad.x(), pad.y()) - track.width() / 2 - Copper.PAD / 2;
        assertTrue(
            own || gap > Router.PAD_CLEAR - 0.06 - ROUNDING,
            () -> track.segment().text() + " " + pad.pad().text() + " " + gap);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void holes_anyOfAnotherPiece_keepClearOfEveryTrackAndHole(String name) {
    Board board = BoardReader.shipped(name);
    for (Track track : board.tracks()) {
      for (double[] hole : holes(track)) {
        for (Track other : board.tracks()) {
          if (other != track && apart(board, track, other, hole)) {
            double gap = other.distance(hole[0], hole[1]) - other.width() / 2 - 0.4;
            assertTrue(gap > clear(name) - ROUNDING, track.segment() + " " + other.segment());
          }
        }
      }
    }
  }

  @Test
  void neighbours_ofSorrel_areNone() {
    assertEquals(List.of(), BoardReader.shipped("sorrel").neighbours());
  }

  /** Every pair by every pair, without the squares that make it quick. */
  @Test
  void neighbours_ofTamarisk_areAllThatLieCloserThanHalfAMillimetre() {
    List<Track> tracks = BoardReader.shipped("tamarisk").tracks();
    List<TrackNeighbours> plain = new ArrayList<>();
    for (int i = 0; i < tracks.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (TrackNeighbours.are(tracks.get(j), tracks.get(i))) {
          plain.add(
              new TrackNeighbours(tracks.get(j), tracks.get(i), tracks.get(j).gap(tracks.get(i))));
        }
      }
    }
    assertEquals(plain, BoardReader.shipped("tamarisk").neighbours());
    System.out.println("Tamarisk: " + plain.size() + " pairs of tracks lie within 0.5 mm");
  }

  /** The board as a whole, and all but one piece in 100: less than twice the way and 40 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void tracks_ofABoard_makeNoGreatDetours(String name) {
    Board board = BoardReader.shipped(name);
    double copper = 0;
    double needed = 0;
    List<String> detours = new ArrayList<>();
    for (Track track : board.tracks()) {
      PadPlace from = place(board, track.segment().from());
      PadPlace to = place(board, track.segment().to());
      double must = Math.abs(from.x() - to.x()) + Math.abs(from.y() - to.y());
      if (track.length() > 2 * must + 40) {
        detours.add(track.segment().text());
      }
      copper += track.length();
      needed += must;
    }
    System.out.printf(
        Locale.ROOT,
        "%s: %.1f m of track where %.1f m would do; long ways round: %s%n",
        name,
        copper / 1e3,
        needed / 1e3,
        detours);
    assertTrue(copper < 1.2 * needed);
    assertTrue(detours.size() <= board.tracks().size() / 100, detours.toString());
  }

  /** 100 mm of 0.3 mm are 333 squares of 0.491 milliohms. */
  @Test
  void milliohms_hundredMillimetresOfThirtyFiveMicrometreCopper_areThoseOfItsSquares() {
    Pad pad = new Pad("U1", "A");
    Track.Leg leg = new Track.Leg(Track.Side.PARTS, 0, 0, 100, 0);
    Track track = new Track("N", new Net.Segment(pad, new Pad("U2", "A")), 0.3, List.of(leg));
    assertEquals(163.8, track.milliohms(), 0.1);
  }

  @Test
  void gap_twoParallelLegs_isBetweenTheirEdgesAndOnlyOnOneSide() {
    Net.Segment segment = new Net.Segment(new Pad("U1", "A"), new Pad("U2", "A"));
    Track one = new Track("A", segment, 0.3, List.of(leg(Track.Side.PARTS, 0, 0, 10, 0)));
    Track near = new Track("B", segment, 0.5, List.of(leg(Track.Side.PARTS, 5, 0.9, 15, 0.9)));
    Track below = new Track("C", segment, 0.3, List.of(leg(Track.Side.SOLDER, 5, -5, 5, 5)));
    Track across = new Track("D", segment, 0.3, List.of(leg(Track.Side.PARTS, 5, -5, 5, 5)));
    assertEquals(0.5, one.gap(near), 1e-9); // 0.9 less 0.15 and 0.25
    assertTrue(one.gap(below) > 1000);
    assertEquals(-0.3, one.gap(across), 1e-9);
  }

  @Test
  void file_writtenAndRead_isTheSame() {
    Board board = BoardReader.shipped("sorrel");
    byte[] file = RouteFile.written(board.tracks()).getBytes(StandardCharsets.UTF_8);
    assertEquals(
        board.tracks(), new RouteFile("routes.json", file).tracks(board.parts(), board.nets()));
  }

  private static Track.Leg leg(
      Track.Side side, double fromX, double fromY, double toX, double toY) {
    return new Track.Leg(side, fromX, fromY, toX, toY);
  }

  private static PadPlace place(Board board, Pad pad) {
    return Footprint.of(board.part(pad.ref()).orElseThrow()).pads().stream()
        .filter(p -> p.pad().equals(pad))
        .findFirst()
        .orElseThrow();
  }

  /** The gap between two tracks, legs left out that lie close to a pad at which both end. */
  private static double gapApartFromCommonPads(Board board, Track one, Track other) {
    double gap = one.gap(other);
    if (gap > 1 || common(one, other).isEmpty()) {
      return gap;
    }
    List<Track.Leg> ours = apart(board, one, other);
    List<Track.Leg> theirs = apart(board, other, one);
    if (ours.isEmpty() || theirs.isEmpty()) {
      return Double.MAX_VALUE;
    }
    return new Track(one.net(), one.segment(), one.width(), ours)
        .gap(new Track(other.net(), other.segment(), other.width(), theirs));
  }

  private static List<Pad> common(Track one, Track other) {
    List<Pad> ends = List.of(other.segment().from(), other.segment().to());
    return Stream.of(one.segment().from(), one.segment().to()).filter(ends::contains).toList();
  }

  private static boolean apart(Board board, Track one, Track other, double[] at) {
    return common(one, other).stream()
        .map(p -> place(board, p))
        .noneMatch(p -> Math.hypot(p.x() - at[0], p.y() - at[1]) < Router.AT_THE_PAD + Copper.GRID);
  }

  /** The legs of a track in steps of the grid, those left out that are close to a common pad. */
  private static List<Track.Leg> apart(Board board, Track track, Track other) {
    List<Track.Leg> steps = new ArrayList<>();
    for (Track.Leg leg : track.legs()) {
      int count = (int) Math.ceil(leg.length() / Copper.GRID);
      for (int i = 0; i < count; i++) {
        double x = leg.fromX() + (leg.toX() - leg.fromX()) * i / count;
        double y = leg.fromY() + (leg.toY() - leg.fromY()) * i / count;
        double toX = leg.fromX() + (leg.toX() - leg.fromX()) * (i + 1) / count;
        double toY = leg.fromY() + (leg.toY() - leg.fromY()) * (i + 1) / count;
        if (apart(board, track, other, new double[] {x, y})
            && apart(board, track, other, new double[] {toX, toY})) {
          steps.add(new Track.Leg(leg.side(), x, y, toX, toY));
        }
      }
    }
    return steps;
  }

  private static List<double[]> holes(Track track) {
    List<double[]> holes = new ArrayList<>();
    for (int i = 1; i < track.legs().size(); i++) {
      if (track.legs().get(i).side() != track.legs().get(i - 1).side()) {
        holes.add(new double[] {track.legs().get(i).fromX(), track.legs().get(i).fromY()});
      }
    }
    return holes;
  }
}
