/**
 * One attempt at a case: the bench, its budget and its journal, up to the debrief. Only the debrief
 * carries the answer.
 */
package faultfinch.attempt;
