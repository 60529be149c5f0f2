package faultfinch.bench;

import faultfinch.bench.Reading.Line;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.signal.Electrical;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Levels over time on up to eight pins, 64 cycles from a time on: {@code U1.D0 U9.D0 at 300 ms};
 * without a time, when a healthy board is ready.
 */
final class Scope implements Act {
  private static final int CYCLES = 64;
  private static final int LINES = 8;
  private static final long MILLISECOND = 1_000_000;
  private static final int MID_FROM = Electrical.figure("mid.from");
  private static final int MID_TO = Electrical.figure("mid.to");
  private static final String AT = " at ";

  @Override
  public List<String> places(Patient patient) {
    return pins(patient).stream().map(Pad::text).toList();
  }

  @Override
  public boolean takes(Patient patient, String place) {
    String[] halves = place.split(AT, 2);
    String[] names = halves[0].split(" ");
    List<String> known = places(patient);
    int end = Watching.endMilliseconds(patient.board);
    boolean timed =
        halves.length == 1
            || (halves[1].matches("\\d{1,5} ms")
                && milliseconds(halves[1]) < end
                && milliseconds(halves[1]) > 0);
    return timed && names.length <= LINES && known.containsAll(Arrays.asList(names));
  }

  private static int milliseconds(String written) {
    return Integer.parseInt(written.split(" ", 2)[0]);
  }

  private static List<Pad> pins(Patient patient) {
    return patient.looks.stream()
        .filter(l -> l.kind() == Instruments.METER)
        .map(l -> Looks.pad(l.place()))
        .filter(p -> !patient.isOut(p.ref()))
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    String[] halves = place.split(AT, 2);
    int at =
        halves.length == 1 ? Watching.readyMilliseconds(patient.board) : milliseconds(halves[1]);
    List<Pad> pads = Arrays.stream(halves[0].split(" ")).map(Looks::pad).toList();
    List<Track> tracks = new ArrayList<>();
    Legs legs = Legs.of(patient.setup());
    if (patient.powered) {
      Consumer<Machine> look =
          machine -> {
            pads.forEach(p -> tracks.add(new Track(p, legs)));
            machine.play(
                CYCLES,
                (phase, ns) ->
                    tracks.forEach(t -> t.add(ns + phaseStart(patient, phase.ordinal()), machine)));
          };
      Watching.of(patient.setup(), Map.of(at * MILLISECOND, look));
    } else {
      pads.forEach(p -> tracks.add(new Track(p, legs)));
    }
    List<Line> lines = tracks.stream().map(Track::line).toList();
    String text =
        lines.stream().map(l -> l.name() + " " + says(l)).collect(Collectors.joining("; "));
    return new Reading.Waveform(text, text, lines);
  }

  private static long phaseStart(Patient patient, int phase) {
    return patient.board.phaseNanoseconds().subList(0, phase).stream()
        .mapToInt(Integer::intValue)
        .sum();
  }

  private static String says(Line line) {
    return switch (line.levels()) {
      case "" -> "shows nothing";
      case "L" -> "stays low";
      case "H" -> "stays high";
      case "M" -> "stays in the middle";
      case "Z" -> "hangs in the air";
      default -> "moves";
    };
  }

  /** What one pin did. */
  private static final class Track {
    private final Pad pad;
    private final Legs legs;
    private final List<Long> since = new ArrayList<>();
    private final StringBuilder levels = new StringBuilder();

    Track(Pad pad, Legs legs) {
      this.pad = pad;
      this.legs = legs;
    }

    void add(long nanoseconds, Machine machine) {
      int mv = legs.millivolts(machine, pad);
      char level = legs.floats(machine, pad) ? 'Z' : mv < MID_FROM ? 'L' : mv > MID_TO ? 'H' : 'M';
      if (levels.length() == 0 || levels.charAt(levels.length() - 1) != level) {
        levels.append(level);
        since.add(nanoseconds);
      }
    }

    Line line() {
      return new Line(pad.text(), since, levels.toString());
    }
  }
}
