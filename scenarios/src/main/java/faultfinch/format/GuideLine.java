package faultfinch.format;

import java.util.List;

/**
 * One act a guided case asks for.
 *
 * @param says what to do and why, one line
 * @param done texts of the moves, or {@code decide: ...}, any one of which fulfils it
 */
public record GuideLine(String says, List<String> done) {
  public GuideLine {
    done = List.copyOf(done);
    if (done.isEmpty()) {
      throw new IllegalArgumentException("found no act for '" + says + "', right would be one");
    }
  }
}
