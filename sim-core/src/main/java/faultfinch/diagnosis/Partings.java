package faultfinch.diagnosis;

import faultfinch.bench.Price;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The ways in which looks part some rows of a dictionary, each once and with the cheapest look. Of
 * each way only the rows are kept that do not show what most do: looks are thousands, rows too, and
 * nineteen in twenty show in a look what most show.
 */
final class Partings {

  /**
   * A way to part rows. Outcomes are numbered as the rows come, from 0.
   *
   * @param usual what most rows show; of outcomes that as many show the first
   * @param rows that show another, in the order of the dictionary
   * @param codes what each of them shows
   */
  record Way(int usual, int[] rows, char[] codes, int outcomes) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Way way
          && usual == way.usual
          && Arrays.equals(rows, way.rows)
          && Arrays.equals(codes, way.codes);
    }

    @Override
    public int hashCode() {
      return 31 * Arrays.hashCode(rows) + Arrays.hashCode(codes);
    }
  }

  /** A way with its look. */
  record Parting(String look, Price cost, Way way) {}

  private static final int NONE = Integer.MAX_VALUE;

  private final FaultDictionary dictionary;
  private final int[] localOf;
  private final int count;
  private final int[] rising;
  private final int[] localOfKept;
  private final char[] cellOfKept;
  private final int[] noted;
  private final int[] cellOf;

  /** By cell, of the column at hand. */
  private int[] shown = new int[0];

  private int[] first = new int[0];
  private int[] codeOf = new int[0];

  /**
   * @param localOf number of each row of the dictionary among those that count, or below 0
   * @param count how many do
   */
  private Partings(FaultDictionary dictionary, int[] localOf, int count) {
    this.dictionary = dictionary;
    this.localOf = localOf;
    this.count = count;
    rising = new int[count];
    int next = 0;
    for (int local : localOf) {
      if (local >= 0) {
        rising[next++] = local;
      }
    }
    localOfKept = new int[count];
    cellOfKept = new char[count];
    noted = new int[count];
    cellOf = new int[count];
  }

  /**
   * All ways, in the order of the looks; ties in price go by it too.
   *
   * @param localOf number of each row of the dictionary among those that count, or below 0
   * @param count how many do
   * @param done looks that are not to be made again
   */
  static List<Parting> of(
      FaultDictionary dictionary, PriceList prices, int[] localOf, int count, Set<String> done) {
    List<String> looks = dictionary.looks();
    Price[] costs = new Price[dictionary.partitions()];
    String[] cheapest = new String[dictionary.partitions()];
    List<Integer> partitions = new ArrayList<>();
    for (int look = 0; look < looks.size(); look++) {
      if (!done.contains(looks.get(look))) {
        int partition = dictionary.partition(look);
        Price cost = prices.look(looks.get(look));
        if (cheapest[partition] == null) {
          partitions.add(partition);
        }
        if (cheapest[partition] == null || cost.total() < costs[partition].total()) {
          cheapest[partition] = looks.get(look);
          costs[partition] = cost;
        }
      }
    }
    Partings partings = new Partings(dictionary, localOf, count);
    Map<Way, Parting> ways = new LinkedHashMap<>();
    for (int partition : partitions) {
      Way way = partings.way(partition);
      if (way.outcomes > 1) {
        Parting known = ways.get(way);
        if (known == null || costs[partition].total() < known.cost.total()) {
          ways.put(way, new Parting(cheapest[partition], costs[partition], way));
        }
      }
    }
    return List.copyOf(ways.values());
  }

  private Way way(int partition) {
    Cells cells = dictionary.cells();
    int kept = 0;
    int most = FaultDictionary.HEALTHY;
    for (int i = cells.from(partition); i < cells.to(partition); i++) {
      int local = localOf[cells.row(i)];
      if (local >= 0) {
        localOfKept[kept] = local;
        cellOfKept[kept++] = (char) cells.cell(i);
        most = Math.max(most, cells.cell(i));
      }
    }
    room(most + 1);
    for (int i = 0; i < kept; i++) {
      int cell = cellOfKept[i];
      shown[cell]++;
      first[cell] = Math.min(first[cell], localOfKept[i]);
      noted[localOfKept[i]] = partition + 1;
    }
    shown[FaultDictionary.HEALTHY] = count - kept;
    if (kept < count) {
      int healthy = 0;
      while (noted[healthy] == partition + 1) {
        healthy++;
      }
      first[FaultDictionary.HEALTHY] = healthy;
    }
    int outcomes = number(most + 1);
    int usual = FaultDictionary.HEALTHY;
    for (int cell = 1; cell <= most; cell++) {
      boolean earlier = shown[cell] == shown[usual] && first[cell] < first[usual];
      usual = shown[cell] > shown[usual] || earlier ? cell : usual;
    }
    return usual == FaultDictionary.HEALTHY
        ? new Way(
            codeOf[usual], Arrays.copyOf(localOfKept, kept), codes(cellOfKept, kept), outcomes)
        : otherwise(usual, kept, outcomes);
  }

  private void room(int cells) {
    if (shown.length < cells) {
      shown = new int[2 * cells];
      first = new int[2 * cells];
      codeOf = new int[2 * cells];
    }
    Arrays.fill(shown, 0, cells, 0);
    Arrays.fill(first, 0, cells, NONE);
  }

  /** Numbers the cells that are shown by where they are shown first; how many there are. */
  private int number(int cells) {
    int[] order = new int[cells];
    int outcomes = 0;
    for (int cell = 0; cell < cells; cell++) {
      if (shown[cell] > 0) {
        int at = outcomes++;
        while (at > 0 && first[order[at - 1]] > first[cell]) {
          order[at] = order[at - 1];
          at--;
        }
        order[at] = cell;
      }
    }
    for (int code = 0; code < outcomes; code++) {
      codeOf[order[code]] = code;
    }
    return outcomes;
  }

  private char[] codes(char[] ofCells, int size) {
    char[] codes = new char[size];
    for (int i = 0; i < size; i++) {
      codes[i] = (char) codeOf[ofCells[i]];
    }
    return codes;
  }

  /** Where most do not show what the healthy board does: all that do not show this cell. */
  private Way otherwise(int usual, int kept, int outcomes) {
    Arrays.fill(cellOf, FaultDictionary.HEALTHY);
    for (int i = 0; i < kept; i++) {
      cellOf[localOfKept[i]] = cellOfKept[i];
    }
    int[] rows = new int[count - shown[usual]];
    char[] others = new char[rows.length];
    int next = 0;
    for (int local : rising) {
      if (cellOf[local] != usual) {
        rows[next] = local;
        others[next++] = (char) cellOf[local];
      }
    }
    return new Way(codeOf[usual], rows, codes(others, next), outcomes);
  }
}
