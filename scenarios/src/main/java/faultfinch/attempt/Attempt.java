package faultfinch.attempt;

import faultfinch.bench.Breach;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Offer;
import faultfinch.bench.Reading;
import faultfinch.format.Case;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** One attempt at a case: whoever plays it, in a window or in the terminal, plays through this. */
public final class Attempt {
  private Attempt() {}

  /** The cases that come with the program, in their order. */
  public static List<CaseLine> cases() {
    throw new UnsupportedOperationException("to come");
  }

  /** Begins a case. */
  public static Attempt begin(Case job) {
    throw new UnsupportedOperationException("to come");
  }

  /** Begins a case that comes with the program; numbers as in {@link #cases()}. */
  public static Attempt begin(int number) {
    throw new UnsupportedOperationException("to come");
  }

  /**
   * Begins a case of one's own.
   *
   * @throws faultfinch.signal.BadInput if the file is not right
   */
  public static Attempt begin(Path caseFile) {
    throw new UnsupportedOperationException("to come");
  }

  /** What lies on the bench with the board. */
  public JobCard card() {
    throw new UnsupportedOperationException("to come");
  }

  /** The one act asked for now; empty if the case is not guided or the guide has said all. */
  public Optional<String> guide() {
    throw new UnsupportedOperationException("to come");
  }

  /** All that can be done now, with prices; a case without prices has them too, for the debrief. */
  public List<Offer> possible() {
    throw new UnsupportedOperationException("to come");
  }

  /** The rules a move would break now: ask once, then let it be done. */
  public List<Breach> warnings(Move move) {
    throw new UnsupportedOperationException("to come");
  }

  /** Whether a suspect and an expectation should be asked before this move. */
  public boolean asksHunch(Move move) {
    throw new UnsupportedOperationException("to come");
  }

  /** Keeps what was thought before the next move, for the journal and the debrief. */
  public void hunch(Hunch hunch) {
    throw new UnsupportedOperationException("to come");
  }

  /**
   * Makes a move and writes it down.
   *
   * @throws Slip if it cannot be made now; it costs nothing
   */
  public Note act(Move move) {
    throw new UnsupportedOperationException("to come");
  }

  /**
   * Makes the move of a text, such as {@code look: screen} or {@code reseat: U9}.
   *
   * @throws Slip if it is none, or cannot be made now; it costs nothing
   */
  public Note act(String text) {
    throw new UnsupportedOperationException("to come");
  }

  /** Everything done so far. */
  public List<Note> notebook() {
    throw new UnsupportedOperationException("to come");
  }

  public Status status() {
    throw new UnsupportedOperationException("to come");
  }

  /**
   * What is still possible, likeliest first; empty if the case does not tell or it is not known.
   */
  public List<Suspect> suspects() {
    throw new UnsupportedOperationException("to come");
  }

  /** What the healthy twin shows at the same point, with the same chips out. */
  public Reading twin(Look look) {
    throw new UnsupportedOperationException("to come");
  }

  /** What {@link #decide} takes for a part, in the order of likelihood; "" for the whole board. */
  public List<String> decisions(String ref) {
    throw new UnsupportedOperationException("to come");
  }

  /**
   * Decides what is wrong, such as {@code U9: contact}, {@code U4}, {@code track U1.D0-U3.D0},
   * {@code supply} or {@code nothing wrong}. The repair is made, all is tried again, and if the
   * board still fails you go on.
   *
   * @throws Slip if it is no decision; it costs nothing
   */
  public Decision decide(String text) {
    throw new UnsupportedOperationException("to come");
  }

  /** Whether the board has passed after a decision, or was left. */
  public boolean over() {
    throw new UnsupportedOperationException("to come");
  }

  /** Ends the attempt where it stands. */
  public Debrief close() {
    throw new UnsupportedOperationException("to come");
  }

  /** JSON lines, each with the digest of the one before. */
  public List<String> journal() {
    throw new UnsupportedOperationException("to come");
  }
}
