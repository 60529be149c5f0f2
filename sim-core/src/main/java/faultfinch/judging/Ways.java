package faultfinch.judging;

import faultfinch.bench.Price;
import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.PriceList;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The usual practices on one kind of board, as strong as we can make them. */
final class Ways {
  private static final Set<RepairAction.Kind> EXCHANGES =
      Set.of(
          RepairAction.Kind.EXCHANGE,
          RepairAction.Kind.DESOLDER_AND_SOCKET,
          RepairAction.Kind.EXCHANGE_SMALL);

  private final Board board;
  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final PriceList prices;
  private final SymptomFirst symptom;

  /**
   * @param population of which it is known what comes with each complaint
   */
  Ways(
      Board board,
      FaultDictionary dictionary,
      Suspects suspects,
      PriceList prices,
      Population population) {
    this.board = board;
    this.dictionary = dictionary;
    this.suspects = suspects;
    this.prices = prices;
    symptom = new SymptomFirst(population.byComplaint(), population.truths(), prices);
  }

  SymptomFirst symptomFirst() {
    return symptom;
  }

  /** Every part exchanged as the board lists them; then by the symptom. */
  Practice boardOrder() {
    return new InOrder(exchanges()).then(symptom);
  }

  /** Every part exchanged, first the one in which most goes wrong; then by the symptom. */
  Practice mostFailingFirst() {
    Map<RepairAction, Double> cured = new LinkedHashMap<>();
    for (Suspect suspect : suspects.all()) {
      suspect.cures().keySet().forEach(a -> cured.merge(a, suspect.weight(), Double::sum));
    }
    return new InOrder(
            exchanges().stream()
                .sorted(Comparator.<RepairAction>comparingDouble(cured::get).reversed())
                .toList())
        .then(symptom);
  }

  Practice probeFirst() {
    return new ProbeFirst(new Wires(board, dictionary), symptom);
  }

  private List<RepairAction> exchanges() {
    List<RepairAction> exchanges = new ArrayList<>();
    for (PlacedPart part : board.parts()) {
      suspects.actions().stream()
          .filter(a -> a.place().equals(part.ref()) && EXCHANGES.contains(a.kind()))
          .forEach(exchanges::add);
    }
    return exchanges;
  }

  /** See {@link Unlisted}. */
  Practice unlisted() {
    return new Unlisted(new Wires(board, dictionary), symptom);
  }

  /** See {@link NoPullReference}. */
  Practice noPullReference() {
    Map<Integer, List<Truth>> byRow = new LinkedHashMap<>();
    for (Suspect suspect : suspects.all()) {
      byRow
          .computeIfAbsent(dictionary.row(suspect.fault()), k -> new ArrayList<>())
          .addAll(Truth.of(suspect));
    }
    return new NoPullReference(
        job -> byRow.get(dictionary.row(job.truth().suspect().fault())), prices);
  }

  /** Follows jobs. */
  static Map<Job, Bill> follow(
      List<Job> jobs, Practice practice, Readings readings, PriceList prices, Price retest) {
    Map<Job, Bill> bills = new LinkedHashMap<>();
    for (Job job : jobs) {
      Visit visit = new Visit(job, readings, prices);
      practice.go(visit);
      bills.put(job, visit.bill(retest));
    }
    return bills;
  }
}
