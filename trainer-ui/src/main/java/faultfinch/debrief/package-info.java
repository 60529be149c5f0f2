/**
 * What is told when an attempt is over: what was done right first, then the answer and the cost.
 */
package faultfinch.debrief;
