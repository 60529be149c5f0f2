package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What a board says with its bench ROM plugged in, read off the set, the lamp and the speaker after
 * one round.
 *
 * @param sentences on the set, a station's two rows as one; what cannot be read stands as it shows
 * @param pulses of the lamp, group by group; empty if it did not pulse
 * @param sound from power-on to the end of the round, in an ear's words
 */
public record BenchReport(List<String> sentences, List<Integer> pulses, String sound) {
  private static final Map<Integer, Character> SHAPES = Map.of(Screen.RIBBON, '=', Screen.GAP, '.');

  private static final Pattern FIRST_ROW = Pattern.compile("Station \\d\\d .*");

  /** From here on before the report stands nothing but its pulses moves the lamp. */
  private static final int BEFORE_PULSES_MS = 100;

  /** Pulses of a group are 100 ms apart, the groups more. */
  private static final int GROUP_GAP_MS = 160;

  public BenchReport {
    sentences = List.copyOf(sentences);
    pulses = List.copyOf(pulses);
  }

  /** Runs one round on a board that has its bench ROM plugged in. */
  public static BenchReport of(Setup setup) {
    return of(Watching.of(setup));
  }

  /** The report of a round that was watched. */
  public static BenchReport of(Watching seen) {
    Board board = seen.board();
    List<String> sentences =
        seen.screen()
            .map(s -> s.dark() || !s.synced() ? List.of(s.says()) : joined(s.rows(SHAPES)))
            .orElse(List.of());
    int from = Watching.readyMilliseconds(board) - BEFORE_PULSES_MS;
    List<String> sounds = seen.says(0, Watching.endMilliseconds(board));
    return new BenchReport(
        sentences,
        pulses(seen.lamp(), from / Watching.SAMPLE_MS),
        sounds.isEmpty() ? "silent" : String.join(", ", sounds));
  }

  private static List<String> joined(List<String> rows) {
    List<String> sentences = new ArrayList<>();
    boolean open = false;
    for (String row : rows) {
      if (open) {
        sentences.add(sentences.remove(sentences.size() - 1) + " " + row.replaceAll(" +", " "));
        open = false;
      } else if (!row.isEmpty()) {
        sentences.add(row);
        open = FIRST_ROW.matcher(row).matches();
      }
    }
    return sentences;
  }

  private static List<Integer> pulses(List<Boolean> lamp, int from) {
    List<Integer> groups = new ArrayList<>();
    int last = -GROUP_GAP_MS;
    for (int i = Math.max(1, from); i < lamp.size(); i++) {
      if (lamp.get(i) && !lamp.get(i - 1)) {
        int at = i * Watching.SAMPLE_MS;
        if (groups.isEmpty() || at - last > GROUP_GAP_MS) {
          groups.add(0);
        }
        groups.set(groups.size() - 1, groups.get(groups.size() - 1) + 1);
        last = at;
      }
    }
    return groups;
  }

  /** The pulses in words. */
  public String lamp() {
    if (pulses.isEmpty()) {
      return "no pulse";
    }
    return "pulses " + String.join(", then ", pulses.stream().map(String::valueOf).toList());
  }
}
