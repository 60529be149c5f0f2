/**
 * Compiles a board with its faults into flat arrays and runs it, plainly (the definition) or fast
 * (tables asked of the plain one). Knows nothing of instruments and screens.
 */
package faultfinch.machine;
