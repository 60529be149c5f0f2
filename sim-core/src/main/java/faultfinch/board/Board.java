package faultfinch.board;

import faultfinch.part.PartCatalog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
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
 * @param drills what else can be tried on it by hand, if its file says how
 * @param rightDisplay what the display shows when all is well
 * @param worthTakingOut references of chips worth a run without them
 * @param brickMicrofarads capacitor inside the brick; 0 for a brick taken as smooth
 * @param contacts of what is plugged into it
 * @param readyMilliseconds when it is ready if no key is pressed, since power-on
 * @param benchRom the module that speaks for it, if there is one
 * @param tracks as they are laid, in the order of the nets and their segments; empty if nobody laid
 *     them
 * @param duties short names of what parts do, by reference: what boards of one kind have in common
 * @param source check sum of the files it was read from; empty if it was put together or changed
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
    List<Drill> drills,
    String rightDisplay,
    List<String> worthTakingOut,
    int brickMicrofarads,
    List<Contact> contacts,
    int readyMilliseconds,
    Optional<BenchRom> benchRom,
    List<Track> tracks,
    Map<String, String> duties,
    String source) {

  /** When a board whose file does not say so is ready, in milliseconds since power-on. */
  public static final int USUALLY_READY_MS = 1000;

  public Board {
    phaseNanoseconds = List.copyOf(phaseNanoseconds);
    parts = List.copyOf(parts);
    nets = List.copyOf(nets);
    firmware = List.copyOf(firmware);
    milestones = List.copyOf(milestones);
    exercise = List.copyOf(exercise);
    drills = List.copyOf(drills);
    worthTakingOut = List.copyOf(worthTakingOut);
    contacts = List.copyOf(contacts);
    tracks = tracks instanceof LaterTracks ? tracks : List.copyOf(tracks);
    duties = Collections.unmodifiableMap(new LinkedHashMap<>(duties));
  }

  /** A board on a smooth brick with nothing plugged in, no bench ROM and no tracks laid. */
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
        List.of(),
        rightDisplay,
        worthTakingOut,
        0,
        List.of(),
        USUALLY_READY_MS,
        Optional.empty(),
        List.of(),
        Map.of(),
        "");
  }

  /** The same board with something on it. */
  public Board with(Plug plug) {
    return changed(plug, milestones, exercise, readyMilliseconds);
  }

  /** The same board with its bench ROM plugged in, which then runs first; nobody is at its keys. */
  public Board withBenchRom() {
    BenchRom rom = benchRom.orElseThrow();
    return changed(rom.plug(), rom.milestones(), List.of(), rom.reportMilliseconds());
  }

  /** The same board with other hands at its keys. */
  public Board exercised(List<KeyPress> presses) {
    return changed(Plug.leads(List.of()), milestones, presses, readyMilliseconds);
  }

  /** The same board with these parts in place of those of the same reference. */
  public Board refitted(List<PlacedPart> others) {
    Map<String, PlacedPart> byRef = new LinkedHashMap<>();
    others.forEach(p -> byRef.put(p.ref(), p));
    List<PlacedPart> refitted = parts.stream().map(p -> byRef.getOrDefault(p.ref(), p)).toList();
    return changed(refitted, Plug.leads(List.of()), milestones, exercise, readyMilliseconds);
  }

  /** The same board with its tracks laid. */
  public Board laid(List<Track> laid) {
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
        drills,
        rightDisplay,
        worthTakingOut,
        brickMicrofarads,
        contacts,
        readyMilliseconds,
        benchRom,
        laid,
        duties,
        "");
  }

  private Board changed(Plug plug, List<Milestone> steps, List<KeyPress> presses, int ready) {
    return changed(parts, plug, steps, presses, ready);
  }

  private Board changed(
      List<PlacedPart> fitted,
      Plug plug,
      List<Milestone> steps,
      List<KeyPress> presses,
      int ready) {
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
        both(fitted, plug.parts()),
        both(nets, plug.nets()),
        supply,
        both(firmware, plug.firmware()),
        steps,
        presses,
        drills,
        rightDisplay,
        worthTakingOut,
        brickMicrofarads,
        both(contacts, plug.contacts()),
        ready,
        benchRom,
        tracks,
        duties,
        "");
  }

  private static <T> List<T> both(List<T> own, List<T> more) {
    List<T> all = new ArrayList<>(own);
    all.addAll(more);
    return all;
  }

  /** Whether no run can tell this board from another: they differ in sockets and in names alone. */
  public boolean runsAs(Board other) {
    return hertz == other.hertz
        && crystal.equals(other.crystal)
        && phaseNanoseconds.equals(other.phaseNanoseconds)
        && soldered(parts).equals(soldered(other.parts))
        && nets.equals(other.nets)
        && supply.equals(other.supply)
        && brickMicrofarads == other.brickMicrofarads
        && sameFirmware(other)
        && milestones.equals(other.milestones)
        && exercise.equals(other.exercise)
        && drills.equals(other.drills)
        && rightDisplay.equals(other.rightDisplay)
        && readyMilliseconds == other.readyMilliseconds
        && contacts.equals(other.contacts)
        && tracks.equals(other.tracks);
  }

  private static List<PlacedPart> soldered(List<PlacedPart> parts) {
    return parts.stream().map(PlacedPart::soldered).toList();
  }

  private boolean sameFirmware(Board other) {
    boolean same = firmware.size() == other.firmware.size();
    for (int i = 0; same && i < firmware.size(); i++) {
      same =
          firmware.get(i).ref().equals(other.firmware.get(i).ref())
              && Arrays.equals(firmware.get(i).image(), other.firmware.get(i).image());
    }
    return same;
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
