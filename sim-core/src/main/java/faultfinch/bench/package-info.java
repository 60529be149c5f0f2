/**
 * Instruments, moves and their prices: one board on a bench. Stands on {@link faultfinch.symptom},
 * since looking at the screen is a look like any other.
 */
package faultfinch.bench;
