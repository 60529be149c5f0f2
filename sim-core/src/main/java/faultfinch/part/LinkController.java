package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.util.List;

/**
 * Sends and receives bytes bit by bit over three lines, each bit answered by the other end, and has
 * a side port of eight pins and two inputs that measure a level, for what a player turns.
 *
 * <p>Registers: 0 a write sends a byte, a read gives the byte last received; 1 control (a write of
 * bit 0 receives a byte, bit 1 attention line, bit 2 interrupt when done, a write of bit 7 stops at
 * once), 2 status (bit 7 interrupt, bit 6 busy, bit 3 DAT/ is low, bit 2 ACK/ is low, bit 0 done; a
 * read clears done), 3 side port, 4 its direction (1 is output), 5, 6 LV1 and LV2 as a share of
 * REF, 0 to 63, 7 reads 0.
 *
 * <p>It takes one step where its clock falls: set the bit and wait until ACK/ is let go; strobe and
 * wait for ACK/, take the bit if it receives; let the strobe go and wait until ACK/ is let go. It
 * waits as long as it takes. A write of register 0 or of bit 0 while it is busy does nothing.
 */
public final class LinkController extends BusDevice {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  D0   <>|1      36|--  VCC
  D1   <>|2      35|--  NC1
  D2   <>|3      34|<>  SP7
  D3   <>|4      33|<>  SP6
  D4   <>|5      32|<>  SP5
  D5   <>|6      31|<>  SP4
  D6   <>|7      30|<>  SP3
  D7   <>|8      29|<>  SP2
  A0   ->|9      28|<>  SP1
  A1   ->|10     27|<>  SP0
  A2   ->|11     26|<-  DAT/
  CS/  ->|12     25|<-  ACK/
  RW   ->|13     24|->  DO
  PHI2 ->|14     23|->  ATN
  RES/ ->|15     22|->  STB
  LV1  ->|16     21|->  IRQ/
  LV2  ->|17     20|--  NC2
  GND  --|18     19|<-  REF
         +---------+
  NMOS; register A; data D; select CS/; direction RW; clock PHI2 falls; input RES/ ACK/ DAT/;
  input SP; schmitt ACK/ DAT/; level LV REF; unconnected NC; supply VCC; ground GND;
  D drives NMOS LSI; SP drives NMOS LSI; STB drives NMOS LSI; ATN drives NMOS LSI;
  DO drives NMOS LSI; IRQ/ drives NMOS LSI open collector; enable CS/ RW PHI2 of D; D follows A;
  each D follows SP; D2 follows ACK/; D3 follows DAT/; D0 follows LV REF; D1 follows LV REF;
  D2 follows LV REF; D3 follows LV REF; D4 follows LV REF; D5 follows LV REF
  Not modelled: two controllers on one link, noise of the level inputs, a level input beyond REF
  other than full, harm done by a reference above VCC.""");

  private static final BusAdapter ADAPTER = new BusAdapter(PINOUT, "A", "D");

  /** 0 idle, 1 sets the bit, 2 strobes, 3 lets go. */
  private static final State STEP = PINOUT.state("step", 2);

  private static final State RECEIVES = PINOUT.state("receives", 1);
  private static final State BIT = PINOUT.state("bit", 3);
  private static final State SHIFT = PINOUT.state("shift", 8);
  private static final State RECEIVED = PINOUT.state("received", 8);
  private static final State DONE = PINOUT.state("done", 1);

  /** Bit 1 attention, bit 2 interrupt. */
  private static final State CONTROL = PINOUT.state("control", 3);

  private static final State PORT = PINOUT.state("port", 8);
  private static final State OUTPUTS = PINOUT.state("direction", 8);
  private static final List<State> WORDS =
      List.of(STEP, RECEIVES, BIT, SHIFT, RECEIVED, DONE, CONTROL, PORT, OUTPUTS);

  private static final int IDLE = 0;
  private static final int SETS = 1;
  private static final int STROBES = 2;
  private static final int LETS_GO = 3;
  private static final int RECEIVE = 1;
  private static final int ATTENTION = 2;
  private static final int INTERRUPT = 4;
  private static final int STOP = 0x80;
  private static final int LAST_BIT = 7;
  private static final int LEVEL_STEPS = 64;

  private static final Bus SP = PINOUT.bus("SP");
  private static final long STB = PINOUT.pin("STB");
  private static final long ATN = PINOUT.pin("ATN");
  private static final long DO = PINOUT.pin("DO");
  private static final long ACK = PINOUT.pin("ACK/");
  private static final long DAT = PINOUT.pin("DAT/");
  private static final long LV1 = PINOUT.pin("LV1");
  private static final long LV2 = PINOUT.pin("LV2");
  private static final long REF = PINOUT.pin("REF");
  private static final long IRQ = PINOUT.pin("IRQ/");
  private static final long RES = PINOUT.pin("RES/");
  private static final long PHI2 = PINOUT.pin("PHI2");

  private static final Defect LINK_DEAD = new Defect("link-dead", "it never begins a byte");
  private static final Defect PORT_DEAD =
      new Defect("side-port-dead", "the side port pins stay inputs whatever is written");

  @Override
  public BusAdapter adapter() {
    return ADAPTER;
  }

  @Override
  public List<Defect> defects() {
    return List.of(LINK_DEAD, PORT_DEAD);
  }

  @Override
  public int look(Pins pins, int register) {
    return switch (register) {
      case 0 -> (int) pins.state(RECEIVED);
      case 1 -> (int) pins.state(CONTROL);
      case 2 ->
          (interrupts(pins) ? 0x80 : 0)
              | (pins.state(STEP) != IDLE ? 0x40 : 0)
              | (pins.low(DAT) ? 8 : 0)
              | (pins.low(ACK) ? 4 : 0)
              | (int) pins.state(DONE);
      case 3 -> pins.read(SP);
      case 4 -> (int) pins.state(OUTPUTS);
      case 5 -> share(pins, LV1);
      case 6 -> share(pins, LV2);
      default -> 0;
    };
  }

  /** A ladder of 64 equal steps up to REF; at or above REF all 63 comparators say yes. */
  private static int share(Pins pins, long pin) {
    int level = pins.millivolts(pin);
    int reference = pins.millivolts(REF);
    if (level <= 0) {
      return 0;
    }
    return level >= reference ? LEVEL_STEPS - 1 : level * LEVEL_STEPS / reference;
  }

  @Override
  public void afterRead(Pins pins, int register) {
    if (register == 2) {
      pins.hold(DONE, 0);
    }
  }

  @Override
  public void write(Pins pins, int register, int value) {
    switch (register) {
      case 0 -> begin(pins, false, value);
      case 1 -> {
        pins.hold(CONTROL, value & (ATTENTION | INTERRUPT));
        if ((value & STOP) != 0) {
          pins.hold(STEP, IDLE);
        } else if ((value & RECEIVE) != 0) {
          begin(pins, true, 0);
        }
      }
      case 3 -> pins.hold(PORT, value);
      case 4 -> pins.hold(OUTPUTS, pins.defect(PORT_DEAD.name()) ? 0 : value);
      default -> {
        // Status, levels and the spare register take no writes.
      }
    }
  }

  private static void begin(Pins pins, boolean receives, int value) {
    if (pins.state(STEP) == IDLE && !pins.defect(LINK_DEAD.name())) {
      pins.hold(STEP, SETS);
      pins.hold(RECEIVES, receives ? 1 : 0);
      pins.hold(BIT, 0);
      pins.hold(SHIFT, value);
      pins.hold(DONE, 0);
    }
  }

  @Override
  public void outputs(Pins pins) {
    int step = (int) pins.state(STEP);
    boolean sends = step != IDLE && pins.state(RECEIVES) == 0;
    pins.drive(STB, step == STROBES);
    pins.drive(ATN, (pins.state(CONTROL) & ATTENTION) != 0);
    pins.drive(DO, sends && (pins.state(SHIFT) >>> pins.state(BIT) & 1) != 0);
    int out = (int) pins.state(OUTPUTS);
    pins.drive(SP.at(out), SP.at((int) pins.state(PORT)));
    if (interrupts(pins)) {
      pins.drive(IRQ, false);
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    boolean falls = pins.high(PHI2) && (pins.before() & PHI2) == 0;
    if (phase == Phase.C_END && falls && pins.high(RES)) {
      step(pins);
    }
    super.commit(pins, phase);
  }

  private static void step(Pins pins) {
    boolean answered = pins.low(ACK);
    switch ((int) pins.state(STEP)) {
      case SETS -> {
        if (!answered) {
          pins.hold(STEP, STROBES);
        }
      }
      case STROBES -> {
        if (answered) {
          take(pins);
          pins.hold(STEP, LETS_GO);
        }
      }
      case LETS_GO -> {
        if (!answered) {
          next(pins);
        }
      }
      default -> {
        // Idle.
      }
    }
  }

  private static void take(Pins pins) {
    if (pins.state(RECEIVES) != 0) {
      long bit = 1L << pins.state(BIT);
      pins.hold(SHIFT, pins.state(SHIFT) & ~bit | (pins.low(DAT) ? bit : 0));
    }
  }

  private static void next(Pins pins) {
    if (pins.state(BIT) < LAST_BIT) {
      pins.hold(BIT, pins.state(BIT) + 1);
      pins.hold(STEP, SETS);
      return;
    }
    if (pins.state(RECEIVES) != 0) {
      pins.hold(RECEIVED, pins.state(SHIFT));
    }
    pins.hold(STEP, IDLE);
    pins.hold(DONE, 1);
  }

  @Override
  public long restsWhileHigh(Phase phase) {
    return phase == Phase.C_END ? 0 : RES;
  }

  @Override
  public void levels(Pins pins) {
    if (pins.low(RES)) {
      for (State word : WORDS) {
        if (pins.state(word) != 0) {
          pins.hold(word, 0);
        }
      }
    }
  }

  private static boolean interrupts(Pins pins) {
    return pins.state(DONE) != 0 && (pins.state(CONTROL) & INTERRUPT) != 0;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
