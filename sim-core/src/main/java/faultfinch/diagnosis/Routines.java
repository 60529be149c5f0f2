package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.Firmware;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The label files of a board's ROMs, read backwards. Where a ROM answers follows from its labels:
 * the highest lies in it, and it begins at a multiple of its size. Labels below are of variables.
 */
final class Routines {

  private record Rom(String ref, int from, int to, NavigableMap<Integer, String> labels) {
    boolean holds(int address) {
      return address >= from && address <= to;
    }
  }

  private final List<Rom> roms = new ArrayList<>();

  Routines(Board board) {
    for (Firmware f : board.firmware()) {
      int size = f.image().length;
      f.labels().values().stream()
          .max(Integer::compare)
          .ifPresent(top -> roms.add(rom(f, top / size * size, size)));
    }
  }

  /** Of two labels at one address the first in the file counts. */
  private static Rom rom(Firmware f, int from, int size) {
    NavigableMap<Integer, String> labels = new TreeMap<>();
    for (Map.Entry<String, Integer> label : f.labels().entrySet()) {
      if (label.getValue() >= from) {
        labels.putIfAbsent(label.getValue(), label.getKey());
      }
    }
    return new Rom(f.ref(), from, from + size - 1, labels);
  }

  /** Whether the board tells where its firmware is. */
  boolean known() {
    return !roms.isEmpty();
  }

  private Optional<Rom> rom(int address) {
    return roms.stream().filter(r -> r.holds(address)).findFirst();
  }

  /** Whether an address is in the firmware; of a board without labels nobody can tell. */
  boolean inside(int address) {
    return rom(address).isPresent();
  }

  Routine at(int address) {
    Optional<Rom> rom = rom(address);
    Map.Entry<Integer, String> label = rom.map(r -> r.labels().floorEntry(address)).orElse(null);
    String ref = rom.map(Rom::ref).orElse("");
    return label == null
        ? new Routine(address, "", 0, ref)
        : new Routine(address, label.getValue(), address - label.getKey(), ref);
  }
}
