package faultfinch.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.PadPlace;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TrackLayerTest {

  private static final Board BOARD = BoardReader.shipped("sorrel");
  private static final BoardPlan PLAN = new BoardPlan(BOARD);
  private static final List<Track> TRACKS = TrackLayer.lay(BOARD);

  @Test
  void tracks_ofABoard_areOneForEachPieceOfItsNets() {
    assertEquals(
        BOARD.nets().stream().flatMap(n -> n.segments().stream()).toList(),
        TRACKS.stream().map(Track::segment).toList());
  }

  @Test
  void track_any_runsUnbrokenFromItsPadToItsPad() {
    for (Track track : TRACKS) {
      PadPlace from = PLAN.place(track.segment().from());
      double x = from.x();
      double y = from.y();
      for (Track.Leg leg : track.legs()) {
        assertEquals(x, leg.fromX(), 1e-9, track.segment().text());
        assertEquals(y, leg.fromY(), 1e-9, track.segment().text());
        x = leg.toX();
        y = leg.toY();
      }
      PadPlace to = PLAN.place(track.segment().to());
      assertEquals(to.x(), x, 1e-9, track.segment().text());
      assertEquals(to.y(), y, 1e-9, track.segment().text());
    }
  }

  @Test
  void tracks_ofDifferentNets_shareNoCornerOnOneSide() {
    Map<String, String> netAt = new HashMap<>();
    for (Track track : TRACKS) {
      for (Track.Leg leg : track.legs()) {
        String corner = leg.side() + " " + leg.toX() + " " + leg.toY();
        String other = netAt.putIfAbsent(corner, track.net());
        assertTrue(other == null || other.equals(track.net()), corner + track.net() + other);
      }
    }
  }

  @Test
  void tracks_laidTwice_areTheSame() {
    assertEquals(TRACKS, TrackLayer.lay(BOARD));
  }
}
