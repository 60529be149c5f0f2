package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class CommandLineTest {

  @Test
  void help_asked_namesEveryCommandAndSucceeds() {
    Played played = Played.of("--help");
    assertEquals(0, played.code());
    assertTrue(played.out().startsWith("usage: faultfinch"), played.out());
    for (Commands command : Commands.values()) {
      assertTrue(played.out().contains("\n  " + command.word() + " "), command.word());
    }
    assertEquals("", played.err());
  }

  @Test
  void noArguments_given_opensTheWindowAndReturnsItsCode() {
    Played played = Played.of(arguments -> OptionalInt.of(arguments.equals(List.of()) ? 7 : 1));
    assertEquals(7, played.code());
  }

  @Test
  void noArguments_withoutAScreen_playInTheTerminalUntilNothingIsTyped() {
    Played played = Played.of();
    assertEquals(0, played.code(), played.err());
    assertTrue(played.out().contains("SORREL"), played.out());
  }

  @Test
  void unknownCommand_given_complainsInOneLineWithTheNearest() {
    Played played = Played.of("lst");
    assertEquals(
        "faultfinch: no command 'lst'; nearest: list; --help lists them all",
        played.err().stripTrailing());
    assertEquals(2, played.code());
    assertEquals("", played.out());
  }
}
