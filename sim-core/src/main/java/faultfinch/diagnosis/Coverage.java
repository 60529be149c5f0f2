package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How much of what can be wrong the looks of a tier, and of the tiers before it, show. Groups are
 * faults that these looks cannot tell apart; faults they do not show at all are in none.
 *
 * @param faults of the board
 * @param visible share of the faults that show in some look, 0 to 1
 * @param visibleByWeight the same, each by how likely it is
 * @param classes groups
 * @param meanFaults how many faults are in the group of a visible fault, on average
 * @param meanActions how many different least repairs are, on average
 * @param isolated share of the visible faults whose group one action surely cures, 0 to 1
 * @param isolatedByWeight the same, each by how likely it is
 */
public record Coverage(
    ErrorRates.Tier tier,
    int faults,
    double visible,
    double visibleByWeight,
    int classes,
    double meanFaults,
    double meanActions,
    double isolated,
    double isolatedByWeight) {
  private static final int SURE = 100;

  /** One for each tier, each with the looks of those before it. */
  public static List<Coverage> of(FaultDictionary dictionary, Suspects suspects, ErrorRates rates) {
    List<Coverage> tiers = new ArrayList<>();
    for (ErrorRates.Tier tier : ErrorRates.Tier.values()) {
      int[] looks =
          dictionary.looks().stream()
              .filter(look -> rates.tier(look).compareTo(tier) <= 0)
              .mapToInt(look -> dictionary.look(look).getAsInt())
              .toArray();
      tiers.add(of(tier, dictionary, suspects, looks));
    }
    return List.copyOf(tiers);
  }

  /**
   * Share of the faults that changed anything in their run where it was watched, each by how likely
   * it is, 0 to 1; empty if the dictionary does not tell.
   */
  public static OptionalDouble excited(FaultDictionary dictionary, Suspects suspects) {
    if (dictionary.excited().isEmpty()) {
      return OptionalDouble.empty();
    }
    Set<String> excited = dictionary.excited().get();
    double all = 0;
    double some = 0;
    for (Suspect suspect : suspects.all()) {
      all += suspect.weight();
      some += excited.contains(suspect.fault()) ? suspect.weight() : 0;
    }
    return OptionalDouble.of(all > 0 ? some / all : 0);
  }

  private static Coverage of(
      ErrorRates.Tier tier, FaultDictionary dictionary, Suspects suspects, int[] looks) {
    Map<String, List<Suspect>> groups = new LinkedHashMap<>();
    String healthy = cells(dictionary, looks, FaultDictionary.HEALTHY);
    Map<Integer, String> cellsOfRow = new LinkedHashMap<>();
    double allWeight = 0;
    for (Suspect suspect : suspects.all()) {
      String cells =
          cellsOfRow.computeIfAbsent(
              dictionary.row(suspect.fault()), row -> cells(dictionary, looks, row));
      allWeight += suspect.weight();
      if (!cells.equals(healthy)) {
        groups.computeIfAbsent(cells, k -> new ArrayList<>()).add(suspect);
      }
    }
    int visible = 0;
    double weight = 0;
    double mates = 0;
    double actions = 0;
    int isolated = 0;
    double isolatedWeight = 0;
    for (List<Suspect> group : groups.values()) {
      int size = group.size();
      double groupWeight = group.stream().mapToDouble(Suspect::weight).sum();
      visible += size;
      weight += groupWeight;
      mates += (double) size * size;
      actions += (double) size * group.stream().map(Suspect::repair).distinct().count();
      if (isIsolated(group)) {
        isolated += size;
        isolatedWeight += groupWeight;
      }
    }
    double some = Math.max(1, visible);
    return new Coverage(
        tier,
        suspects.all().size(),
        visible / (double) Math.max(1, suspects.all().size()),
        allWeight > 0 ? weight / allWeight : 0,
        groups.size(),
        mates / some,
        actions / some,
        isolated / some,
        weight > 0 ? isolatedWeight / weight : 0);
  }

  private static boolean isIsolated(List<Suspect> group) {
    Set<RepairAction> common = new LinkedHashSet<>(group.get(0).cures().keySet());
    common.removeIf(a -> group.stream().anyMatch(s -> s.cures().getOrDefault(a, 0) < SURE));
    return !common.isEmpty();
  }

  private static String cells(FaultDictionary dictionary, int[] looks, int row) {
    StringBuilder cells = new StringBuilder(looks.length);
    for (int look : looks) {
      cells.append((char) dictionary.cell(look, row));
    }
    return cells.toString();
  }
}
