package faultfinch.board;

/**
 * The brick and the one local regulator that makes the logic rail.
 *
 * @param noLoadVolts at the jack with nothing drawn, in millivolts
 * @param ohms the brick's source resistance in milliohms
 * @param jackNet net the brick feeds
 * @param jack reference of the jack
 * @param railNet net the regulator makes
 * @param regulator reference of the regulator
 * @param groundNet the common return
 */
public record Supply(
    int noLoadVolts,
    int ohms,
    String jackNet,
    String jack,
    String railNet,
    String regulator,
    String groundNet) {}
