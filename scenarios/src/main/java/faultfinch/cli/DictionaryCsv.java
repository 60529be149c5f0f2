package faultfinch.cli;

import faultfinch.diagnosis.ErrorRates;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A dictionary as comma separated values (RFC 4180), a line for each fault: its weight, its least
 * repair, the number of its class, then what each look of a tier and of those before it shows.
 */
final class DictionaryCsv {
  private static final String LINE_END = "\r\n";

  private DictionaryCsv() {}

  static byte[] bytes(
      FaultDictionary dictionary, Suspects suspects, ErrorRates rates, ErrorRates.Tier tier) {
    List<String> looks =
        dictionary.looks().stream().filter(l -> rates.tier(l).compareTo(tier) <= 0).toList();
    StringBuilder csv = new StringBuilder();
    List<String> head = new ArrayList<>(List.of("fault", "weight", "repair", "class"));
    head.addAll(looks);
    line(csv, head);
    for (Suspect suspect : suspects.all()) {
      int row = dictionary.row(suspect.fault());
      List<String> cells = new ArrayList<>();
      cells.add(suspect.fault());
      cells.add(String.valueOf(suspect.weight()));
      cells.add(suspect.repair().text());
      cells.add(String.valueOf(row));
      looks.forEach(l -> cells.add(dictionary.outcome(dictionary.look(l).getAsInt(), row)));
      line(csv, cells);
    }
    return csv.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void line(StringBuilder csv, List<String> cells) {
    csv.append(cells.stream().map(DictionaryCsv::quoted).collect(Collectors.joining(",")))
        .append(LINE_END);
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
