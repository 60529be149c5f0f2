package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;

/**
 * A repair that may be due.
 *
 * @param belief that it is the cheapest that cures what is wrong, 0 to 1
 */
public record Due(RepairAction action, double belief) {}
