package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Contradictions;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.Seat;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.cli.Options;

/** A board with what is said to be wrong with it and out of it, checked before it is powered. */
final class SetupChoice {
  private static final String FAULT = "fault";
  private static final String OUT = "out";
  private static final String SEED = "seed";
  private static final String POWER_ON = "power-on";
  private static final int MOST_POWER_ONS = 1_000_000;

  private final Words words;

  SetupChoice(Words words) {
    this.words = words;
  }

  static void addTo(Options options) {
    options
        .addOption(BoardChoice.option())
        .addOption(Given.values(FAULT, "FAULT"))
        .addOption(Given.values(OUT, "PART"))
        .addOption(Given.value(SEED, "N"))
        .addOption(Given.value(POWER_ON, "N"));
  }

  /** All of it as one setup. */
  Setup setup(Given given) {
    BoardChoice choice = new BoardChoice(words);
    Board board = choice.board(given);
    Set<String> out = new LinkedHashSet<>();
    for (String ref : given.names(OUT)) {
      PlacedPart part = choice.part(board, ref);
      if (!out.add(part.ref())) {
        throw words.misuse("setup.out-twice", part.ref());
      }
    }
    List<Fault> faults = new ArrayList<>();
    for (String text : given.texts(FAULT)) {
      faults.add(FaultKinds.parse(text, board));
    }
    Contradictions.in(faults)
        .ifPresent(
            pair -> {
              throw words.misuse("setup.contradiction", pair.says());
            });
    for (Fault fault : faults) {
      if (inAPart(fault.seat()) && out.contains(fault.place())) {
        throw words.misuse("setup.fault-is-out", fault.text(), fault.place());
      }
    }
    return new Setup(
        board,
        faults,
        out,
        given.whole(SEED, 1, Long.MIN_VALUE, Long.MAX_VALUE),
        (int) given.whole(POWER_ON, 0, 0, MOST_POWER_ONS));
  }

  /** Whether a fault goes where its part goes. */
  private static boolean inAPart(Seat seat) {
    return switch (seat) {
      case INSIDE, LEG, BENT_LEG, SEATING, SOCKET_OF_ANOTHER -> true;
      case CONTACT, JOINT, TRACK, BETWEEN_PADS, DIRT, SETTING, SUPPLY -> false;
    };
  }
}
