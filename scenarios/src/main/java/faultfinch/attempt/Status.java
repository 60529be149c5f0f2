package faultfinch.attempt;

import java.util.OptionalInt;

/**
 * The status line.
 *
 * @param minutes on the bench clock
 * @param pulls chips taken out so far
 * @param spent minutes, pulls and expected damage as one figure, in minutes
 * @param field how many repairs could still be the right one; empty if that is not known
 */
public record Status(boolean powered, int minutes, int pulls, double spent, OptionalInt field) {}
