package faultfinch.cli;

import java.io.PrintWriter;
import java.util.List;

/**
 * The one way into the program's commands. It prints only to the writers it is given and returns
 * the exit code, so that every command can be tested without a process.
 */
public final class CommandLine {

  private static final int OK = 0;
  private static final int MISUSED = 2;

  private static final String HELP =
      """
      usage: faultfinch [--help]

      With no arguments the window opens.
      """;

  private CommandLine() {}

  /**
   * Runs what the arguments ask for.
   *
   * @param args the words after the program's name
   * @param opener opens the window when the arguments ask for it
   * @param out takes results
   * @param err takes complaints, one line each
   * @return 0 when it went well, 2 when the arguments make no sense, else what the window returned
   */
  public static int run(String[] args, WindowOpener opener, PrintWriter out, PrintWriter err) {
    if (args.length == 0) {
      return opener.open(List.of());
    }
    if (args[0].equals("--help")) {
      out.print(HELP);
      return OK;
    }
    err.println("faultfinch: unknown command '" + args[0] + "'; --help lists the commands");
    return MISUSED;
  }
}
