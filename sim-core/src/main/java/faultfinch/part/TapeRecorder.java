package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.nio.charset.StandardCharsets;

/**
 * The recorder at the end of the tape lead, with a tape in it; its motor has batteries of its own.
 * IN is what the board hears, OUT what it says. The tape runs unless GO is low; while it runs it
 * plays, or records from the board as long as the record key holds REC/ low. Whenever that key is
 * pressed or let go somebody winds the tape back to its beginning.
 *
 * <p>Sound on the tape is the times between its turns, in steps of 4 microseconds. The tape comes
 * with a block of 48 bytes as {@code hum} writes one: 512 zeros, a one, the length, the bytes,
 * their sum; a turn of 0.5 ms is a zero, of 1 ms a one.
 */
public final class TapeRecorder extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  OUT  ->|1       6|--  PWR
  IN   <-|2       5|<-  REC/
  GND  --|3       4|<-  GO
         +---------+
  NMOS; level OUT; input REC/; schmitt GO REC/; GO pulled up; REC/ pulled up;
  enable GO of IN; supply PWR; ground GND; IN drives tape head
  Not modelled: loudness, hiss, wow, a swing below zero, time to come to speed, a run begun before a
  halt (it begins again), silence of more than 16 ms (it is shortened), a worn tape; what was
  recorded is gone at the next power-on.""");

  /** Times from turn to turn, in steps; see {@link #SILENT} and {@link #LONG}. */
  public static final State TAPE = PINOUT.cells("tape", 8, 32_768);

  /** Nothing was recorded from here on. */
  private static final int SILENT = 0;

  /** As many steps go by without a turn. */
  private static final int LONG = 255;

  private static final int MOST_LONG = 16;
  private static final long STEP = 4_000;

  /** Half a turn of a zero: 21 times 16 cycles of 1.375 MHz are 244 microseconds. */
  private static final int SHORT_RUN = 61;

  /** What the board's output must exceed, in millivolts. */
  private static final int HEARD = 100;

  private static final int LEADER = 512;
  private static final String DELIVERED = "MARROW LANE WORKS, TAPE ONE. WIND ME BACK, DO.\r\r";

  private static final int STANDS = 0;
  private static final int PLAYS = 1;
  private static final int RECORDS = 2;

  /** Whether the tape runs; see {@link #runs}. */
  public static final State GOES = PINOUT.state("goes", 2);

  /** The cell under the head. */
  private static final State HEAD = PINOUT.state("head", 16);

  /** What it holds. */
  private static final State RUN = PINOUT.state("run", 8);

  /** When it is over; when recording, when it began. */
  private static final State TURNS_AT = PINOUT.state("turns-at", 63);

  private static final State HIGH = PINOUT.state("high", 1);
  private static final State KEYED = PINOUT.state("keyed", 1);

  private static final long OUT = PINOUT.pin("OUT");
  private static final long IN = PINOUT.pin("IN");
  private static final long REC = PINOUT.pin("REC/");
  private static final long GO = PINOUT.pin("GO");

  @Override
  public void settle(Pins pins) {
    if (pins.high(GO) && pins.state(GOES) == PLAYS && pins.state(RUN) != SILENT) {
      pins.drive(IN, pins.state(HIGH) != 0);
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    boolean keyed = pins.low(REC);
    int wants = pins.low(GO) ? STANDS : keyed ? RECORDS : PLAYS;
    if (wants != pins.state(GOES) || keyed != (pins.state(KEYED) != 0)) {
      if (pins.state(GOES) == RECORDS) {
        turned(pins);
        write(pins, SILENT);
      }
      if (keyed != (pins.state(KEYED) != 0)) {
        pins.hold(KEYED, keyed ? 1 : 0);
        pins.hold(HEAD, 0);
      }
      begin(pins, wants);
    } else if (wants == RECORDS && hears(pins) != (pins.state(HIGH) != 0)) {
      turned(pins);
    }
  }

  private static void begin(Pins pins, int goes) {
    pins.hold(GOES, goes);
    if (goes == RECORDS) {
      pins.hold(HIGH, hears(pins) ? 1 : 0);
      pins.hold(TURNS_AT, pins.nanoseconds());
    } else {
      pins.hold(HIGH, 0);
      run(pins, pins.nanoseconds());
    }
  }

  private static boolean hears(Pins pins) {
    return pins.millivolts(OUT) > HEARD;
  }

  /** The run under the head begins. */
  private static void run(Pins pins, long nanoseconds) {
    int run = pins.cell(TAPE, (int) pins.state(HEAD));
    pins.hold(RUN, run);
    pins.hold(TURNS_AT, nanoseconds + run * STEP);
  }

  /** What is recorded turns over: the time since the last turn goes on the tape. */
  private static void turned(Pins pins) {
    long steps = (pins.nanoseconds() - pins.state(TURNS_AT) + STEP / 2) / STEP;
    for (int i = 0; steps >= LONG; i++) {
      if (i < MOST_LONG) {
        write(pins, LONG);
      }
      steps -= LONG;
    }
    write(pins, (int) Math.max(1, steps));
    pins.hold(HIGH, pins.state(HIGH) ^ 1);
    pins.hold(TURNS_AT, pins.nanoseconds());
  }

  /** The last cell stays silent, so that the tape has an end. */
  private static void write(Pins pins, int run) {
    int head = (int) pins.state(HEAD);
    if (head < TAPE.count() - 1) {
      pins.hold(TAPE, head, run);
      pins.hold(HEAD, head + 1);
    }
  }

  /** Whether a tape in a recorder with this state runs. */
  public static boolean runs(long goes) {
    return goes != STANDS;
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }

  @Override
  public boolean keepsTime() {
    return true;
  }

  @Override
  public long nextChange(Pins pins) {
    return pins.state(GOES) == PLAYS && pins.state(RUN) != SILENT
        ? pins.cycleAfter(pins.state(TURNS_AT))
        : NEVER;
  }

  @Override
  public void elapse(Pins pins) {
    while (pins.state(GOES) == PLAYS
        && pins.state(RUN) != SILENT
        && pins.nanoseconds() >= pins.state(TURNS_AT)) {
      if (pins.state(RUN) != LONG) {
        pins.hold(HIGH, pins.state(HIGH) ^ 1);
      }
      pins.hold(HEAD, pins.state(HEAD) + 1);
      run(pins, pins.state(TURNS_AT));
    }
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    byte[] bytes = DELIVERED.getBytes(StandardCharsets.US_ASCII);
    int at = 0;
    for (int i = 0; i < LEADER; i++) {
      at = bit(pins, at, 0);
    }
    at = bit(pins, at, 1);
    at = bits(pins, at, bytes.length);
    at = bits(pins, at, 0);
    int sum = 0;
    for (byte b : bytes) {
      at = bits(pins, at, b);
      sum += b;
    }
    at = bits(pins, at, sum);
    bit(pins, at, 0);
  }

  private static int bits(Pins pins, int at, int value) {
    int next = at;
    for (int i = 7; i >= 0; i--) {
      next = bit(pins, next, value >>> i & 1);
    }
    return next;
  }

  private static int bit(Pins pins, int at, int bit) {
    pins.hold(TAPE, at, SHORT_RUN << bit);
    pins.hold(TAPE, at + 1, SHORT_RUN << bit);
    return at + 2;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
