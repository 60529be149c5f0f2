package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.Firmware;
import faultfinch.board.TrackNeighbours;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a dictionary was computed from. A dictionary of another origin says nothing about a board.
 *
 * @param board name
 * @param digest SHA-256 of board, firmware and models, in hexadecimal
 */
public record Origin(String board, String digest) {

  /**
   * The origin of a dictionary of this board.
   *
   * @param models version of everything that runs a board and looks at it
   */
  public static Origin of(Board board, String models) {
    MessageDigest sha;
    try {
      sha = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is missing from this Java", e);
    }
    for (Object told :
        new Object[] {
          models,
          board.name(),
          board.hertz(),
          board.crystal(),
          board.phaseNanoseconds(),
          board.parts(),
          board.nets(),
          board.supply(),
          board.milestones(),
          board.exercise(),
          board.rightDisplay()
        }) {
      sha.update(told.toString().getBytes(StandardCharsets.UTF_8));
      sha.update((byte) 0);
    }
    for (Firmware rom : board.firmware()) {
      sha.update(rom.ref().getBytes(StandardCharsets.UTF_8));
      sha.update((byte) 0);
      sha.update(rom.image());
    }
    // What routes add to the faults of a board: which of its tracks solder can join, and how near.
    for (TrackNeighbours n : board.neighbours()) {
      sha.update((n.text() + " " + n.gap()).getBytes(StandardCharsets.UTF_8));
      sha.update((byte) 0);
    }
    return new Origin(board.name(), HexFormat.of().formatHex(sha.digest()));
  }
}
