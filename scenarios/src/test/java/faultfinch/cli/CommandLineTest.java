package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class CommandLineTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(WindowOpener opener, String... args) {
    return CommandLine.run(args, opener, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  @Test
  void help_asked_printsUsageAndSucceeds() {
    assertEquals(0, run(arguments -> 7, "--help"));
    assertTrue(out.toString().startsWith("usage: faultfinch"), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void noArguments_given_opensTheWindowAndReturnsItsCode() {
    assertEquals(7, run(arguments -> arguments.equals(List.of()) ? 7 : 1));
  }

  @Test
  void unknownCommand_given_complainsInOneLine() {
    assertEquals(2, run(arguments -> 7, "solder"));
    assertEquals(1, err.toString().lines().count());
    assertTrue(err.toString().contains("'solder'"), err.toString());
    assertEquals("", out.toString());
  }
}
