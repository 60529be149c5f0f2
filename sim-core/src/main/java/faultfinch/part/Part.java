package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import java.util.List;

/**
 * The behaviour of a part number. A part holds no fields: all it stores lives in the machine and is
 * reached through its {@link Pins}, so that a copy of the machine's arrays is a checkpoint.
 */
public abstract class Part {

  /** Never: no change by itself. */
  public static final long NEVER = Long.MAX_VALUE;

  /** The drawing this part was declared by. */
  public abstract Pinout pinout();

  /** Inputs and stored state to outputs; pure and repeatable. */
  public void settle(Pins pins) {}

  /** Stores what the settled levels of a phase tell it to; the only place where state changes. */
  public void commit(Pins pins, Phase phase) {}

  /** Whether {@link #commit} does anything apart from edges of a clock pin. */
  public boolean commitsEveryPhase() {
    return false;
  }

  /**
   * Pins any of which, while it reads high, keeps {@link #commit} from doing anything in this phase
   * but what an edge of a clock pin makes it do; 0 where no pin does.
   */
  public long restsWhileHigh(Phase phase) {
    return 0;
  }

  /**
   * Whether a {@link #commit} that stored nothing and saw no edge stores nothing again, whatever
   * the phase and the time, until a pin reads another bit or something else is stored.
   */
  public boolean standsStill() {
    return false;
  }

  /** Whether {@link #commit} asks for the edges of pins that are no clocks. */
  public boolean asksForEdges() {
    return false;
  }

  /** Whether the outputs depend on the phase itself, and so are settled in each. */
  public boolean followsPhase() {
    return false;
  }

  /**
   * Whether a part with registers also steps with the clock, by pins that are no bus pins, and
   * stores at its registers at the end of a cycle only.
   */
  public boolean stepsAlone() {
    return false;
  }

  /** State at power-on; cells and words are zero before this is called. */
  public void powerOn(Pins pins, PowerOn chance) {}

  /** Whether time alone can change the part: only then is {@link #nextChange} asked. */
  public boolean keepsTime() {
    return false;
  }

  /** Bus cycle at which the outputs can next change by themselves, or {@link #NEVER}. */
  public long nextChange(Pins pins) {
    return NEVER;
  }

  /**
   * Bus cycle at which {@link #elapse} next stores something; before it, changes by themselves move
   * outputs only.
   */
  public long nextStored(Pins pins) {
    return nextChange(pins);
  }

  /**
   * Brings time-driven state up to {@link Pins#now()}; called at {@link #nextChange} and before
   * use.
   */
  public void elapse(Pins pins) {}

  /** What can go wrong inside, as a list that its page explains. */
  public List<Defect> defects() {
    return List.of();
  }
}
