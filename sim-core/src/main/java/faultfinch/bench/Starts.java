package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Electrical;
import faultfinch.symptom.Symptoms;
import faultfinch.symptom.Watching;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What becomes of a board that is switched on from cold again and again. Only one whose processor
 * may miss its reset starts otherwise each time; any other is taken to do what it did the first
 * time.
 *
 * <p>Not modelled: faults whose outcome hangs on what memory woke up with.
 */
public final class Starts {
  /** Switched on so often. */
  public static final int TIMES = 8;

  /** Of a board that does the same each time. */
  public static final String ALIKE = "each time the same";

  private static final Pattern SAID =
      Pattern.compile("starts (\\d+) of \\d+ times(?:, else (.*))?");

  private final long resetOverBy = Electrical.figure("start.to.us") * 1000L;
  private final Board board;

  /** The last step of the firmware before any key; learnt from a healthy run when it is needed. */
  private Optional<String> ready = Optional.empty();

  /** For boards of this kind. */
  public Starts(Board board) {
    this.board = board;
  }

  private synchronized String ready() {
    if (ready.isEmpty()) {
      Machine machine = new Machine(Setup.healthy(board, Schedule.SEED), Watching.KIND);
      machine.runTo(Watching.readyMilliseconds(board) * 1_000_000L);
      ready =
          Optional.of(
              machine.milestones().entrySet().stream()
                  .max(Comparator.comparing(Map.Entry<String, Long>::getValue))
                  .map(Map.Entry::getKey)
                  .orElse(""));
    }
    return ready.get();
  }

  /**
   * How often such a board gets as far as a healthy one, and what it mostly shows else.
   *
   * @param first the board at its first power-on; seven more follow
   */
  public String of(Setup first) {
    if (!mayMissItsReset(first) || ready().isEmpty()) {
      return ALIKE;
    }
    int started = 0;
    Map<String, Integer> failed = new LinkedHashMap<>();
    for (int time = 0; time < TIMES; time++) {
      Watching watching =
          Watching.of(
              new Setup(
                  first.board(),
                  first.faults(),
                  first.out(),
                  first.seed(),
                  first.powerOn() + time,
                  first.surroundings()),
              Map.of());
      if (watching.milestones().containsKey(ready())) {
        started++;
      } else {
        failed.merge(watching.symptoms().feature(Symptoms.DISPLAY), 1, Integer::sum);
      }
    }
    return text(started, failed);
  }

  private static String text(int started, Map<String, Integer> failed) {
    String often = "starts " + started + " of " + TIMES + " times";
    return failed.entrySet().stream()
        .max(Comparator.comparing(Map.Entry<String, Integer>::getValue))
        .map(most -> often + ", else " + most.getKey())
        .orElse(often);
  }

  /** Whether reset is over, or never was, when the processor's clock may begin to run. */
  private boolean mayMissItsReset(Setup setup) {
    Optional<PlacedPart> processor = setup.board().firstOf(PartCatalog.M6502);
    if (processor.isEmpty()) {
      return false;
    }
    Machine machine = new Machine(setup, Watching.KIND);
    if (!machine.works(processor.get().ref()) || machine.processorHertz() == 0) {
      return false;
    }
    machine.runTo(resetOverBy);
    machine.rest();
    Pad reset = new Pad(processor.get().ref(), "RES/");
    return machine.millivolts(reset, false) > Electrical.figure("mid.to");
  }

  /**
   * An outcome taken apart.
   *
   * @param chance that a start goes well, 0 to 1: half a start more on either side, since so few
   *     were made
   * @param otherwise what its set or display mostly shows else
   */
  public record Said(double chance, String otherwise) {}

  /** The outcome, if it is of a board that starts now and then. */
  public static Optional<Said> said(String outcome) {
    Matcher m = SAID.matcher(outcome);
    if (!m.matches()) {
      return Optional.empty();
    }
    double chance = (Integer.parseInt(m.group(1)) + 0.5) / (TIMES + 1);
    return Optional.of(new Said(chance, Optional.ofNullable(m.group(2)).orElse("")));
  }
}
