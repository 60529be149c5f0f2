package faultfinch.signal;

import java.util.Optional;

/**
 * One pin of a package, as the drawing and its role lines declare it.
 *
 * @param number the number on the package, from 1
 * @param bit the place in the part's pin word
 * @param direction from the arrow of the drawing
 * @param role what the pin is for
 * @param drive the class it drives in, for outputs
 * @param openCollector whether it can only pull low
 * @param pullOhms pull-up inside the pin, or 0
 */
public record Pin(
    String name,
    int number,
    int bit,
    Direction direction,
    Role role,
    Technology technology,
    Optional<DriveClass> drive,
    boolean openCollector,
    int pullOhms) {

  /** Which way signals go through a pin. */
  public enum Direction {
    IN,
    OUT,
    BOTH,
    NONE
  }

  /** What a pin is for; the role lines under a drawing give every pin one. */
  public enum Role {
    SELECT,
    REGISTER,
    DIRECTION,
    DATA,
    CLOCK_FALLS,
    CLOCK_RISES,
    WRITE,
    ENABLE,
    LATCH,
    INPUT,
    /** An input that takes the volts themselves; the part asks for them. */
    LEVEL,
    OUTPUT,
    SUPPLY,
    GROUND,
    TERMINAL,
    UNCONNECTED
  }

  /** This pin as a bit of the pin word. */
  public long mask() {
    return 1L << bit;
  }

  /** Whether the pin can drive its net. */
  public boolean drives() {
    return drive.isPresent();
  }

  /** Whether the pin takes a level from its net. */
  public boolean receives() {
    return direction == Direction.IN || direction == Direction.BOTH;
  }

  /** Whether the name says that low is the active level. */
  public boolean activeLow() {
    return name.endsWith("/");
  }
}
