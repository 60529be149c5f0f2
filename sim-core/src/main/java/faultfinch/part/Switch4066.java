package faultfinch.part;

import faultfinch.signal.Pinout;
import java.util.List;

/**
 * Four analogue switches: each joins its two terminals, either way round, while its control is
 * high.
 */
public final class Switch4066 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  1A   --|1      14|--  VDD
  1B   --|2      13|<-  1C
  2B   --|3      12|<-  4C
  2A   --|4      11|--  4A
  2C   ->|5      10|--  4B
  3C   ->|6       9|--  3B
  VSS  --|7       8|--  3A
         +---------+
  CMOS; terminal 1A 1B 2A 2B 3A 3B 4A 4B; input 1C 2C 3C 4C; supply VDD; ground VSS
  Not modelled: how the closed resistance moves with the signal, leakage of an open switch, terminals
  outside the rails, a dead rail that is fed from an input.""");

  private static final List<Way> WAYS =
      List.of(
          new Way("1A", "1B", "1C"),
          new Way("2A", "2B", "2C"),
          new Way("3A", "3B", "3C"),
          new Way("4A", "4B", "4C"));

  /**
   * One switch of the four.
   *
   * @param a a terminal
   * @param b the other terminal
   * @param control the pin whose high closes the switch
   */
  public record Way(String a, String b, String control) {}

  /** The four switches by the names of their pins. */
  public List<Way> controls() {
    return WAYS;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
