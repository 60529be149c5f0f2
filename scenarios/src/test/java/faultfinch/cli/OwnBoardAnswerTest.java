package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Answers for a board that is none of ours, weighed on two of those that are shipped. */
class OwnBoardAnswerTest {
  private static final Words WORDS = new Words();
  private static final List<String> HELD = List.of("tamarisk", "tamarisk+soldered");
  private static final Map<String, Known> KNOWN = new LinkedHashMap<>();

  @BeforeAll
  static void read() {
    Dictionaries dictionaries = new Dictionaries(terminal(new StringWriter()), Path.of("none"));
    for (String name : HELD) {
      KNOWN.put(name, dictionaries.ready(BoardReader.shipped(name)).orElseThrow());
    }
  }

  private static Terminal terminal(StringWriter out) {
    return new Terminal(
        new BufferedReader(new StringReader("")),
        new PrintWriter(out, true),
        new PrintWriter(out, true),
        arguments -> OptionalInt.empty(),
        WORDS);
  }

  private static Optional<Known> ready(Board board, Terminal terminal) {
    return Optional.ofNullable(KNOWN.get(board.name()));
  }

  private static String rank(String... args) {
    StringWriter out = new StringWriter();
    Supplier<Known> none =
        () -> {
          throw new AssertionError("no board of ours is asked for");
        };
    RankCommand command =
        new RankCommand((board, terminal) -> none.get(), OwnBoardAnswerTest::ready);
    command.run(Given.of(command.options(), List.of(args), WORDS), terminal(out));
    return out.toString();
  }

  private static JsonNode json(String... args) throws IOException {
    String[] all = Arrays.copyOf(args, args.length + 1);
    all[args.length] = "--json";
    return new ObjectMapper().readTree(rank(all));
  }

  private static String refused(String... args) {
    return assertThrows(Misuse.class, () -> rank(args)).getMessage();
  }

  @Test
  void firstLine_saysHowMuchOfWhatWasSaidCanBeExpressed() {
    String[] lines =
        rank(
                "--own",
                "--saw",
                "screen is black",
                "--saw",
                "U5 is hot",
                "--saw",
                "it smells of fish")
            .split("\n");
    assertEquals("Of 3 things said, 1 can be expressed on the model boards.", lines[0]);
    assertEquals(
        "Not: \"U5 is hot\": it names U5, a number of the model board; say what the part does",
        lines[1]);
    assertTrue(lines[2].startsWith("Not: \"it smells of fish\": "), lines[2]);
  }

  /** Tamarisk calls its sound chip a tone generator; there is one, U34. */
  @Test
  void aPartNamedByWhatItDoes_isTheOneOfTheModelBoard() {
    String said = rank("--own", "--saw", "the sound chip is hot");
    assertTrue(said.startsWith("Of 1 things said, 1 can be"), said);
    assertTrue(said.contains("is taken as: finger U34 = hot"), said);
  }

  @Test
  void answers_areRolesOnTheModelBoardAndPromiseNoPulls() {
    String said = rank("--own", "--saw", "screen is black");
    assertTrue(said.contains("on the model board"), said);
    assertTrue(said.contains("no count of pulls is promised"), said);
    assertTrue(said.contains("Held against tamarisk 5"), said);
    assertTrue(said.contains("Not held against tamarisk+one-regulator, "), said);
    assertTrue(said.contains("the video controller"), said);
  }

  @Test
  void json_beliefsOfAllRolesWithTheOutside_areOne() throws IOException {
    JsonNode json = json("--own", "--saw", "screen is black", "--most", "1000");
    double sum = json.get("outside").doubleValue();
    for (JsonNode role : json.get("roles")) {
      sum += role.get("belief").doubleValue();
      assertFalse(role.get("called").textValue().isEmpty());
    }
    assertEquals(1, sum, 1e-9);
    assertEquals(1, json.get("expressed").size());
  }

  /** 0.8 for the tick, and of each the share that was run; nothing was seen that parts the two. */
  @Test
  void tick_thatDiffers_countsFourFifths() throws IOException {
    JsonNode boards = json("--own", "--like", "sockets = none").get("boards");
    double differs = 0.8 * boards.get(0).get("weightRun").doubleValue();
    double same = boards.get(1).get("weightRun").doubleValue();
    assertEquals(differs / (differs + same), boards.get(0).get("weight").doubleValue(), 1e-9);
    assertEquals("sockets", boards.get(0).get("differs").get(0).textValue());
    assertEquals(0, boards.get(1).get("differs").size());
  }

  @Test
  void tick_answeredAsNoModelBoardIs_leavesItToBeSaid() throws IOException {
    String[] seen = {"--own", "--saw", "screen is black", "--most", "1000"};
    assertEquals(List.of("ram width"), mayDiffer("ram", seen));
    String[] one = Arrays.copyOf(seen, 7);
    one[5] = "--like";
    one[6] = "ram width=one bit";
    assertEquals(List.of(), mayDiffer("ram", one));
    one[6] = "ram width=four bits";
    assertEquals(List.of("ram width"), mayDiffer("ram", one));
    one[6] = "ram width=do not know";
    assertEquals(List.of("ram width"), mayDiffer("ram", one));
  }

  private static List<String> mayDiffer(String duty, String... args) throws IOException {
    for (JsonNode role : json(args).get("roles")) {
      if (role.get("role").textValue().equals(duty)) {
        List<String> ticks = new ArrayList<>();
        role.get("mayDiffer").forEach(t -> ticks.add(t.textValue()));
        return ticks.stream().filter(t -> t.equals("ram width")).toList();
      }
    }
    throw new AssertionError("no role " + duty);
  }

  @Test
  void ticks_thatAreNotRight_areSaidWithWhatWouldBe() {
    assertEquals(
        "--like: found 'sockets', right would be a tick and its answer, such as \"ram width=one bit\"",
        refused("--own", "--like", "sockets"));
    assertEquals(
        "--like: no tick 'socket'; right would be ram width, multiplexers, bank bits, regulators, bus"
            + " buffers, potentiometers, sockets, attributes or decoding",
        refused("--own", "--like", "socket=none"));
    assertEquals(
        "--like: sockets is not 'no'; right would be some, none, or do not know",
        refused("--own", "--like", "sockets=no"));
    assertEquals(
        "--like: sockets is 'some' and 'none'; right would be one answer",
        refused("--own", "--like", "sockets=some", "--like", "sockets=none"));
  }

  @Test
  void options_thatDoNotGoWithIt_areRefused() {
    assertEquals(
        "--like goes with --own: a board that is none of ours", refused("--like", "sockets=none"));
    assertTrue(
        refused("--own", "--board", "tamarisk").startsWith("--board does not go with --own"));
    assertTrue(refused("--own", "--repaired", "U5").startsWith("--repaired does not go with"));
    NextCommand next = new NextCommand((board, terminal) -> KNOWN.get("tamarisk"));
    Misuse elsewhere =
        assertThrows(Misuse.class, () -> Given.of(next.options(), List.of("--own"), WORDS));
    assertTrue(elsewhere.getMessage().startsWith("--own goes with 'rank' alone"));
  }
}
