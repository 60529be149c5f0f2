package faultfinch.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a board told of its joysticks while they were pushed, taken apart again.
 *
 * @param title what stands above it all
 * @param told line by line; none if it was not asked, or the command was not understood
 */
record PushedSticks(String title, List<Line> told) {
  private static final Pattern LINE =
      Pattern.compile("Stick (\\d) ([^ ]) ([^ ]) ([^ ]) ([^ ]) ([^ ])  level (\\S\\S)");
  private static final int WAYS = 5;
  private static final String NONE = "-";

  PushedSticks {
    told = List.copyOf(told);
  }

  /**
   * One stick at one push.
   *
   * @param ways up, down, left, right, fire, as letters
   * @param level two digits
   */
  record Line(String stick, Set<String> ways, String level) {
    Line {
      ways = Set.copyOf(ways);
    }
  }

  static PushedSticks of(String outcome) {
    List<Line> told = new ArrayList<>();
    List<String> rows = PictureText.of(outcome).rows();
    for (String row : rows) {
      Matcher m = LINE.matcher(row);
      if (m.matches()) {
        Set<String> ways = new LinkedHashSet<>();
        for (int i = 0; i < WAYS; i++) {
          ways.add(m.group(2 + i));
        }
        ways.remove(NONE);
        told.add(new Line(m.group(1), ways, m.group(2 + WAYS)));
      }
    }
    return new PushedSticks(rows.isEmpty() ? "" : rows.get(0), told);
  }

  /** The lines of one stick, push by push. */
  List<Line> of(Set<String> sticks) {
    return told.stream().filter(l -> sticks.contains(l.stick)).toList();
  }

  /** Whether as much was told, of the same sticks, as of others. */
  boolean isAsLongAs(PushedSticks other) {
    return told.stream()
        .map(Line::stick)
        .toList()
        .equals(other.told.stream().map(Line::stick).toList());
  }

  /** Whether of two times that it was asked one was not understood. */
  boolean isHalfOf(PushedSticks other) {
    return title.equals(other.title) && 2 * told.size() == other.told.size();
  }

  /** Ways of a stick that are told of another board at some push, and not of this. */
  Set<String> lacks(String stick, PushedSticks other) {
    Set<String> lacks = new LinkedHashSet<>();
    for (int i = 0; i < told.size(); i++) {
      if (told.get(i).stick.equals(stick)) {
        Set<String> missing = new LinkedHashSet<>(other.told.get(i).ways);
        missing.removeAll(told.get(i).ways);
        lacks.addAll(missing);
      }
    }
    return lacks;
  }
}
