package faultfinch.diagnosis;

import faultfinch.board.Milestone;
import faultfinch.board.Pad;
import faultfinch.machine.PinDifference;
import faultfinch.machine.Setup;
import faultfinch.machine.Standing;
import faultfinch.signal.Phase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The chain from a fault to what shows, link by link: names and figures only, for others to put
 * into words. A link that is not there did not happen while the board was watched.
 *
 * @param keys whether keys were worked; they are where a start alone shows nothing
 * @param watched nanoseconds since power-on to the end of the watch
 * @param supplies parts that get other volts, by the net that feeds them
 * @param blown references of fuses that blow
 * @param killed references of parts that their supply kills
 * @param clock the first clock net that runs at another rate
 * @param stands where a level is first another one than on the healthy board, but at the fault
 * @param reads where another bit is first read, but by the fault itself
 * @param misreads where the fault's own pin first reads another bit
 * @param bus the first bus cycle that differs
 * @param place the instruction that was under way then, or when another bit was first read
 * @param lastStep the last milestone before
 * @param strays the first instruction that is another one
 * @param leaves the first instruction from outside the firmware
 * @param end what the processor is about in the end
 * @param circles where it goes round in the end and the healthy one does not
 * @param steps milestones that were not reached when they should, or reached though they should not
 * @param shows what can be seen or heard that is otherwise
 * @param starts how often the board starts, if not each time the same
 */
public record Why(
    Setup setup,
    boolean keys,
    long watched,
    List<OtherSupply> supplies,
    List<String> blown,
    List<String> killed,
    Optional<OtherClock> clock,
    Optional<Act> stands,
    Optional<Act> reads,
    Optional<Act> misreads,
    Optional<OtherCycle> bus,
    Optional<Routine> place,
    Optional<Milestone> lastStep,
    Optional<Stray> strays,
    Optional<Leaving> leaves,
    Ending end,
    Optional<Circle> circles,
    List<OtherStep> steps,
    List<OtherFeature> shows,
    Optional<String> starts) {
  public Why {
    supplies = List.copyOf(supplies);
    blown = List.copyOf(blown);
    killed = List.copyOf(killed);
    steps = List.copyOf(steps);
    shows = List.copyOf(shows);
  }

  /** A moment, by the count of the processor's clock and by time since power-on. */
  public record Moment(long cycle, Phase phase, long nanoseconds) {}

  /**
   * Parts on one net that get other volts than they should, at the lowest point of the ripple.
   *
   * @param ref the first of them in the order of the board
   * @param others how many more on this net
   */
  public record OtherSupply(String net, String ref, int expectedMv, int hadMv, int others) {}

  /**
   * A clock net that runs at another rate.
   *
   * @param pad a pin that is clocked by it
   */
  public record OtherClock(String net, Pad pad, double expectedHertz, double hadHertz) {}

  /**
   * Pins of one net that differ for the first time.
   *
   * @param net its name
   * @param source the pin that best tells where it comes from: at the fault, else what drives
   * @param pins those on the net that differ, but for the fault's own
   * @param nets how many nets differ in this phase
   */
  public record Act(
      Moment moment, String net, PinDifference source, List<PinDifference> pins, int nets) {
    public Act {
      pins = List.copyOf(pins);
    }

    /** Pins that read another bit; the source itself only if no other does. */
    public List<PinDifference> readers() {
      List<PinDifference> all = pins.stream().filter(PinDifference::bit).toList();
      List<PinDifference> others = all.stream().filter(d -> !d.pad().equals(source.pad())).toList();
      return others.isEmpty() ? all : others;
    }
  }

  /**
   * A bus cycle that is not as on the healthy board.
   *
   * @param expected what the healthy processor does; empty if it does nothing more
   * @param had what this one does; empty if it does nothing more
   * @param shouldAnswer who drives the data lines of the healthy one
   * @param answers who drives those of this one
   */
  public record OtherCycle(
      long nanoseconds,
      Optional<BusCycle> expected,
      Optional<BusCycle> had,
      List<String> shouldAnswer,
      List<String> answers) {
    public OtherCycle {
      shouldAnswer = List.copyOf(shouldAnswer);
      answers = List.copyOf(answers);
    }
  }

  /** An instruction that is fetched where the healthy board fetches another. */
  public record Stray(long cycle, long nanoseconds, Routine from, Routine expected, Routine had) {}

  /** The first instruction that does not come from a ROM whose place is known. */
  public record Leaving(long cycle, long nanoseconds, Routine from, int address) {}

  /**
   * What the processor is about when it is switched off.
   *
   * @param since nanoseconds since power-on of its last bus cycle; empty if it made none
   */
  public record Ending(Standing standing, Standing expected, OptionalLong since) {}

  /** Instructions gone round and round: the lowest and the highest. */
  public record Circle(Routine from, Routine to, int instructions) {}

  /**
   * A milestone that was not reached when it should have been.
   *
   * @param expected nanoseconds since power-on; empty if it should not be reached
   * @param had the same; empty if it was not reached
   */
  public record OtherStep(Milestone milestone, OptionalLong expected, OptionalLong had) {}

  /** A feature of what shows that is not as on the healthy board. */
  public record OtherFeature(String name, String expected, String had) {}

  /** Whether nothing at all is otherwise. */
  public boolean nothing() {
    return supplies.isEmpty()
        && clock.isEmpty()
        && stands.isEmpty()
        && reads.isEmpty()
        && misreads.isEmpty()
        && bus.isEmpty()
        && steps.isEmpty()
        && shows.isEmpty();
  }
}
