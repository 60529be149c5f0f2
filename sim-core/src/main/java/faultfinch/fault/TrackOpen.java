package faultfinch.fault;

import faultfinch.board.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A cut piece of track between two pads of one net. */
public record TrackOpen(String net, Net.Segment segment) implements Fault {

  static Optional<Fault> read(Words words) {
    Net net = words.net();
    Net.Segment segment = words.segment();
    return words.anatomy().feedsThrough(net, segment)
        ? Optional.empty()
        : Optional.of(new TrackOpen(net.name(), segment));
  }

  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    for (Net net : anatomy.board().nets()) {
      for (Net.Segment s : net.segments()) {
        if (!anatomy.feedsThrough(net, s)) {
          faults.add(new TrackOpen(net.name(), s));
        }
      }
    }
    return faults;
  }

  @Override
  public String text() {
    return "track " + segment.text() + ": open";
  }

  @Override
  public String place() {
    return net;
  }

  @Override
  public String spot() {
    return segment.text();
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.TRACK_OPEN;
  }

  @Override
  public Seat seat() {
    return Seat.TRACK;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.cut(segment.from(), segment.to());
  }
}
