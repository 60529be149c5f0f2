package faultfinch.board;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Reads one net's track: pads with one blank between, each joined to the one before it. A branch in
 * brackets leaves from the pad before the bracket, and after it the track goes on from that pad.
 */
final class TrackReader {
  private final Located track;
  private final String text;
  private final PartList parts;
  private final List<Pad> pads = new ArrayList<>();
  private final List<Integer> columns = new ArrayList<>();
  private final List<Net.Segment> segments = new ArrayList<>();
  private final Deque<Pad> leaves = new ArrayDeque<>();
  private final Deque<Integer> open = new ArrayDeque<>();
  private Pad last;
  private int at;

  TrackReader(Located track, PartList parts) {
    this.track = track;
    this.text = track.text();
    this.parts = parts;
  }

  /** The net; its pads stand in the order they are written. */
  Net net(String name) {
    pad();
    while (at < text.length()) {
      next();
    }
    if (!open.isEmpty()) {
      throw track.wrongAt(open.peek(), "a bracket that is not closed", "a ) after the branch");
    }
    return new Net(name, pads, segments);
  }

  /** That a pad is not right; the pads are numbered from 0 in the order they are written. */
  RuntimeException wrong(int pad, String found, String right) {
    return track.wrongAt(columns.get(pad), found, right);
  }

  private void next() {
    char c = text.charAt(at);
    if (c == ')') {
      if (open.isEmpty()) {
        throw track.wrongAt(at, "')' that closes nothing", "a ( before the branch");
      }
      open.pop();
      last = leaves.pop();
      at++;
    } else if (c == ' ') {
      at++;
      if (at < text.length() && text.charAt(at) == '(') {
        open.push(at);
        leaves.push(last);
        at++;
      }
      pad();
    } else {
      throw track.wrongAt(at, "'" + c + "'", "a blank, or ) at the end of a branch");
    }
  }

  private void pad() {
    int from = at;
    while (at < text.length() && " ()".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    if (at == from) {
      String found = at == text.length() ? "the end of the track" : "'" + text.charAt(at) + "'";
      throw track.wrongAt(at, found, "a pin, written for example U4.Y0/");
    }
    Pad pad = parts.pad(track, from, at);
    pads.add(pad);
    columns.add(from);
    if (last != null) {
      segments.add(new Net.Segment(last, pad));
    }
    last = pad;
  }
}
