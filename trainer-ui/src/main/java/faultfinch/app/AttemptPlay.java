package faultfinch.app;

import faultfinch.attempt.Attempt;
import faultfinch.attempt.Debrief;
import faultfinch.attempt.Decision;
import faultfinch.attempt.Hunch;
import faultfinch.attempt.JobCard;
import faultfinch.attempt.Note;
import faultfinch.attempt.Status;
import faultfinch.attempt.Strip;
import faultfinch.attempt.Suspect;
import faultfinch.bench.Breach;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Offer;
import faultfinch.bench.Reading;
import faultfinch.workbench.Play;
import java.util.List;
import java.util.Optional;

/** Plays a real attempt. */
record AttemptPlay(Attempt attempt) implements Play {

  @Override
  public JobCard card() {
    return attempt.card();
  }

  @Override
  public Optional<String> guide() {
    return attempt.guide();
  }

  @Override
  public List<Offer> possible() {
    return attempt.possible();
  }

  @Override
  public List<Breach> warnings(Move move) {
    return attempt.warnings(move);
  }

  @Override
  public boolean asksHunch(Move move) {
    return attempt.asksHunch(move);
  }

  @Override
  public void hunch(Hunch hunch) {
    attempt.hunch(hunch);
  }

  @Override
  public void noHunch() {
    attempt.noHunch();
  }

  @Override
  public Note act(Move move) {
    return attempt.act(move);
  }

  @Override
  public Note act(String text) {
    return attempt.act(text);
  }

  @Override
  public List<Note> notebook() {
    return attempt.notebook();
  }

  @Override
  public Status status() {
    return attempt.status();
  }

  @Override
  public List<Suspect> suspects() {
    return attempt.suspects();
  }

  @Override
  public Reading twin(Look look) {
    return attempt.twin(look);
  }

  @Override
  public Strip strip() {
    return attempt.strip();
  }

  @Override
  public List<String> decisions(String ref) {
    return attempt.decisions(ref);
  }

  @Override
  public Decision decide(String text) {
    return attempt.decide(text);
  }

  @Override
  public boolean over() {
    return attempt.over();
  }

  @Override
  public Debrief close() {
    return attempt.close();
  }
}
