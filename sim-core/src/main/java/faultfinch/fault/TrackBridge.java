package faultfinch.fault;

import faultfinch.board.Net;
import faultfinch.board.Track;
import faultfinch.board.TrackNeighbours;
import java.util.List;
import java.util.Optional;

/**
 * Solder or a whisker between two pieces of track of different nets that lie side by side.
 *
 * <p>Not modelled: where along the pieces; each counts as met at its first pad.
 *
 * @param net of the first piece
 * @param one the piece that comes first on the board
 */
public record TrackBridge(String net, Net.Segment one, Net.Segment other) implements Fault {

  static Optional<Fault> read(Words words) {
    Anatomy anatomy = words.anatomy();
    Track a = anatomy.track(words.segment(0)).orElseThrow(() -> unlaid(words));
    Track b = anatomy.track(words.segment(1)).orElseThrow(() -> unlaid(words));
    if (!TrackNeighbours.are(a, b)) {
      String because =
          a.net().equals(b.net()) ? "which are of one net" : "which are nowhere within 0.5 mm";
      throw words.unfit(FaultKinds.TRACK_BRIDGE, because);
    }
    List<Track> tracks = anatomy.board().tracks();
    boolean ordered = tracks.indexOf(a) < tracks.indexOf(b);
    return Optional.of(ordered ? of(a, b) : of(b, a));
  }

  private static UnknownFault unlaid(Words words) {
    return words.unfit(FaultKinds.TRACK_BRIDGE, "but nobody laid the tracks of this board");
  }

  static List<Fault> sites(Anatomy anatomy) {
    return anatomy.neighbours().stream().map(n -> (Fault) of(n.one(), n.other())).toList();
  }

  private static TrackBridge of(Track one, Track other) {
    return new TrackBridge(one.net(), one.segment(), other.segment());
  }

  @Override
  public String text() {
    return "track " + one.text() + " and " + other.text() + ": bridge";
  }

  @Override
  public String place() {
    return net;
  }

  @Override
  public String spot() {
    return TrackNeighbours.text(one, other);
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.TRACK_BRIDGE;
  }

  @Override
  public Seat seat() {
    return Seat.BETWEEN_PADS;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.bridge(one.from(), other.from(), Figures.number("bridge.ohms"));
  }
}
