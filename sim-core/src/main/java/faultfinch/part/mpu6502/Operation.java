package faultfinch.part.mpu6502;

import java.util.List;

/**
 * What an instruction does, by mnemonic. Numbers and not an enum: a switch over an enum goes
 * through two more tables, which cost a sixth of the speed.
 */
final class Operation {

  static final int LDA = 0;
  static final int LDX = 1;
  static final int LDY = 2;
  static final int ADC = 3;
  static final int SBC = 4;
  static final int AND = 5;
  static final int ORA = 6;
  static final int EOR = 7;
  static final int CMP = 8;
  static final int CPX = 9;
  static final int CPY = 10;
  static final int BIT = 11;
  static final int NOP = 12;
  static final int LAX = 13;
  static final int LAS = 14;
  static final int ANC = 15;
  static final int ALR = 16;
  static final int ARR = 17;
  static final int ANE = 18;
  static final int LXA = 19;
  static final int SBX = 20;

  static final int STA = 21;
  static final int STX = 22;
  static final int STY = 23;
  static final int SAX = 24;
  static final int SHA = 25;
  static final int SHX = 26;
  static final int SHY = 27;
  static final int TAS = 28;

  static final int ASL = 29;
  static final int LSR = 30;
  static final int ROL = 31;
  static final int ROR = 32;
  static final int INC = 33;
  static final int DEC = 34;
  static final int SLO = 35;
  static final int RLA = 36;
  static final int SRE = 37;
  static final int RRA = 38;
  static final int DCP = 39;
  static final int ISC = 40;

  static final int TAX = 41;
  static final int TAY = 42;
  static final int TXA = 43;
  static final int TYA = 44;
  static final int TSX = 45;
  static final int TXS = 46;
  static final int INX = 47;
  static final int INY = 48;
  static final int DEX = 49;
  static final int DEY = 50;
  static final int CLC = 51;
  static final int SEC = 52;
  static final int CLD = 53;
  static final int SED = 54;
  static final int CLV = 55;
  static final int CLI = 56;
  static final int SEI = 57;

  static final int BPL = 58;
  static final int BMI = 59;
  static final int BVC = 60;
  static final int BVS = 61;
  static final int BCC = 62;
  static final int BCS = 63;
  static final int BNE = 64;
  static final int BEQ = 65;
  static final int JMP = 66;
  static final int JSR = 67;
  static final int RTS = 68;
  static final int PHA = 69;
  static final int PHP = 70;
  static final int PLA = 71;
  static final int PLP = 72;
  static final int BRK = 73;
  static final int RTI = 74;
  static final int JAM = 75;

  // In the order of the numbers.
  private static final List<String> MNEMONICS =
      List.of(
          """
          LDA LDX LDY ADC SBC AND ORA EOR CMP CPX CPY BIT NOP LAX LAS ANC
          ALR ARR ANE LXA SBX
          STA STX STY SAX SHA SHX SHY TAS
          ASL LSR ROL ROR INC DEC SLO RLA SRE RRA DCP ISC
          TAX TAY TXA TYA TSX TXS INX INY DEX DEY CLC SEC CLD SED CLV CLI
          SEI
          BPL BMI BVC BVS BCC BCS BNE BEQ JMP JSR RTS PHA PHP PLA PLP BRK
          RTI JAM
          """
              .strip()
              .split("\\s+"));

  private Operation() {}

  /** Throws IllegalArgumentException for an unknown mnemonic. */
  static int named(String mnemonic) {
    int operation = MNEMONICS.indexOf(mnemonic);
    if (operation < 0) {
      throw new IllegalArgumentException("unknown mnemonic '" + mnemonic + "'");
    }
    return operation;
  }

  static String mnemonic(int operation) {
    return MNEMONICS.get(operation);
  }
}
