package faultfinch.part.mpu6502;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * One worked example, at least, for each of the 256 opcodes.
 *
 * <p>A row reads: mnemonic, bytes at 0400, what is set up, what is different afterwards, cycles.
 * Registers, memory addresses and values are hexadecimal; f lists the flags that are set, the
 * others being clear. What a row does not name starts as 0 (S as F0) and must stay; PC must move
 * past the bytes.
 *
 * <p>The values are worked out by hand from what each mnemonic means; one example per mnemonic is
 * repeated for its modes:
 *
 * <pre>
 * ORA 0101 0001 | 1000 1010 = 1101 1011     BIT Z from 01 and C0, N and V are bits 7 and 6
 * AND 0101 1100 and 1111 0000 = 0101 0000   ANC F0 and 81 = 80, C copies N
 * EOR FF ^ 0F = F0                          ALR FF and 03 = 03, shifted 01, C out
 * ADC 50 + 50 = A0, two positives: V        ARR C0, rotated with C: E0; C, V: bits 6, 6 ^ 5
 * SBC 50 - B0 = A0 and a borrow, V          ANE (10 | EE) and 3C and F3 = 30
 * CMP 40 - 41 borrows; CPX equal; CPY 7F    LXA (10 | EE) and 83 = 82
 * SLO C1 to 82, 01 | 82 = 83                SBX (F0 and 3C) - 10 = 20, no borrow: C
 * RLA 41 to 83 with C, F0 and 83 = 80       LAS F1 and 3C = 30
 * SRE 03 to 01, FF ^ 01 = FE                SHA F3 and 3F and 31 = 31, 31 being 30 + 1
 * RRA 03 to 01 with C out, 10 + 01 + C = 12 SHX, SHY F1 and 31 = 31; TAS S = 33, stores 31
 * DCP 41 to 40, 40 - 40                     ISC 0F to 10, 20 - 10 = 10
 * </pre>
 *
 * <p>Addresses: z 24; z,X and (z,X) F0 + 34 = 24, around the page; a,X and (z),Y 30F0 + 34 = 3124,
 * into the next page; a,Y 3010 + 14 = 3024.
 */
class EveryOpcodeTest {

  private static final String EXAMPLES =
      """
      BRK       | 00 00 | s=F3 f=N FFFE=34 FFFF=12 | pc=1234 s=F0 f=NI 01F3=04 01F2=02 01F1=B0 | 7
      ORA (z,X) | 01 F0    | a=51 x=34 0024=78 0025=30 3078=8A     | a=DB f=N                   | 6
      JAM       | 02       | a=5A                                  | pc=0400                    | 3
      SLO (z,X) | 03 F0    | a=01 x=34 0024=78 0025=30 3078=C1     | a=83 f=NC 3078=82          | 8
      NOP z     | 04 24    | 0024=5A                               |                            | 3
      ORA z     | 05 24    | a=51 0024=8A                          | a=DB f=N                   | 3
      ASL z     | 06 24    | 0024=C1                               | f=NC 0024=82               | 5
      SLO z     | 07 24    | a=01 0024=C1                          | a=83 f=NC 0024=82          | 5
      PHP       | 08       | s=F3 f=NC                             | s=F2 01F3=B1               | 3
      ORA #     | 09 8A    | a=51                                  | a=DB f=N                   | 2
      ASL A     | 0A       | a=C1                                  | a=82 f=NC                  | 2
      ANC #     | 0B 81    | a=F0                                  | a=80 f=NC                  | 2
      NOP a     | 0C 24 30 |                                       |                            | 3
      ORA a     | 0D 24 30 | a=51 3024=8A                          | a=DB f=N                   | 4
      ASL a     | 0E 24 30 | 3024=C1                               | f=NC 3024=82               | 6
      SLO a     | 0F 24 30 | a=01 3024=C1                          | a=83 f=NC 3024=82          | 6
      BPL r     | 10 06    | f=                                    | pc=0408                    | 3
      BPL r     | 10 06    | f=N                                   |                            | 2
      ORA (z),Y | 11 24    | a=51 0024=F0 0025=30 y=34 3124=8A     | a=DB f=N                   | 6
      JAM       | 12       | a=5A                                  | pc=0400                    | 3
      SLO (z),Y | 13 24    | a=01 0024=F0 0025=30 y=34 3124=C1     | a=83 f=NC 3124=82          | 8
      NOP z,X   | 14 F0    | x=34 0024=5A                          |                            | 4
      ORA z,X   | 15 F0    | a=51 x=34 0024=8A                     | a=DB f=N                   | 4
      ASL z,X   | 16 F0    | x=34 0024=C1                          | f=NC 0024=82               | 6
      SLO z,X   | 17 F0    | a=01 x=34 0024=C1                     | a=83 f=NC 0024=82          | 6
      CLC       | 18       | f=NC                                  | f=N                        | 2
      ORA a,Y   | 19 10 30 | a=51 y=14 3024=8A                     | a=DB f=N                   | 4
      NOP       | 1A       | a=11                                  |                            | 2
      SLO a,Y   | 1B 10 30 | a=01 y=14 3024=C1                     | a=83 f=NC 3024=82          | 7
      NOP a,X   | 1C F0 30 | x=34                                  |                            | 4
      ORA a,X   | 1D F0 30 | a=51 x=34 3124=8A                     | a=DB f=N                   | 5
      ASL a,X   | 1E F0 30 | x=34 3124=C1                          | f=NC 3124=82               | 7
      SLO a,X   | 1F F0 30 | a=01 x=34 3124=C1                     | a=83 f=NC 3124=82          | 7
      JSR a     | 20 24 30 | s=F3 | pc=3024 s=F1 01F3=04 01F2=02 | 6
      AND (z,X) | 21 F0    | a=5C x=34 0024=78 0025=30 3078=F0     | a=50                       | 6
      JAM       | 22       | a=5A                                  | pc=0400                    | 3
      RLA (z,X) | 23 F0    | a=F0 x=34 0024=78 0025=30 3078=41 f=C | a=80 f=N 3078=83           | 8
      BIT z     | 24 24    | a=01 0024=C0                          | f=NVZ                      | 3
      AND z     | 25 24    | a=5C 0024=F0                          | a=50                       | 3
      ROL z     | 26 24    | 0024=41 f=C                           | f=N 0024=83                | 5
      RLA z     | 27 24    | a=F0 0024=41 f=C                      | a=80 f=N 0024=83           | 5
      PLP       | 28       | s=F0 01F1=FF                          | s=F1 f=NVDIZC              | 4
      AND #     | 29 F0    | a=5C                                  | a=50                       | 2
      ROL A     | 2A       | a=41 f=C                              | a=83 f=N                   | 2
      ANC #     | 2B 81    | a=F0                                  | a=80 f=NC                  | 2
      BIT a     | 2C 24 30 | a=01 3024=C0                          | f=NVZ                      | 4
      AND a     | 2D 24 30 | a=5C 3024=F0                          | a=50                       | 4
      ROL a     | 2E 24 30 | 3024=41 f=C                           | f=N 3024=83                | 6
      RLA a     | 2F 24 30 | a=F0 3024=41 f=C                      | a=80 f=N 3024=83           | 6
      BMI r     | 30 06    | f=N                                   | pc=0408                    | 3
      BMI r     | 30 06    | f=                                    |                            | 2
      AND (z),Y | 31 24    | a=5C 0024=F0 0025=30 y=34 3124=F0     | a=50                       | 6
      JAM       | 32       | a=5A                                  | pc=0400                    | 3
      RLA (z),Y | 33 24    | a=F0 0024=F0 0025=30 y=34 3124=41 f=C | a=80 f=N 3124=83           | 8
      NOP z,X   | 34 F0    | x=34 0024=5A                          |                            | 4
      AND z,X   | 35 F0    | a=5C x=34 0024=F0                     | a=50                       | 4
      ROL z,X   | 36 F0    | x=34 0024=41 f=C                      | f=N 0024=83                | 6
      RLA z,X   | 37 F0    | a=F0 x=34 0024=41 f=C                 | a=80 f=N 0024=83           | 6
      SEC       | 38       |                                       | f=C                        | 2
      AND a,Y   | 39 10 30 | a=5C y=14 3024=F0                     | a=50                       | 4
      NOP       | 3A       | a=11                                  |                            | 2
      RLA a,Y   | 3B 10 30 | a=F0 y=14 3024=41 f=C                 | a=80 f=N 3024=83           | 7
      NOP a,X   | 3C F0 30 | x=34                                  |                            | 4
      AND a,X   | 3D F0 30 | a=5C x=34 3124=F0                     | a=50                       | 5
      ROL a,X   | 3E F0 30 | x=34 3124=41 f=C                      | f=N 3124=83                | 7
      RLA a,X   | 3F F0 30 | a=F0 x=34 3124=41 f=C                 | a=80 f=N 3124=83           | 7
      RTI       | 40       | s=F0 01F1=C1 01F2=24 01F3=30          | pc=3024 s=F3 f=NVC         | 6
      EOR (z,X) | 41 F0    | a=FF x=34 0024=78 0025=30 3078=0F     | a=F0 f=N                   | 6
      JAM       | 42       | a=5A                                  | pc=0400                    | 3
      SRE (z,X) | 43 F0    | a=FF x=34 0024=78 0025=30 3078=03     | a=FE f=NC 3078=01          | 8
      NOP z     | 44 24    | 0024=5A                               |                            | 3
      EOR z     | 45 24    | a=FF 0024=0F                          | a=F0 f=N                   | 3
      LSR z     | 46 24    | 0024=03                               | f=C 0024=01                | 5
      SRE z     | 47 24    | a=FF 0024=03                          | a=FE f=NC 0024=01          | 5
      PHA       | 48       | a=5A s=00                             | s=FF 0100=5A               | 3
      EOR #     | 49 0F    | a=FF                                  | a=F0 f=N                   | 2
      LSR A     | 4A       | a=03                                  | a=01 f=C                   | 2
      ALR #     | 4B 03    | a=FF                                  | a=01 f=C                   | 2
      JMP a     | 4C 24 30 |                                       | pc=3024                    | 3
      EOR a     | 4D 24 30 | a=FF 3024=0F                          | a=F0 f=N                   | 4
      LSR a     | 4E 24 30 | 3024=03                               | f=C 3024=01                | 6
      SRE a     | 4F 24 30 | a=FF 3024=03                          | a=FE f=NC 3024=01          | 6
      BVC r     | 50 06    | f=                                    | pc=0408                    | 3
      BVC r     | 50 06    | f=V                                   |                            | 2
      EOR (z),Y | 51 24    | a=FF 0024=F0 0025=30 y=34 3124=0F     | a=F0 f=N                   | 6
      JAM       | 52       | a=5A                                  | pc=0400                    | 3
      SRE (z),Y | 53 24    | a=FF 0024=F0 0025=30 y=34 3124=03     | a=FE f=NC 3124=01          | 8
      NOP z,X   | 54 F0    | x=34 0024=5A                          |                            | 4
      EOR z,X   | 55 F0    | a=FF x=34 0024=0F                     | a=F0 f=N                   | 4
      LSR z,X   | 56 F0    | x=34 0024=03                          | f=C 0024=01                | 6
      SRE z,X   | 57 F0    | a=FF x=34 0024=03                     | a=FE f=NC 0024=01          | 6
      CLI       | 58       | f=NI                                  | f=N                        | 2
      EOR a,Y   | 59 10 30 | a=FF y=14 3024=0F                     | a=F0 f=N                   | 4
      NOP       | 5A       | a=11                                  |                            | 2
      SRE a,Y   | 5B 10 30 | a=FF y=14 3024=03                     | a=FE f=NC 3024=01          | 7
      NOP a,X   | 5C F0 30 | x=34                                  |                            | 4
      EOR a,X   | 5D F0 30 | a=FF x=34 3124=0F                     | a=F0 f=N                   | 5
      LSR a,X   | 5E F0 30 | x=34 3124=03                          | f=C 3124=01                | 7
      SRE a,X   | 5F F0 30 | a=FF x=34 3124=03                     | a=FE f=NC 3124=01          | 7
      RTS       | 60       | s=F0 01F1=23 01F2=30                  | pc=3024 s=F2               | 6
      ADC (z,X) | 61 F0    | a=50 x=34 0024=78 0025=30 3078=50     | a=A0 f=NV                  | 6
      JAM       | 62       | a=5A                                  | pc=0400                    | 3
      RRA (z,X) | 63 F0    | a=10 x=34 0024=78 0025=30 3078=03     | a=12 3078=01               | 8
      NOP z     | 64 24    | 0024=5A                               |                            | 3
      ADC z     | 65 24    | a=50 0024=50                          | a=A0 f=NV                  | 3
      ROR z     | 66 24    | 0024=02 f=C                           | f=N 0024=81                | 5
      RRA z     | 67 24    | a=10 0024=03                          | a=12 0024=01               | 5
      PLA       | 68       | s=FF 0100=80                          | a=80 s=00 f=N              | 4
      ADC #     | 69 50    | a=50                                  | a=A0 f=NV                  | 2
      ROR A     | 6A       | a=02 f=C                              | a=81 f=N                   | 2
      ARR #     | 6B C0    | a=FF f=C                              | a=E0 f=NC                  | 2
      JMP (a)   | 6C 24 30 | 3024=78 3025=56                       | pc=5678                    | 5
      ADC a     | 6D 24 30 | a=50 3024=50                          | a=A0 f=NV                  | 4
      ROR a     | 6E 24 30 | 3024=02 f=C                           | f=N 3024=81                | 6
      RRA a     | 6F 24 30 | a=10 3024=03                          | a=12 3024=01               | 6
      BVS r     | 70 06    | f=V                                   | pc=0408                    | 3
      BVS r     | 70 06    | f=                                    |                            | 2
      ADC (z),Y | 71 24    | a=50 0024=F0 0025=30 y=34 3124=50     | a=A0 f=NV                  | 6
      JAM       | 72       | a=5A                                  | pc=0400                    | 3
      RRA (z),Y | 73 24    | a=10 0024=F0 0025=30 y=34 3124=03     | a=12 3124=01               | 8
      NOP z,X   | 74 F0    | x=34 0024=5A                          |                            | 4
      ADC z,X   | 75 F0    | a=50 x=34 0024=50                     | a=A0 f=NV                  | 4
      ROR z,X   | 76 F0    | x=34 0024=02 f=C                      | f=N 0024=81                | 6
      RRA z,X   | 77 F0    | a=10 x=34 0024=03                     | a=12 0024=01               | 6
      SEI       | 78       |                                       | f=I                        | 2
      ADC a,Y   | 79 10 30 | a=50 y=14 3024=50                     | a=A0 f=NV                  | 4
      NOP       | 7A       | a=11                                  |                            | 2
      RRA a,Y   | 7B 10 30 | a=10 y=14 3024=03                     | a=12 3024=01               | 7
      NOP a,X   | 7C F0 30 | x=34                                  |                            | 4
      ADC a,X   | 7D F0 30 | a=50 x=34 3124=50                     | a=A0 f=NV                  | 5
      ROR a,X   | 7E F0 30 | x=34 3124=02 f=C                      | f=N 3124=81                | 7
      RRA a,X   | 7F F0 30 | a=10 x=34 3124=03                     | a=12 3124=01               | 7
      NOP #     | 80 5A    |                                       |                            | 2
      STA (z,X) | 81 F0    | a=5A x=34 0024=78 0025=30             | 3078=5A                    | 6
      NOP #     | 82 5A    |                                       |                            | 2
      SAX (z,X) | 83 F0    | a=F0 x=34 0024=78 0025=30             | 3078=30                    | 6
      STY z     | 84 24    | y=81                                  | 0024=81                    | 3
      STA z     | 85 24    | a=5A                                  | 0024=5A                    | 3
      STX z     | 86 24    | x=A5                                  | 0024=A5                    | 3
      SAX z     | 87 24    | a=F0 x=34                             | 0024=30                    | 3
      DEY       | 88       | y=00                                  | y=FF f=N                   | 2
      NOP #     | 89 5A    |                                       |                            | 2
      TXA       | 8A       | x=80                                  | a=80 f=N                   | 2
      ANE #     | 8B F3    | a=10 x=3C                             | a=30                       | 2
      STY a     | 8C 24 30 | y=81                                  | 3024=81                    | 4
      STA a     | 8D 24 30 | a=5A                                  | 3024=5A                    | 4
      STX a     | 8E 24 30 | x=A5                                  | 3024=A5                    | 4
      SAX a     | 8F 24 30 | a=F0 x=34                             | 3024=30                    | 4
      BCC r     | 90 06    | f=                                    | pc=0408                    | 3
      BCC r     | 90 06    | f=C                                   |                            | 2
      STA (z),Y | 91 24    | a=5A 0024=F0 0025=30 y=34             | 3124=5A                    | 6
      JAM       | 92       | a=5A                                  | pc=0400                    | 3
      SHA (z),Y | 93 24    | a=F3 x=3F y=14 0024=10 0025=30        | 3024=31                    | 6
      STY z,X   | 94 F0    | y=81 x=34                             | 0024=81                    | 4
      STA z,X   | 95 F0    | a=5A x=34                             | 0024=5A                    | 4
      STX z,Y   | 96 F0    | x=A5 y=34                             | 0024=A5                    | 4
      SAX z,Y   | 97 F0    | a=F0 x=34 y=34                        | 0024=30                    | 4
      TYA       | 98       | a=55 y=00                             | a=00 f=Z                   | 2
      STA a,Y   | 99 10 30 | a=5A y=14                             | 3024=5A                    | 5
      TXS       | 9A       | x=00                                  | s=00                       | 2
      TAS a,Y   | 9B 10 30 | a=F3 x=3F y=14                        | s=33 3024=31               | 5
      SHY a,X   | 9C 10 30 | y=F1 x=14                             | 3024=31                    | 5
      STA a,X   | 9D F0 30 | a=5A x=34                             | 3124=5A                    | 5
      SHX a,Y   | 9E 10 30 | x=F1 y=14                             | 3024=31                    | 5
      SHA a,Y   | 9F 10 30 | a=F3 x=3F y=14                        | 3024=31                    | 5
      LDY #     | A0 7F    | f=C                                   | y=7F                       | 2
      LDA (z,X) | A1 F0    | x=34 0024=78 0025=30 3078=80          | a=80 f=N                   | 6
      LDX #     | A2 00    |                                       | x=00 f=Z                   | 2
      LAX (z,X) | A3 F0    | x=34 0024=78 0025=30 3078=C3          | a=C3 x=C3 f=N              | 6
      LDY z     | A4 24    | 0024=7F f=C                           | y=7F                       | 3
      LDA z     | A5 24    | 0024=80                               | a=80 f=N                   | 3
      LDX z     | A6 24    | 0024=00                               | x=00 f=Z                   | 3
      LAX z     | A7 24    | 0024=C3                               | a=C3 x=C3 f=N              | 3
      TAY       | A8       | a=F1                                  | y=F1 f=N                   | 2
      LDA #     | A9 80    |                                       | a=80 f=N                   | 2
      TAX       | AA       | a=12 f=NZ                             | x=12 f=                    | 2
      LXA #     | AB 83    | a=10                                  | a=82 x=82 f=N              | 2
      LDY a     | AC 24 30 | 3024=7F f=C                           | y=7F                       | 4
      LDA a     | AD 24 30 | 3024=80                               | a=80 f=N                   | 4
      LDX a     | AE 24 30 | 3024=00                               | x=00 f=Z                   | 4
      LAX a     | AF 24 30 | 3024=C3                               | a=C3 x=C3 f=N              | 4
      BCS r     | B0 06    | f=C                                   | pc=0408                    | 3
      BCS r     | B0 06    | f=                                    |                            | 2
      LDA (z),Y | B1 24    | 0024=F0 0025=30 y=34 3124=80          | a=80 f=N                   | 6
      JAM       | B2       | a=5A                                  | pc=0400                    | 3
      LAX (z),Y | B3 24    | 0024=F0 0025=30 y=34 3124=C3          | a=C3 x=C3 f=N              | 6
      LDY z,X   | B4 F0    | x=34 0024=7F f=C                      | y=7F                       | 4
      LDA z,X   | B5 F0    | x=34 0024=80                          | a=80 f=N                   | 4
      LDX z,Y   | B6 F0    | y=34 0024=00                          | x=00 f=Z                   | 4
      LAX z,Y   | B7 F0    | y=34 0024=C3                          | a=C3 x=C3 f=N              | 4
      CLV       | B8       | f=VZ                                  | f=Z                        | 2
      LDA a,Y   | B9 10 30 | y=14 3024=80                          | a=80 f=N                   | 4
      TSX       | BA       | s=00                                  | x=00 f=Z                   | 2
      LAS a,Y   | BB 10 30 | s=F1 y=14 3024=3C                     | a=30 x=30 s=30             | 4
      LDY a,X   | BC F0 30 | x=34 3124=7F f=C                      | y=7F                       | 5
      LDA a,X   | BD F0 30 | x=34 3124=80                          | a=80 f=N                   | 5
      LDX a,Y   | BE 10 30 | y=14 3024=00                          | x=00 f=Z                   | 4
      LAX a,Y   | BF 10 30 | y=14 3024=C3                          | a=C3 x=C3 f=N              | 4
      CPY #     | C0 01    | y=80                                  | f=C                        | 2
      CMP (z,X) | C1 F0    | a=40 x=34 0024=78 0025=30 3078=41     | f=N                        | 6
      NOP #     | C2 5A    |                                       |                            | 2
      DCP (z,X) | C3 F0    | a=40 x=34 0024=78 0025=30 3078=41     | f=ZC 3078=40               | 8
      CPY z     | C4 24    | y=80 0024=01                          | f=C                        | 3
      CMP z     | C5 24    | a=40 0024=41                          | f=N                        | 3
      DEC z     | C6 24    | 0024=00                               | f=N 0024=FF                | 5
      DCP z     | C7 24    | a=40 0024=41                          | f=ZC 0024=40               | 5
      INY       | C8       | y=FF                                  | y=00 f=Z                   | 2
      CMP #     | C9 41    | a=40                                  | f=N                        | 2
      DEX       | CA       | x=01                                  | x=00 f=Z                   | 2
      SBX #     | CB 10    | a=F0 x=3C                             | x=20 f=C                   | 2
      CPY a     | CC 24 30 | y=80 3024=01                          | f=C                        | 4
      CMP a     | CD 24 30 | a=40 3024=41                          | f=N                        | 4
      DEC a     | CE 24 30 | 3024=00                               | f=N 3024=FF                | 6
      DCP a     | CF 24 30 | a=40 3024=41                          | f=ZC 3024=40               | 6
      BNE r     | D0 06    | f=                                    | pc=0408                    | 3
      BNE r     | D0 06    | f=Z                                   |                            | 2
      CMP (z),Y | D1 24    | a=40 0024=F0 0025=30 y=34 3124=41     | f=N                        | 6
      JAM       | D2       | a=5A                                  | pc=0400                    | 3
      DCP (z),Y | D3 24    | a=40 0024=F0 0025=30 y=34 3124=41     | f=ZC 3124=40               | 8
      NOP z,X   | D4 F0    | x=34 0024=5A                          |                            | 4
      CMP z,X   | D5 F0    | a=40 x=34 0024=41                     | f=N                        | 4
      DEC z,X   | D6 F0    | x=34 0024=00                          | f=N 0024=FF                | 6
      DCP z,X   | D7 F0    | a=40 x=34 0024=41                     | f=ZC 0024=40               | 6
      CLD       | D8       | f=DC                                  | f=C                        | 2
      CMP a,Y   | D9 10 30 | a=40 y=14 3024=41                     | f=N                        | 4
      NOP       | DA       | a=11                                  |                            | 2
      DCP a,Y   | DB 10 30 | a=40 y=14 3024=41                     | f=ZC 3024=40               | 7
      NOP a,X   | DC F0 30 | x=34                                  |                            | 4
      CMP a,X   | DD F0 30 | a=40 x=34 3124=41                     | f=N                        | 5
      DEC a,X   | DE F0 30 | x=34 3124=00                          | f=N 3124=FF                | 7
      DCP a,X   | DF F0 30 | a=40 x=34 3124=41                     | f=ZC 3124=40               | 7
      CPX #     | E0 41    | x=41                                  | f=ZC                       | 2
      SBC (z,X) | E1 F0    | a=50 x=34 0024=78 0025=30 3078=B0 f=C | a=A0 f=NV                  | 6
      NOP #     | E2 5A    |                                       |                            | 2
      ISC (z,X) | E3 F0    | a=20 x=34 0024=78 0025=30 3078=0F f=C | a=10 3078=10               | 8
      CPX z     | E4 24    | x=41 0024=41                          | f=ZC                       | 3
      SBC z     | E5 24    | a=50 0024=B0 f=C                      | a=A0 f=NV                  | 3
      INC z     | E6 24    | 0024=FF                               | f=Z 0024=00                | 5
      ISC z     | E7 24    | a=20 0024=0F f=C                      | a=10 0024=10               | 5
      INX       | E8       | x=7F                                  | x=80 f=N                   | 2
      SBC #     | E9 B0    | a=50 f=C                              | a=A0 f=NV                  | 2
      NOP       | EA       | a=11                                  |                            | 2
      SBC #     | EB B0    | a=50 f=C                              | a=A0 f=NV                  | 2
      CPX a     | EC 24 30 | x=41 3024=41                          | f=ZC                       | 4
      SBC a     | ED 24 30 | a=50 3024=B0 f=C                      | a=A0 f=NV                  | 4
      INC a     | EE 24 30 | 3024=FF                               | f=Z 3024=00                | 6
      ISC a     | EF 24 30 | a=20 3024=0F f=C                      | a=10 3024=10               | 6
      BEQ r     | F0 06    | f=Z                                   | pc=0408                    | 3
      BEQ r     | F0 06    | f=                                    |                            | 2
      SBC (z),Y | F1 24    | a=50 0024=F0 0025=30 y=34 3124=B0 f=C | a=A0 f=NV                  | 6
      JAM       | F2       | a=5A                                  | pc=0400                    | 3
      ISC (z),Y | F3 24    | a=20 0024=F0 0025=30 y=34 3124=0F f=C | a=10 3124=10               | 8
      NOP z,X   | F4 F0    | x=34 0024=5A                          |                            | 4
      SBC z,X   | F5 F0    | a=50 x=34 0024=B0 f=C                 | a=A0 f=NV                  | 4
      INC z,X   | F6 F0    | x=34 0024=FF                          | f=Z 0024=00                | 6
      ISC z,X   | F7 F0    | a=20 x=34 0024=0F f=C                 | a=10 0024=10               | 6
      SED       | F8       |                                       | f=D                        | 2
      SBC a,Y   | F9 10 30 | a=50 y=14 3024=B0 f=C                 | a=A0 f=NV                  | 4
      NOP       | FA       | a=11                                  |                            | 2
      ISC a,Y   | FB 10 30 | a=20 y=14 3024=0F f=C                 | a=10 3024=10               | 7
      NOP a,X   | FC F0 30 | x=34                                  |                            | 4
      SBC a,X   | FD F0 30 | a=50 x=34 3124=B0 f=C                 | a=A0 f=NV                  | 5
      INC a,X   | FE F0 30 | x=34 3124=FF                          | f=Z 3124=00                | 7
      ISC a,X   | FF F0 30 | a=20 x=34 3124=0F f=C                 | a=10 3124=10               | 7
      """;

  private static final int CODE = 0x0400;

  private record Example(String name, byte[] code, String before, String after, int cycles) {

    static Example parse(String row) {
      String[] cells = row.split("\\|");
      return new Example(
          cells[0].strip(),
          HexFormat.ofDelimiter(" ").parseHex(cells[1].strip()),
          cells[2].strip(),
          cells[3].strip(),
          Integer.parseInt(cells[4].strip()));
    }

    int opcode() {
      return code[0] & 0xFF;
    }
  }

  private static List<Example> examples() {
    return EXAMPLES.lines().map(Example::parse).toList();
  }

  @Test
  void examples_takenTogether_coverAllOpcodesUnderTheirNames() {
    assertEquals(
        IntStream.range(0, 256).boxed().toList(),
        examples().stream().map(Example::opcode).distinct().toList());
    for (Example example : examples()) {
      assertEquals(example.name(), OpcodeMap.text(example.opcode()));
    }
  }

  @TestFactory
  Stream<DynamicTest> example_run_endsAsWorkedOut() {
    return examples().stream()
        .map(
            example ->
                dynamicTest(
                    "%02X %s".formatted(example.opcode(), example.name()), () -> check(example)));
  }

  private static void check(Example example) {
    Breadboard board = Breadboard.at(CODE);
    System.arraycopy(example.code(), 0, board.memory, CODE, example.code().length);
    board.mpu.s = 0xF0;
    board.set(example.before());

    Breadboard expected = Breadboard.at(CODE);
    System.arraycopy(board.memory, 0, expected.memory, 0, board.memory.length);
    expected.set("s=F0");
    expected.set(example.before());
    expected.mpu.pc = CODE + example.code().length;
    expected.set(example.after());

    board.mpu.step();

    assertAll(
        () -> assertEquals(expected.registers(), board.registers()),
        () -> assertArrayEquals(expected.memory, board.memory),
        () -> assertEquals(example.cycles(), board.log.count()),
        () -> assertEquals(example.cycles(), board.mpu.cycle),
        () -> assertEquals(example.name().equals("JAM"), board.mpu.locked));
  }
}
