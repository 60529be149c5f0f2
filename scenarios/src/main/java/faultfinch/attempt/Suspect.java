package faultfinch.attempt;

/**
 * A part, track or lead that can still be at fault.
 *
 * @param place reference or pads
 * @param share of the belief, 0 to 1
 */
public record Suspect(String place, double share) {}
