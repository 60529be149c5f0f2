package faultfinch.board;

import faultfinch.part.Element;
import faultfinch.part.Part;
import faultfinch.part.PartCatalog;
import faultfinch.signal.BadInput;
import faultfinch.signal.Phase;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** One board file from top to bottom: what the parts, nets and ROMs of it add up to. */
final class BoardFile {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");
  private static final List<String> REQUIRED =
      List.of(
          "format", "name", "title", "maker", "outline", "crystal", "phases", "power", "parts",
          "nets");
  private static final List<String> OPTIONAL =
      List.of(
          "about",
          "unconnected",
          "firmware",
          "milestones",
          "exercise",
          "drills",
          "right",
          "worthTakingOut",
          "readyMs",
          "benchRom");
  private static final int VERSION = 1;
  private static final String LARGEST_MILLIMETRES = "1000";
  private static final BigDecimal NANOSECONDS = BigDecimal.valueOf(1_000_000_000);

  private static final int LONGEST_MS = 60_000;

  private final Sources folder;
  private final Optional<Overlay> overlay;
  private final Located root;
  private final BigDecimal width;
  private final BigDecimal height;
  private final PartList parts;
  private final NetList nets;
  private final Programs programs;
  private final List<Track> tracks;

  /**
   * @param overlay laid over it
   */
  BoardFile(Sources folder, String file, Optional<Overlay> overlay) {
    this.folder = folder;
    this.overlay = overlay;
    Located base = Located.read(folder.shown(file), bytes(folder, file)).keys(REQUIRED, OPTIONAL);
    this.root = overlay.map(o -> o.over(base)).orElse(base);
    root.get("format").whole(VERSION, VERSION);
    Located outline = root.get("outline").keys(List.of("width", "height"), List.of());
    this.width = outline.get("width").number("1", LARGEST_MILLIMETRES);
    this.height = outline.get("height").number("1", LARGEST_MILLIMETRES);
    List<Located> taken = overlay.map(o -> o.taken(base)).orElse(List.of());
    this.parts = new PartList(root.get("parts"), taken, width, height);
    this.nets = new NetList(root.get("nets"), list("unconnected"), parts, overlay);
    this.programs = new Programs(list("firmware"), folder, parts);
    this.tracks = routes(folder).map(this::tracks).orElse(List.of());
  }

  private List<Track> tracks(byte[] file) {
    return folder.isProven() ? new LaterTracks(() -> read(file)) : read(file);
  }

  private List<Track> read(byte[] file) {
    RouteFile routes = new RouteFile(folder.shown(RouteFile.NAME), file);
    return overlay
        .map(o -> routes.left(parts.parts(), nets.nets(), o.added()))
        .orElseGet(() -> routes.tracks(parts.parts(), nets.nets()));
  }

  private String name() {
    String name = root.get("name").text(NAME, "small letters, digits and hyphens, a letter first");
    return overlay.map(o -> BoardReader.overlaid(name, o.name())).orElse(name);
  }

  Board board() {
    Located crystal =
        root.get("crystal").keys(List.of("part", "hertz", "ticksPerCycle"), List.of());
    return new Board(
        name(),
        overlay.map(Overlay::title).orElseGet(() -> root.get("title").words()),
        root.get("maker").words(),
        overlay
            .map(Overlay::about)
            .orElseGet(() -> root.find("about").map(Located::words).orElse("")),
        crystal.get("hertz").whole(1, Integer.MAX_VALUE),
        ofType(crystal.get("part"), PartCatalog.OSCILLATOR),
        phases(crystal),
        width.doubleValue(),
        height.doubleValue(),
        parts.parts(),
        nets.nets(),
        supply(root.get("power").keys(List.of("brick", "supply", "rails"), List.of("poles"))),
        programs.firmware(),
        list("milestones").stream().map(this::milestone).toList(),
        list("exercise").stream().map(this::press).toList(),
        new DrillList(list("drills"), parts).drills(),
        root.find("right").map(BoardFile::display).orElse(""),
        worthTakingOut(),
        brickMicrofarads(),
        List.of(),
        root.find("readyMs").map(v -> v.whole(1, LONGEST_MS)).orElse(Board.USUALLY_READY_MS),
        root.find("benchRom").map(f -> new BenchRomFile(f, folder, parts).benchRom()),
        tracks,
        parts.duties(),
        folder.text());
  }

  private List<Located> list(String key) {
    return root.find(key).map(Located::items).orElse(List.of());
  }

  private List<Integer> phases(Located crystal) {
    Located all = root.get("phases");
    List<Located> items = all.items(Phase.values().length);
    List<Integer> lengths = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      Located item = items.get(phase.ordinal());
      item.keys(List.of("name", "nanoseconds"), List.of());
      item.get("name").oneOf(List.of(written(phase)));
      lengths.add(item.get("nanoseconds").whole(1, 1_000_000));
    }
    BigDecimal ticks = BigDecimal.valueOf(crystal.get("ticksPerCycle").whole(1, 1_000));
    BigDecimal hertz = BigDecimal.valueOf(crystal.get("hertz").whole(1, Integer.MAX_VALUE));
    BigDecimal cycle = ticks.multiply(NANOSECONDS).divide(hertz, 3, RoundingMode.HALF_UP);
    int sum = lengths.stream().mapToInt(Integer::intValue).sum();
    if (cycle.subtract(BigDecimal.valueOf(sum)).abs().compareTo(BigDecimal.ONE) > 0) {
      throw all.wrong(
          "phases that last " + sum + " ns in all",
          cycle.setScale(0, RoundingMode.HALF_UP) + " ns, the length of a cycle");
    }
    return lengths;
  }

  /** As a board file writes it: {@code V-row}. */
  private static String written(Phase phase) {
    String name = phase.name();
    return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Supply supply(Located power) {
    Located brick =
        power
            .get("brick")
            .keys(List.of("noLoadVolts", "ohms"), List.of("volts", "amps", "microfarads"));
    brick.find("volts").ifPresent(v -> v.number("0.001", "1000"));
    brick.find("amps").ifPresent(a -> a.number("0.001", "1000"));
    Located plug = power.get("supply").keys(List.of("net", "jack"), List.of());
    String jack = ofKind(plug.get("jack"), Element.Kind.JACK, "a jack");
    List<Located> items = power.get("rails").items();
    if (items.isEmpty()) {
      throw power.get("rails").wrong("an empty list", "a list of at least one rail");
    }
    List<Supply.Rail> rails = items.stream().map(this::rail).toList();
    String regulator = rails.get(0).regulator();
    Optional<Net> ground =
        nets.nets().stream().filter(n -> n.pads().contains(new Pad(regulator, "GND"))).findFirst();
    return new Supply(
        thousandths(brick.get("noLoadVolts")),
        thousandths(brick.get("ohms")),
        nets.named(plug.get("net"), new Pad(jack, "+")).name(),
        jack,
        rails.get(0).net(),
        regulator,
        ground
            .orElseThrow(
                () -> items.get(0).get("regulator").wrong(regulator + ".GND on no net", "a net"))
            .name(),
        rails.subList(1, rails.size()),
        power.find("poles").map(Located::items).orElse(List.of()).stream()
            .map(this::pole)
            .toList());
  }

  private Supply.Rail rail(Located rail) {
    rail.keys(List.of("net", "regulator", "from"), List.of());
    String regulator = ofKind(rail.get("regulator"), Element.Kind.REGULATOR, "a regulator");
    nets.named(rail.get("from"), new Pad(regulator, "IN"));
    return new Supply.Rail(
        nets.named(rail.get("net"), new Pad(regulator, "OUT")).name(), regulator);
  }

  private Supply.Pole pole(Located pole) {
    pole.keys(List.of("net", "jack", "noLoadVolts", "ohms"), List.of());
    String jack = ofKind(pole.get("jack"), Element.Kind.JACK, "a jack");
    return new Supply.Pole(
        nets.named(pole.get("net"), new Pad(jack, "+")).name(),
        jack,
        thousandths(pole.get("noLoadVolts")),
        thousandths(pole.get("ohms")));
  }

  private int brickMicrofarads() {
    Located brick = root.get("power").get("brick");
    return brick.find("microfarads").map(v -> v.whole(1, 1_000_000)).orElse(0);
  }

  /** Volts to millivolts, ohms to milliohms. */
  private static int thousandths(Located figure) {
    return figure
        .number("0.001", "1000")
        .movePointRight(3)
        .setScale(0, RoundingMode.HALF_UP)
        .intValueExact();
  }

  private Milestone milestone(Located step) {
    step.keys(List.of("label", "name", "says"), List.of());
    return new Milestone(
        step.get("label").words(),
        step.get("name").words(),
        step.get("says").words(),
        programs.address(step.get("label")));
  }

  private KeyPress press(Located press) {
    press.keys(List.of("press", "atMs", "forMs"), List.of());
    return new KeyPress(
        ofKind(press.get("press"), Element.Kind.SWITCH, "a key"),
        press.get("atMs").whole(0, 1_000_000),
        press.get("forMs").whole(1, 1_000_000));
  }

  private static String display(Located right) {
    return right.keys(List.of("display"), List.of()).get("display").text();
  }

  private List<String> worthTakingOut() {
    Set<String> refs = new LinkedHashSet<>();
    for (Located ref : list("worthTakingOut")) {
      PlacedPart part = parts.named(ref);
      if (!part.socketed()) {
        throw ref.wrong(part.ref() + ", which has no socket", "a part in a socket");
      }
      if (!refs.add(part.ref())) {
        throw ref.wrong(part.ref() + " again", "each part once");
      }
    }
    return List.copyOf(refs);
  }

  private String ofType(Located ref, PartCatalog type) {
    PlacedPart part = parts.named(ref);
    if (part.type() != type) {
      throw ref.wrong(
          part.ref() + ", a part of type " + part.type().type(), "a part of type " + type.type());
    }
    return part.ref();
  }

  private String ofKind(Located ref, Element.Kind kind, String right) {
    PlacedPart part = parts.named(ref);
    Part behaviour = part.type().part();
    if (!(behaviour instanceof Element element) || element.kind() != kind) {
      throw ref.wrong(part.ref() + ", a part of type " + part.type().type(), right);
    }
    return part.ref();
  }

  /** A board need not have routes. */
  private static Optional<byte[]> routes(BoardFolder folder) {
    try {
      return Optional.of(folder.bytes(RouteFile.NAME));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new BadInput(folder.shown(RouteFile.NAME), 1, 1, Programs.why(e), "a file of routes");
    }
  }

  private static byte[] bytes(BoardFolder folder, String file) {
    try {
      return folder.bytes(file);
    } catch (IOException e) {
      throw new BadInput(folder.shown(file), 1, 1, Programs.why(e), "a board file");
    }
  }
}
