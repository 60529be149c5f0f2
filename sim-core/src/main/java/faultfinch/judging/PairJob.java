package faultfinch.judging;

import faultfinch.diagnosis.Suspect;

/**
 * One board with two faults.
 *
 * @param together whether the parts are such as fail together: one net joins them
 */
public record PairJob(Suspect one, Suspect other, boolean together) {}
