package faultfinch.diagnosis;

/**
 * How much of the belief something has.
 *
 * @param what a fault, a place or an action, in words
 * @param belief 0 to 1
 */
public record Share(String what, double belief) {}
