package faultfinch.signal;

/**
 * Output pins that depend on the same inputs.
 *
 * @param pins the outputs, as bits of the pin word
 * @param follows every pin of the part that can change them
 * @param enables those of {@code follows} that, beside stored state, alone decide whether the
 *     outputs drive at all; 0 if no pin does
 */
public record Output(long pins, long follows, long enables) {}
