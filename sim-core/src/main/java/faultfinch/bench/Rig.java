package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.Plug;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** What a hand has put on a board for a while: the bench ROM, the return leads, chips on chips. */
final class Rig {
  private final Board own;
  private final SortedSet<String> doubled = new TreeSet<>();
  private final Map<String, Survey> surveys = new LinkedHashMap<>();
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

  /** Whether the board stands as it is, with nothing on it. */
  boolean empty() {
    return !benchRom && !returnLeads && doubled.isEmpty();
  }

  /** The board with all that is on it. */
  Board board() {
    if (made.isEmpty()) {
      made = Optional.of(make());
    }
    return made.get();
  }

  private Board make() {
    Board board = benchRom ? own.withBenchRom() : own;
    if (returnLeads) {
      board = board.with(Plug.leads(own.benchRom().orElseThrow().returnLeads()));
    }
    return board;
  }

  /** All looks at the board so; readied when first asked, which takes runs of a healthy one. */
  Survey survey() {
    String key = benchRom + " " + returnLeads + " " + doubled;
    return surveys.computeIfAbsent(key, k -> Survey.on(board()));
  }
}
