package faultfinch.judging;

import faultfinch.bench.Look;
import faultfinch.board.Board;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Sight;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What brings a board to the bench. The owner looks at it, listens, watches the lamp. If all that
 * is as it should be he works the keys until something is not; if nothing is, the retest may find
 * it.
 */
public final class Signs {
  private final FaultDictionary dictionary;
  private final List<String> first = new ArrayList<>();
  private final List<String> hands = new ArrayList<>();
  private final List<String> retest = new ArrayList<>();

  /** For boards of one kind. */
  public Signs(Board board, FaultDictionary dictionary) {
    this.dictionary = dictionary;
    for (String text : dictionary.looks()) {
      Optional<Look> look = look(text);
      if (look.isPresent()) {
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
    List<Complaint.Told> told = new ArrayList<>();
    first.forEach(look -> told.add(told(look, row)));
    boolean wrong = first.stream().anyMatch(look -> wrong(look, row));
    for (String look : hands) {
      if (!wrong) {
        told.add(told(look, row));
        wrong = wrong(look, row);
      }
    }
    if (wrong) {
      return Optional.of(new Complaint(told, List.of()));
    }
    return retest.stream().anyMatch(look -> wrong(look, row))
        ? Optional.of(new Complaint(told, failing()))
        : Optional.empty();
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

  private Complaint.Told told(String look, int row) {
    return new Complaint.Told(look, dictionary.outcome(dictionary.look(look).getAsInt(), row));
  }

  private boolean wrong(String look, int row) {
    return dictionary.cell(dictionary.look(look).getAsInt(), row) != FaultDictionary.HEALTHY;
  }
}
