package faultfinch.part.mpu6502;

/**
 * What the processor sees through its pins: each call is one bus cycle, in the order of the cycles.
 * Addresses are 0 to FFFF, values 0 to FF.
 *
 * <p>A call may throw an unchecked exception to stop the processor inside an instruction; see
 * {@link Mpu6502#load}.
 */
public interface Bus {

  /** Reads an opcode: the cycle in which SYNC is high. */
  int fetch(int address);

  /** Reads with SYNC low; the processor drops what a dummy read brings. */
  int read(int address);

  /** Writes the value; a read-modify-write instruction writes twice. */
  void write(int address, int value);
}
