package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The drive at the end of the link, with a disc in it. It answers each bit: STB/ low, and 20
 * microseconds later ACK/ low; STB/ let go, and as much later ACK/ let go.
 *
 * <p>Bytes under ATN/ are commands: 40 are you there (then 5A can be received), 41 list (names,
 * each ended by 0D, then 00), 42 fetch (a name ended by 0D is sent; length low, length high and the
 * bytes are received; length 0 if there is no such file), 43 keep (a name ended by 0D, length low
 * and high and the bytes are sent; a status is received: 0 good, 1 no room on the disc, 2 too long
 * for one file). Asked for more than that it does not answer.
 */
public final class Drive extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  STB/ ->|1       6|--  PWR
  ATN/ ->|2       5|->  ACK/
  DAT/ <>|3       4|--  GND
         +---------+
  NMOS; input STB/ ATN/; data DAT/; schmitt STB/ ATN/ DAT/; supply PWR; ground GND;
  DAT/ drives LS buffer open collector; ACK/ drives LS buffer open collector
  Not modelled: the time the disc takes, a disc that is missing, worn or protected; what was kept is
  gone at the next power-on.""");

  /** Files on the disc, one behind the other: name, length low, length high, bytes. */
  static final int FILES = 8;

  static final int NAME = 12;
  static final int LONGEST = 2034;
  static final int FILE = NAME + 2 + LONGEST;
  static final State DISC = PINOUT.cells("disc", 8, FILES * FILE);

  private static final long ANSWERS_AFTER = 20_000;
  private static final int END = 0x0D;
  private static final int HERE = 0x5A;

  /** 0 rests, 1 STB/ seen low, 2 answers, 3 STB/ seen let go. */
  private static final State HAND = PINOUT.state("hand", 2);

  private static final State SEEN_AT = PINOUT.state("seen-at", 63);

  /** What goes on, by the constants below. */
  private static final State TASK = PINOUT.state("task", 4);

  private static final State BIT = PINOUT.state("bit", 3);
  private static final State SHIFT = PINOUT.state("shift", 8);

  /** Bytes of the task so far. */
  private static final State COUNT = PINOUT.state("count", 17);

  /** The file the task is about; {@link #FILES} if there is none. */
  private static final State AT = PINOUT.state("file", 4);

  private static final State LENGTH = PINOUT.state("length", 16);
  private static final State NAME_LOW = PINOUT.state("name-low", 64);
  private static final State NAME_HIGH = PINOUT.state("name-high", 64);

  private static final int RESTS = 0;
  private static final int SEEN = 1;
  private static final int ANSWERS = 2;
  private static final int LET_GO = 3;

  private static final int NOTHING = 0;
  private static final int TAKES_COMMAND = 1;
  private static final int TAKES_NAME_TO_FETCH = 2;
  private static final int TAKES_NAME_TO_KEEP = 3;
  private static final int TAKES_FILE = 4;
  private static final int SAYS_HERE = 5;
  private static final int SAYS_LIST = 6;
  private static final int SAYS_FILE = 7;
  private static final int SAYS_STATUS = 8;

  private static final int LAST_BIT = 7;
  private static final long STB = PINOUT.pin("STB/");
  private static final long ATN = PINOUT.pin("ATN/");
  private static final long DAT = PINOUT.pin("DAT/");
  private static final long ACK = PINOUT.pin("ACK/");
  private static final Defect DEAF = new Defect("deaf", "it never notices STB/");

  @Override
  public List<Defect> defects() {
    return List.of(DEAF);
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    delivered(pins, 0, "NOTES", "MARROW LANE WORKS\rTHREE FILES CAME WITH THIS DISC\r");
    delivered(pins, 1, "STAIRS", "C D E F G A B C\r");
    delivered(pins, 2, "LADDER", "0123456789\r");
  }

  private static void delivered(Pins pins, int file, String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    for (int i = 0; i < name.length(); i++) {
      pins.hold(DISC, file * FILE + i, name.charAt(i));
    }
    length(pins, file, bytes.length);
    for (int i = 0; i < bytes.length; i++) {
      pins.hold(DISC, file * FILE + NAME + 2 + i, bytes[i]);
    }
  }

  private static void length(Pins pins, int file, int length) {
    pins.hold(DISC, file * FILE + NAME, length & 0xFF);
    pins.hold(DISC, file * FILE + NAME + 1, length >>> 8);
  }

  @Override
  public void settle(Pins pins) {
    int hand = (int) pins.state(HAND);
    if (hand == ANSWERS || hand == LET_GO) {
      pins.drive(ACK, false);
    }
    boolean shows = hand == SEEN || hand == ANSWERS;
    if (shows
        && pins.state(TASK) >= SAYS_HERE
        && (pins.state(SHIFT) >>> pins.state(BIT) & 1) != 0) {
      pins.drive(DAT, false);
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    int hand = (int) pins.state(HAND);
    if (pins.low(STB)) {
      if (hand == RESTS && hears(pins)) {
        hand(pins, SEEN);
      }
    } else if (hand == SEEN) {
      hand(pins, RESTS);
    } else if (hand == ANSWERS) {
      hand(pins, LET_GO);
      bitDone(pins);
    } else if (hand == RESTS && pins.high(ATN) && pins.state(TASK) == TAKES_COMMAND) {
      pins.hold(TASK, NOTHING);
    }
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }

  @Override
  public boolean standsStill() {
    return true;
  }

  /** Whether the bit now strobed is for the drive; takes it if the drive listens. */
  private static boolean hears(Pins pins) {
    if (pins.defect(DEAF.name())) {
      return false;
    }
    if (pins.low(ATN) && pins.state(TASK) != TAKES_COMMAND) {
      begin(pins, TAKES_COMMAND);
    }
    int task = (int) pins.state(TASK);
    if (task != NOTHING && task < SAYS_HERE) {
      long bit = 1L << pins.state(BIT);
      pins.hold(SHIFT, pins.state(SHIFT) & ~bit | (pins.low(DAT) ? bit : 0));
    }
    return task != NOTHING;
  }

  private static void begin(Pins pins, int task) {
    pins.hold(TASK, task);
    pins.hold(BIT, 0);
    pins.hold(COUNT, 0);
    if (task >= SAYS_HERE) {
      pins.hold(SHIFT, says(pins, task, 0));
    }
  }

  private static void hand(Pins pins, int next) {
    pins.hold(HAND, next);
    pins.hold(SEEN_AT, pins.nanoseconds());
  }

  private static void bitDone(Pins pins) {
    if (pins.state(BIT) < LAST_BIT) {
      pins.hold(BIT, pins.state(BIT) + 1);
      return;
    }
    pins.hold(BIT, 0);
    int task = (int) pins.state(TASK);
    if (task < SAYS_HERE) {
      took(pins, task, (int) pins.state(SHIFT), (int) pins.state(COUNT));
    } else {
      said(pins, task, (int) pins.state(COUNT) + 1);
    }
  }

  private static void took(Pins pins, int task, int value, int count) {
    switch (task) {
      case TAKES_COMMAND -> command(pins, value);
      case TAKES_NAME_TO_FETCH, TAKES_NAME_TO_KEEP -> name(pins, task, value, count);
      case TAKES_FILE -> file(pins, value, count);
      default -> pins.hold(TASK, NOTHING);
    }
  }

  private static void command(Pins pins, int value) {
    switch (value) {
      case 0x40 -> begin(pins, SAYS_HERE);
      case 0x41 -> begin(pins, SAYS_LIST);
      case 0x42 -> begin(pins, TAKES_NAME_TO_FETCH);
      case 0x43 -> begin(pins, TAKES_NAME_TO_KEEP);
      default -> pins.hold(TASK, NOTHING);
    }
  }

  /** The name gathers in two words, eight letters and four; what is longer is cut off. */
  private static void name(Pins pins, int task, int value, int count) {
    if (count == 0) {
      pins.hold(NAME_LOW, 0);
      pins.hold(NAME_HIGH, 0);
    }
    if (value != END) {
      if (count < NAME) {
        State half = count < 8 ? NAME_LOW : NAME_HIGH;
        pins.hold(half, pins.state(half) | (long) value << count % 8 * 8);
        pins.hold(COUNT, count + 1);
      }
      return;
    }
    int found = named(pins);
    if (task == TAKES_NAME_TO_FETCH) {
      pins.hold(AT, found);
      begin(pins, SAYS_FILE);
    } else {
      pins.hold(AT, found < FILES ? found : free(pins));
      pins.hold(LENGTH, 0);
      begin(pins, TAKES_FILE);
    }
  }

  private static int letter(Pins pins, int i) {
    return (int) (pins.state(i < 8 ? NAME_LOW : NAME_HIGH) >>> i % 8 * 8) & 0xFF;
  }

  private static int named(Pins pins) {
    for (int file = 0; file < FILES; file++) {
      boolean same = pins.cell(DISC, file * FILE) != 0;
      for (int i = 0; i < NAME && same; i++) {
        same = pins.cell(DISC, file * FILE + i) == letter(pins, i);
      }
      if (same) {
        return file;
      }
    }
    return FILES;
  }

  private static int free(Pins pins) {
    int file = 0;
    while (file < FILES && pins.cell(DISC, file * FILE) != 0) {
      file++;
    }
    return file;
  }

  private static void file(Pins pins, int value, int count) {
    if (count < 2) {
      pins.hold(LENGTH, pins.state(LENGTH) | (long) value << 8 * count);
    } else if (fits(pins) && pins.state(AT) < FILES) {
      pins.hold(DISC, (int) pins.state(AT) * FILE + NAME + count, value);
    }
    pins.hold(COUNT, count + 1);
    if (count >= 1 && count + 1 == pins.state(LENGTH) + 2) {
      kept(pins);
    }
  }

  private static boolean fits(Pins pins) {
    return pins.state(LENGTH) <= LONGEST;
  }

  private static void kept(Pins pins) {
    int at = (int) pins.state(AT);
    if (fits(pins) && at < FILES) {
      for (int i = 0; i < NAME; i++) {
        pins.hold(DISC, at * FILE + i, letter(pins, i));
      }
      length(pins, at, (int) pins.state(LENGTH));
    }
    begin(pins, SAYS_STATUS);
  }

  /** Byte number {@code count} of what a task says. */
  private static int says(Pins pins, int task, int count) {
    int at = (int) pins.state(AT);
    return switch (task) {
      case SAYS_HERE -> HERE;
      case SAYS_LIST -> listed(pins, count);
      case SAYS_FILE -> at < FILES ? pins.cell(DISC, at * FILE + NAME + count) : 0;
      default -> at >= FILES ? 1 : fits(pins) ? 0 : 2;
    };
  }

  private static int listed(Pins pins, int count) {
    int left = count;
    for (int file = 0; file < FILES; file++) {
      for (int i = 0; i < NAME && pins.cell(DISC, file * FILE + i) != 0; i++) {
        if (left-- == 0) {
          return pins.cell(DISC, file * FILE + i);
        }
      }
      if (pins.cell(DISC, file * FILE) != 0 && left-- == 0) {
        return END;
      }
    }
    return 0;
  }

  private static void said(Pins pins, int task, int count) {
    boolean more =
        switch (task) {
          case SAYS_LIST -> pins.state(SHIFT) != 0;
          case SAYS_FILE -> count < 2 + fileLength(pins);
          default -> false;
        };
    if (more) {
      pins.hold(COUNT, count);
      pins.hold(SHIFT, says(pins, task, count));
    } else {
      pins.hold(TASK, NOTHING);
    }
  }

  private static int fileLength(Pins pins) {
    int at = (int) pins.state(AT);
    return at >= FILES
        ? 0
        : pins.cell(DISC, at * FILE + NAME) | pins.cell(DISC, at * FILE + NAME + 1) << 8;
  }

  @Override
  public boolean keepsTime() {
    return true;
  }

  @Override
  public long nextChange(Pins pins) {
    int hand = (int) pins.state(HAND);
    return hand == SEEN || hand == LET_GO
        ? pins.cycleAfter(pins.state(SEEN_AT) + ANSWERS_AFTER)
        : NEVER;
  }

  @Override
  public void elapse(Pins pins) {
    int hand = (int) pins.state(HAND);
    if ((hand == SEEN || hand == LET_GO)
        && pins.nanoseconds() >= pins.state(SEEN_AT) + ANSWERS_AFTER) {
      pins.hold(HAND, hand == SEEN ? ANSWERS : RESTS);
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
