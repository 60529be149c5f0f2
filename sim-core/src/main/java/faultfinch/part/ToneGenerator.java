package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.util.List;

/**
 * Two square voices, a noise and one decay they may share.
 *
 * <p>Registers: 0, 1 voice A half period low and high (AO toggles every 8 x n cycles, 0 is off), 2,
 * 3 voice B likewise, 4 noise (NO takes the next bit every 64 x n cycles, 0 is off), 5 loudness of
 * A and of B, 6 loudness of the noise and, bits 4 to 6, who follows the decay, 7 decay (a write
 * starts it at full; it falls by a sixteenth every 2048 x n cycles, 0 is none), 8 control (bit 0
 * mix-in heard), 9 to 15 read 0.
 *
 * <p>Nothing is stored as time goes by: what sounds follows from the registers and from the cycle
 * each was written. The pins AO, BO and NO show it; the sum at SUM is no level a net could carry
 * from phase to phase, so SUM drives the level it rests at, and who listens works the sum out from
 * {@link Voices}: it swings by up to {@link #SWING_MILLIVOLTS} either way.
 */
public final class ToneGenerator extends BusDevice {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  D0   <>|1      24|--  VCC
  D1   <>|2      23|->  SUM
  D2   <>|3      22|--  MIX
  D3   <>|4      21|--  DK
  D4   <>|5      20|->  NO
  D5   <>|6      19|->  BO
  D6   <>|7      18|->  AO
  D7   <>|8      17|<-  RES/
  A0   ->|9      16|<-  PHI2
  A1   ->|10     15|<-  RW
  A2   ->|11     14|<-  CS/
  GND  --|12     13|<-  A3
         +---------+
  NMOS; register A; data D; select CS/; direction RW; clock PHI2 falls; input RES/;
  terminal MIX DK; supply VCC; ground GND; D drives NMOS LSI;
  AO drives NMOS LSI; BO drives NMOS LSI; NO drives NMOS LSI; SUM drives analogue;
  enable CS/ RW PHI2 of D; D follows A
  Not modelled: sound that comes in at MIX (bit 0 of control is kept and does nothing), a clock pin
  that stops while a voice sounds, the rounding of the decay's steps by the capacitor at DK.""");

  private static final BusAdapter ADAPTER = new BusAdapter(PINOUT, "A", "D");

  /** Half period of voice A in steps of 8 cycles. */
  static final State HALF_A = PINOUT.state("half-a", 12);

  /** Half period of voice B in steps of 8 cycles. */
  static final State HALF_B = PINOUT.state("half-b", 12);

  /** Time of a bit of noise in steps of 64 cycles. */
  static final State NOISE = PINOUT.state("noise", 5);

  /** Loudness of A in the low, of B in the high four bits. */
  static final State LOUDNESS = PINOUT.state("loudness", 8);

  /** Loudness of the noise, and from bit 4 on who follows the decay: A, B, noise. */
  static final State SHARED = PINOUT.state("shared", 7);

  /** Time of a sixteenth of the decay in steps of 2048 cycles. */
  static final State DECAY = PINOUT.state("decay", 6);

  /** Whether the mix-in is heard. */
  static final State CONTROL = PINOUT.state("control", 1);

  /** Cycle at which voice A last began. */
  static final State FROM_A = PINOUT.state("from-a", 63);

  /** Cycle at which voice B last began. */
  static final State FROM_B = PINOUT.state("from-b", 63);

  /** Cycle at which the noise last began. */
  static final State FROM_NOISE = PINOUT.state("from-noise", 63);

  /** Cycle at which the decay last began. */
  static final State FROM_DECAY = PINOUT.state("from-decay", 63);

  /** Where in its round the noise last began. */
  static final State NOISE_AT = PINOUT.state("noise-at", 15);

  /** How far SUM swings from its rest when all are at their loudest. */
  public static final int SWING_MILLIVOLTS = 1000;

  static final int VOICE_STEP = 8;
  static final int NOISE_STEP = 64;
  static final int DECAY_STEP = 2048;

  static final List<State> WORDS =
      List.of(
          HALF_A,
          HALF_B,
          NOISE,
          LOUDNESS,
          SHARED,
          DECAY,
          CONTROL,
          FROM_A,
          FROM_B,
          FROM_NOISE,
          FROM_DECAY,
          NOISE_AT);

  private static final long AO = PINOUT.pin("AO");
  private static final long BO = PINOUT.pin("BO");
  private static final long NO = PINOUT.pin("NO");
  private static final long SUM = PINOUT.pin("SUM");
  private static final long RES = PINOUT.pin("RES/");

  private static final Defect VOICE_A_DEAD =
      new Defect("voice-a-dead", "the half period of voice A stays 0 whatever is written");
  private static final Defect VOICE_B_DEAD =
      new Defect("voice-b-dead", "the half period of voice B stays 0 whatever is written");
  private static final Defect NOISE_DEAD =
      new Defect("noise-dead", "the noise step stays 0 whatever is written");

  @Override
  public BusAdapter adapter() {
    return ADAPTER;
  }

  @Override
  public List<Defect> defects() {
    return List.of(VOICE_A_DEAD, VOICE_B_DEAD, NOISE_DEAD);
  }

  @Override
  public int look(Pins pins, int register) {
    return switch (register) {
      case 0 -> (int) pins.state(HALF_A) & 0xFF;
      case 1 -> (int) pins.state(HALF_A) >>> 8;
      case 2 -> (int) pins.state(HALF_B) & 0xFF;
      case 3 -> (int) pins.state(HALF_B) >>> 8;
      case 4 -> (int) pins.state(NOISE);
      case 5 -> (int) pins.state(LOUDNESS);
      case 6 -> (int) pins.state(SHARED);
      case 7 -> (int) pins.state(DECAY);
      case 8 -> (int) pins.state(CONTROL);
      default -> 0;
    };
  }

  @Override
  public void write(Pins pins, int register, int value) {
    switch (register) {
      case 0 -> voice(pins, HALF_A, FROM_A, pins.state(HALF_A) & 0xF00 | value, VOICE_A_DEAD);
      case 1 -> voice(pins, HALF_A, FROM_A, high(pins, HALF_A, value), VOICE_A_DEAD);
      case 2 -> voice(pins, HALF_B, FROM_B, pins.state(HALF_B) & 0xF00 | value, VOICE_B_DEAD);
      case 3 -> voice(pins, HALF_B, FROM_B, high(pins, HALF_B, value), VOICE_B_DEAD);
      case 4 -> {
        // The shift register stands where it is; only its pace is another.
        pins.hold(NOISE_AT, noiseAt(pins));
        pins.hold(FROM_NOISE, pins.now());
        pins.hold(NOISE, pins.defect(NOISE_DEAD.name()) ? 0 : value & 0x1F);
      }
      case 5 -> pins.hold(LOUDNESS, value);
      case 6 -> pins.hold(SHARED, value & 0x7F);
      case 7 -> {
        pins.hold(DECAY, value & 0x3F);
        pins.hold(FROM_DECAY, pins.now());
      }
      case 8 -> pins.hold(CONTROL, value & 1);
      default -> {
        // The spare registers take no writes.
      }
    }
  }

  private static long high(Pins pins, State half, int value) {
    return pins.state(half) & 0xFF | (value & 0xF) << 8;
  }

  private static void voice(Pins pins, State half, State from, long value, Defect dead) {
    pins.hold(half, pins.defect(dead.name()) ? 0 : value);
    pins.hold(from, pins.now());
  }

  private static int noiseAt(Pins pins) {
    return Noise.at(pins.state(NOISE_AT), pins.state(NOISE), since(pins, FROM_NOISE));
  }

  @Override
  public void outputs(Pins pins) {
    pins.drive(AO, Voices.high(pins.state(HALF_A), since(pins, FROM_A)));
    pins.drive(BO, Voices.high(pins.state(HALF_B), since(pins, FROM_B)));
    pins.drive(NO, pins.state(NOISE) != 0 && Noise.high(noiseAt(pins)));
    pins.drive(SUM, true);
  }

  private static long since(Pins pins, State from) {
    return Math.max(0, pins.now() - pins.state(from));
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

  @Override
  public boolean keepsTime() {
    return true;
  }

  @Override
  public long nextChange(Pins pins) {
    long next = Math.min(turn(pins, HALF_A, FROM_A), turn(pins, HALF_B, FROM_B));
    long step = pins.state(NOISE) * NOISE_STEP;
    if (step == 0) {
      return next;
    }
    long from = pins.state(FROM_NOISE);
    long steps = since(pins, FROM_NOISE) / step;
    long same = Noise.same((int) ((pins.state(NOISE_AT) + steps) % Noise.ROUND));
    return Math.min(next, from + (steps + same) * step);
  }

  private static long turn(Pins pins, State half, State from) {
    long step = pins.state(half) * VOICE_STEP;
    return step == 0 ? NEVER : pins.state(from) + (since(pins, from) / step + 1) * step;
  }

  @Override
  public long nextStored(Pins pins) {
    return NEVER;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
