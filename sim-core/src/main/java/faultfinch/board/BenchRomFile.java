package faultfinch.board;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads what a board file says of its bench ROM: a file of its own, named there. */
final class BenchRomFile {
  private static final int LONGEST_MS = 60_000;

  private final Located root;
  private final PartList boardParts;
  private final PartList parts;
  private final List<Net> nets;
  private final Programs programs;

  BenchRomFile(Located name, BoardFolder folder, PartList boardParts) {
    this.boardParts = boardParts;
    root =
        Located.read(folder.shown(name.text()), bytes(name, folder))
            .keys(
                List.of("outline", "parts", "nets", "plug", "firmware", "reportMs"),
                List.of("unconnected", "milestones", "returnLeads"));
    Located outline = root.get("outline").keys(List.of("width", "height"), List.of());
    parts =
        new PartList(
            root.get("parts"),
            outline.get("width").number("1", "1000"),
            outline.get("height").number("1", "1000"));
    parts.parts().forEach(this::own);
    nets = new NetList(root.get("nets"), list("unconnected"), parts).nets();
    programs = new Programs(root.get("firmware").items(), folder, parts);
  }

  private static byte[] bytes(Located name, BoardFolder folder) {
    try {
      return folder.bytes(name.words());
    } catch (IOException e) {
      throw name.wrong(Programs.why(e) + " '" + name.text() + "'", "a file that can be read");
    }
  }

  private void own(PlacedPart part) {
    boolean taken = boardParts.parts().stream().anyMatch(p -> p.ref().equals(part.ref()));
    if (taken) {
      throw parts
          .place(part.ref())
          .get("ref")
          .wrong(part.ref() + ", which the board has too", "a reference of its own");
    }
  }

  private List<Located> list(String key) {
    return root.find(key).map(Located::items).orElse(List.of());
  }

  BenchRom benchRom() {
    List<Milestone> milestones = new ArrayList<>();
    for (Located step : list("milestones")) {
      step.keys(List.of("label", "name", "says"), List.of());
      milestones.add(
          new Milestone(
              step.get("label").words(),
              step.get("name").words(),
              step.get("says").words(),
              programs.address(step.get("label"))));
    }
    return new BenchRom(
        new Plug(parts.parts(), nets, contacts(), programs.firmware()),
        list("returnLeads").stream().map(this::lead).toList(),
        milestones,
        root.get("reportMs").whole(1, LONGEST_MS));
  }

  /** Which pin of the board meets which net of the module, at that net's first pin. */
  private List<Contact> contacts() {
    List<Contact> contacts = new ArrayList<>();
    Set<Pad> used = new LinkedHashSet<>();
    for (Located.Entry e : root.get("plug").entries()) {
      Pad pin = boardParts.pad(e.key(), 0, e.key().text().length());
      if (!used.add(pin)) {
        throw e.key().wrong(pin.text() + " again", "each pin once");
      }
      Net net =
          nets.stream()
              .filter(n -> n.name().equals(e.value().text()))
              .findFirst()
              .orElseThrow(
                  () ->
                      e.value()
                          .wrong(
                              "unknown net '" + e.value().text() + "'",
                              NearNames.of(
                                  e.value().text(),
                                  nets.stream().map(Net::name).collect(Collectors.toList()))));
      contacts.add(new Contact(pin, net.pads().get(0)));
    }
    return contacts;
  }

  private Contact lead(Located lead) {
    List<Located> ends = lead.items(2);
    return new Contact(pad(ends.get(0)), pad(ends.get(1)));
  }

  private Pad pad(Located end) {
    return boardParts.pad(end, 0, end.text().length());
  }
}
