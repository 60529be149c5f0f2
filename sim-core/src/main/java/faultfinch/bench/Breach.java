package faultfinch.bench;

/**
 * A rule of the bench that a move breaks.
 *
 * @param name its key in the list of breaches
 * @param reason why it matters, one line
 * @param toPerson whether it can hurt a person rather than the board
 */
public record Breach(String name, String reason, boolean toPerson) {}
