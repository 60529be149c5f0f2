package faultfinch.board;

/**
 * Two pins that meet beside the tracks: a plug and its socket, a lead, legs pressed onto legs. It
 * is the pins themselves that meet, so a joint that is open under one of them stays open.
 */
public record Contact(Pad one, Pad other) {

  /** Written {@code SP1.SP0-SP1.SP4}. */
  public String text() {
    return one.text() + "-" + other.text();
  }
}
