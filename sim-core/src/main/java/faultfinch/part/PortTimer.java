package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.util.List;

/**
 * A port of eight pins, a timer with an interrupt, and a tone output.
 *
 * <p>Registers: 0 port, 1 direction (1 is output), 2 timer low, 3 timer high (a write loads and
 * starts), 4 control (bit 0 reload, bit 1 interrupt enable), 5 status (bit 7 interrupt, bit 0
 * expired; a read clears both), 6 tone (TO toggles every 16 x n cycles, 0 is off), 7 reads 0.
 */
public final class PortTimer extends BusDevice {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  D0   <>|1      28|--  VCC
  D1   <>|2      27|<-  RW
  D2   <>|3      26|<-  PHI2
  D3   <>|4      25|<-  RES/
  D4   <>|5      24|->  IRQ/
  D5   <>|6      23|->  TO
  D6   <>|7      22|<>  PA7
  D7   <>|8      21|<>  PA6
  A0   ->|9      20|<>  PA5
  A1   ->|10     19|<>  PA4
  A2   ->|11     18|<>  PA3
  CS/  ->|12     17|<>  PA2
  CS   ->|13     16|<>  PA1
  GND  --|14     15|<>  PA0
         +---------+
  NMOS; register A; data D; select CS/ CS; direction RW; clock PHI2 falls; input RES/; input PA;
  supply VCC; ground GND; D drives NMOS LSI; PA drives NMOS LSI; TO drives NMOS LSI;
  IRQ/ drives NMOS LSI open collector; PA pulled up; enable CS/ CS RW PHI2 of D; D follows A;
  each D follows PA
  Not modelled: a clock pin that stops while the timer runs.""");

  private static final BusAdapter ADAPTER = new BusAdapter(PINOUT, "A", "D");
  private static final State PORT = PINOUT.state("port", 8);
  private static final State OUTPUTS = PINOUT.state("direction", 8);
  private static final State LATCH = PINOUT.state("latch", 16);
  private static final State CONTROL = PINOUT.state("control", 2);
  private static final State EXPIRED = PINOUT.state("expired", 1);
  private static final State ENDS = PINOUT.state("ends", 63);
  private static final State TONE = PINOUT.state("tone", 8);
  private static final State TONE_FROM = PINOUT.state("tone-from", 63);
  private static final Bus PA = PINOUT.bus("PA");
  private static final long TO = PINOUT.pin("TO");
  private static final long IRQ = PINOUT.pin("IRQ/");
  private static final long RES = PINOUT.pin("RES/");
  private static final int STEP = 16;
  private static final Defect TIMER_DEAD =
      new Defect("timer-dead", "the timer never reaches its end");
  private static final Defect TONE_DEAD = new Defect("tone-dead", "the tone output never moves");
  private static final Defect PORT_DEAD =
      new Defect("port-dead", "the port pins stay inputs whatever is written");

  @Override
  public BusAdapter adapter() {
    return ADAPTER;
  }

  @Override
  public List<Defect> defects() {
    return List.of(TIMER_DEAD, TONE_DEAD, PORT_DEAD);
  }

  @Override
  public int look(Pins pins, int register) {
    return switch (register) {
      case 0 -> pins.read(PA);
      case 1 -> (int) pins.state(OUTPUTS);
      case 2 -> (int) left(pins) & 0xFF;
      case 3 -> (int) left(pins) >>> 8;
      case 4 -> (int) pins.state(CONTROL);
      case 5 -> (interrupts(pins) ? 0x80 : 0) | (int) pins.state(EXPIRED);
      case 6 -> (int) pins.state(TONE);
      default -> 0;
    };
  }

  @Override
  public void afterRead(Pins pins, int register) {
    if (register == 5) {
      pins.hold(EXPIRED, 0);
    }
  }

  @Override
  public void write(Pins pins, int register, int value) {
    switch (register) {
      case 0 -> pins.hold(PORT, value);
      case 1 -> pins.hold(OUTPUTS, pins.defect(PORT_DEAD.name()) ? 0 : value);
      case 2 -> pins.hold(LATCH, (pins.state(LATCH) & 0xFF00) | value);
      case 3 -> {
        long latch = (pins.state(LATCH) & 0xFF) | ((long) value << 8);
        pins.hold(LATCH, latch);
        pins.hold(ENDS, pins.defect(TIMER_DEAD.name()) ? 0 : pins.now() + latch + 1);
      }
      case 4 -> pins.hold(CONTROL, value & 3);
      case 6 -> {
        pins.hold(TONE, pins.defect(TONE_DEAD.name()) ? 0 : value);
        pins.hold(TONE_FROM, pins.now());
      }
      default -> {
        // Status and the spare register take no writes.
      }
    }
  }

  @Override
  public void outputs(Pins pins) {
    int out = (int) pins.state(OUTPUTS);
    pins.drive(PA.at(out), PA.at((int) pins.state(PORT)));
    long tone = pins.state(TONE);
    pins.drive(TO, tone != 0 && ((pins.now() - pins.state(TONE_FROM)) / (STEP * tone)) % 2 == 1);
    if (interrupts(pins)) {
      pins.drive(IRQ, false);
    }
  }

  @Override
  public long restsWhileHigh(Phase phase) {
    return phase == Phase.C_END ? 0 : RES;
  }

  @Override
  public void levels(Pins pins) {
    if (pins.low(RES)) {
      for (State word : List.of(PORT, OUTPUTS, LATCH, CONTROL, EXPIRED, ENDS, TONE)) {
        if (pins.state(word) != 0) {
          pins.hold(word, 0);
        }
      }
    }
  }

  @Override
  public boolean keepsTime() {
    return true;
  }

  @Override
  public long nextChange(Pins pins) {
    long ends = pins.state(ENDS);
    long next = ends == 0 ? NEVER : ends;
    long tone = pins.state(TONE);
    if (tone != 0) {
      long step = STEP * tone;
      long from = pins.state(TONE_FROM);
      next = Math.min(next, from + ((pins.now() - from) / step + 1) * step);
    }
    return next;
  }

  @Override
  public long nextStored(Pins pins) {
    long ends = pins.state(ENDS);
    return ends == 0 ? NEVER : ends;
  }

  @Override
  public void elapse(Pins pins) {
    long ends = pins.state(ENDS);
    if (ends != 0 && ends <= pins.now()) {
      boolean reload = (pins.state(CONTROL) & 1) != 0;
      pins.hold(EXPIRED, 1);
      pins.hold(ENDS, reload ? ends + pins.state(LATCH) + 1 : 0);
    }
  }

  private static boolean interrupts(Pins pins) {
    return pins.state(EXPIRED) != 0 && (pins.state(CONTROL) & 2) != 0;
  }

  private static long left(Pins pins) {
    long ends = pins.state(ENDS);
    return ends == 0 ? 0 : (ends - pins.now()) & 0xFFFF;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
