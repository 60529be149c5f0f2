package faultfinch.judging;

import faultfinch.bench.Look;
import faultfinch.bench.Moves;
import faultfinch.board.Board;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Sight;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What brings a board to the bench. The owner looks at it, listens, watches the lamp. If all that
 * is as it should be he works the keys, and what else is tried by hand, until something is not; if
 * nothing is, the retest may find it.
 */
public final class Signs {
  private final FaultDictionary dictionary;
  private final List<String> first = new ArrayList<>();
  private final List<String> hands = new ArrayList<>();
  private final List<String> retest = new ArrayList<>();

  /** For boards of one kind. */
  public Signs(Board board, FaultDictionary dictionary) {
    this.dictionary = dictionary;
    List<String> beside = new ArrayList<>();
    for (String text : dictionary.looks()) {
      Optional<Look> look = look(text);
      if (Moves.handsOn(text).isPresent()) {
        (text.equals(Moves.EVERY_KEY.word()) ? hands : beside).add(text);
      } else if (look.isPresent()) {
        switch (look.get().kind()) {
          case SCREEN, LISTEN, LAMP -> first.add(text);
          case KEY, TYPED -> hands.add(text);
          case CURRENT -> retest.add(text);
          case METER -> {
            if (supplies(board, look.get().place())) {
              retest.add(text);
            }
          }
          case FINGER, PROBE, COUNTER, CONTINUITY, OHMS -> {
            // Neither the owner nor the retest does that.
          }
        }
      }
    }
    hands.addAll(beside);
  }

  /** What is no look by itself, such as a round of the bench ROM, is none here. */
  private static Optional<Look> look(String text) {
    try {
      return Optional.of(Look.parse(text));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static boolean supplies(Board board, String pad) {
    int dot = pad.indexOf('.');
    return board
        .part(pad.substring(0, dot))
        .flatMap(p -> p.type().part().pinout().find(pad.substring(dot + 1)))
        .filter(p -> p.role() == Pin.Role.SUPPLY)
        .isPresent();
  }

  /** The complaint about a fault of this row; empty if nobody would notice it. */
  public Optional<Complaint> complaint(int row) {
    return complaint(look -> dictionary.outcome(dictionary.look(look).getAsInt(), row));
  }

  /**
   * The complaint about any board.
   *
   * @param shows what a look shows, as the dictionary names it
   */
  Optional<Complaint> complaint(UnaryOperator<String> shows) {
    List<Complaint.Told> told = new ArrayList<>();
    first.forEach(look -> told.add(new Complaint.Told(look, shows.apply(look))));
    boolean wrong = first.stream().anyMatch(look -> isWrong(look, shows));
    for (String look : hands) {
      if (!wrong) {
        told.add(new Complaint.Told(look, shows.apply(look)));
        wrong = isWrong(look, shows);
      }
    }
    if (wrong) {
      return Optional.of(new Complaint(told, List.of()));
    }
    return retest.stream().anyMatch(look -> isWrong(look, shows))
        ? Optional.of(new Complaint(told, failing()))
        : Optional.empty();
  }

  /** What is looked at after a repair. */
  List<String> check() {
    List<String> check = new ArrayList<>(first);
    check.addAll(hands);
    return check;
  }

  /** What the retest looks at besides. */
  List<String> retest() {
    return List.copyOf(retest);
  }

  boolean isWrong(String look, UnaryOperator<String> shows) {
    String healthy = dictionary.outcomes(dictionary.look(look).getAsInt()).get(0);
    return !shows.apply(look).equals(healthy);
  }

  private List<Sight> failing() {
    List<Sight> sights = new ArrayList<>();
    for (String look : retest) {
      List<String> outcomes = dictionary.outcomes(dictionary.look(look).getAsInt());
      if (outcomes.size() > 1) {
        sights.add(new Sight(List.of(look), outcomes.subList(1, outcomes.size())));
      }
    }
    return sights;
  }
}
