package faultfinch.part.mpu6502;

import static faultfinch.part.mpu6502.Alu.BREAK;
import static faultfinch.part.mpu6502.Alu.CARRY;
import static faultfinch.part.mpu6502.Alu.DECIMAL;
import static faultfinch.part.mpu6502.Alu.IRQ_DISABLE;
import static faultfinch.part.mpu6502.Alu.NEGATIVE;
import static faultfinch.part.mpu6502.Alu.OVERFLOW;
import static faultfinch.part.mpu6502.Alu.UNUSED;
import static faultfinch.part.mpu6502.Alu.ZERO;

/**
 * The NMOS 6502: runs whole instructions and makes one bus call for each bus cycle, dummy reads and
 * double writes included, so that a board sees every cycle the chip would show it.
 *
 * <p>Cycles. {@link #cycle} counts finished bus calls: during a call it is the number of the cycle
 * under way, the first being 0, and it goes up after the call returns. A bus that holds the
 * processor by its ready pin repeats the read itself and adds the cycles waited to {@code cycle}
 * before it returns.
 *
 * <p>Interrupts are polled at the end of an instruction's last cycle but one. The poll is worked
 * out when the next instruction is due, so the board may tell of a fall late, up to the end of the
 * instruction, or ahead of time. Three rules bend the poll: CLI, SEI and PLP change I after it; a
 * branch taken within its page polls one cycle earlier; BRK and the interrupt sequences do not
 * poll, so that one instruction of the handler always runs. An NMI that falls by the fourth cycle
 * of BRK or of an IRQ's sequence takes that sequence's vector over.
 *
 * <p>Two corners follow the instruction vectors this core is held to, and chips have been seen to
 * differ: NOP with an absolute address makes no read at it, and with an indexed one reads once,
 * without the carry into the high byte; SHA, SHX, SHY and TAS take the high byte after the carry
 * and always store at the plain address.
 *
 * <p>Not modelled: what the ready pin does in a write cycle and to SHA, SHX, SHY and TAS; ANE and
 * LXA with a constant other than EE; the set-overflow pin; an NMI pulse too short to be latched, or
 * lost under a vector read; an IRQ/ pin low at a page-crossing branch's first poll and high again
 * at its second; the reads of FFFE among those of FFFF when locked; reset inside an instruction (it
 * waits for the boundary).
 */
public final class Mpu6502 {

  /** The cycle number of what has not happened. */
  public static final long NEVER = Long.MAX_VALUE;

  private static final int NMI_VECTOR = 0xFFFA;
  private static final int RESET_VECTOR = 0xFFFC;
  private static final int IRQ_VECTOR = 0xFFFE;
  private static final int STACK = 0x100;

  /** The bits that no chip drives, as ANE and LXA find them. */
  private static final int UNSTABLE = 0xEE;

  private static final int POLL_AS_USUAL = 0;
  private static final int POLL_OMITTED = 1;
  private static final int POLL_EARLY = 2;
  private static final int POLL_WITH_I_CLEAR = 3;
  private static final int POLL_WITH_I_SET = 4;

  private static final byte[] OPERATIONS = OpcodeMap.operations();
  private static final byte[] MODES = OpcodeMap.modes();
  private static final byte[] ACCESSES = OpcodeMap.accesses();

  /** 0 to FFFF; at an instruction boundary, the address of the next opcode. */
  public int pc;

  /** 0 to FF, an offset into page 1. */
  public int s;

  public int a;
  public int x;
  public int y;

  /**
   * N V 1 B D I Z C from bit 7 down: bit 5 always set, B always clear; pushed bytes differ in B.
   */
  public int p = UNUSED | IRQ_DISABLE;

  /** True after an opcode that locks, until reset. PC stays at that opcode. */
  public boolean locked;

  /** Bus cycles finished. */
  public long cycle;

  /**
   * The cycle from whose end on the IRQ/ pin reads low, {@link #NEVER} while it is high. Set it to
   * NEVER through {@link #irqReleased}: a poll may still have to see the low pin.
   */
  public long irqSince = NEVER;

  /** The cycle in which NMI/ fell, {@link #NEVER} when no edge waits. The core clears it. */
  public long nmiFellAt = NEVER;

  private final Bus bus;

  // Where run ends; no part of the saved state.
  private long until;
  private boolean resetPending;

  // The pin's last low spell: low at the end of the cycles from the first on, before the second.
  private long irqWasSince = NEVER;
  private long irqWasUntil = Long.MIN_VALUE;

  // Holds for the boundary at this cycle; any other boundary is polled as usual.
  private int pollRule = POLL_AS_USUAL;
  private long pollRuleAt;

  public Mpu6502(Bus bus) {
    this.bus = bus;
  }

  /** Reset takes the place of the next instruction, locked or not. */
  public void requestReset() {
    resetPending = true;
  }

  /** The IRQ/ pin reads high from the end of this cycle on. */
  public void irqReleased(long atCycle) {
    if (irqSince < atCycle) {
      irqWasSince = irqSince;
      irqWasUntil = atCycle;
    }
    irqSince = NEVER;
  }

  /** One instruction, or one interrupt or reset sequence, or one cycle when locked. */
  public void step() {
    run(cycle + 1);
  }

  /**
   * Lets {@link #run} end by this cycle if it would go on longer; called from inside a bus call.
   */
  public void endBy(long untilCycle) {
    until = Math.min(until, untilCycle);
  }

  /** Runs whole instructions while {@code cycle < untilCycle}; the last may end past it. */
  public void run(long untilCycle) {
    until = untilCycle;
    while (cycle < until) {
      if (attentionDue() && attended()) {
        continue;
      }
      int opcode = fetch();
      int operand = read(pc + 1 & 0xFFFF);
      int access = ACCESSES[opcode];
      int address = 0;
      switch (MODES[opcode]) {
        case Mode.ZERO_PAGE -> {
          address = operand;
          pc += 2;
        }
        case Mode.ZERO_PAGE_X -> {
          read(operand);
          address = operand + x & 0xFF;
          pc += 2;
        }
        case Mode.ZERO_PAGE_Y -> {
          read(operand);
          address = operand + y & 0xFF;
          pc += 2;
        }
        case Mode.ABSOLUTE -> {
          if (access != Access.OWN) {
            address = absolute(operand);
            pc += 3;
          }
        }
        case Mode.ABSOLUTE_X -> {
          address = indexed(absolute(operand), x, access);
          pc += 3;
        }
        case Mode.ABSOLUTE_Y -> {
          address = indexed(absolute(operand), y, access);
          pc += 3;
        }
        case Mode.INDEXED_INDIRECT -> {
          read(operand);
          address = pointer(operand + x & 0xFF);
          pc += 2;
        }
        case Mode.INDIRECT_INDEXED -> {
          address = indexed(pointer(operand), y, access);
          pc += 2;
        }
        case Mode.INDIRECT -> address = indirect(absolute(operand));
        case Mode.IMMEDIATE -> pc += 2;
        case Mode.IMPLIED, Mode.ACCUMULATOR -> {
          if (access != Access.OWN) {
            pc++;
          }
        }
        default -> {}
      }
      pc &= 0xFFFF;
      int operation = OPERATIONS[opcode];
      switch (access) {
        case Access.REGISTERS -> registers(operation);
        case Access.IMMEDIATE -> load(operation, operand);
        case Access.LOAD -> load(operation, read(address));
        case Access.STORE -> store(operation, address);
        case Access.MODIFY -> {
          int value = read(address);
          write(address, value);
          write(address, modified(operation, value));
        }
        case Access.BRANCH -> branch(operation, operand);
        case Access.JUMP -> pc = address;
        default -> own(operation, operand);
      }
    }
  }

  // ---- bus cycles

  private int fetch() {
    int opcode = bus.fetch(pc);
    cycle++;
    return opcode;
  }

  private int read(int address) {
    int value = bus.read(address);
    cycle++;
    return value;
  }

  private void write(int address, int value) {
    bus.write(address, value);
    cycle++;
  }

  private void push(int value) {
    write(STACK | s, value);
    s = s - 1 & 0xFF;
  }

  private int pull() {
    s = s + 1 & 0xFF;
    return read(STACK | s);
  }

  private int absolute(int low) {
    return low | read(pc + 2 & 0xFFFF) << 8;
  }

  // The high byte of a pointer at FF comes from 00.
  private int pointer(int address) {
    return read(address) | read(address + 1 & 0xFF) << 8;
  }

  // The pointer's low byte wraps within its page.
  private int indirect(int address) {
    return read(address) | read(address & 0xFF00 | address + 1 & 0xFF) << 8;
  }

  // The carry into the high byte costs a cycle, which reads in the wrong page; a load that needs no
  // carry saves it, all others spend it.
  private int indexed(int base, int index, int access) {
    int address = base + index & 0xFFFF;
    if (access != Access.LOAD || (base ^ address) > 0xFF) {
      read(base & 0xFF00 | address & 0xFF);
    }
    return address;
  }

  // ---- operations

  private int withFlags(int answer) {
    p = Alu.flags(answer);
    return Alu.result(answer);
  }

  private int withNegativeZero(int value) {
    p = Alu.withNegativeZero(p, value);
    return value;
  }

  private void load(int operation, int value) {
    switch (operation) {
      case Operation.LDA -> a = withNegativeZero(value);
      case Operation.LDX -> x = withNegativeZero(value);
      case Operation.LDY -> y = withNegativeZero(value);
      case Operation.ADC -> a = withFlags(Alu.adc(a, value, p));
      case Operation.SBC -> a = withFlags(Alu.sbc(a, value, p));
      case Operation.AND -> a = withNegativeZero(a & value);
      case Operation.ORA -> a = withNegativeZero(a | value);
      case Operation.EOR -> a = withNegativeZero(a ^ value);
      case Operation.CMP -> withFlags(Alu.compare(a, value, p));
      case Operation.CPX -> withFlags(Alu.compare(x, value, p));
      case Operation.CPY -> withFlags(Alu.compare(y, value, p));
      case Operation.BIT -> p = Alu.bit(a, value, p);
      case Operation.LAX -> a = x = withNegativeZero(value);
      case Operation.LAS -> a = x = s = withNegativeZero(s & value);
      case Operation.ANC -> a = withFlags(Alu.anc(a, value, p));
      case Operation.ALR -> a = withFlags(Alu.lsr(a & value, p));
      case Operation.ARR -> a = withFlags(Alu.arr(a, value, p));
      case Operation.ANE -> a = withNegativeZero((a | UNSTABLE) & x & value);
      case Operation.LXA -> a = x = withNegativeZero((a | UNSTABLE) & value);
      case Operation.SBX -> x = withFlags(Alu.compare(a & x, value, p));
      default -> {} // NOP
    }
  }

  private void store(int operation, int address) {
    switch (operation) {
      case Operation.STA -> write(address, a);
      case Operation.STX -> write(address, x);
      case Operation.STY -> write(address, y);
      case Operation.SAX -> write(address, a & x);
      case Operation.SHA -> storeUnderHighByte(address, a & x);
      case Operation.SHX -> storeUnderHighByte(address, x);
      case Operation.SHY -> storeUnderHighByte(address, y);
      default -> {
        s = a & x; // TAS
        storeUnderHighByte(address, s);
      }
    }
  }

  // The register meets the address's high byte plus one on the internal bus.
  private void storeUnderHighByte(int address, int register) {
    write(address, register & (address >> 8) + 1);
  }

  private int modified(int operation, int value) {
    switch (operation) {
      case Operation.ASL, Operation.SLO -> {
        int result = withFlags(Alu.asl(value, p));
        if (operation == Operation.SLO) {
          a = withNegativeZero(a | result);
        }
        return result;
      }
      case Operation.ROL, Operation.RLA -> {
        int result = withFlags(Alu.rol(value, p));
        if (operation == Operation.RLA) {
          a = withNegativeZero(a & result);
        }
        return result;
      }
      case Operation.LSR, Operation.SRE -> {
        int result = withFlags(Alu.lsr(value, p));
        if (operation == Operation.SRE) {
          a = withNegativeZero(a ^ result);
        }
        return result;
      }
      case Operation.ROR, Operation.RRA -> {
        int result = withFlags(Alu.ror(value, p));
        if (operation == Operation.RRA) {
          a = withFlags(Alu.adc(a, result, p));
        }
        return result;
      }
      case Operation.INC, Operation.ISC -> {
        int result = withNegativeZero(value + 1 & 0xFF);
        if (operation == Operation.ISC) {
          a = withFlags(Alu.sbc(a, result, p));
        }
        return result;
      }
      default -> {
        int result = withNegativeZero(value - 1 & 0xFF);
        if (operation == Operation.DCP) {
          withFlags(Alu.compare(a, result, p));
        }
        return result;
      }
    }
  }

  private void registers(int operation) {
    switch (operation) {
      case Operation.TAX -> x = withNegativeZero(a);
      case Operation.TAY -> y = withNegativeZero(a);
      case Operation.TXA -> a = withNegativeZero(x);
      case Operation.TYA -> a = withNegativeZero(y);
      case Operation.TSX -> x = withNegativeZero(s);
      case Operation.TXS -> s = x;
      case Operation.INX -> x = withNegativeZero(x + 1 & 0xFF);
      case Operation.INY -> y = withNegativeZero(y + 1 & 0xFF);
      case Operation.DEX -> x = withNegativeZero(x - 1 & 0xFF);
      case Operation.DEY -> y = withNegativeZero(y - 1 & 0xFF);
      case Operation.CLC -> p &= ~CARRY;
      case Operation.SEC -> p |= CARRY;
      case Operation.CLD -> p &= ~DECIMAL;
      case Operation.SED -> p |= DECIMAL;
      case Operation.CLV -> p &= ~OVERFLOW;
      case Operation.CLI -> flagsAfterPoll(p & ~IRQ_DISABLE);
      case Operation.SEI -> flagsAfterPoll(p | IRQ_DISABLE);
      case Operation.NOP -> {}
      default -> a = modified(operation, a);
    }
  }

  private void branch(int operation, int operand) {
    switch (operation) {
      case Operation.BPL -> branchIf((p & NEGATIVE) == 0, operand);
      case Operation.BMI -> branchIf((p & NEGATIVE) != 0, operand);
      case Operation.BVC -> branchIf((p & OVERFLOW) == 0, operand);
      case Operation.BVS -> branchIf((p & OVERFLOW) != 0, operand);
      case Operation.BCC -> branchIf((p & CARRY) == 0, operand);
      case Operation.BCS -> branchIf((p & CARRY) != 0, operand);
      case Operation.BNE -> branchIf((p & ZERO) == 0, operand);
      default -> branchIf((p & ZERO) != 0, operand);
    }
  }

  private void branchIf(boolean taken, int operand) {
    int next = pc + 2 & 0xFFFF;
    pc = next;
    if (taken) {
      read(next);
      pc = next + (byte) operand & 0xFFFF;
      if ((next ^ pc) > 0xFF) {
        read(next & 0xFF00 | pc & 0xFF);
      } else {
        rulePoll(POLL_EARLY);
      }
    }
  }

  private void own(int operation, int operand) {
    int next = pc + 1 & 0xFFFF;
    switch (operation) {
      case Operation.JSR -> {
        int last = pc + 2 & 0xFFFF;
        read(STACK | s);
        push(last >> 8);
        push(last & 0xFF);
        pc = operand | read(last) << 8;
      }
      case Operation.RTS -> {
        read(STACK | s);
        int last = pull() | pull() << 8;
        read(last);
        pc = last + 1 & 0xFFFF;
      }
      case Operation.PHA -> {
        pc = next;
        push(a);
      }
      case Operation.PHP -> {
        pc = next;
        push(p | BREAK);
      }
      case Operation.PLA -> {
        pc = next;
        read(STACK | s);
        a = withNegativeZero(pull());
      }
      case Operation.PLP -> {
        pc = next;
        read(STACK | s);
        flagsAfterPoll(pulledFlags());
      }
      case Operation.RTI -> {
        read(STACK | s);
        p = pulledFlags();
        pc = pull() | pull() << 8;
      }
      case Operation.BRK -> {
        pc = pc + 2 & 0xFFFF;
        pushAndVector(p | BREAK);
      }
      default -> {
        read(next); // JAM
        locked = true;
      }
    }
  }

  private int pulledFlags() {
    return pull() & ~BREAK | UNUSED;
  }

  // ---- interrupts

  private void flagsAfterPoll(int flags) {
    rulePoll((p & IRQ_DISABLE) == 0 ? POLL_WITH_I_CLEAR : POLL_WITH_I_SET);
    p = flags;
  }

  private void rulePoll(int rule) {
    pollRule = rule;
    pollRuleAt = cycle;
  }

  private int pollRuleHere() {
    return pollRuleAt == cycle ? pollRule : POLL_AS_USUAL;
  }

  // Quick and too cautious: true whenever the instruction may have to wait.
  private boolean attentionDue() {
    long now = cycle;
    return irqSince < now - 1
        || nmiFellAt < now - 1
        || irqWasUntil >= now - 2
        || locked
        || resetPending;
  }

  private boolean attended() {
    if (resetPending) {
      reset();
      return true;
    }
    if (locked) {
      read(0xFFFF);
      return true;
    }
    if (interruptPolled()) {
      fetch();
      read(pc);
      pushAndVector(p);
      return true;
    }
    return false;
  }

  private boolean interruptPolled() {
    boolean masked = (p & IRQ_DISABLE) != 0;
    switch (pollRuleHere()) {
      case POLL_OMITTED -> {
        return false;
      }
      case POLL_WITH_I_CLEAR -> masked = false;
      case POLL_WITH_I_SET -> masked = true;
      default -> {}
    }
    long polledAt = polledCycle();
    return nmiFellAt <= polledAt || !masked && (irqSince <= polledAt || irqWasLowAt(polledAt));
  }

  // Its end is when the last instruction polled.
  private long polledCycle() {
    return cycle - (pollRuleHere() == POLL_EARLY ? 3 : 2);
  }

  private boolean irqWasLowAt(long endOfCycle) {
    return irqWasSince <= endOfCycle && endOfCycle < irqWasUntil;
  }

  // Five of the seven cycles of BRK, IRQ and NMI. An edge by the end of the fourth cycle picks the
  // NMI vector, whoever began the sequence.
  private void pushAndVector(int flags) {
    push(pc >> 8);
    push(pc & 0xFF);
    push(flags);
    boolean nmi = nmiFellAt < cycle - 1;
    if (nmi) {
      nmiFellAt = NEVER;
    }
    vector(nmi ? NMI_VECTOR : IRQ_VECTOR);
  }

  // The interrupt sequence with its writes turned into reads.
  private void reset() {
    resetPending = false;
    locked = false;
    fetch();
    read(pc);
    for (int i = 0; i < 3; i++) {
      read(STACK | s);
      s = s - 1 & 0xFF;
    }
    if (nmiFellAt < cycle - 1) {
      nmiFellAt = NEVER;
    }
    vector(RESET_VECTOR);
  }

  private void vector(int address) {
    p |= IRQ_DISABLE;
    pc = read(address) | read(address + 1) << 8;
    rulePoll(POLL_OMITTED);
  }

  // ---- state

  /** How many longs {@link #save} writes. */
  public int words() {
    return 4;
  }

  /** Writes the whole state, at an instruction boundary. */
  public void save(long[] into, int at) {
    into[at] =
        pc
            | (long) s << 16
            | (long) a << 24
            | (long) x << 32
            | (long) y << 40
            | (long) p << 48
            | (long) pollRuleHere() << 56
            | (locked ? 1L << 59 : 0)
            | (resetPending ? 1L << 60 : 0)
            | (irqWasLowAt(polledCycle()) ? 1L << 61 : 0);
    into[at + 1] = cycle;
    into[at + 2] = irqSince;
    into[at + 3] = nmiFellAt;
  }

  /**
   * Takes back a saved state. After an exception out of a bus call this is the way to replay the
   * instruction: the same reads make the same calls. It also takes back {@code irqSince} and {@code
   * nmiFellAt}; a board whose pins moved since the save sets both again.
   */
  public void load(long[] from, int at) {
    long word = from[at];
    pc = (int) word & 0xFFFF;
    s = (int) (word >> 16) & 0xFF;
    a = (int) (word >> 24) & 0xFF;
    x = (int) (word >> 32) & 0xFF;
    y = (int) (word >> 40) & 0xFF;
    p = (int) (word >> 48) & 0xFF;
    locked = (word & 1L << 59) != 0;
    resetPending = (word & 1L << 60) != 0;
    cycle = from[at + 1];
    irqSince = from[at + 2];
    nmiFellAt = from[at + 3];
    rulePoll((int) (word >> 56) & 0x07);
    boolean irqWasLow = (word & 1L << 61) != 0;
    irqWasSince = irqWasLow ? Long.MIN_VALUE : NEVER;
    irqWasUntil = irqWasLow ? polledCycle() + 1 : Long.MIN_VALUE;
  }
}
