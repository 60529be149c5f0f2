package faultfinch.part.mpu6502;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Reset, IRQ and NMI: their cycles, and the moment they are polled. Programs start at 0400 in cycle
 * 0; NMI leads to 5000, reset to 6000, IRQ to 7000, all memory else is NOP (two cycles).
 */
class InterruptTest {

  private static final int AT_NMI = 0x5000;
  private static final int AT_RESET = 0x6000;
  private static final int AT_IRQ = 0x7000;

  private static Breadboard running(String bytes) {
    return Breadboard.running(0x0400, bytes);
  }

  @Test
  void reset_requested_readsTheStackThreeTimesAndGoesToItsVector() {
    Breadboard board = running("A9 55").set("pc=1234 s=01 f=D");
    board.mpu.requestReset();
    board.steps(1);
    assertEquals(
        List.of(
            "1234 EA f",
            "1234 EA r",
            "0101 EA r",
            "0100 EA r",
            "01FF EA r",
            "FFFC 00 r",
            "FFFD 60 r"),
        board.log.texts());
    assertEquals(
        Breadboard.at(AT_RESET).set("s=FE f=DI").registers(), board.registers(), "D is left alone");
    assertEquals(7, board.mpu.cycle);
    board.steps(1);
    assertEquals(AT_RESET + 1, board.mpu.pc, "a reset is served once");
  }

  @Test
  void reset_withNmiWaiting_forgetsTheNmi() {
    Breadboard board = running("");
    board.mpu.nmiFellAt = 0;
    board.mpu.requestReset();
    board.steps(3);
    assertEquals(AT_RESET + 2, board.mpu.pc);
  }

  @Test
  void irq_lowInTime_pushesThreeBytesWithBreakClear() {
    Breadboard board = running("EA").set("f=NC");
    board.mpu.irqSince = 0;
    board.steps(2);
    assertEquals(
        List.of(
            "0400 EA f",
            "0401 EA r", // NOP
            "0401 EA f",
            "0401 EA r",
            "01FF 04 w",
            "01FE 01 w",
            "01FD A1 w",
            "FFFE 00 r",
            "FFFF 70 r"),
        board.log.texts());
    assertEquals(Breadboard.at(AT_IRQ).set("s=FC f=NIC").registers(), board.registers());
  }

  @Test
  void irq_fallingInTheLastCycle_waitsForOneMoreInstruction() {
    Breadboard board = running("EA EA");
    board.mpu.irqSince = 1; // NOP is cycles 0 and 1, polled at the end of 0
    assertEquals(0x0402, board.steps(2).mpu.pc);
    assertEquals(AT_IRQ, board.steps(1).mpu.pc);
  }

  @Test
  void irq_withDisableSet_isNotServed() {
    Breadboard board = running("EA EA EA").set("f=I");
    board.mpu.irqSince = 0;
    assertEquals(0x0403, board.steps(3).mpu.pc);
  }

  @Test
  void irq_stillLowAfterTheSequence_isHeldOffByDisableUntilRti() {
    Breadboard board = running("EA").set("7000=40"); // RTI first thing in the handler
    board.mpu.irqSince = 0;
    assertEquals(AT_IRQ, board.steps(2).mpu.pc);
    assertEquals(0x0401, board.steps(1).mpu.pc);
    // RTI brings I back before its poll, so no instruction comes between.
    assertEquals(AT_IRQ, board.steps(1).mpu.pc);
  }

  @Test
  void cli_withIrqLow_letsOneInstructionRunFirst() {
    Breadboard board = running("58 EA").set("f=I");
    board.mpu.irqSince = 0;
    assertEquals(0x0401, board.steps(1).mpu.pc);
    assertEquals(0x0402, board.steps(1).mpu.pc);
    assertEquals(AT_IRQ, board.steps(1).mpu.pc);
  }

  @Test
  void sei_withIrqLow_comesTooLateAndPushesDisableSet() {
    Breadboard board = running("78");
    board.mpu.irqSince = 0;
    assertEquals(AT_IRQ, board.steps(2).mpu.pc);
    assertEquals(0x24, board.memory(0x01FD)); // bit 5 and I
  }

  @Test
  void plp_clearingDisable_letsOneInstructionRunFirst() {
    Breadboard board = running("28 EA").set("f=I s=F0 01F1=00");
    board.mpu.irqSince = 0;
    assertEquals(0x0402, board.steps(2).mpu.pc);
    assertEquals(AT_IRQ, board.steps(1).mpu.pc);
  }

  @Test
  void plp_settingDisable_comesTooLate() {
    Breadboard board = running("28").set("s=F0 01F1=04");
    board.mpu.irqSince = 2; // PLP is cycles 0 to 3, polled at the end of 2
    assertEquals(AT_IRQ, board.steps(2).mpu.pc);
    Breadboard later = running("28 EA EA").set("s=F0 01F1=04");
    later.mpu.irqSince = 3;
    assertEquals(0x0403, later.steps(3).mpu.pc);
  }

  @Test
  void branch_takenWithinThePage_pollsOneCycleEarlier() {
    Breadboard early = running("90 02"); // BCC to 0404, cycles 0 to 2, polled at the end of 0
    early.mpu.irqSince = 0;
    assertEquals(AT_IRQ, early.steps(2).mpu.pc);
    Breadboard late = running("90 02");
    late.mpu.irqSince = 1;
    assertEquals(0x0405, late.steps(2).mpu.pc);
    assertEquals(AT_IRQ, late.steps(1).mpu.pc);
    Breadboard nmi = running("90 02");
    nmi.mpu.nmiFellAt = 1;
    assertEquals(0x0405, nmi.steps(2).mpu.pc);
    assertEquals(AT_NMI, nmi.steps(1).mpu.pc);
  }

  @Test
  void branch_notTakenOrIntoAnotherPage_pollsInItsLastCycleButOne() {
    Breadboard through = running("B0 02"); // BCS not taken, cycles 0 and 1
    through.mpu.irqSince = 0;
    assertEquals(AT_IRQ, through.steps(2).mpu.pc);
    Breadboard across = running("90 80"); // BCC to 0382, cycles 0 to 3
    across.mpu.irqSince = 2;
    assertEquals(AT_IRQ, across.steps(2).mpu.pc);
    Breadboard late = running("90 80");
    late.mpu.irqSince = 3;
    assertEquals(0x0383, late.steps(2).mpu.pc);
  }

  @Test
  void irq_releasedInTheLastCycle_isServedAsItWasPolledLow() {
    Breadboard board =
        running("8D 00 30 EA"); // STA 3000, cycles 0 to 3: the write answers the device
    board.mpu.irqSince = 1;
    board.steps(1);
    board.mpu.irqReleased(3);
    assertEquals(Mpu6502.NEVER, board.mpu.irqSince);
    assertEquals(AT_IRQ, board.steps(1).mpu.pc);
    assertEquals(AT_IRQ + 2, board.steps(2).mpu.pc, "and only once");
  }

  @Test
  void irq_releasedBeforeThePoll_isNotServed() {
    Breadboard board = running("EE 00 30 EA EA"); // INC 3000, cycles 0 to 5, writes in 4 and 5
    board.mpu.irqSince = 1;
    board.steps(1);
    board.mpu.irqReleased(4);
    assertEquals(0x0405, board.steps(2).mpu.pc);
  }

  @Test
  void nmi_fallingInTime_isServedOnceWhateverDisableSays() {
    Breadboard board = running("EA").set("f=I");
    board.mpu.nmiFellAt = 0;
    assertEquals(AT_NMI, board.steps(2).mpu.pc);
    assertEquals(Mpu6502.NEVER, board.mpu.nmiFellAt);
    assertEquals(0x24, board.memory(0x01FD));
    assertEquals(AT_NMI + 2, board.steps(2).mpu.pc);
  }

  @Test
  void nmi_fallingInTheLastCycle_waitsForOneMoreInstruction() {
    Breadboard board = running("EA EA");
    board.mpu.nmiFellAt = 1;
    assertEquals(0x0402, board.steps(2).mpu.pc);
    assertEquals(AT_NMI, board.steps(1).mpu.pc);
  }

  @Test
  void nmi_togetherWithIrq_goesFirst() {
    Breadboard board = running("EA").set("5000=40"); // RTI
    board.mpu.nmiFellAt = 0;
    board.mpu.irqSince = 0;
    assertEquals(AT_NMI, board.steps(2).mpu.pc);
    assertEquals(0x0401, board.steps(1).mpu.pc);
    assertEquals(AT_IRQ, board.steps(1).mpu.pc);
  }

  @Test
  void nmi_byTheFourthCycleOfBrk_takesItsVectorOver() {
    Breadboard board = running("00 00"); // cycles 0 to 6
    board.mpu.nmiFellAt = 3;
    assertEquals(AT_NMI, board.steps(1).mpu.pc);
    assertEquals(0x30, board.memory(0x01FD), "pushed with B set all the same");
    assertEquals(0x02, board.memory(0x01FE));
    assertEquals(Mpu6502.NEVER, board.mpu.nmiFellAt);
  }

  @Test
  void nmi_afterTheFourthCycleOfBrk_waitsForTheHandlersFirstInstruction() {
    Breadboard board = running("00 00");
    board.mpu.nmiFellAt = 4;
    assertEquals(AT_IRQ, board.steps(1).mpu.pc);
    assertEquals(AT_IRQ + 1, board.steps(1).mpu.pc);
    assertEquals(AT_NMI, board.steps(1).mpu.pc);
  }

  @Test
  void nmi_byTheFourthCycleOfAnIrqSequence_takesItsVectorOver() {
    Breadboard board = running("EA");
    board.mpu.irqSince = 0;
    board.mpu.nmiFellAt = 5; // the sequence is cycles 2 to 8
    assertEquals(AT_NMI, board.steps(2).mpu.pc);
    assertEquals(0x20, board.memory(0x01FD));
    Breadboard late = running("EA");
    late.mpu.irqSince = 0;
    late.mpu.nmiFellAt = 6;
    assertEquals(AT_IRQ, late.steps(2).mpu.pc);
    assertEquals(AT_NMI, late.steps(2).mpu.pc);
  }

  @Test
  void jam_run_locksUntilReset() {
    Breadboard board = running("02");
    board.steps(1);
    assertEquals(List.of("0400 02 f", "0401 EA r", "0401 EA r"), board.log.texts());
    assertTrue(board.mpu.locked);
    board.mpu.irqSince = 0;
    board.mpu.nmiFellAt = 0;
    board.log.clear();
    board.mpu.run(board.mpu.cycle + 3);
    assertEquals(List.of("FFFF 70 r", "FFFF 70 r", "FFFF 70 r"), board.log.texts());
    board.mpu.requestReset();
    board.steps(1);
    assertFalse(board.mpu.locked);
    assertEquals(AT_RESET, board.mpu.pc);
  }
}
