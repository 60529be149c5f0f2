package faultfinch.workbench;

import faultfinch.attempt.CaseLine;
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
import faultfinch.bench.Looks;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Offer;
import faultfinch.bench.Price;
import faultfinch.bench.Reading;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A play that needs no simulation: every answer is written here. Its display reads RNRRDL while
 * contact D0 of U9 is open, for in RNRRDL each letter of SORREL has lost bit 0.
 */
public final class ScriptedPlay implements Play {
  private static final Price TWO_MINUTES = new Price(2, 0, 0, 2);
  private static final Price ONE_PULL = new Price(4, 1, 0.5, 24.5);

  private final Board board = BoardReader.shipped("sorrel");
  private final boolean guided;
  private final List<Note> notes = new ArrayList<>();
  private final List<Decision> decisions = new ArrayList<>();
  private final List<Hunch> hunches = new ArrayList<>();
  private boolean powered;
  private boolean cured;
  private boolean over;

  public ScriptedPlay(boolean guided) {
    this.guided = guided;
  }

  public static List<CaseLine> cases() {
    return IntStream.rangeClosed(1, 10)
        .mapToObj(
            i -> new CaseLine(i, "case-" + i, "Case of the letter " + (char) ('A' + i), "sorrel"))
        .toList();
  }

  public List<Hunch> hunches() {
    return hunches;
  }

  @Override
  public JobCard card() {
    return new JobCard(
        guided ? 1 : 3,
        "The letters are wrong",
        board,
        "It used to greet me with its name. Now it says RNRRDL and I cannot make sense of it.",
        List.of("since when?", "who has been inside?"),
        "From a wrong picture to one line",
        Optional.empty(),
        60,
        new JobCard.Shown(guided, !guided, true, !guided),
        true);
  }

  @Override
  public Optional<String> guide() {
    if (!guided || over) {
      return Optional.empty();
    }
    if (!powered) {
      return Optional.of("Switch the board on, at the lower left.");
    }
    if (notes.stream().noneMatch(n -> n.move().text().startsWith("look: probe"))) {
      return Optional.of("One column of bits is wrong: D0. Probe D0 at the leg of the display U9.");
    }
    return Optional.empty();
  }

  @Override
  public List<Offer> possible() {
    List<Offer> offers = new ArrayList<>();
    offers.add(offer(new Move(powered ? Moves.POWER_OFF : Moves.POWER_ON, "")));
    Looks.passive(board).forEach(l -> offers.add(offer(Move.look(l))));
    for (String ref : List.of("U1", "U2", "U3", "U8", "U9")) {
      offers.add(offer(new Move(Moves.RESEAT, ref)));
      offers.add(offer(new Move(Moves.TAKE_OUT, ref)));
      offers.add(offer(new Move(Moves.EXCHANGE, ref)));
    }
    offers.add(offer(new Move(Moves.HOLD, "U4.Y0/ to ground")));
    offers.add(offer(new Move(Moves.SWAP_SUPPLY, "")));
    offers.add(offer(new Move(Moves.INSPECT, "")));
    offers.add(offer(new Move(Moves.RETEST, "")));
    offers.add(offer(new Move(Moves.ASK, "since when?")));
    return offers;
  }

  private Offer offer(Move move) {
    return new Offer(move, price(move), warnings(move));
  }

  private static Price price(Move move) {
    return switch (move.kind()) {
      case TAKE_OUT, EXCHANGE -> ONE_PULL;
      default -> TWO_MINUTES;
    };
  }

  @Override
  public List<Breach> warnings(Move move) {
    return powered && move.kind() == Moves.TAKE_OUT
        ? List.of(
            new Breach("powered pull", "A chip taken out under power can be destroyed.", false))
        : List.of();
  }

  @Override
  public boolean asksHunch(Move move) {
    return !guided && hunches.isEmpty() && move.kind() == Moves.EXCHANGE;
  }

  @Override
  public void hunch(Hunch hunch) {
    hunches.add(hunch);
  }

  @Override
  public void noHunch() {
    hunches.add(new Hunch("", Hunch.Expectation.OTHER));
  }

  @Override
  public Note act(Move move) {
    switch (move.kind()) {
      case POWER_ON -> powered = true;
      case POWER_OFF -> powered = false;
      case RESEAT -> cured |= move.place().equals("U9");
      default -> {}
    }
    Note note =
        new Note(
            notes.size() + 1,
            move,
            reading(move),
            price(move),
            2 * (notes.size() + 1),
            0,
            warnings(move));
    notes.add(note);
    return note;
  }

  private Reading reading(Move move) {
    String text = move.text();
    if (text.equals("look: screen")) {
      String shown = cured ? "SORREL" : "RNRRDL";
      List<Integer> cells = String.format("%-16s", shown).chars().boxed().toList();
      return new Reading.Picture("reads '" + shown + "'", "reads '" + shown + "'", cells);
    }
    if (text.startsWith("look: probe")) {
      return new Reading.Level(
          text.equals("look: probe U9.D0 at the pin") ? Reading.Light.NONE : Reading.Light.PULSING);
    }
    return new Reading.Words("done", "done");
  }

  @Override
  public Note act(String text) {
    return act(Move.parse(text));
  }

  @Override
  public List<Note> notebook() {
    return List.copyOf(notes);
  }

  @Override
  public Status status() {
    return new Status(
        powered,
        2 * notes.size(),
        0,
        2 * notes.size(),
        OptionalInt.of(Math.max(1, 40 - 13 * notes.size())));
  }

  @Override
  public List<Suspect> suspects() {
    return List.of(
        new Suspect("U9", 0.62),
        new Suspect("U9.D0", 0.2),
        new Suspect("U4", 0.1),
        new Suspect("U1.D0-U2.D0", 0.004));
  }

  @Override
  public Reading twin(Look look) {
    return new Reading.Level(Reading.Light.PULSING);
  }

  @Override
  public Strip strip() {
    List<Strip.Cell> cells = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      cells.add(new Strip.Cell("RNRRDL".charAt(i), "SORREL".charAt(i)));
    }
    return new Strip(cells, List.of(false, false, false, false, false, false, true));
  }

  @Override
  public List<String> decisions(String ref) {
    return ref.isEmpty()
        ? List.of("nothing wrong", "brick: supply")
        : List.of(
            ref + ": contact",
            ref + ": part",
            ref + ".D0: leg",
            ref + ".D1: leg",
            "U1.D0-" + ref + ".D0: track");
  }

  @Override
  public Decision decide(String text) {
    over = text.equals("U9: contact");
    Decision decision =
        new Decision(
            text,
            "reseated",
            over ? Decision.Result.PASSES : Decision.Result.SAME,
            new Reading.Check(over, over ? List.of() : List.of("the display reads RNRRDL")),
            TWO_MINUTES,
            over ? "The board passes." : "The board fails as before.");
    decisions.add(decision);
    return decision;
  }

  @Override
  public boolean over() {
    return over;
  }

  @Override
  public Debrief close() {
    return new Debrief(
        over,
        List.of(
            "You read the wrong picture bit by bit before you touched anything.",
            "You probed on both sides of the joint that turned out to be open."),
        List.of("Contact D0 of U9 was open in its socket."),
        over ? List.of() : List.of("Contact D0 of U9 is open."),
        notes.stream()
            .map(
                n ->
                    new Debrief.Leg(
                        n.move().text(),
                        n.reading().text(),
                        n.price(),
                        OptionalInt.of(Math.max(1, 40 - 13 * n.number()))))
            .toList(),
        new Debrief.Best(
            List.of(
                new Debrief.Leg("look: screen", "reads 'RNRRDL'", TWO_MINUTES, OptionalInt.of(9)),
                new Debrief.Leg(
                    "look: probe U9.D0 at the pin", "no light", TWO_MINUTES, OptionalInt.of(1)),
                new Debrief.Leg("reseat: U9", "done", TWO_MINUTES, OptionalInt.empty())),
            new Price(6, 0, 0, 6),
            Optional.empty()),
        decisions,
        List.of("meter U9.VCC: the display was lit, so it had its supply"),
        List.of(),
        List.of(),
        List.of(),
        new Price(2 * notes.size(), 0, 0, 2 * notes.size()),
        guided ? OptionalInt.empty() : OptionalInt.of(80),
        "A picture that is wrong in one bit everywhere points at one line.",
        "# Job sheet\n\nSorrel, Marrow Lane Works\n\nFound: contact D0 of U9 open in its socket.\n");
  }
}
