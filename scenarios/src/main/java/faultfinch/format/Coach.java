package faultfinch.format;

/**
 * What the trainer says and asks during a case.
 *
 * @param guided one line asks for one act at a time
 * @param prices are shown
 * @param suspects a suspect and an expectation are asked before the first pull, and what is still
 *     possible may be shown
 * @param marks are given in the debrief
 */
public record Coach(boolean guided, boolean prices, boolean suspects, boolean marks) {}
