package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Drill;
import faultfinch.board.Firmware;
import faultfinch.board.TrackNeighbours;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * What a dictionary was computed from. A dictionary of another origin says nothing about a board.
 *
 * @param board name
 * @param digest SHA-256 of board, firmware and models, in hexadecimal
 */
public record Origin(String board, String digest) {

  private static final String SUFFIX = ".origin";
  private static final int WORDS = 3;

  /**
   * The origin of a dictionary of this board. That of a board whose files are just those of a
   * shipped one stands beside it, so that it need not be worked out.
   *
   * @param models version of everything that runs a board and looks at it
   */
  public static Origin of(Board board, String models) {
    return shipped(board, models).orElseGet(() -> computed(board, models));
  }

  /** The file name beside a board. */
  static String fileName(Board board) {
    return board.name() + SUFFIX;
  }

  /** What stands in the file: models, source and digest. */
  static String text(Board board, String models, Origin origin) {
    return models + " " + board.source() + " " + origin.digest + "\n";
  }

  /** The one that was shipped, if it is of these files and these models. */
  static Optional<Origin> shipped(Board board, String models) {
    Optional<InputStream> file = BoardReader.beside(board.name(), fileName(board));
    try (InputStream in = file.orElse(InputStream.nullInputStream())) {
      String[] words = new String(in.readAllBytes(), StandardCharsets.UTF_8).strip().split(" ");
      return words.length == WORDS && words[0].equals(models) && words[1].equals(board.source())
          ? Optional.of(new Origin(board.name(), words[2]))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own " + fileName(board) + " is unreadable", e);
    }
  }

  /** The origin from what the board is. */
  static Origin computed(Board board, String models) {
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
    for (Drill drill : board.drills()) {
      sha.update(drill.toString().getBytes(StandardCharsets.UTF_8));
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
