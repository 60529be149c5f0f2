/**
 * The 6502 processor as a core that runs whole instructions, one bus call a cycle. It knows nothing
 * of pins or boards: whoever answers the bus calls decides what a cycle means.
 */
package faultfinch.part.mpu6502;
