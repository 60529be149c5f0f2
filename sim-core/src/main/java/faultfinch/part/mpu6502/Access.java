package faultfinch.part.mpu6502;

/**
 * How an instruction uses the bus after its second cycle, which always reads the byte after the
 * opcode; numbers for the reason given at {@link Operation}.
 */
final class Access {

  /** No more than the addressing mode does. */
  static final int REGISTERS = 0;

  /** No more: the byte read is the operand. */
  static final int IMMEDIATE = 1;

  /** Finds the address, then reads. */
  static final int LOAD = 2;

  /** Finds the address, then writes. */
  static final int STORE = 3;

  /** Finds the address, reads, writes back what was read, writes the result. */
  static final int MODIFY = 4;

  /** Branches: reads on only if taken. */
  static final int BRANCH = 5;

  /** Finds the address and goes there. */
  static final int JUMP = 6;

  /** A sequence like no other's. */
  static final int OWN = 7;

  private Access() {}

  static int of(int operation, int mode) {
    if (mode == Mode.RELATIVE) {
      return BRANCH;
    }
    if (operation >= Operation.JMP) {
      return operation == Operation.JMP ? JUMP : OWN;
    }
    if (mode == Mode.IMPLIED || mode == Mode.ACCUMULATOR) {
      return REGISTERS;
    }
    if (mode == Mode.IMMEDIATE) {
      return IMMEDIATE;
    }
    if (operation == Operation.NOP && (mode == Mode.ABSOLUTE || mode == Mode.ABSOLUTE_X)) {
      return REGISTERS; // stops short, see Mpu6502
    }
    return operation < Operation.STA ? LOAD : operation < Operation.ASL ? STORE : MODIFY;
  }
}
