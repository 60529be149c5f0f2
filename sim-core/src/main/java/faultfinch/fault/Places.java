package faultfinch.fault;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.signal.Pin;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The place in front of the colon, found on the board: a part, a pin, two pins, a piece of track,
 * the brick or its lead.
 *
 * @param name as this board writes it, pin numbers turned into names
 */
record Places(Form form, String name, List<Pad> pads, Optional<PlacedPart> part) {

  /** The forms a place can have. */
  enum Form {
    PART("U5"),
    PIN("U5.1A"),
    TWO_PINS("U5.1A-U5.1B"),
    TRACK("track U5.1Y-U5.2A"),
    TWO_TRACKS("track U1.A0-U2.A0 and U1.A1-U2.A1"),
    SUPPLY("brick or lead");

    private final String example;

    Form(String example) {
      this.example = example;
    }
  }

  private static final String TRACK = "track ";
  private static final String AND = " and ";
  private static final String REF = "[A-Z]+\\d+";
  private static final String PAD = REF + "\\.[\\w/+-]+";
  private static final Pattern ONE = Pattern.compile("(" + REF + ")\\.([\\w/+-]+)");
  private static final Pattern TWO = Pattern.compile("(" + PAD + "?)-(" + PAD + ")");
  private static final int OFFERED = 3;

  static Places of(Anatomy anatomy, String text, String place) {
    if (place.equals("brick") || place.equals("lead")) {
      return new Places(Form.SUPPLY, place, List.of(), Optional.empty());
    }
    if (place.startsWith(TRACK)) {
      return place.contains(AND)
          ? twoTracks(anatomy, text, place)
          : track(anatomy, text, place, TRACK.length() + 1);
    }
    Matcher two = TWO.matcher(place);
    if (two.matches()) {
      List<Pad> pads = pads(anatomy, text, two, 1);
      String name = pads.get(0).text() + "-" + pads.get(1).text();
      return new Places(Form.TWO_PINS, name, pads, Optional.of(anatomy.part(pads.get(0))));
    }
    if (place.contains(".")) {
      Pad pad = pad(anatomy, text, place, 1);
      return new Places(Form.PIN, pad.text(), List.of(pad), Optional.of(anatomy.part(pad)));
    }
    return new Places(Form.PART, place, List.of(), Optional.of(part(anatomy, text, place, 1)));
  }

  /** The part of a reference, or an error that offers those most like it. */
  static PlacedPart part(Anatomy anatomy, String text, String ref, int column) {
    return anatomy
        .find(ref)
        .orElseThrow(
            () -> {
              List<String> refs =
                  anatomy.board().parts().stream()
                      .map(PlacedPart::ref)
                      .collect(Collectors.toList());
              String found = ref.matches(REF) ? "part '" + ref + "'" : "'" + ref + "'";
              String right = "a part of " + anatomy.board().title() + " such as " + near(ref, refs);
              return new UnknownFault(text, column, found, right);
            });
  }

  private static Places twoTracks(Anatomy anatomy, String text, String place) {
    int and = place.indexOf(AND);
    Places one = track(anatomy, text, place.substring(0, and), TRACK.length() + 1);
    String rest = place.substring(and + AND.length());
    int column = and + AND.length() + 1;
    boolean again = rest.startsWith(TRACK);
    Places other =
        track(anatomy, text, again ? rest : TRACK + rest, again ? column + TRACK.length() : column);
    String name = one.name + AND + other.name.substring(TRACK.length());
    List<Pad> pads = Stream.concat(one.pads.stream(), other.pads.stream()).toList();
    return new Places(Form.TWO_TRACKS, name, pads, Optional.empty());
  }

  private static Places track(Anatomy anatomy, String text, String place, int column) {
    Matcher two = TWO.matcher(place.substring(TRACK.length()));
    if (!two.matches()) {
      throw new UnknownFault(
          text, column, "'" + place.substring(TRACK.length()) + "'", "two pads, as in U1.D0-U3.D0");
    }
    List<Pad> pads = pads(anatomy, text, two, column);
    Net net = anatomy.net(pads.get(0));
    Optional<Net.Segment> segment =
        net.segments().stream()
            .filter(s -> pads.contains(s.from()) && pads.contains(s.to()))
            .findFirst();
    if (segment.isEmpty() || pads.get(0).equals(pads.get(1))) {
      String pieces =
          net.segments().stream()
              .filter(s -> pads.contains(s.from()) || pads.contains(s.to()))
              .map(Net.Segment::text)
              .limit(OFFERED)
              .collect(Collectors.joining(", "));
      String right = "a piece of track of net " + net.name() + " such as " + pieces;
      throw new UnknownFault(text, column, "two pads that no piece of track joins", right);
    }
    String name = TRACK + segment.get().text();
    return new Places(Form.TRACK, name, pads, Optional.empty());
  }

  private static List<Pad> pads(Anatomy anatomy, String text, Matcher two, int column) {
    return Stream.of(1, 2)
        .map(g -> pad(anatomy, text, two.group(g), column + two.start(g)))
        .toList();
  }

  private static Pad pad(Anatomy anatomy, String text, String written, int column) {
    Matcher m = ONE.matcher(written);
    if (!m.matches()) {
      throw new UnknownFault(text, column, "'" + written + "'", "part and pin, as in U9.D0");
    }
    PlacedPart part = part(anatomy, text, m.group(1), column);
    Pin pin = pin(part, m.group(2)).orElseThrow(() -> noPin(text, part, m, column));
    Pad pad = new Pad(part.ref(), pin.name());
    if (anatomy.find(pad).isEmpty()) {
      String like =
          anatomy.pads(part).stream()
              .limit(OFFERED)
              .map(Pad::text)
              .collect(Collectors.joining(", "));
      String found = pad.text() + ", which is on no net of this board";
      throw new UnknownFault(text, column + m.start(2), found, "a connected pin such as " + like);
    }
    return pad;
  }

  private static Optional<Pin> pin(PlacedPart part, String written) {
    Optional<Pin> named = part.type().part().pinout().find(written);
    boolean number = named.isEmpty() && written.matches("\\d{1,3}");
    return number ? part.type().part().pinout().numbered(Integer.parseInt(written)) : named;
  }

  private static UnknownFault noPin(String text, PlacedPart part, Matcher m, int column) {
    List<String> names =
        part.type().part().pinout().pins().stream().map(Pin::name).collect(Collectors.toList());
    String right = "a pin of the " + part.type().type() + " such as " + near(m.group(2), names);
    return new UnknownFault(text, column + m.start(2), "pin '" + m.group(2) + "'", right);
  }

  private static String near(String written, List<String> names) {
    return names.stream()
        .sorted(Comparator.comparingInt(n -> distance(written, n)))
        .limit(OFFERED)
        .collect(Collectors.joining(", "));
  }

  /** How many letters must change, come or go to make one name of the other. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j - 1], row[j]));
      }
    }
    return row[b.length()];
  }

  static String example(Form form) {
    return form.example;
  }
}
