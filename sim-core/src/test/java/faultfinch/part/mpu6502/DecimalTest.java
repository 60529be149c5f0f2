package faultfinch.part.mpu6502;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Decimal mode as the NMOS chip has it: the digits are right, the flags partly binary. */
class DecimalTest {

  private static String adc(String before, String operand) {
    return Breadboard.running(0x0400, "69 " + operand).set(before).steps(1).registers();
  }

  private static String sbc(String before, String operand) {
    return Breadboard.running(0x0400, "E9 " + operand).set(before).steps(1).registers();
  }

  private static String ends(String result) {
    return Breadboard.at(0x0402).set("s=FF").set(result).registers();
  }

  @Test
  void adc_twoValidNumbers_addsDigits() {
    // 58 + 46 + 1 = 105. Half-way: 8+6+1 = F, carried to 15; 50+40+15 = A5: N; (58^A5)&(46^A5): V.
    assertEquals(ends("a=05 f=NVDC"), adc("a=58 f=DC", "46"));
    // 12 + 34 = 46: no digit needs putting right.
    assertEquals(ends("a=46 f=D"), adc("a=12 f=D", "34"));
  }

  @Test
  void adc_sumOfHundred_leavesZeroFlagToTheBinarySum() {
    // 99 + 01 = 100; binary 9A: Z clear; before the high digit is put right A0: N.
    assertEquals(ends("a=00 f=NDC"), adc("a=99 f=D", "01"));
    // 00 + 00: Z from the binary sum as well.
    assertEquals(ends("a=00 f=DZ"), adc("a=00 f=D", "00"));
  }

  @Test
  void adc_invalidDigits_goesThroughTheSameSteps() {
    // 0F + 0F: 1E, over 9, (1E+6) and F = 4, carried: 14; 00+00+14 = 14.
    assertEquals(ends("a=14 f=D"), adc("a=0F f=D", "0F"));
  }

  @Test
  void sbc_validNumbers_subtractsDigitsWithBinaryFlags() {
    // 46 - 12 = 34.
    assertEquals(ends("a=34 f=DC"), sbc("a=46 f=DC", "12"));
    // 12 - 21 = -9, so 91 and a borrow; binary 12-21 = F1: N.
    assertEquals(ends("a=91 f=ND"), sbc("a=12 f=DC", "21"));
    // 32 - 02 - 1 = 29, binary 2F.
    assertEquals(ends("a=29 f=DC"), sbc("a=32 f=D", "02"));
  }

  @Test
  void rraAndIsc_inDecimalMode_addAndSubtractDigits() {
    // 0A to 05; 05 + 05 = 10.
    Breadboard rra = Breadboard.running(0x0400, "67 24").set("0024=0A a=05 f=D").steps(1);
    assertEquals(ends("a=10 f=D"), rra.registers());
    // 00 to 01; 10 - 01 = 09.
    Breadboard isc = Breadboard.running(0x0400, "E7 24").set("0024=00 a=10 f=DC").steps(1);
    assertEquals(ends("a=09 f=DC"), isc.registers());
  }

  @Test
  void arr_inDecimalMode_putsBothDigitsRight() {
    // FF and 55 = 55, rotated with C: AA, N. Low 5+1 > 5: AA to A0. High 50+10 > 50: A0+60 = 00, C.
    // V is bit 6 of 55 ^ AA: set. Z from AA: clear.
    Breadboard arr = Breadboard.running(0x0400, "6B 55").set("a=FF f=DC").steps(1);
    assertEquals(ends("a=00 f=NVDC"), arr.registers());
  }

  @Test
  void compareAndIncrement_inDecimalMode_stayBinary() {
    // 10 - 09 = 07 binary; 09 + 1 = 0A.
    Breadboard board = Breadboard.running(0x0400, "C9 09 E6 24").set("a=10 f=D 0024=09").steps(2);
    assertEquals(0x0A, board.memory(0x24));
    assertEquals(0x20 | 0x08 | 0x01, board.mpu.p);
  }
}
