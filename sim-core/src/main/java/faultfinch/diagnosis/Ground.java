package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

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

  /**
   * A look that parts some of the candidates.
   *
   * @param price in minutes, above 0
   * @param codes outcome by atom, 0 to {@code outcomes} - 1
   */
  record Column(String look, Price cost, double price, short[] codes, int outcomes) {}

  /** Price of what costs nothing, so that there is always something to divide by. */
  private static final double LEAST_PRICE = 0.01;

  private final FaultDictionary dictionary;
  private final List<RepairAction> actions;
  private final Price[] costs;
  private final double[] actionPrices;
  private final Atom[] atoms;
  private final Column[] columns;

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
    actionPrices = Arrays.stream(costs).mapToDouble(Ground::price).toArray();
    int[] localOfRow = new int[dictionary.rows()];
    int[] rows = rows(suspects, weights, localOfRow);
    List<Draft> drafts = drafts(prices, rows, done);
    int[] signatureOfRow = signatures(drafts, rows.length);
    Map<List<Integer>, Atom> merged = new LinkedHashMap<>();
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        int local = localOfRow[row(suspects, i)];
        List<Integer> cures = suspects.hypotheses().get(i).cures();
        List<Integer> key = new ArrayList<>(cures);
        key.add(signatureOfRow[local]);
        Atom more = atom(signatureOfRow[local], weights[i], cures, rows[local]);
        merged.merge(key, more, (a, b) -> plus(a, b.weight()));
      }
    }
    // Those of one action side by side: the gain is summed action by action.
    atoms =
        merged.values().stream()
            .sorted(Comparator.comparingInt(Atom::own).thenComparingInt(Atom::signature))
            .toArray(Atom[]::new);
    int[] localOfAtom = new int[atoms.length];
    for (int i = 0; i < atoms.length; i++) {
      localOfAtom[i] = localOfRow[atoms[i].row];
    }
    columns = new Column[drafts.size()];
    for (int i = 0; i < columns.length; i++) {
      columns[i] = column(drafts.get(i), localOfAtom);
    }
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
        String key = key(narrow.codes);
        Column known = distinct.get(key);
        if (known == null || narrow.cost.total() < known.cost.total()) {
          distinct.put(key, narrow);
        }
      }
    }
    columns = distinct.values().toArray(Column[]::new);
  }

  private static Column narrow(Column column, int[] members) {
    int[] codeOf = new int[column.outcomes];
    short[] codes = new short[members.length];
    int next = 0;
    for (int i = 0; i < members.length; i++) {
      int code = column.codes[members[i]];
      if (codeOf[code] == 0) {
        codeOf[code] = ++next;
      }
      codes[i] = (short) (codeOf[code] - 1);
    }
    return new Column(column.look, column.cost, column.price, codes, next);
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

  /** A column while rows are not yet atoms. */
  private record Draft(String look, Price cost, char[] codes, int outcomes) {}

  /** One look for each way to part the rows, the cheapest; ties by order of looks. */
  private List<Draft> drafts(PriceList prices, int[] rows, Set<String> done) {
    Map<Integer, Draft> byPartition = new LinkedHashMap<>();
    List<String> looks = dictionary.looks();
    for (int look = 0; look < looks.size(); look++) {
      if (!done.contains(looks.get(look))) {
        Price cost = prices.look(looks.get(look));
        Draft known = byPartition.get(dictionary.partition(look));
        if (known == null) {
          Draft draft = draft(look, looks.get(look), cost, rows);
          byPartition.put(dictionary.partition(look), draft);
        } else if (cost.total() < known.cost.total()) {
          Draft draft = new Draft(looks.get(look), cost, known.codes, known.outcomes);
          byPartition.put(dictionary.partition(look), draft);
        }
      }
    }
    Map<String, Draft> drafts = new LinkedHashMap<>();
    for (Draft draft : byPartition.values()) {
      if (draft.outcomes > 1) {
        drafts.merge(
            new String(draft.codes), draft, (a, b) -> b.cost.total() < a.cost.total() ? b : a);
      }
    }
    return List.copyOf(drafts.values());
  }

  private Draft draft(int look, String text, Price cost, int[] rows) {
    int[] codeOfCell = new int[dictionary.outcomes(look).size()];
    Arrays.fill(codeOfCell, -1);
    char[] codes = new char[rows.length];
    int next = 0;
    for (int i = 0; i < rows.length; i++) {
      int cell = dictionary.cell(look, rows[i]);
      if (codeOfCell[cell] < 0) {
        codeOfCell[cell] = next++;
      }
      codes[i] = (char) codeOfCell[cell];
    }
    return new Draft(text, cost, codes, next);
  }

  private static int[] signatures(List<Draft> drafts, int rows) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    int[] signatures = new int[rows];
    char[] signature = new char[drafts.size()];
    for (int row = 0; row < rows; row++) {
      for (int i = 0; i < signature.length; i++) {
        signature[i] = drafts.get(i).codes[row];
      }
      signatures[row] = numbers.computeIfAbsent(new String(signature), k -> numbers.size());
    }
    return signatures;
  }

  private static Column column(Draft draft, int[] localOfAtom) {
    short[] codes = new short[localOfAtom.length];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = (short) draft.codes[localOfAtom[i]];
    }
    return new Column(draft.look, draft.cost, price(draft.cost), codes, draft.outcomes);
  }

  private static double price(Price cost) {
    return Math.max(cost.total(), LEAST_PRICE);
  }

  Atom[] atoms() {
    return atoms;
  }

  Column[] columns() {
    return columns;
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
