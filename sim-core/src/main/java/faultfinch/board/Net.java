package faultfinch.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A net as its track runs: pads in the order the track visits them and the segments that join them.
 *
 * @param segments as many as pads less one; together they make a tree
 */
public record Net(String name, List<Pad> pads, List<Segment> segments) {

  /** A piece of track between two pads of the net. */
  public record Segment(Pad from, Pad to) {

    /** Written {@code U1.D0-U2.D0}. */
    public String text() {
      return from.text() + "-" + to.text();
    }
  }

  public Net {
    pads = List.copyOf(pads);
    segments = List.copyOf(segments);
  }

  /** The net without some pads: what went on from one of them goes on from the pad before it. */
  Net without(Predicate<Pad> gone) {
    Map<Pad, Pad> before = new LinkedHashMap<>();
    segments.forEach(s -> before.put(s.to(), s.from()));
    List<Pad> stay = pads.stream().filter(gone.negate()).toList();
    List<Segment> joined = new ArrayList<>();
    for (Pad pad : stay.subList(Math.min(1, stay.size()), stay.size())) {
      Pad from = before.get(pad);
      while (from != null && gone.test(from)) {
        from = before.get(from);
      }
      // Where all before it are gone, the first that stays is where the track begins.
      joined.add(new Segment(from == null ? stay.get(0) : from, pad));
    }
    return new Net(name, stay, joined);
  }

  /** The net with a track that begins at one of its pads. */
  Net and(Net track) {
    List<Pad> all = new ArrayList<>(pads);
    all.addAll(track.pads.subList(1, track.pads.size()));
    List<Segment> pieces = new ArrayList<>(segments);
    pieces.addAll(track.segments);
    return new Net(name, all, pieces);
  }
}
