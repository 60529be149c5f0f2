package faultfinch.workbench;

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
import java.util.List;
import java.util.Optional;

/** What the bench on the screen asks of the attempt it plays; see {@code Attempt} for each. */
public interface Play {

  JobCard card();

  Optional<String> guide();

  List<Offer> possible();

  List<Breach> warnings(Move move);

  boolean asksHunch(Move move);

  void hunch(Hunch hunch);

  void noHunch();

  Note act(Move move);

  Note act(String text);

  List<Note> notebook();

  Status status();

  List<Suspect> suspects();

  Reading twin(Look look);

  Strip strip();

  List<String> decisions(String ref);

  Decision decide(String text);

  boolean over();

  Debrief close();
}
