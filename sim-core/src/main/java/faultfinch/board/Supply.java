package faultfinch.board;

import java.util.List;
import java.util.stream.Stream;

/**
 * The brick and what it becomes on the board: rails that local regulators make, the logic rail
 * first, and further poles of the brick that are used as they come.
 *
 * @param noLoadVolts at the jack with nothing drawn, in millivolts
 * @param ohms the brick's source resistance in milliohms
 * @param jackNet net the brick feeds
 * @param jack reference of the jack
 * @param railNet net the regulator of the logic rail makes
 * @param regulator reference of that regulator
 * @param groundNet the common return
 * @param others the other rails
 * @param poles the other poles
 */
public record Supply(
    int noLoadVolts,
    int ohms,
    String jackNet,
    String jack,
    String railNet,
    String regulator,
    String groundNet,
    List<Rail> others,
    List<Pole> poles) {

  /** A net that a regulator makes. */
  public record Rail(String net, String regulator) {}

  /**
   * A pole of the brick with a jack of its own.
   *
   * @param noLoadVolts with nothing drawn, in millivolts
   * @param ohms source resistance in milliohms
   */
  public record Pole(String net, String jack, int noLoadVolts, int ohms) {}

  public Supply {
    others = List.copyOf(others);
    poles = List.copyOf(poles);
  }

  /** One pole, one rail. */
  public Supply(
      int noLoadVolts,
      int ohms,
      String jackNet,
      String jack,
      String railNet,
      String regulator,
      String groundNet) {
    this(noLoadVolts, ohms, jackNet, jack, railNet, regulator, groundNet, List.of(), List.of());
  }

  /** All rails, the logic rail first. */
  public List<Rail> rails() {
    return Stream.concat(Stream.of(new Rail(railNet, regulator)), others.stream()).toList();
  }

  /** Whether parts are fed from the net of this name, by a regulator or by a pole. */
  public boolean feeds(String net) {
    return rails().stream().anyMatch(r -> r.net().equals(net))
        || poles.stream().anyMatch(p -> p.net().equals(net));
  }
}
