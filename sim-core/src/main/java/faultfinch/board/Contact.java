package faultfinch.board;

/**
 * Two pins that meet beside the tracks: a plug and its socket, a lead, legs pressed onto legs. It
 * is the pins themselves that meet, so a joint that is open under one of them stays open.
 *
 * @param one a pin of the board
 * @param onTrack whether that end is on the track and not on the pin: a leg that broke inside its
 *     package belongs to the track
 */
public record Contact(Pad one, boolean onTrack, Pad other) {

  /** Pin meets pin. */
  public Contact(Pad one, Pad other) {
    this(one, false, other);
  }

  /** Written {@code SP1.SP0-SP1.SP4}. */
  public String text() {
    return one.text() + "-" + other.text();
  }
}
