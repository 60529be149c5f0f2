package faultfinch.part.mpu6502;

import java.util.List;

/**
 * The opcode map as data: which operation and addressing mode each of the 256 opcodes has, the
 * undocumented ones included. Everything the core decodes comes from here.
 */
final class OpcodeMap {

  // z zero page, a absolute, r relative, # immediate, A accumulator.
  private static final String MAP =
      """
      00   BRK    ORA (z,X)  JAM    SLO (z,X)  NOP z    ORA z    ASL z    SLO z
      08   PHP    ORA #      ASL A  ANC #      NOP a    ORA a    ASL a    SLO a
      10   BPL r  ORA (z),Y  JAM    SLO (z),Y  NOP z,X  ORA z,X  ASL z,X  SLO z,X
      18   CLC    ORA a,Y    NOP    SLO a,Y    NOP a,X  ORA a,X  ASL a,X  SLO a,X
      20   JSR a  AND (z,X)  JAM    RLA (z,X)  BIT z    AND z    ROL z    RLA z
      28   PLP    AND #      ROL A  ANC #      BIT a    AND a    ROL a    RLA a
      30   BMI r  AND (z),Y  JAM    RLA (z),Y  NOP z,X  AND z,X  ROL z,X  RLA z,X
      38   SEC    AND a,Y    NOP    RLA a,Y    NOP a,X  AND a,X  ROL a,X  RLA a,X
      40   RTI    EOR (z,X)  JAM    SRE (z,X)  NOP z    EOR z    LSR z    SRE z
      48   PHA    EOR #      LSR A  ALR #      JMP a    EOR a    LSR a    SRE a
      50   BVC r  EOR (z),Y  JAM    SRE (z),Y  NOP z,X  EOR z,X  LSR z,X  SRE z,X
      58   CLI    EOR a,Y    NOP    SRE a,Y    NOP a,X  EOR a,X  LSR a,X  SRE a,X
      60   RTS    ADC (z,X)  JAM    RRA (z,X)  NOP z    ADC z    ROR z    RRA z
      68   PLA    ADC #      ROR A  ARR #      JMP (a)  ADC a    ROR a    RRA a
      70   BVS r  ADC (z),Y  JAM    RRA (z),Y  NOP z,X  ADC z,X  ROR z,X  RRA z,X
      78   SEI    ADC a,Y    NOP    RRA a,Y    NOP a,X  ADC a,X  ROR a,X  RRA a,X
      80   NOP #  STA (z,X)  NOP #  SAX (z,X)  STY z    STA z    STX z    SAX z
      88   DEY    NOP #      TXA    ANE #      STY a    STA a    STX a    SAX a
      90   BCC r  STA (z),Y  JAM    SHA (z),Y  STY z,X  STA z,X  STX z,Y  SAX z,Y
      98   TYA    STA a,Y    TXS    TAS a,Y    SHY a,X  STA a,X  SHX a,Y  SHA a,Y
      A0   LDY #  LDA (z,X)  LDX #  LAX (z,X)  LDY z    LDA z    LDX z    LAX z
      A8   TAY    LDA #      TAX    LXA #      LDY a    LDA a    LDX a    LAX a
      B0   BCS r  LDA (z),Y  JAM    LAX (z),Y  LDY z,X  LDA z,X  LDX z,Y  LAX z,Y
      B8   CLV    LDA a,Y    TSX    LAS a,Y    LDY a,X  LDA a,X  LDX a,Y  LAX a,Y
      C0   CPY #  CMP (z,X)  NOP #  DCP (z,X)  CPY z    CMP z    DEC z    DCP z
      C8   INY    CMP #      DEX    SBX #      CPY a    CMP a    DEC a    DCP a
      D0   BNE r  CMP (z),Y  JAM    DCP (z),Y  NOP z,X  CMP z,X  DEC z,X  DCP z,X
      D8   CLD    CMP a,Y    NOP    DCP a,Y    NOP a,X  CMP a,X  DEC a,X  DCP a,X
      E0   CPX #  SBC (z,X)  NOP #  ISC (z,X)  CPX z    SBC z    INC z    ISC z
      E8   INX    SBC #      NOP    SBC #      CPX a    SBC a    INC a    ISC a
      F0   BEQ r  SBC (z),Y  JAM    ISC (z),Y  NOP z,X  SBC z,X  INC z,X  ISC z,X
      F8   SED    SBC a,Y    NOP    ISC a,Y    NOP a,X  SBC a,X  INC a,X  ISC a,X
      """;

  private static final byte[] OPERATIONS = new byte[256];
  private static final byte[] MODES = new byte[256];
  private static final byte[] ACCESSES = new byte[256];

  static {
    int opcode = 0;
    for (String row : MAP.lines().filter(line -> !line.isBlank()).toList()) {
      List<String> cells = List.of(row.strip().split("\\s{2,}"));
      for (String cell : cells.subList(1, cells.size())) {
        int operation = Operation.named(cell.substring(0, 3));
        int mode = Mode.spelled(cell.substring(3).strip());
        OPERATIONS[opcode] = (byte) operation;
        MODES[opcode] = (byte) mode;
        ACCESSES[opcode] = (byte) Access.of(operation, mode);
        opcode++;
      }
    }
  }

  private OpcodeMap() {}

  /** The operations of all opcodes, one of {@link Operation}'s numbers each. */
  static byte[] operations() {
    return OPERATIONS.clone();
  }

  /** The addressing modes of all opcodes, one of {@link Mode}'s numbers each. */
  static byte[] modes() {
    return MODES.clone();
  }

  /** The use of the bus of all opcodes, one of {@link Access}'s numbers each. */
  static byte[] accesses() {
    return ACCESSES.clone();
  }

  /** The opcode as the map spells it: mnemonic and mode. */
  static String text(int opcode) {
    String mode = Mode.text(MODES[opcode]);
    return Operation.mnemonic(OPERATIONS[opcode]) + (mode.isEmpty() ? "" : " " + mode);
  }
}
