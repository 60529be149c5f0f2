package faultfinch.diagnosis;

import java.util.List;
import java.util.Objects;

/**
 * One thing that was seen.
 *
 * @param look what was looked at, in words; the text of the look if it was one
 * @param seen what it showed, in words; the outcome if it was one
 * @param reach what exactly that says of the board
 * @param after how many of the repairs of the evidence were done before
 */
public record Observation(
    String look, String seen, Source source, Doubt doubt, Reach reach, int after) {

  /** Who says so: an outcome noted at the bench, somebody there in words of his own, an owner. */
  public enum Source {
    BENCH,
    WORDS,
    TOLD
  }

  /** How far the one who says so trusts it. */
  public enum Doubt {
    SURE,
    FAIRLY,
    HARDLY
  }

  /** How warm a board was. */
  public enum Climate {
    USUAL,
    COLD,
    WARM
  }

  /**
   * What an observation says of the board.
   *
   * @param every whether all of the sights were had; else at least one of them
   * @param climate how warm the board was; a fault may wait for it
   */
  public record Reach(List<Sight> sights, boolean every, Tally tally, Climate climate) {
    public Reach {
      sights = List.copyOf(sights);
      Objects.requireNonNull(tally);
      if (sights.isEmpty()) {
        throw new IllegalArgumentException("found no sight, right would be one or more");
      }
    }

    /** Of a board as warm as it gets by itself. */
    public Reach(List<Sight> sights, boolean every, Tally tally) {
      this(sights, every, tally, Climate.USUAL);
    }
  }

  public Observation {
    if (after < 0) {
      throw new IllegalArgumentException("found " + after + " repairs before, right would be 0 up");
    }
  }

  /** One outcome of one look. */
  public Observation(String look, String seen, Source source) {
    this(
        look,
        seen,
        source,
        Doubt.SURE,
        new Reach(List.of(new Sight(List.of(look), List.of(seen))), true, Tally.ONCE),
        0);
  }

  /** Seen on the bench. */
  public static Observation bench(String look, String seen) {
    return new Observation(look, seen, Source.BENCH);
  }

  /** Told by a person. */
  public static Observation told(String look, String seen) {
    return new Observation(look, seen, Source.TOLD);
  }

  /** The same, seen after so many of the repairs. */
  public Observation afterRepairs(int repairs) {
    return new Observation(look, seen, source, doubt, reach, repairs);
  }

  /** All looks it may have been. */
  List<String> looks() {
    return reach.sights.stream().flatMap(s -> s.looks().stream()).toList();
  }

  /** The looks that need not be made again, since it is known which they were. */
  List<String> looksMade() {
    return reach.sights.stream()
        .filter(s -> reach.climate == Climate.USUAL)
        .filter(s -> s.looks().size() == 1 && (reach.every || reach.sights.size() == 1))
        .map(s -> s.looks().get(0))
        .toList();
  }

  /** Such as {@code probe U9.D0 at the pin: low}. */
  public String text() {
    return look + ": " + seen;
  }
}
