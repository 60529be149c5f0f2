package faultfinch.board;

import faultfinch.signal.BadInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The routes that lie beside a board file: where on the board each piece of track of its nets runs.
 *
 * <p>A track is written {@code 0.3 P 10,20 12.7,20 S 12.7,31}: millimetres of width, the side (P
 * part side, S solder side), the corners; a letter in between is a hole to the other side.
 */
final class RouteFile {
  static final String NAME = "routes.json";

  /** Millimetres from the middle of a pad to its edge. */
  private static final double PAD_RADIUS = 0.8;

  private static final String NUMBER = "\\d{1,4}(\\.\\d{1,3})?";
  private static final Pattern TRACK =
      Pattern.compile(
          NUMBER
              + " [PS]( "
              + NUMBER
              + ","
              + NUMBER
              + ")+( [PS]( "
              + NUMBER
              + ","
              + NUMBER
              + ")+)*");
  private static final String RIGHT = "width, side and corners, such as '0.3 P 10,20 S 10,31.5'";

  private final Located root;
  private final Map<String, Located> texts = new LinkedHashMap<>();

  RouteFile(String shown, byte[] bytes) {
    root = Located.read(shown, bytes).keys(List.of("format", "tracks"), List.of());
    root.get("format").whole(1, 1);
    root.get("tracks").entries().forEach(e -> texts.put(e.key().text(), e.value()));
  }

  /**
   * The tracks in the order of the nets and their segments.
   *
   * @throws BadInput if one is missing, too many, or does not run from its pad to its pad
   */
  List<Track> tracks(List<PlacedPart> parts, List<Net> nets) {
    Map<Pad, PadPlace> places = new LinkedHashMap<>();
    parts.forEach(p -> Footprint.of(p).pads().forEach(q -> places.put(q.pad(), q)));
    List<Track> tracks = new ArrayList<>();
    for (Net net : nets) {
      for (Net.Segment s : net.segments()) {
        Located text = texts.remove(s.text());
        if (text == null) {
          throw root.get("tracks")
              .wrong("no track " + s.text() + " of net " + net.name(), "one for each piece");
        }
        Track track = track(net.name(), s, text);
        check(track, places.get(s.from()), places.get(s.to()), text);
        tracks.add(track);
      }
    }
    if (!texts.isEmpty()) {
      Map.Entry<String, Located> first = texts.entrySet().iterator().next();
      throw first
          .getValue()
          .wrong("track '" + first.getKey() + "'", "a piece of track of the board's nets");
    }
    return List.copyOf(tracks);
  }

  /**
   * Those of the tracks that an overlay leaves where they are. A piece that would run under a pad
   * of an added part had to be laid otherwise, and nobody did.
   *
   * @param added references of the parts that the overlay adds
   */
  List<Track> left(List<PlacedPart> parts, List<Net> nets, Set<String> added) {
    Map<Pad, PadPlace> places = new LinkedHashMap<>();
    parts.forEach(p -> Footprint.of(p).pads().forEach(q -> places.put(q.pad(), q)));
    List<PadPlace> in =
        places.values().stream().filter(p -> added.contains(p.pad().ref())).toList();
    List<Track> tracks = new ArrayList<>();
    for (Net net : nets) {
      for (Net.Segment s : net.segments()) {
        Located text = texts.get(s.text());
        if (text != null) {
          Track track = track(net.name(), s, text);
          double clear = track.width() / 2 + PAD_RADIUS;
          boolean ends = begins(track, places.get(s.from())) && ends(track, places.get(s.to()));
          if (ends && in.stream().noneMatch(p -> track.distance(p.x(), p.y()) < clear)) {
            tracks.add(track);
          }
        }
      }
    }
    return List.copyOf(tracks);
  }

  private static Track track(String net, Net.Segment segment, Located text) {
    String[] words = text.text(TRACK, RIGHT).split(" ");
    List<Track.Leg> legs = new ArrayList<>();
    Track.Side side = Track.Side.PARTS;
    double[] last = {};
    for (int i = 1; i < words.length; i++) {
      if (words[i].equals("P") || words[i].equals("S")) {
        side = words[i].equals("P") ? Track.Side.PARTS : Track.Side.SOLDER;
      } else {
        String[] at = words[i].split(",");
        double[] point = {Double.parseDouble(at[0]), Double.parseDouble(at[1])};
        if (last.length > 0) {
          legs.add(new Track.Leg(side, last[0], last[1], point[0], point[1]));
        }
        last = point;
      }
    }
    double width = Double.parseDouble(words[0]);
    if (legs.isEmpty() || width == 0) {
      throw text.wrong(RIGHT);
    }
    return new Track(net, segment, width, legs);
  }

  private static void check(Track track, PadPlace from, PadPlace to, Located text) {
    Track.Leg first = track.legs().get(0);
    Track.Leg last = track.legs().get(track.legs().size() - 1);
    if (!begins(track, from)) {
      throw text.wrong("a track from " + point(first.fromX(), first.fromY()), at(from));
    }
    if (!ends(track, to)) {
      throw text.wrong("a track to " + point(last.toX(), last.toY()), at(to));
    }
  }

  private static boolean begins(Track track, PadPlace from) {
    Track.Leg first = track.legs().get(0);
    return first.fromX() == from.x() && first.fromY() == from.y();
  }

  private static boolean ends(Track track, PadPlace to) {
    Track.Leg last = track.legs().get(track.legs().size() - 1);
    return last.toX() == to.x() && last.toY() == to.y();
  }

  private static String at(PadPlace place) {
    return point(place.x(), place.y()) + ", the pad " + place.pad().text();
  }

  /** A file of these tracks; read again it gives the same. */
  static String written(List<Track> tracks) {
    StringBuilder file = new StringBuilder("{\n  \"format\": 1,\n  \"tracks\": {");
    String before = "\n";
    for (Track track : tracks) {
      file.append(before).append("    \"").append(track.segment().text()).append("\": \"");
      file.append(written(track)).append('"');
      before = ",\n";
    }
    return file.append("\n  }\n}\n").toString();
  }

  private static String written(Track track) {
    StringBuilder text = new StringBuilder(number(track.width()));
    Track.Leg before = null;
    for (Track.Leg leg : track.legs()) {
      if (before == null || before.side() != leg.side()) {
        text.append(leg.side() == Track.Side.PARTS ? " P" : " S");
      }
      if (before == null) {
        text.append(' ').append(point(leg.fromX(), leg.fromY()));
      }
      text.append(' ').append(point(leg.toX(), leg.toY()));
      before = leg;
    }
    return text.toString();
  }

  private static String point(double x, double y) {
    return number(x) + "," + number(y);
  }

  private static String number(double millimetres) {
    String text = String.format(Locale.ROOT, "%.2f", millimetres);
    return text.replaceFirst("\\.?0+$", "");
  }
}
