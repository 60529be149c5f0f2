package faultfinch.board;

import java.util.List;

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
}
