package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.Firmware;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Frames;
import faultfinch.machine.Lead;
import faultfinch.machine.Machine;
import faultfinch.part.Monitor;
import faultfinch.part.PartCatalog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * What the set at the end of a picture lead shows: a frame of dots, if its syncs can be followed.
 * Letters are found by the board's character ROM, wherever on the glass they stand.
 */
public final class Screen {
  /** What it says where nothing is to be seen for want of sync. */
  public static final String NO_PICTURE = "no picture";

  /** What it says of a picture in which no dot is lit. */
  public static final String DARK = "dark";

  /** What it says of a picture that finds no frame sync, after what can be read of it. */
  public static final String ROLLS = "rolls";

  /** What a set says on which nothing is to be seen. */
  public static final List<String> NOTHING = List.of(NO_PICTURE, DARK);

  /** Dots across and down that the set keeps. */
  public static final int WIDTH = 2 * Monitor.WIDTH;

  public static final int HEIGHT = Monitor.HEIGHT;

  /** How long a look takes at most, two of the longest frames, in milliseconds. */
  static final int LOOK_MS = 46;

  /** The longest frame that a set follows and some lines, in microseconds. */
  private static final int FRAME_US = 22_000;

  /** Steps in which the start of a frame is waited for: its sync lasts some lines. */
  private static final int STEP_US = 100;

  /** Played at a time, about a line. */
  private static final int CYCLES_A_LOOK = 88;

  static final String SYNC = "VS/";
  private static final int LOW_MV = 800;

  /** A set follows lines of 64 microseconds and 50 frames a second, give or take so many parts. */
  private static final double LINE_NS = 64_000;

  private static final double FRAME_NS = 20_000_000;
  private static final double FOLLOWS = 0.08;

  /**
   * Dots of a cell, and bytes of its glyph in the character ROM, of which the last are not used.
   */
  private static final int WIDE = 8;

  private static final int HIGH = 12;
  private static final int GLYPH = 16;
  private static final long BASE = 257;

  /** A line of a ribbon of data lines, by its code in the character ROM. */
  static final int RIBBON = 2;

  /** A gap in such a ribbon. */
  static final int GAP = 3;

  /** A ribbon of eight lines and no more, while its glyphs are still told apart by their codes. */
  private static final Pattern LINES =
      Pattern.compile("(?<![#\\x02\\x03])[\\x02\\x03]{8}(?![#\\x02\\x03])");

  private static final int LETTERS_FROM = 33;
  private static final int LETTERS_TO = 126;
  private static final List<String> INKS =
      List.of("black", "red", "green", "yellow", "blue", "magenta", "cyan", "white");

  private final boolean synced;
  private final boolean rolls;
  private final byte[] dots;
  private final Map<Long, Integer> glyphs;
  private final Bars bars;

  /** What {@link #says} made of it, for it is asked once for every fault of a group. */
  private Optional<String> said = Optional.empty();

  private Screen(boolean synced, boolean rolls, byte[] dots, Map<Long, Integer> glyphs, Bars bars) {
    this.synced = synced;
    this.rolls = rolls;
    this.dots = dots;
    this.glyphs = glyphs;
    this.bars = bars;
  }

  /** The reference of the board's set, if it has one. */
  public static Optional<String> of(Board board) {
    return board.firstOf(PartCatalog.MONITOR).map(PlacedPart::ref);
  }

  /**
   * Waits for the sync of a frame to begin and looks, cycle by cycle, until it has ended twice: at
   * a whole frame. Where none comes it looks as long all the same.
   */
  public static Screen look(Machine machine) {
    return look(machine, Frames.NONE);
  }

  /** The same, lines shared with other boards not played. */
  public static Screen look(Machine machine, Frames shared) {
    String ref = of(machine.board()).orElseThrow();
    int frames = 0;
    if (machine.processorHertz() > 0) {
      Pad sync = new Pad(ref, SYNC);
      for (int us = 0; us < FRAME_US && !low(machine, sync); us += STEP_US) {
        machine.runTo(machine.nanoseconds() + STEP_US * 1000L);
      }
      long ended = frame(machine, ref);
      long left = (long) (FRAME_US * machine.processorHertz() / 1e6);
      Lead lead = shared.lead(machine);
      for (; frames < 2 && left > 0; left -= CYCLES_A_LOOK) {
        lead.pass(CYCLES_A_LOOK, left <= CYCLES_A_LOOK);
        if (frame(machine, ref) != ended) {
          ended = frame(machine, ref);
          frames++;
        }
      }
      lead.end();
    }
    boolean rolls = frames == 0 && followsLines(machine, ref);
    if (rolls) {
      machine.flyBack(ref);
      machine.play(HEIGHT * CYCLES_A_LOOK, (phase, ns) -> {});
    }
    byte[] dots = new byte[WIDTH * HEIGHT];
    for (int i = 0; i < Monitor.CELLS.count(); i++) {
      int two = machine.cell(ref, Monitor.CELLS, i);
      dots[2 * i] = (byte) (two & 7);
      dots[2 * i + 1] = (byte) (two >>> 3);
    }
    boolean synced = frames == 2 && follows(machine, ref);
    return new Screen(
        synced || rolls,
        rolls,
        rolls ? Rolled.straight(dots, WIDTH, (int) (FRAME_NS / line(machine, ref))) : dots,
        glyphs(machine.board()),
        Bars.of(machine, ref));
  }

  /** Whether lines come as a set follows them, and the last one has but begun. */
  private static boolean followsLines(Machine machine, String ref) {
    if (machine.processorHertz() == 0 || !machine.works(ref)) {
      return false;
    }
    double age = 2.0 * machine.cycles() - machine.word(ref, Monitor.LINE_FROM).orElse(0L);
    double line = line(machine, ref);
    return near(line, LINE_NS) && half(machine) * age < 2 * line;
  }

  private static double half(Machine machine) {
    return 1e9 / machine.processorHertz() / 2;
  }

  private static double line(Machine machine, String ref) {
    return half(machine) * machine.word(ref, Monitor.LINE_LENGTH).orElse(0L);
  }

  private static boolean low(Machine machine, Pad pin) {
    machine.rest();
    return machine.millivolts(pin, false) < LOW_MV && !machine.floating(pin, false);
  }

  private static long frame(Machine machine, String ref) {
    return machine.word(ref, Monitor.FRAME_FROM).orElse(0L);
  }

  private static boolean follows(Machine machine, String ref) {
    if (machine.processorHertz() == 0 || !machine.works(ref)) {
      return false;
    }
    double half = half(machine);
    double line = line(machine, ref);
    double frame = line * machine.word(ref, Monitor.FRAME_LINES).orElse(0L);
    double age = 2.0 * machine.cycles() - machine.word(ref, Monitor.FRAME_FROM).orElse(0L);
    return near(line, LINE_NS) && near(frame, FRAME_NS) && half * age < 2 * FRAME_NS;
  }

  private static boolean near(double is, double right) {
    return Math.abs(is - right) <= FOLLOWS * right;
  }

  /** Codes by the dots of their glyphs; of two that look alike a letter counts, then the first. */
  private static Map<Long, Integer> glyphs(Board board) {
    Map<Long, Integer> glyphs = new HashMap<>();
    Optional<byte[]> rom = characterRom(board);
    if (rom.isPresent()) {
      for (int code = LETTERS_FROM; code <= LETTERS_TO; code++) {
        glyphs.putIfAbsent(glyph(rom.get(), code), code);
      }
      for (int code = 0; code < LETTERS_FROM; code++) {
        glyphs.putIfAbsent(glyph(rom.get(), code), code);
      }
    }
    return glyphs;
  }

  private static long glyph(byte[] rom, int code) {
    long hash = 0;
    for (int line = 0; line < HIGH; line++) {
      hash = add(hash, rom[GLYPH * code + line] & 0xFF);
    }
    return hash;
  }

  /** The ROM whose data pins the dot shifter reads. */
  private static Optional<byte[]> characterRom(Board board) {
    return board
        .firstOf(PartCatalog.DOT_SHIFTER)
        .map(s -> board.netOfPad().get(new Pad(s.ref(), "D0")))
        .flatMap(
            net ->
                board.firmware().stream()
                    .filter(f -> net.pads().stream().anyMatch(p -> p.ref().equals(f.ref())))
                    .map(Firmware::image)
                    .findFirst());
  }

  private static long add(long hash, int line) {
    return hash * BASE + line + 1;
  }

  /** Whether the set finds its line sync at least; without, nothing stands on the glass. */
  public boolean synced() {
    return synced;
  }

  /** Whether it finds no frame sync: the picture runs over the glass, and is held still here. */
  public boolean rolls() {
    return rolls;
  }

  /** The colour of a dot: bit 0 red, 1 green, 2 blue. */
  public int dot(int x, int y) {
    return dots[y * WIDTH + x];
  }

  /** How bright a line is, in per cent: less where the rail of the colours dips. */
  public int brightness(int y) {
    return bars.percent(y);
  }

  /** Dots by which a line stands further right than it should: its sync was found late. */
  public int later(int y) {
    return bars.later(y);
  }

  /** Whether no dot is lit. */
  public boolean dark() {
    for (byte dot : dots) {
      if (dot != 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * What can be read, row by row from the first row with something on it to the last; a cell that
   * stands out from the {@link #ground} and is no letter is a hash, but for the gaps in a ribbon of
   * the eight data lines, which are points. Rows and columns are taken where most letters are
   * found.
   */
  public List<String> rows() {
    return rows(Map.of(RIBBON, (char) RIBBON, GAP, (char) GAP)).stream()
        .map(row -> LINES.matcher(row).replaceAll(m -> m.group().replace((char) GAP, '.')))
        .map(row -> row.replace((char) RIBBON, '#').replace((char) GAP, '#'))
        .toList();
  }

  /** The same with glyphs that are no letters, by their code, as a character of one's own. */
  public List<String> rows(Map<Integer, Character> shapes) {
    int ground = ground();
    char[][] cells = cells(shapes, ground);
    if (ground != 0 && Arrays.stream(cells).noneMatch(Screen::hasLetter)) {
      cells = cells(shapes, 0);
    }
    int[] found = new int[WIDE * HIGH];
    for (int y = 0; y < cells.length; y++) {
      for (int x = 0; x < cells[y].length; x++) {
        found[y % HIGH * WIDE + x % WIDE] += cells[y][x] > ' ' && cells[y][x] != '#' ? 1 : 0;
      }
    }
    int best = 0;
    for (int i = 1; i < found.length; i++) {
      best = found[i] > found[best] ? i : best;
    }
    return rows(cells, best % WIDE, best / WIDE);
  }

  private static List<String> rows(char[][] cells, int left, int top) {
    List<String> rows = new ArrayList<>();
    for (int y = top; y < cells.length; y += HIGH) {
      StringBuilder row = new StringBuilder();
      for (int x = left; x < cells[y].length; x += WIDE) {
        row.append(cells[y][x]);
      }
      rows.add(row.toString().strip());
    }
    while (!rows.isEmpty() && rows.get(0).isEmpty()) {
      rows.remove(0);
    }
    while (!rows.isEmpty() && rows.get(rows.size() - 1).isEmpty()) {
      rows.remove(rows.size() - 1);
    }
    return rows;
  }

  /** What stands in the cell that begins at each dot, by line and place in it. */
  private char[][] cells(Map<Integer, Character> shapes, int ground) {
    long first = 1;
    for (int line = 1; line < HIGH; line++) {
      first *= BASE;
    }
    char[][] cells = new char[HEIGHT - HIGH + 1][WIDTH - WIDE + 1];
    int[] lines = new int[HEIGHT];
    for (int x = 0; x + WIDE <= WIDTH; x++) {
      int blank = 0;
      long hash = 0;
      for (int y = 0; y < HEIGHT; y++) {
        lines[y] = line(x, y, ground);
        if (y >= HIGH) {
          hash -= (lines[y - HIGH] + 1) * first;
        }
        hash = add(hash, lines[y]);
        blank = lines[y] == 0 ? blank + 1 : 0;
        if (y + 1 >= HIGH) {
          cells[y + 1 - HIGH][x] = blank >= HIGH ? ' ' : shape(hash, shapes);
        }
      }
    }
    return cells;
  }

  private static boolean hasLetter(char[] row) {
    return IntStream.range(0, row.length).anyMatch(x -> row[x] > ' ' && row[x] != '#');
  }

  private int line(int left, int y, int ground) {
    int line = 0;
    for (int x = left; x < left + WIDE; x++) {
      line = line << 1 | (dot(x, y) != ground ? 1 : 0);
    }
    return line;
  }

  /**
   * What the eye takes for the ground that text stands on: the colour of seven eighths of the
   * glass, such as green where that colour is always on. Black where there is none, or nothing
   * stands out; and where no letter is found on it, lit cells are blocks.
   */
  private int ground() {
    int[] count = new int[INKS.size()];
    for (byte dot : dots) {
      count[dot]++;
    }
    for (int ink = 0; ink < count.length; ink++) {
      if (8 * count[ink] > 7 * dots.length && count[ink] < dots.length) {
        return ink;
      }
    }
    return 0;
  }

  private char shape(long hash, Map<Integer, Character> shapes) {
    int code = glyphs.getOrDefault(hash, 0);
    return code >= LETTERS_FROM ? (char) code : shapes.getOrDefault(code, '#');
  }

  /** Names of the colours on the glass, black left out. */
  public Set<String> inks() {
    boolean[] seen = new boolean[INKS.size()];
    for (byte dot : dots) {
      seen[dot] = true;
    }
    Set<String> inks = new LinkedHashSet<>();
    for (int ink = 1; ink < seen.length; ink++) {
      if (seen[ink]) {
        inks.add(INKS.get(ink));
      }
    }
    return inks;
  }

  /** In words: what an owner would say. */
  public String says() {
    if (said.isEmpty()) {
      said = Optional.of(words());
    }
    return said.get();
  }

  private String words() {
    if (!synced) {
      return NO_PICTURE;
    }
    if (dark()) {
      return DARK;
    }
    String text = String.join(" | ", rows().stream().filter(r -> !r.isEmpty()).toList());
    String says = "'" + text + "' in " + String.join(", ", inks());
    String barred = bars.says().isEmpty() ? says : says + ", " + bars.says();
    return rolls ? barred + ", " + ROLLS : barred;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Screen s
        && s.synced == synced
        && s.rolls == rolls
        && Arrays.equals(s.dots, dots)
        && s.bars.says().equals(bars.says());
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(dots);
  }
}
