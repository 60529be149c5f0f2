package faultfinch.bench;

import faultfinch.bench.Reading.Report;
import faultfinch.board.Board;
import faultfinch.board.Plug;
import faultfinch.machine.Setup;
import faultfinch.symptom.BenchReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A round of the bench ROM, the board as it is or with its ports joined by the return leads. */
public enum BenchRom {
  ALONE(Moves.BENCH_ROM.word()),
  WITH_LEADS(Moves.BENCH_ROM.word() + " with " + Moves.RETURN_LEADS.word());

  private static final List<BenchRom> ALL = List.of(values());

  private final String look;

  BenchRom(String look) {
    this.look = look;
  }

  /** The text by which a dictionary and an observation name it. */
  public String look() {
    return look;
  }

  /** The way of a text, if it is one. */
  public static Optional<BenchRom> named(String look) {
    for (BenchRom way : ALL) {
      if (way.look.equals(look)) {
        return Optional.of(way);
      }
    }
    return Optional.empty();
  }

  /** The ways a board allows. */
  public static List<BenchRom> of(Board board) {
    if (board.benchRom().isEmpty()) {
      return List.of();
    }
    boolean leads = !board.benchRom().orElseThrow().returnLeads().isEmpty();
    return leads ? List.of(values()) : List.of(ALONE);
  }

  /**
   * The board with it plugged in.
   *
   * @throws IllegalArgumentException if the board has no such thing
   */
  public Board on(Board board) {
    if (!of(board).contains(this)) {
      throw new IllegalArgumentException("found no " + look + " for " + board.name());
    }
    Board plugged = board.withBenchRom();
    return this == ALONE
        ? plugged
        : plugged.with(Plug.leads(board.benchRom().orElseThrow().returnLeads()));
  }

  /** Runs one round of a board that has it plugged in. */
  public Report report(Setup setup) {
    return of(BenchReport.of(setup));
  }

  /** What a round said, line by line; of it the sound is what any start of the board tells too. */
  static Report of(BenchReport report) {
    List<String> lines = new ArrayList<>(report.sentences());
    lines.add("lamp " + report.lamp());
    String feature = String.join("; ", lines);
    lines.add("sound " + report.sound());
    return new Report(lines, feature);
  }
}
