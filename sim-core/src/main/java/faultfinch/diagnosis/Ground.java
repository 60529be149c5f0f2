package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.Supplier;

/**
 * What a planner plays on: candidates without difference are one atom, looks without difference one
 * column, the cheapest. Made once; fields are sets of its atoms.
 */
final class Ground {

  /**
   * Candidates that no look and no repair parts.
   *
   * @param signature number of the class of equal rows
   * @param own the cheapest action that surely cures it
   * @param cures all actions that do, rising
   */
  record Atom(int signature, double weight, int own, int[] cures, int row) {}

  /** What candidates have in common that are one atom. */
  private record Kin(int signature, List<Integer> cures) {}

  /**
   * A look that parts some of the candidates. What each shows is laid out when it is asked for: of
   * thousands of looks few are judged.
   */
  static final class Column {
    private final String look;
    private final Price cost;
    private final double price;
    private final int outcomes;
    private final Supplier<short[]> layingOut;
    private volatile short[] codes = {};

    private Column(String look, Price cost, int outcomes, Supplier<short[]> layingOut) {
      this.look = look;
      this.cost = cost;
      this.price = Math.max(cost.total(), LEAST_PRICE);
      this.outcomes = outcomes;
      this.layingOut = layingOut;
    }

    String look() {
      return look;
    }

    Price cost() {
      return cost;
    }

    /** In minutes, above 0. */
    double price() {
      return price;
    }

    int outcomes() {
      return outcomes;
    }

    /** Outcome by atom, 0 to {@link #outcomes} - 1. */
    short[] codes() {
      short[] all = codes;
      if (all.length == 0) {
        all = layingOut.get();
        codes = all;
      }
      return all;
    }
  }

  /** Price of what costs nothing, so that there is always something to divide by. */
  private static final double LEAST_PRICE = 0.01;

  private final FaultDictionary dictionary;
  private final List<RepairAction> actions;
  private final Price[] costs;
  private final double[] actionPrices;
  private final Atom[] atoms;
  private final Column[] columns;
  private final int[] rowOfAtom;
  private final Optional<RowCodes> screen;

  /**
   * @param weights by hypothesis; those of weight 0 are left out
   * @param done looks that are not to be made again
   */
  Ground(
      FaultDictionary dictionary,
      Suspects suspects,
      PriceList prices,
      double[] weights,
      Set<String> done) {
    this.dictionary = dictionary;
    actions = suspects.actions();
    costs = actions.stream().map(prices::repair).toArray(Price[]::new);
    actionPrices =
        Arrays.stream(costs).mapToDouble(c -> Math.max(c.total(), LEAST_PRICE)).toArray();
    int[] localOfRow = new int[dictionary.rows()];
    int[] rows = rows(suspects, weights, localOfRow);
    List<Partings.Parting> partings =
        Partings.of(dictionary, prices, localOfRow, rows.length, done);
    RowCodes codes = new RowCodes(partings, rows.length);
    int[] signatureOfRow = codes.signatures();
    Map<Kin, Integer> numbers = new HashMap<>();
    List<Atom> merged = new ArrayList<>();
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        int local = localOfRow[row(suspects, i)];
        List<Integer> cures = suspects.hypotheses().get(i).cures();
        Kin kin = new Kin(signatureOfRow[local], cures);
        Integer known = numbers.putIfAbsent(kin, merged.size());
        if (known == null) {
          merged.add(atom(signatureOfRow[local], weights[i], cures, rows[local]));
        } else {
          merged.set(known, plus(merged.get(known), weights[i]));
        }
      }
    }
    // Those of one action side by side: the gain is summed action by action.
    merged.sort(Comparator.comparingInt(Atom::own).thenComparingInt(Atom::signature));
    atoms = merged.toArray(Atom[]::new);
    rowOfAtom = new int[atoms.length];
    for (int i = 0; i < atoms.length; i++) {
      rowOfAtom[i] = localOfRow[atoms[i].row];
    }
    columns = new Column[partings.size()];
    for (int i = 0; i < columns.length; i++) {
      columns[i] = column(partings.get(i), rows.length);
    }
    screen = Optional.of(codes);
  }

  private Column column(Partings.Parting parting, int rows) {
    Partings.Way way = parting.way();
    return new Column(
        parting.look(), parting.cost(), way.outcomes(), () -> laidOut(way, rows, rowOfAtom));
  }

  private static short[] laidOut(Partings.Way way, int rows, int[] rowOfAtom) {
    short[] byRow = new short[rows];
    Arrays.fill(byRow, (short) way.usual());
    for (int i = 0; i < way.rows().length; i++) {
      byRow[way.rows()[i]] = (short) way.codes()[i];
    }
    short[] byAtom = new short[rowOfAtom.length];
    for (int i = 0; i < byAtom.length; i++) {
      byAtom[i] = byRow[rowOfAtom[i]];
    }
    return byAtom;
  }

  /**
   * Of these atoms of another ground only: looks that no longer part them are gone, and of looks
   * that now part them alike the cheapest is left.
   */
  private Ground(Ground whole, int[] members) {
    dictionary = whole.dictionary;
    actions = whole.actions;
    costs = whole.costs;
    actionPrices = whole.actionPrices;
    atoms = new Atom[members.length];
    for (int i = 0; i < members.length; i++) {
      atoms[i] = whole.atoms[members[i]];
    }
    Map<String, Column> distinct = new LinkedHashMap<>();
    for (Column column : whole.columns) {
      Column narrow = narrow(column, members);
      if (narrow.outcomes > 1) {
        String key = key(narrow.codes());
        Column known = distinct.get(key);
        if (known == null || narrow.cost.total() < known.cost.total()) {
          distinct.put(key, narrow);
        }
      }
    }
    columns = distinct.values().toArray(Column[]::new);
    rowOfAtom = new int[0];
    screen = Optional.empty();
  }

  private static Column narrow(Column column, int[] members) {
    int[] codeOf = new int[column.outcomes];
    short[] whole = column.codes();
    short[] codes = new short[members.length];
    int next = 0;
    for (int i = 0; i < members.length; i++) {
      int code = whole[members[i]];
      if (codeOf[code] == 0) {
        codeOf[code] = ++next;
      }
      codes[i] = (short) (codeOf[code] - 1);
    }
    return new Column(column.look, column.cost, next, () -> codes);
  }

  private static String key(short[] codes) {
    char[] key = new char[codes.length];
    for (int i = 0; i < key.length; i++) {
      key[i] = (char) codes[i];
    }
    return new String(key);
  }

  /** The same with these atoms only, and with the looks that part them. */
  Ground narrowed(int[] members) {
    return new Ground(this, members);
  }

  /**
   * Rows of the hypotheses that count, each once as it comes.
   *
   * @param localOfRow filled with the place of each among them
   */
  private int[] rows(Suspects suspects, double[] weights, int[] localOfRow) {
    Arrays.fill(localOfRow, -1);
    int count = 0;
    int[] rows = new int[localOfRow.length];
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        int row = row(suspects, i);
        if (localOfRow[row] < 0) {
          localOfRow[row] = count;
          rows[count++] = row;
        }
      }
    }
    return Arrays.copyOf(rows, count);
  }

  private int row(Suspects suspects, int hypothesis) {
    int suspect = suspects.hypotheses().get(hypothesis).suspect();
    return dictionary.row(suspects.all().get(suspect).fault());
  }

  private Atom atom(int signature, double weight, List<Integer> cures, int row) {
    int own = cures.get(0);
    for (int action : cures) {
      own = actionPrices[action] < actionPrices[own] ? action : own;
    }
    int[] all = cures.stream().mapToInt(Integer::intValue).toArray();
    return new Atom(signature, weight, own, all, row);
  }

  private static Atom plus(Atom a, double weight) {
    return new Atom(a.signature, a.weight + weight, a.own, a.cures, a.row);
  }

  Atom[] atoms() {
    return atoms;
  }

  Column[] columns() {
    return columns;
  }

  /** A screen for its looks; a ground that was narrowed has few of them and none. */
  Optional<Screen> screen() {
    return screen.map(codes -> new Screen(this, codes));
  }

  /** The row of an atom among those of {@link RowCodes}. */
  int row(int atom) {
    return rowOfAtom[atom];
  }

  /** In minutes, above 0. */
  double price(int action) {
    return actionPrices[action];
  }

  Price cost(int action) {
    return costs[action];
  }

  List<RepairAction> actions() {
    return actions;
  }

  /** What atoms show in a look, as the dictionary words it. */
  IntFunction<String> shown(String look) {
    int number = dictionary.look(look).getAsInt();
    List<String> outcomes = dictionary.outcomes(number);
    return atom -> outcomes.get(dictionary.cell(number, atoms[atom].row));
  }

  /** Which atoms show this in a look: asked of each outcome once, for atoms are many. */
  IntPredicate showing(String look, String outcome) {
    int number = dictionary.look(look).getAsInt();
    String named = dictionary.named(number, outcome);
    List<String> outcomes = dictionary.outcomes(number);
    boolean[] shows = new boolean[outcomes.size()];
    for (int cell = 0; cell < shows.length; cell++) {
      shows[cell] = outcomes.get(cell).equals(named);
    }
    return atom -> shows[dictionary.cell(number, atoms[atom].row)];
  }
}
