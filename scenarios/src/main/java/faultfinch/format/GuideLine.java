package faultfinch.format;

import java.util.List;

/**
 * One act a guided case asks for.
 *
 * @param says what to do and why, one line
 * @param done any one of these fulfils it: texts of moves, {@link #STRIP}, or {@link #DECIDE} with
 *     a decision behind it
 */
public record GuideLine(String says, List<String> done) {

  /** The act of laying what is shown and what is right beside each other, bit by bit. */
  public static final String STRIP = "strip";

  /** Before the text of a decision. */
  public static final String DECIDE = "decide: ";

  public GuideLine {
    done = List.copyOf(done);
    if (done.isEmpty()) {
      throw new IllegalArgumentException("found no act for '" + says + "', right would be one");
    }
  }
}
