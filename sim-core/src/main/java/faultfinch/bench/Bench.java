package faultfinch.bench;

import faultfinch.fault.Fault;
import java.util.List;
import java.util.Set;

/** One board on the bench in an attempt: what is true of it, and what was done to it. */
public final class Bench {
  private final Job job;

  /** The board arrives switched off, with its own supply beside it. */
  public Bench(Job job) {
    this.job = job;
  }

  /**
   * Makes a move.
   *
   * @throws IllegalArgumentException in one line if this bench cannot do it now
   */
  public Outcome perform(Move move) {
    throw new UnsupportedOperationException("to come");
  }

  /** The rules a move would break if it were made now; ask before, never forbid. */
  public List<Breach> breaches(Move move) {
    throw new UnsupportedOperationException("to come");
  }

  /** All that can be done now. */
  public List<Offer> possible() {
    throw new UnsupportedOperationException("to come");
  }

  /** What all moves so far have cost. */
  public Price spent() {
    throw new UnsupportedOperationException("to come");
  }

  /** Whether the board is switched on. */
  public boolean powered() {
    throw new UnsupportedOperationException("to come");
  }

  /** References of the chips that are out of their places. */
  public Set<String> out() {
    throw new UnsupportedOperationException("to come");
  }

  /** What is still wrong; for the debrief only. */
  public List<Fault> remaining() {
    return job.faults();
  }
}
