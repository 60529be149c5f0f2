package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.Contact;
import faultfinch.board.Firmware;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Plug;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** What a hand has put on a board for a while: the bench ROM, the return leads, chips on chips. */
final class Rig {
  private static final String ON_TOP = "PB";

  private final Board own;
  private final SortedSet<String> doubled = new TreeSet<>();
  private final Map<String, Survey> surveys = new LinkedHashMap<>();
  private Set<Pad> legs = Set.of();
  private Optional<Board> made = Optional.empty();
  private boolean benchRom;
  private boolean returnLeads;

  Rig(Board own) {
    this.own = own;
  }

  boolean benchRom() {
    return benchRom;
  }

  void benchRom(boolean plugged) {
    benchRom = plugged;
    made = Optional.empty();
  }

  boolean returnLeads() {
    return returnLeads;
  }

  void returnLeads(boolean plugged) {
    returnLeads = plugged;
    made = Optional.empty();
  }

  /** Whether a like chip stands on this one. */
  boolean doubled(String ref) {
    return doubled.contains(ref);
  }

  void doubled(String ref, boolean on) {
    if (on) {
      doubled.add(ref);
    } else {
      doubled.remove(ref);
    }
    made = Optional.empty();
  }

  /** What is on the board, one line each. */
  List<String> says() {
    List<String> says = new ArrayList<>();
    if (benchRom) {
      says.add("the bench ROM is plugged in");
    }
    if (returnLeads) {
      says.add("the return leads are on");
    }
    doubled.forEach(ref -> says.add("a chip stands on " + ref));
    return List.copyOf(says);
  }

  /** Whether the board stands as it is, with nothing on it. */
  boolean empty() {
    return !benchRom && !returnLeads && doubled.isEmpty();
  }

  /**
   * The board with all that is on it.
   *
   * @param brokenInside pads whose leg broke inside the package and so belongs to the track
   */
  Board board(Set<Pad> brokenInside) {
    if (made.isEmpty() || !brokenInside.equals(legs)) {
      legs = Set.copyOf(brokenInside);
      made = Optional.of(make());
    }
    return made.get();
  }

  private Board make() {
    Board board = benchRom ? own.withBenchRom() : own;
    if (returnLeads) {
      board = board.with(Plug.leads(own.benchRom().orElseThrow().returnLeads()));
    }
    int number = 1;
    for (String ref : doubled) {
      while (own.part(ON_TOP + number).isPresent()) {
        number++;
      }
      board = board.with(onTop(own.part(ref).orElseThrow(), ON_TOP + number++));
    }
    return board;
  }

  /** A sound chip on another, leg on leg; one that is programmed has the same contents. */
  private Plug onTop(PlacedPart under, String ref) {
    PlacedPart top =
        new PlacedPart(
            ref,
            under.type(),
            under.role(),
            under.x(),
            under.y(),
            under.turn(),
            true,
            under.value(),
            under.share());
    List<Contact> legsMeet = new ArrayList<>();
    List<Net> nets = new ArrayList<>();
    for (Pin pin : under.type().part().pinout().pins()) {
      Pad leg = new Pad(under.ref(), pin.name());
      Pad own = new Pad(ref, pin.name());
      legsMeet.add(new Contact(leg, legs.contains(leg), own));
      nets.add(new Net(own.text(), List.of(own), List.of()));
    }
    List<Firmware> programmed =
        this.own.firmware().stream()
            .filter(f -> f.ref().equals(under.ref()))
            .map(f -> new Firmware(ref, f.image(), f.labels()))
            .toList();
    return new Plug(List.of(top), nets, legsMeet, programmed);
  }

  /** All looks at the board so; readied when first asked, which takes runs of a healthy one. */
  Survey survey() {
    String key = benchRom + " " + returnLeads + " " + doubled;
    return surveys.computeIfAbsent(key, k -> Survey.on(board(legs)));
  }
}
