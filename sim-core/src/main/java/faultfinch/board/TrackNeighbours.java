package faultfinch.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

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
    Map<String, Set<Integer>> squares = new HashMap<>();
    List<TrackNeighbours> found = new ArrayList<>();
    for (int i = 0; i < tracks.size(); i++) {
      Set<Integer> near = new TreeSet<>();
      for (String square : squares(tracks.get(i))) {
        Set<Integer> there = squares.computeIfAbsent(square, s -> new LinkedHashSet<>());
        near.addAll(there);
        there.add(i);
      }
      for (int j : near) {
        double gap = tracks.get(j).gap(tracks.get(i));
        if (gap < CLOSE && !tracks.get(j).net().equals(tracks.get(i).net())) {
          found.add(new TrackNeighbours(tracks.get(j), tracks.get(i), gap));
        }
      }
    }
    return List.copyOf(found);
  }

  /** The squares of the board that a track touches or comes close to. */
  private static Set<String> squares(Track track) {
    double reach = track.width() / 2 + CLOSE;
    Set<String> squares = new LinkedHashSet<>();
    for (Track.Leg leg : track.legs()) {
      int right = square(Math.max(leg.fromX(), leg.toX()) + reach);
      int bottom = square(Math.max(leg.fromY(), leg.toY()) + reach);
      for (int x = square(Math.min(leg.fromX(), leg.toX()) - reach); x <= right; x++) {
        for (int y = square(Math.min(leg.fromY(), leg.toY()) - reach); y <= bottom; y++) {
          squares.add(leg.side() + " " + x + " " + y);
        }
      }
    }
    return squares;
  }

  private static int square(double millimetres) {
    return (int) Math.floor(millimetres / SQUARE);
  }
}
