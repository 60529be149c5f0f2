package faultfinch.board;

import faultfinch.part.PartCatalog;

/**
 * A part where the board has it.
 *
 * @param role what it does here, a short plain-English name
 * @param x millimetres of pin 1 from the left edge
 * @param y millimetres of pin 1 from the top edge
 * @param turn degrees clockwise: 0, 90, 180 or 270
 * @param value as printed on a passive part, or empty
 * @param share the class whose failure weight it carries
 */
public record PlacedPart(
    String ref,
    PartCatalog type,
    String role,
    double x,
    double y,
    int turn,
    boolean socketed,
    String value,
    String share) {

  /** The same without a socket. */
  PlacedPart soldered() {
    return new PlacedPart(ref, type, role, x, y, turn, false, value, share);
  }
}
