package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;
import faultfinch.fault.RepairAction.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A small board drawn at random, to judge planners on: four chips, each with faults inside it, in
 * its contacts and in its joints, so that the cure sets of the repairs overlap as on a real one.
 *
 * <p>Ten to 16 faults of weight 1 to 9; eight to 16 looks of 2 to 21 minutes, in each of which 8 to
 * 40 per cent of the faults show, three in four of them low and the others high; an exchange of 5
 * to 44 minutes, a reseat of 2 to 11, a new socket of 10 to 54, a joint of 3 to 14.
 */
final class DrawnBoard implements PriceList {
  private static final int CHIPS = 4;
  private static final int SURE = 100;
  private static final int HALF = 50;
  private static final int PER_CENT = 100;

  private final Map<String, Integer> looks = new LinkedHashMap<>();
  private final Map<RepairAction, Integer> repairs = new LinkedHashMap<>();
  private final List<Suspect> suspects = new ArrayList<>();
  private final FaultDictionary dictionary;

  private DrawnBoard(long seed) {
    Random random = new Random(seed);
    SortedMap<String, String> healthy = new TreeMap<>();
    Map<String, Integer> odd = new LinkedHashMap<>();
    int howManyLooks = 8 + random.nextInt(9);
    for (int i = 0; i < howManyLooks; i++) {
      looks.put("probe " + i, 2 + random.nextInt(20));
      odd.put("probe " + i, 8 + random.nextInt(33));
      healthy.put("probe " + i, "normal");
    }
    for (int i = 0; i < CHIPS; i++) {
      repairs.put(new RepairAction(Kind.EXCHANGE, "U" + i), 5 + random.nextInt(40));
      repairs.put(new RepairAction(Kind.RESEAT, "U" + i), 2 + random.nextInt(10));
      repairs.put(new RepairAction(Kind.NEW_SOCKET, "U" + i), 10 + random.nextInt(45));
    }
    DictionaryDraft draft = new DictionaryDraft(new Origin("drawn", "" + seed), List.of(healthy));
    Row sound = new Row(healthy, 0);
    int howManyFaults = 10 + random.nextInt(7);
    for (int i = 0; i < howManyFaults; i++) {
      Suspect suspect = suspect("f" + i, "U" + random.nextInt(CHIPS), random);
      suspects.add(suspect);
      SortedMap<String, String> row = new TreeMap<>(healthy);
      row.replaceAll((look, shows) -> shown(odd.get(look), random));
      draft.add(suspect.fault(), Departure.of(suspect.fault(), sound, new Row(row, 1)));
    }
    dictionary = draft.done();
  }

  private static String shown(int oddPerCent, Random random) {
    boolean odd = random.nextInt(PER_CENT) < oddPerCent;
    return odd ? random.nextInt(4) == 0 ? "high" : "low" : "normal";
  }

  /** The board of a seed. */
  static DrawnBoard of(long seed) {
    return new DrawnBoard(seed);
  }

  private Suspect suspect(String fault, String chip, Random random) {
    double weight = 1 + random.nextInt(9);
    RepairAction exchange = new RepairAction(Kind.EXCHANGE, chip);
    RepairAction socket = new RepairAction(Kind.NEW_SOCKET, chip);
    RepairAction reseat = new RepairAction(Kind.RESEAT, chip);
    Map<RepairAction, Integer> cures = new LinkedHashMap<>();
    RepairAction least;
    switch (random.nextInt(4)) {
      case 0 -> {
        least = socket;
        cures.put(exchange, HALF);
        cures.put(reseat, HALF);
      }
      case 1 -> {
        least = new RepairAction(Kind.REFLOW, fault);
        repairs.put(least, 3 + random.nextInt(12));
        cures.put(socket, SURE);
      }
      case 2 -> {
        least = reseat;
        cures.put(exchange, SURE);
        cures.put(socket, SURE);
      }
      default -> least = exchange;
    }
    cures.put(least, SURE);
    return new Suspect(fault, chip, weight, least, cures);
  }

  /** With everything still possible. */
  Field field() {
    return Field.strict(dictionary, new Suspects(suspects), this, Evidence.NONE);
  }

  @Override
  public Price look(String look) {
    return price(looks.get(look));
  }

  @Override
  public Price repair(RepairAction action) {
    return price(repairs.get(action));
  }

  private static Price price(int minutes) {
    return new Price(minutes, 0, 0, minutes);
  }
}
