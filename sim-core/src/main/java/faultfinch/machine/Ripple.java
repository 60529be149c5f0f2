package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.part.PartCatalog;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How far the volts of a brick fall between two charges of its capacitor: a saw of twice the mains
 * frequency, current over frequency and capacitance high. What charges it reaches the same crest
 * whatever is left of the capacitors; a healthy brick's volts are given at the middle of its own
 * saw.
 *
 * <p>The capacitors are the one in the brick and those on the board between jack and regulators.
 * Not modelled: the time the charge takes, current that changes along the saw, ripple of the other
 * poles, what the capacitors behind a regulator make good.
 */
final class Ripple {
  /** Milliseconds between two charges: both halves of 50 Hz. */
  static final int PERIOD_MS = 10;

  private final double healthy;
  private final double saw;

  private Ripple(double healthy, double saw) {
    this.healthy = healthy;
    this.saw = saw;
  }

  /**
   * The saw of a board on its own brick.
   *
   * @param milliamps what it draws at the jack
   */
  static Ripple of(Board board, HarmNotes harm, SupplyNodes nodes, int milliamps) {
    int inside = board.brickMicrofarads();
    if (inside == 0) {
      return new Ripple(0, 0);
    }
    int fitted = 0;
    int left = 0;
    for (PlacedPart part : board.parts()) {
      if (part.type() == PartCatalog.ELECTROLYTIC && smooths(board, part, nodes, true)) {
        int microfarads = microfarads(part.value());
        boolean sound =
            !harm.elementsOpen.contains(part.ref())
                && !harm.absent.contains(part.ref())
                && smooths(board, part, nodes, false);
        fitted += microfarads;
        left += sound ? microfarads : 0;
      }
    }
    int brick = Math.max(1, inside * harm.brickCapacitorPercent / 100);
    return new Ripple(saw(milliamps, inside + fitted), saw(milliamps, brick + left));
  }

  /** Milliamperes times milliseconds over microfarads are volts. */
  private static double saw(int milliamps, int microfarads) {
    return 1000.0 * milliamps * PERIOD_MS / microfarads;
  }

  private static boolean smooths(Board board, PlacedPart part, SupplyNodes nodes, boolean atPad) {
    OptionalInt plus = nodes.node(new Pad(part.ref(), "+"), atPad);
    OptionalInt minus = nodes.node(new Pad(part.ref(), "-"), atPad);
    OptionalInt ground = nodes.node(new Pad(board.supply().jack(), "-"), true);
    List<Pad> raw = new ArrayList<>();
    raw.add(new Pad(board.supply().jack(), "+"));
    for (Supply.Rail rail : board.supply().rails()) {
      raw.add(new Pad(rail.regulator(), "IN"));
    }
    return plus.isPresent()
        && minus.equals(ground)
        && raw.stream().anyMatch(p -> nodes.node(p, true).equals(plus));
  }

  /** What is printed on an electrolytic, such as {@code 2200u}. */
  private static int microfarads(String value) {
    if (!value.matches("\\d{1,6}u")) {
      throw new IllegalArgumentException(
          "found a capacitor of '" + value + "', right would be whole microfarads such as 2200u");
    }
    return Integer.parseInt(value.substring(0, value.length() - 1));
  }

  /** Millivolts against the middle of the healthy saw at the end of a millisecond, 0 to 9. */
  int offset(int millisecond) {
    return (int) StrictMath.round(healthy / 2 - saw * (millisecond + 1) / PERIOD_MS);
  }

  /** Whether there is anything to swing. */
  boolean any() {
    return saw > 0;
  }
}
