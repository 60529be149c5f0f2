package faultfinch.board;

import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The parts of a board file, and what it says elsewhere about one of them. */
final class PartList {
  private static final Pattern REF = Pattern.compile("[A-Z]+[0-9]+");
  private static final Pattern DUTY = Pattern.compile("[a-z]+(-[a-z]+)*");
  private static final Pattern VALUE = Pattern.compile("[0-9]+([kMRpnuA][0-9]*)?");

  /** At most a gigohm, so that ohms fit an int. */
  private static final Pattern FARADS = Pattern.compile("[0-9]{1,6}[pnu][0-9]{0,3}");

  private static final Pattern OHMS =
      Pattern.compile("0*[1-9][0-9]{0,5}|[0-9]{1,3}[kMR][0-9]{0,3}");

  private static final List<String> KEYS =
      List.of("ref", "type", "role", "at", "turn", "socketed", "class");
  private static final List<String> SHARES =
      List.of(
          "LS",
          "LSI",
          "EPROM",
          "SRAM",
          "DRAM",
          "CPU",
          "regulator",
          "clock",
          "passive",
          "electrolytic",
          "ceramic",
          "connector");

  private final Map<String, PlacedPart> parts = new LinkedHashMap<>();
  private final Map<String, PlacedPart> taken = new LinkedHashMap<>();
  private final Map<String, String> duties = new LinkedHashMap<>();
  private final Map<String, Located> places = new LinkedHashMap<>();
  private final BigDecimal width;
  private final BigDecimal height;

  /** Width and height of the outline are in millimetres. */
  PartList(Located parts, BigDecimal width, BigDecimal height) {
    this(parts, List.of(), width, height);
  }

  /**
   * The same for a board with an overlay.
   *
   * @param taken parts that tracks of the board still name
   */
  PartList(Located parts, List<Located> taken, BigDecimal width, BigDecimal height) {
    this.width = width;
    this.height = height;
    if (parts.items().isEmpty()) {
      throw parts.wrong("at least one part");
    }
    parts.items().forEach(this::add);
    taken.forEach(place -> this.taken.put(place.get("ref").text(), part(place)));
  }

  List<PlacedPart> parts() {
    return List.copyOf(parts.values());
  }

  /** Whether an overlay takes this part away. */
  boolean isTaken(String ref) {
    return taken.containsKey(ref);
  }

  /** Duties of the parts that have one, by reference. */
  Map<String, String> duties() {
    return duties;
  }

  /** Where the file describes a part. */
  Located place(String ref) {
    return places.get(ref);
  }

  /** The part a reference names. */
  PlacedPart named(Located ref) {
    PlacedPart part = parts.get(ref.text());
    if (part == null) {
      throw ref.wrong(
          "unknown part '" + ref.text() + "'", NearNames.of(ref.text(), parts.keySet()));
    }
    return part;
  }

  /** The pad that a piece of a text names, such as {@code U4.Y0/}; from and to as of substring. */
  Pad pad(Located text, int from, int to) {
    String written = text.text().substring(from, to);
    int dot = written.indexOf('.');
    if (dot < 1 || dot == written.length() - 1) {
      throw text.wrongAt(from, "'" + written + "'", "a pin, written for example U4.Y0/");
    }
    String ref = written.substring(0, dot);
    PlacedPart part = parts.getOrDefault(ref, taken.get(ref));
    if (part == null) {
      throw text.wrongAt(from, "unknown part '" + ref + "'", NearNames.of(ref, parts.keySet()));
    }
    String pin = written.substring(dot + 1);
    if (part.type().part().pinout().find(pin).isEmpty()) {
      List<String> names = part.type().part().pinout().pins().stream().map(Pin::name).toList();
      throw text.wrongAt(
          from + dot + 1,
          "unknown pin '" + pin + "' of " + ref + ", a " + part.type().type(),
          NearNames.of(pin, names));
    }
    return new Pad(ref, pin);
  }

  private void add(Located place) {
    PlacedPart part = part(place.keys(KEYS, List.of("value", "duty")));
    Optional<Located> duty = place.find("duty");
    if (duty.isPresent()) {
      duties.put(part.ref(), duty.get().text(DUTY, "small letters and hyphens"));
    }
    Located first = places.putIfAbsent(part.ref(), place);
    if (first != null) {
      throw place
          .get("ref")
          .wrong(
              "reference '" + part.ref() + "' twice",
              "each part its own; the first is in line " + first.line());
    }
    parts.put(part.ref(), part);
  }

  private PlacedPart part(Located place) {
    String ref = place.get("ref").text(REF, "letters then a number, for example U4");
    PartCatalog type = type(place.get("type"));
    List<Located> at = place.get("at").items(2);
    return new PlacedPart(
        ref,
        type,
        place.get("role").words(),
        at.get(0).number("0", width.toPlainString()).doubleValue(),
        at.get(1).number("0", height.toPlainString()).doubleValue(),
        turn(place.get("turn")),
        place.get("socketed").truth(),
        value(place, ref, type),
        place.get("class").oneOf(SHARES));
  }

  private static PartCatalog type(Located type) {
    return PartCatalog.named(type.text()).orElseThrow(() -> unknown(type));
  }

  private static RuntimeException unknown(Located type) {
    List<String> types = Arrays.stream(PartCatalog.values()).map(PartCatalog::type).toList();
    return type.wrong("unknown part type '" + type.text() + "'", NearNames.of(type.text(), types));
  }

  private static int turn(Located turn) {
    String right = "0, 90, 180 or 270";
    int degrees = turn.kind() == Located.Kind.NUMBER ? turn.whole(0, 270) : -1;
    if (!Set.of(0, 90, 180, 270).contains(degrees)) {
      throw turn.wrong(right);
    }
    return degrees;
  }

  private static String value(Located place, String ref, PartCatalog type) {
    boolean resists =
        type.part() instanceof Element e
            && (e.kind() == Element.Kind.RESISTOR
                || e.kind() == Element.Kind.PACK
                || e.kind() == Element.Kind.POTENTIOMETER);
    if (resists && place.find("value").isEmpty()) {
      throw place.wrong("resistor " + ref + " without 'value'", "for example 330, 4k7 or 1M");
    }
    if (place.find("value").isEmpty()) {
      return "";
    }
    Located value = place.get("value");
    String text = value.text(VALUE, "for example 330, 4k7, 1M, 100n, 1000u or 1A");
    boolean coil = type.part() instanceof Element e && e.kind() == Element.Kind.SOUNDER;
    if ((resists || coil) && (!OHMS.matcher(text).matches() || Element.ohms(text) < 1)) {
      throw value.wrong("ohms from 1 to 999M, for example 330, 4k7 or 1M");
    }
    boolean stores = type.part() instanceof Element e && e.kind() == Element.Kind.CAPACITOR;
    if (stores && !FARADS.matcher(text).matches()) {
      throw value.wrong("farads, for example 47p, 4n7, 100n or 22u");
    }
    return text;
  }
}
