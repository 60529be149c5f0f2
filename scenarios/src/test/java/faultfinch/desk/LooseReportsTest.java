package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Look;
import faultfinch.bench.Looks;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.ShippedDictionaries;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Forty reports in technicians' words: each says something, and nothing of it is lost. */
class LooseReportsTest {
  private static final String KEPT = "kept";

  private static Map<String, Board> boards;
  private static Map<String, Lookbook> lookbooks;

  record Report(String board, String says, Set<String> kinds) {}

  @BeforeAll
  static void read() {
    Board sorrel = BoardReader.shipped("sorrel");
    Board tamarisk = BoardReader.shipped("tamarisk");
    boards = Map.of("sorrel", sorrel, "tamarisk", tamarisk);
    lookbooks =
        Map.of(
            "sorrel",
            Lookbook.of(ShippedDictionaries.of(sorrel).orElseThrow()),
            "tamarisk",
            new Offered(tamarisk));
  }

  /** Every look that a board offers, with outcomes such as its instrument can have. */
  private static final class Offered implements Lookbook {
    private final Set<String> looks = new LinkedHashSet<>();

    Offered(Board board) {
      Looks.passive(board).stream().map(Look::text).forEach(looks::add);
    }

    @Override
    public Set<String> looks() {
      return looks;
    }

    @Override
    public List<String> outcomes(String look) {
      return switch (Look.parse(look).kind()) {
        case SCREEN, TYPED ->
            List.of(
                "'READY' in white",
                "'READY' in white, rolls",
                "dark",
                "no picture",
                "'#|#' in white");
        case LISTEN -> List.of("soft and clear short 880 Hz", "silent", "loud lasting noise");
        case LAMP -> List.of("dark", "lit", "blinks once a second");
        case KEY -> List.of("soft and dull short 1175 Hz", "no sound");
        case CURRENT -> List.of("1000 to 1050 mA", "300 to 350 mA");
        case FINGER -> List.of("normal", "cold", "warm", "hot");
        case METER -> List.of("5 V", "0.1 V");
        case PROBE -> List.of("pulsing", "low", "high", "mid", "no light");
        case COUNTER -> List.of("1.00 MHz", "0 Hz");
        case CONTINUITY -> List.of("conducts", "open");
        case OHMS -> List.of("over 100 k", "under 10 ohms");
      };
    }

    @Override
    public Set<String> differing() {
      return Set.of();
    }
  }

  static List<Report> reports() throws IOException {
    try (InputStream in = LooseReportsTest.class.getResourceAsStream("loose-reports.txt")) {
      List<Report> reports = new ArrayList<>();
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (!line.startsWith("#")) {
          String[] cells = line.split(" *\\| *");
          reports.add(
              new Report(cells[0], cells[1], new TreeSet<>(Arrays.asList(cells[2].split(" ")))));
        }
      }
      return reports;
    }
  }

  @Test
  void reports_areForty() throws IOException {
    assertEquals(40, reports().size());
  }

  @ParameterizedTest
  @MethodSource("reports")
  void report_asATechnicianTypesIt_isWeighedOrKeptAsOnPaper(Report report) {
    Desk desk = new Desk(boards.get(report.board), lookbooks.get(report.board));
    desk.note(Entry.saw(report.says));
    Set<String> kinds = new TreeSet<>();
    for (Statement statement : desk.statements()) {
      if (statement instanceof Statement.Weighed w) {
        // What goes without saying beside it is no look of the report's own.
        if (!w.observation().look().contains(" another of the ")) {
          kinds.add(w.observation().look().split(" ", 2)[0]);
        }
      } else {
        kinds.add(KEPT);
      }
    }
    assertEquals(report.kinds, kinds, () -> desk.statements().toString());
    for (String word : report.says.split("[,;] | but ")) {
      assertTrue(
          desk.statements().stream().anyMatch(s -> s.said().contains(word)), word + " is lost");
    }
    for (Statement statement : desk.statements()) {
      if (statement instanceof Statement.Kept kept) {
        assertFalse(kept.about().isBlank(), kept.said());
      }
    }
  }
}
