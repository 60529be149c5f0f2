package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Draws faults so that every kind comes up at every sort of place. */
final class FaultSpread {
  private FaultSpread() {}

  /** At most so many faults of each kind. */
  static List<Fault> ofKinds(FaultUniverse all, int each, long seed) {
    List<Fault> drawn = new ArrayList<>();
    all.byKind().forEach((kind, faults) -> drawn.addAll(drawn(faults, kind.name(), each, seed)));
    return drawn;
  }

  /**
   * What faults are drawn by.
   *
   * @param place role and technology of the pins it is at, or the type of the part
   */
  record Sort(FaultKinds kind, String place) {
    String text() {
      return kind + ";" + place;
    }
  }

  /** These faults with the sort of each. */
  static Map<Fault, Sort> sorts(Board board, List<Fault> faults) {
    Map<Fault, Sort> sorts = new LinkedHashMap<>();
    faults.forEach(f -> sorts.put(f, new Sort(f.kind(), place(board, f))));
    return sorts;
  }

  /** At most so many faults of each kind, pin role and technology. */
  static List<Fault> ofPlaces(FaultUniverse all, Board board, int each, long seed) {
    Map<Sort, List<Fault>> bySort = new LinkedHashMap<>();
    sorts(board, all.faults())
        .forEach((f, sort) -> bySort.computeIfAbsent(sort, k -> new ArrayList<>()).add(f));
    List<Fault> drawn = new ArrayList<>();
    bySort.forEach((sort, faults) -> drawn.addAll(drawn(faults, sort.text(), each, seed)));
    return drawn;
  }

  // A bridge is told by both its pins, a fault of a whole part by its type.
  private static String place(Board board, Fault fault) {
    StringBuilder sort = new StringBuilder();
    String spot = fault.spot().replace("track ", "");
    for (String word : spot.split("-(?=[A-Z]+\\d+\\.)")) {
      String ref = word.replaceAll("\\..*", "");
      for (PlacedPart part : board.part(ref).stream().toList()) {
        String name = word.substring(Math.min(ref.length() + 1, word.length()));
        sort.append(' ')
            .append(
                part.type()
                    .part()
                    .pinout()
                    .find(new Pad(ref, name).pin())
                    .map(FaultSpread::sortOf)
                    .orElse(part.type().type()));
      }
    }
    return sort.toString();
  }

  private static String sortOf(Pin pin) {
    return pin.role() + "/" + pin.technology();
  }

  private static List<Fault> drawn(List<Fault> faults, String sort, int each, long seed) {
    List<Fault> drawn = new ArrayList<>();
    List<Fault> left = new ArrayList<>(faults);
    for (int i = 0; i < each && !left.isEmpty(); i++) {
      drawn.add(left.remove(Chance.below(left.size(), seed, Chance.of(sort), i)));
    }
    return drawn;
  }
}
