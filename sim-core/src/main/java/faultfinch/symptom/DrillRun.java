package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.Drill;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import faultfinch.part.TapeRecorder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A drill of a board gone through. If nothing comes of its first line nobody goes on. Beside what
 * stands on the set it tells whether a tape runs when it should, and only then.
 */
final class DrillRun implements HandsOn {
  /** What is said when the first line changed nothing on the set. */
  static final String NOTHING = "nothing comes of the first line";

  /** Of somebody who types well: keys are looked at every 10 ms. */
  private static final int DOWN_MS = 50;

  private static final int UP_MS = 40;
  private static final long MILLISECOND = 1_000_000;

  /** Somebody who waits for a tape to stop looks at it so often. */
  private static final int GLANCE_MS = 50;

  /** How long a tape that stands is looked at. */
  private static final int PATIENCE_MS = 1500;

  /** What a hand takes that moves something, or an eye from the tape to the set. */
  private static final int MOVE_MS = 200;

  private final Drill drill;
  private final int ready;

  DrillRun(Board board, Drill drill) {
    this.drill = drill;
    ready = Watching.readyMilliseconds(board);
  }

  @Override
  public String name() {
    return drill.name();
  }

  @Override
  public String says(Machine machine, Frames frames) {
    machine.runTo((ready - Screen.LOOK_MS) * MILLISECOND);
    Screen before = Screen.look(machine, frames);
    if (!before.synced() || before.dark()) {
      return BLIND;
    }
    return new Round(machine, frames).says(before);
  }

  /** Whatever was held or turned: what stands on the set does not say which of them. */
  @Override
  public Map<String, Integer> otherwise(String usual, String seen) {
    Map<String, Integer> otherwise = new LinkedHashMap<>();
    if (!seen.equals(usual) && !seen.equals(BLIND) && !seen.equals(NOTHING)) {
      for (Drill.Step step : drill.steps()) {
        if (step instanceof Drill.Hold hold) {
          hold.refs().forEach(ref -> otherwise.put(ref, 1));
        }
      }
    }
    return otherwise;
  }

  /** One board that is worked. */
  private final class Round {
    private final Machine machine;
    private final Frames frames;
    private final Fingers fingers;

    private boolean ranBefore;
    private boolean ran;

    Round(Machine machine, Frames frames) {
      this.machine = machine;
      this.frames = frames;
      fingers = new Fingers(machine, DOWN_MS, UP_MS);
    }

    String says(Screen before) {
      ranBefore = runs();
      boolean begun = false;
      for (Drill.Step step : drill.steps()) {
        if (!begun && step instanceof Drill.Line line) {
          fingers.press(line.refs().get(0));
          if (PictureChange.none(before, Screen.look(machine, frames))) {
            return NOTHING;
          }
          begun = true;
          fingers.press(line.refs().subList(1, line.refs().size()));
        } else {
          take(step);
        }
      }
      return Screen.look(machine, frames).says() + ofTape();
    }

    private void take(Drill.Step step) {
      if (step instanceof Drill.Line line) {
        fingers.press(line.refs());
      } else if (step instanceof Drill.Hold hold) {
        move(hold.refs(), true);
      } else if (step instanceof Drill.Free free) {
        move(free.refs(), false);
      } else if (step instanceof Drill.Await wait) {
        awaitStop(wait.mostMilliseconds());
      }
    }

    private void move(List<String> refs, boolean held) {
      refs.forEach(ref -> machine.hold(ref, held));
      fingers.pass(MOVE_MS);
    }

    /** Nobody waits long for a tape that does not begin to run. */
    private void awaitStop(int most) {
      long end = machine.nanoseconds() + most * MILLISECOND;
      long begun = machine.nanoseconds() + Math.min(most, PATIENCE_MS) * MILLISECOND;
      boolean going = false;
      while (machine.nanoseconds() < (going ? end : begun) && !(going && !runs())) {
        going |= runs();
        fingers.pass(GLANCE_MS);
      }
      ran |= going;
      fingers.pass(MOVE_MS);
    }

    private boolean runs() {
      return drill
          .recorder()
          .flatMap(ref -> machine.word(ref, TapeRecorder.GOES))
          .filter(TapeRecorder::runs)
          .isPresent();
    }

    private String ofTape() {
      if (drill.recorder().isEmpty()) {
        return "";
      }
      if (ranBefore) {
        return ", the tape runs from the start";
      }
      return runs() ? ", the tape runs on" : ran ? "" : ", the tape never runs";
    }
  }
}
