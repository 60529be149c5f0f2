package faultfinch.part.mpu6502;

/**
 * The arithmetic of the NMOS 6502: operands and old flags in, result and new flags out. An answer
 * packs both into one int, flags above the result, so that nothing is allocated.
 */
final class Alu {

  static final int CARRY = 0x01;
  static final int ZERO = 0x02;
  static final int IRQ_DISABLE = 0x04;
  static final int DECIMAL = 0x08;
  static final int BREAK = 0x10;
  static final int UNUSED = 0x20;
  static final int OVERFLOW = 0x40;
  static final int NEGATIVE = 0x80;

  private Alu() {}

  static int result(int answer) {
    return answer & 0xFF;
  }

  static int flags(int answer) {
    return answer >> 8;
  }

  /** The flags with N and Z set from the value, 0 to FF. */
  static int withNegativeZero(int flags, int value) {
    return flags & ~(NEGATIVE | ZERO) | value & NEGATIVE | (value - 1) >> 8 & ZERO;
  }

  private static int answer(int flags, int value) {
    return withNegativeZero(flags, value) << 8 | value;
  }

  static int adc(int a, int operand, int flags) {
    int sum = a + operand + (flags & CARRY);
    int overflow = (a ^ sum) & (operand ^ sum) & NEGATIVE;
    int binary = answer(flags & ~(CARRY | OVERFLOW) | overflow >> 1 | sum >> 8 & CARRY, sum & 0xFF);
    return (flags & DECIMAL) == 0 ? binary : decimalAdc(a, operand, flags, binary);
  }

  // NMOS: Z is that of the binary sum; N and V come from the sum before its high digit is put
  // right.
  private static int decimalAdc(int a, int operand, int flags, int binary) {
    int low = (a & 0x0F) + (operand & 0x0F) + (flags & CARRY);
    if (low > 9) {
      low = (low + 6 & 0x0F) + 0x10;
    }
    int sum = (a & 0xF0) + (operand & 0xF0) + low;
    int overflow = (a ^ sum) & ~(a ^ operand) & NEGATIVE;
    int after =
        flags & ~(CARRY | OVERFLOW | NEGATIVE | ZERO)
            | overflow >> 1
            | sum & NEGATIVE
            | flags(binary) & ZERO;
    if (sum >= 0xA0) {
      sum += 0x60;
    }
    return (after | (sum > 0xFF ? CARRY : 0)) << 8 | sum & 0xFF;
  }

  static int sbc(int a, int operand, int flags) {
    int binary = adc(a, operand ^ 0xFF, flags & ~DECIMAL);
    return (flags & DECIMAL) == 0 ? binary : decimalSbc(a, operand, flags, binary);
  }

  // NMOS: all flags are those of the binary subtraction.
  private static int decimalSbc(int a, int operand, int flags, int binary) {
    int low = (a & 0x0F) - (operand & 0x0F) - (~flags & CARRY);
    if (low < 0) {
      low = (low - 6 & 0x0F) - 0x10;
    }
    int difference = (a & 0xF0) - (operand & 0xF0) + low;
    if (difference < 0) {
      difference -= 0x60;
    }
    return (flags(binary) | DECIMAL) << 8 | difference & 0xFF;
  }

  /** CMP, CPX, CPY and the second half of SBX: the result is the difference. */
  static int compare(int register, int operand, int flags) {
    int difference = register - operand;
    return answer(flags & ~CARRY | ~difference >> 8 & CARRY, difference & 0xFF);
  }

  static int bit(int a, int operand, int flags) {
    return flags & ~(NEGATIVE | OVERFLOW | ZERO)
        | operand & (NEGATIVE | OVERFLOW)
        | ((a & operand) - 1) >> 8 & ZERO;
  }

  static int asl(int value, int flags) {
    return answer(flags & ~CARRY | value >> 7, value << 1 & 0xFF);
  }

  static int rol(int value, int flags) {
    return answer(flags & ~CARRY | value >> 7, value << 1 & 0xFF | flags & CARRY);
  }

  static int lsr(int value, int flags) {
    return answer(flags & ~CARRY | value & CARRY, value >> 1);
  }

  static int ror(int value, int flags) {
    return answer(flags & ~CARRY | value & CARRY, value >> 1 | (flags & CARRY) << 7);
  }

  static int anc(int a, int operand, int flags) {
    int value = a & operand;
    return answer(flags & ~CARRY | value >> 7, value);
  }

  /** AND, then a rotation whose C and V come out of the adder, and its decimal correction. */
  static int arr(int a, int operand, int flags) {
    int masked = a & operand;
    int rotated = masked >> 1 | (flags & CARRY) << 7;
    int overflow = (masked ^ rotated) & OVERFLOW;
    int after = withNegativeZero(flags & ~(CARRY | OVERFLOW), rotated);
    if ((flags & DECIMAL) == 0) {
      overflow = (rotated ^ rotated << 1) & OVERFLOW;
      return (after | overflow | rotated >> 6 & CARRY) << 8 | rotated;
    }
    int value = rotated;
    if ((masked & 0x0F) + (masked & 0x01) > 5) {
      value = value & 0xF0 | value + 6 & 0x0F;
    }
    boolean carry = (masked & 0xF0) + (masked & 0x10) > 0x50;
    if (carry) {
      value = value + 0x60 & 0xFF;
    }
    return (after | overflow | (carry ? CARRY : 0)) << 8 | value;
  }
}
