package faultfinch.bench;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.Collectors;

/**
 * One look that changes nothing: an instrument and where it is put. Its text is its identity.
 *
 * @param place empty for the whole board; a reference, a pad such as {@code U1.VCC}, a pad with its
 *     side such as {@code U9.D0 at the pin}, or a piece of track such as {@code U1.D0-U2.D0}
 */
public record Look(Instruments kind, String place) implements Comparable<Look> {
  private static final Comparator<Look> ORDER =
      Comparator.comparing(Look::kind).thenComparing(Look::place);

  public Look {
    if (kind.wholeBoard() != place.isEmpty()) {
      throw new IllegalArgumentException(
          "found '"
              + place
              + "' behind "
              + kind.word()
              + ", right would be "
              + (kind.wholeBoard() ? "nothing" : "a place"));
    }
  }

  /** Such as {@code probe U9.D0 at the pin}. */
  public String text() {
    return place.isEmpty() ? kind.word() : kind.word() + " " + place;
  }

  /**
   * The look of a text. Whether a board has the place is for {@link Looks} to say.
   *
   * @throws IllegalArgumentException if it does not begin with an instrument
   */
  public static Look parse(String text) {
    String[] halves = text.strip().split(" ", 2);
    Instruments kind =
        Instruments.named(halves[0])
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "found look '"
                            + text
                            + "', right would be one that begins with "
                            + Arrays.stream(Instruments.values())
                                .map(Instruments::word)
                                .collect(Collectors.joining(", "))));
    return new Look(kind, halves.length == 1 ? "" : halves[1].strip());
  }

  @Override
  public int compareTo(Look other) {
    return ORDER.compare(this, other);
  }
}
