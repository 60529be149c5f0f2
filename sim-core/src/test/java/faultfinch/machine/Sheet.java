package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Firmware;
import faultfinch.board.KeyPress;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A schematic under way: parts are fitted, pins are put on nets, and it becomes a board. */
final class Sheet {
  private static final Map<String, String> LETTERS =
      Map.of("R", "R", "RPACK8", "RN", "C", "C", "D", "D", "KEY", "K", "OSC", "X", "JACK", "J");

  private final List<PlacedPart> parts = new ArrayList<>();
  private final Map<String, List<Pad>> nets = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Map<String, List<String>> freeGates = new LinkedHashMap<>();

  /** Starts with a jack on its regulator and the two supply nets. */
  Sheet() {
    part("JACK", "");
    PlacedPart regulator =
        new PlacedPart(
            "VR1",
            PartCatalog.named("7805").orElseThrow(),
            "regulator",
            0,
            0,
            0,
            false,
            "",
            "regulator");
    parts.add(regulator);
    on("9V", "J1.+ VR1.IN");
    on("5V", "VR1.OUT");
    on("GND", "J1.- VR1.GND");
  }

  /** Fits a part and puts its supply pins on the supply; returns its reference. */
  String part(String type, String value) {
    String letters = LETTERS.getOrDefault(type, "U");
    String ref = letters + numbers.merge(letters, 1, Integer::sum);
    PartCatalog row = PartCatalog.named(type).orElseThrow();
    boolean chip = letters.equals("U");
    parts.add(new PlacedPart(ref, row, type, 0, 0, 0, chip, value, chip ? "LS" : "passive"));
    for (Pin pin : row.part().pinout().pins()) {
      if (pin.role() == Pin.Role.SUPPLY) {
        on("5V", ref + "." + pin.name());
      } else if (pin.role() == Pin.Role.GROUND) {
        on("GND", ref + "." + pin.name());
      }
    }
    return ref;
  }

  /** Puts pins, written as in a board file and divided by spaces, on a net. */
  void on(String net, String pins) {
    List<Pad> pads = nets.computeIfAbsent(net, k -> new ArrayList<>());
    for (String p : pins.split(" ")) {
      pads.add(new Pad(p.substring(0, p.indexOf('.')), p.substring(p.indexOf('.') + 1)));
    }
  }

  /** Puts line n of a part's bus on the net of this prefix and n, for so many lines. */
  void bus(String net, String ref, String bus, int first, int lines) {
    for (int i = 0; i < lines; i++) {
      on(net + i, ref + "." + bus + (first + i));
    }
  }

  /** A gate of a quad, triple or hex package, its inputs on these nets; returns its output net. */
  String gate(String type, String... inputs) {
    List<String> free = freeGates.computeIfAbsent(type, k -> new ArrayList<>());
    if (free.isEmpty()) {
      String ref = part(type, "");
      int gates = type.equals("74LS04") ? 6 : inputs.length > 3 ? 2 : inputs.length > 2 ? 3 : 4;
      for (int i = 1; i <= gates; i++) {
        free.add(ref + "." + i);
      }
    }
    String gate = free.remove(0);
    for (int i = 0; i < inputs.length; i++) {
      on(inputs[i], gate + (char) ('A' + i));
    }
    on(gate + "Y", gate + "Y");
    return gate + "Y";
  }

  int size() {
    return parts.size();
  }

  /** The nets so far. */
  List<String> names() {
    return List.copyOf(nets.keySet());
  }

  Board board(String name, int hertz, int cycleNs, String rom, byte[] image, List<KeyPress> keys) {
    List<Net> made = new ArrayList<>();
    nets.forEach(
        (net, pads) -> {
          List<Net.Segment> track = new ArrayList<>();
          for (int i = 1; i < pads.size(); i++) {
            track.add(new Net.Segment(pads.get(i - 1), pads.get(i)));
          }
          made.add(new Net(net, pads, track));
        });
    int phase = cycleNs / 6;
    return new Board(
        name,
        name,
        "the tests",
        "made for a test",
        hertz,
        "X1",
        List.of(phase, phase, phase, phase, phase, cycleNs - 5 * phase),
        200,
        150,
        parts,
        made,
        new Supply(11_500, 3_000, "9V", "J1", "5V", "VR1", "GND"),
        List.of(new Firmware(rom, image, Map.of())),
        List.of(),
        keys,
        "",
        List.of());
  }
}
