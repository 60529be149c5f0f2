package faultfinch.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Two pieces of track of different nets so close together that a whisker or a splash of solder
 * joins them.
 *
 * @param one the one that comes first on the board
 * @param gap millimetres of bare board between them where they are nearest
 */
public record TrackNeighbours(Track one, Track other, double gap) {

  /** Farther apart nothing joins them; millimetres. */
  public static final double CLOSE = 0.5;

  private static final double SQUARE = 5;

  /** The place between two pieces of track, written {@code U1.D0-U2.D0&U1.D1-U2.D1}. */
  public static String text(Net.Segment one, Net.Segment other) {
    return one.text() + "&" + other.text();
  }

  /** The place between them. */
  public String text() {
    return text(one.segment(), other.segment());
  }

  /** Whether two tracks are neighbours. */
  public static boolean are(Track one, Track other) {
    return !one.net().equals(other.net()) && one.gap(other) < CLOSE;
  }

  /** All neighbours among the tracks of a board, each pair once, in the order of the tracks. */
  static List<TrackNeighbours> among(List<Track> tracks) {
    Map<Integer, BitSet> squares = new HashMap<>();
    List<TrackNeighbours> found = new ArrayList<>();
    for (int i = 0; i < tracks.size(); i++) {
      Track track = tracks.get(i);
      BitSet near = new BitSet();
      for (int square : squares(track)) {
        BitSet there = squares.computeIfAbsent(square, s -> new BitSet());
        near.or(there);
        there.set(i);
      }
      for (int j = near.nextSetBit(0); j >= 0; j = near.nextSetBit(j + 1)) {
        Track other = tracks.get(j);
        if (!other.net().equals(track.net())) {
          double gap = other.gap(track);
          if (gap < CLOSE) {
            found.add(new TrackNeighbours(other, track, gap));
          }
        }
      }
    }
    return List.copyOf(found);
  }

  /** The squares of the board that a track touches or comes close to, each a number. */
  private static int[] squares(Track track) {
    double reach = track.width() / 2 + CLOSE;
    int count = 0;
    int[] squares = new int[16];
    for (Track.Leg leg : track.legs()) {
      int left = square(Math.min(leg.fromX(), leg.toX()) - reach);
      int right = square(Math.max(leg.fromX(), leg.toX()) + reach);
      int top = square(Math.min(leg.fromY(), leg.toY()) - reach);
      int bottom = square(Math.max(leg.fromY(), leg.toY()) + reach);
      int needed = count + (right - left + 1) * (bottom - top + 1);
      squares = needed > squares.length ? Arrays.copyOf(squares, 2 * needed) : squares;
      for (int x = left; x <= right; x++) {
        for (int y = top; y <= bottom; y++) {
          squares[count++] = (leg.side().ordinal() << 30) + (x << 15) + y;
        }
      }
    }
    return Arrays.copyOf(squares, count);
  }

  private static int square(double millimetres) {
    return (int) Math.floor(millimetres / SQUARE);
  }
}
