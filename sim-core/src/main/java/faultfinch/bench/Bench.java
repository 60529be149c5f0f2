package faultfinch.bench;

import faultfinch.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One board on the bench in an attempt: what is true of it, and what was done to it. The same job
 * and the same moves give the same outcomes, always.
 */
public final class Bench {
  private final Job job;
  private final Patient patient;
  private final Breaches rules = new Breaches();
  private Price spent = Price.NOTHING;

  /** The board arrives switched off, with its own supply beside it. */
  public Bench(Job job) {
    this.job = job;
    patient = new Patient(job);
  }

  /**
   * Makes a move.
   *
   * @throws IllegalArgumentException in one line if this bench cannot do it now
   */
  public Outcome perform(Move move) {
    if (!can(move)) {
      List<String> places = move.kind().act().places(patient);
      throw new IllegalArgumentException(
          "found move '"
              + move.text()
              + "', right would be "
              + (places.isEmpty() || patient.lidOn && Lid.covers(move)
                  ? "another move: this one cannot be made now"
                  : "such as '" + new Move(move.kind(), places.get(0)).text() + "'"));
    }
    List<Breach> breaches = rules.of(patient, move);
    Price price = job.prices().of(move);
    Reading reading = move.kind().act().perform(patient, move.place());
    patient.pass(price.minutes());
    spent = spent.plus(price);
    return new Outcome(move, reading, price, breaches);
  }

  /** Whether a move can be made now. */
  public boolean can(Move move) {
    return !(patient.lidOn && Lid.covers(move)) && move.kind().act().takes(patient, move.place());
  }

  /** The rules a move would break if it were made now; ask before, never forbid. */
  public List<Breach> breaches(Move move) {
    return rules.of(patient, move);
  }

  /** All that can be done now, by kind of move, then in board order. */
  public List<Offer> possible() {
    List<Offer> offers = new ArrayList<>();
    for (Moves kind : Moves.values()) {
      for (Move move : possible(kind)) {
        offers.add(new Offer(move, job.prices().of(move), rules.of(patient, move)));
      }
    }
    return List.copyOf(offers);
  }

  /** The moves of one kind that can be made now, in board order. */
  public List<Move> possible(Moves kind) {
    return kind.act().places(patient).stream()
        .map(place -> new Move(kind, place))
        .filter(move -> !(patient.lidOn && Lid.covers(move)))
        .toList();
  }

  /** What all moves so far have cost. */
  public Price spent() {
    return spent;
  }

  /** Whether the board is switched on. */
  public boolean powered() {
    return patient.powered;
  }

  /** References of the chips that are out of their places. */
  public Set<String> out() {
    return patient.out();
  }

  /** Whether the board stands as it came: every part in its place and nothing on it. */
  public boolean asItCame() {
    return patient.untouched();
  }

  /** The job as it came. */
  public Job job() {
    return job;
  }

  /** What is still wrong; for the debrief only. */
  public List<Fault> remaining() {
    return patient.faults();
  }
}
