package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.cli.Option;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every command must do to be listed. */
class EveryCommandTest {
  private static final Words WORDS = new Words();

  @ParameterizedTest
  @EnumSource(Commands.class)
  void help_ofACommand_tellsEveryOptionAndAnExample(Commands which) {
    Played played = Played.of(which.word(), "--help");
    assertEquals(0, played.code());
    assertEquals("", played.err());
    assertTrue(played.out().startsWith("usage: faultfinch " + which.word()), played.out());
    for (Option option : which.command().options().getOptions()) {
      assertTrue(played.out().contains("  --" + option.getLongOpt()), option.getLongOpt());
    }
    assertTrue(played.out().contains("example: faultfinch " + which.word()), played.out());
    assertTrue(played.out().lines().noneMatch(l -> l.contains("{")), played.out());
  }

  @ParameterizedTest
  @EnumSource(Commands.class)
  void example_ofACommand_isSortedWithoutComplaint(Commands which) {
    List<String> words = example(which.word());
    assertEquals(List.of("faultfinch", which.word()), words.subList(0, 2));
    assertDoesNotThrow(
        () -> Given.of(which.command().options(), words.subList(2, words.size()), WORDS));
  }

  @ParameterizedTest
  @EnumSource(Commands.class)
  void unknownOption_ofACommand_isRefusedInOneLine(Commands which) {
    Played played = Played.of(which.word(), "--bord", "sorrel");
    assertEquals(2, played.code());
    assertEquals(1, played.err().lines().count(), played.err());
    assertTrue(played.err().contains("--bord; nearest: --"), played.err());
  }

  /** The words of a command's example, as a shell would part them. */
  static List<String> example(String command) {
    List<String> words = new ArrayList<>();
    Matcher m = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(WORDS.say(command + ".example"));
    while (m.find()) {
      words.add(m.group(1) != null ? m.group(1) : m.group(2));
    }
    return words;
  }
}
