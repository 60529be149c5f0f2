package faultfinch.board;

import faultfinch.part.PartCatalog;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A described board. Everything that runs, breaks or draws it starts from here.
 *
 * @param hertz of the crystal
 * @param crystal reference of the oscillator
 * @param phaseNanoseconds length of each of the six phases, in order
 * @param width of the outline in millimetres
 * @param height of the outline in millimetres
 * @param rightDisplay what the display shows when all is well
 * @param worthTakingOut references of chips worth a run without them
 * @param tracks as they are laid, in the order of the nets and their segments; empty if nobody laid
 *     them
 */
public record Board(
    String name,
    String title,
    String maker,
    String about,
    int hertz,
    String crystal,
    List<Integer> phaseNanoseconds,
    double width,
    double height,
    List<PlacedPart> parts,
    List<Net> nets,
    Supply supply,
    List<Firmware> firmware,
    List<Milestone> milestones,
    List<KeyPress> exercise,
    String rightDisplay,
    List<String> worthTakingOut,
    List<Track> tracks) {

  public Board {
    phaseNanoseconds = List.copyOf(phaseNanoseconds);
    parts = List.copyOf(parts);
    nets = List.copyOf(nets);
    firmware = List.copyOf(firmware);
    milestones = List.copyOf(milestones);
    exercise = List.copyOf(exercise);
    worthTakingOut = List.copyOf(worthTakingOut);
    tracks = List.copyOf(tracks);
  }

  /** A board whose tracks nobody laid. */
  public Board(
      String name,
      String title,
      String maker,
      String about,
      int hertz,
      String crystal,
      List<Integer> phaseNanoseconds,
      double width,
      double height,
      List<PlacedPart> parts,
      List<Net> nets,
      Supply supply,
      List<Firmware> firmware,
      List<Milestone> milestones,
      List<KeyPress> exercise,
      String rightDisplay,
      List<String> worthTakingOut) {
    this(
        name,
        title,
        maker,
        about,
        hertz,
        crystal,
        phaseNanoseconds,
        width,
        height,
        parts,
        nets,
        supply,
        firmware,
        milestones,
        exercise,
        rightDisplay,
        worthTakingOut,
        List.of());
  }

  /** The same board with its tracks laid. */
  public Board laid(List<Track> tracks) {
    return new Board(
        name,
        title,
        maker,
        about,
        hertz,
        crystal,
        phaseNanoseconds,
        width,
        height,
        parts,
        nets,
        supply,
        firmware,
        milestones,
        exercise,
        rightDisplay,
        worthTakingOut,
        tracks);
  }

  /** The track of a piece of a net, if tracks are laid. */
  public Optional<Track> track(Net.Segment segment) {
    return tracks.stream().filter(t -> t.segment().equals(segment)).findFirst();
  }

  /** Tracks of different nets so close that solder can join them, in the order of the tracks. */
  public List<TrackNeighbours> neighbours() {
    return TrackNeighbours.among(tracks);
  }

  /** Length of one processor cycle as the board was designed, in nanoseconds. */
  public int cycleNanoseconds() {
    return phaseNanoseconds.stream().mapToInt(Integer::intValue).sum();
  }

  /** The part with this reference, if the board has it. */
  public Optional<PlacedPart> part(String ref) {
    return parts.stream().filter(p -> p.ref().equals(ref)).findFirst();
  }

  /** The net of this name, if the board has it. */
  public Optional<Net> net(String name) {
    return nets.stream().filter(n -> n.name().equals(name)).findFirst();
  }

  /** The first part of this type, if the board has one. */
  public Optional<PlacedPart> firstOf(PartCatalog type) {
    return parts.stream().filter(p -> p.type() == type).findFirst();
  }

  /** The net each pad is on; pads that the board leaves unconnected are missing. */
  public Map<Pad, Net> netOfPad() {
    Map<Pad, Net> nets = new LinkedHashMap<>();
    this.nets.forEach(n -> n.pads().forEach(p -> nets.put(p, n)));
    return nets;
  }
}
