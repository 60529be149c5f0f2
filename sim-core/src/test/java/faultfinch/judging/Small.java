package faultfinch.judging;

import faultfinch.bench.Price;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.DictionaryBuild;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Origin;
import faultfinch.diagnosis.PriceList;
import faultfinch.diagnosis.Row;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Four faults of which we say ourselves what they show. Screen dark: U2 (three times as often) and
 * U3, which the probe parts. Screen blank: U9. Nothing shows of U1.
 */
final class Small {
  static final String PROBE = "probe U2.D0 at the pin";
  static final String U1 = "U1: dead";
  static final String U2 = "U2: dead";
  static final String U3 = "U3: dead";
  static final String U9 = "U9: dead";

  static final Board BOARD = BoardReader.shipped("sorrel");

  private static final Map<String, SortedMap<String, String>> ROWS = new LinkedHashMap<>();

  static {
    ROWS.put("", row("ready", "high"));
    ROWS.put(U1, row("ready", "high"));
    ROWS.put(U2, row("dark", "low"));
    ROWS.put(U3, row("dark", "high"));
    ROWS.put(U9, row("blank", "high"));
  }

  /** Apart, since other threads build it with what stands above. */
  private static final class Built {
    static final FaultDictionary DICTIONARY = built();
    static final Signs SIGNS = new Signs(BOARD, DICTIONARY);
  }

  private Small() {}

  private static SortedMap<String, String> row(String screen, String probe) {
    SortedMap<String, String> row = new TreeMap<>();
    row.put("screen", screen);
    row.put(PROBE, probe);
    return row;
  }

  static FaultDictionary dictionary() {
    return Built.DICTIONARY;
  }

  private static FaultDictionary built() {
    List<Fault> faults =
        List.of(U1, U2, U3, U9).stream().map(f -> FaultKinds.parse(f, BOARD)).toList();
    return new DictionaryBuild(
            Origin.of(BOARD, "test"),
            faults,
            (wrong, seed) -> new Row(ROWS.get(wrong.isEmpty() ? "" : wrong.get(0).text()), 0))
        .run(1, (done, all) -> true)
        .orElseThrow();
  }

  static Suspects suspects() {
    List<Suspect> all = new ArrayList<>();
    Map<String, Integer> weights = new LinkedHashMap<>();
    weights.put(U1, 4);
    weights.put(U2, 3);
    weights.put(U3, 1);
    weights.put(U9, 2);
    weights.forEach(
        (fault, weight) -> {
          String part = fault.substring(0, 2);
          all.add(Suspect.of(fault, part, weight, exchange(part)));
        });
    return new Suspects(all);
  }

  static RepairAction exchange(String part) {
    return new RepairAction(RepairAction.Kind.EXCHANGE, part);
  }

  /** A look takes 2 minutes; an exchange 7 and a pull, which counts as 20 more. */
  static PriceList prices() {
    return new PriceList() {
      @Override
      public Price look(String look) {
        return new Price(2, 0, 0, 2);
      }

      @Override
      public Price repair(RepairAction action) {
        return action.kind() == RepairAction.Kind.EXCHANGE
            ? new Price(7, 1, 0, 27)
            : new Price(8, 0, 0, 8);
      }
    };
  }

  static Population population() {
    return new Population(Built.DICTIONARY, suspects(), Built.SIGNS, s -> "dead chip");
  }

  /** The job of a fault. */
  static Job job(String fault) {
    Suspect suspect = suspects().of(fault);
    Complaint complaint = Built.SIGNS.complaint(Built.DICTIONARY.row(fault)).orElseThrow();
    return new Job(Truth.of(suspect).get(0), complaint, "dead chip", 1, 0);
  }
}
