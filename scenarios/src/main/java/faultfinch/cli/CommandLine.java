package faultfinch.cli;

import faultfinch.attempt.Slip;
import faultfinch.board.NearNames;
import faultfinch.fault.UnknownFault;
import faultfinch.signal.BadInput;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.util.List;
import org.apache.commons.cli.Options;

/**
 * The one way into the program's commands. It prints only to the writers it is given and returns
 * the exit code, so that every command can be tested without a process.
 */
public final class CommandLine {
  private static final String HELP = "help";
  private static final int BAD_INPUT = 2;

  private CommandLine() {}

  /**
   * Runs what the arguments ask for.
   *
   * @param args the words after the program's name
   * @param opener opens the window when the arguments ask for it
   * @param in what the person types
   * @param out takes results
   * @param err takes complaints, one line each
   * @return 0 when it is done, 1 for a negative verdict, 2 for bad input or a defect of the program
   */
  public static int run(
      String[] args, WindowOpener opener, BufferedReader in, PrintWriter out, PrintWriter err) {
    Words words = new Words();
    Terminal terminal = new Terminal(in, out, err, opener, words);
    try {
      return run(List.of(args), terminal);
    } catch (Misuse | UnknownFault | Slip | BadInput e) {
      err.println(words.say("complaint", e.getMessage()));
    } catch (RuntimeException e) {
      String reason = e.getClass().getSimpleName() + ": " + e.getMessage();
      err.println(words.say("defect", reason.replaceAll("\\s+", " ")));
    }
    return BAD_INPUT;
  }

  private static int run(List<String> args, Terminal terminal) {
    List<String> given = args.isEmpty() ? List.of(Commands.TRAIN.word()) : args;
    String first = given.get(0);
    if (first.equals("--" + HELP)) {
      new HelpPage(terminal).program();
      return Command.DONE;
    }
    Commands which =
        Commands.named(first)
            .orElseThrow(
                () ->
                    terminal
                        .words()
                        .misuse("unknown-command", first, NearNames.of(first, Commands.all())));
    Command command = which.command();
    Options options = command.options();
    List<String> rest = given.subList(1, given.size());
    if (rest.contains("--" + HELP)) {
      new HelpPage(terminal).command(which.word(), options);
      return Command.DONE;
    }
    return command.run(Given.of(options, rest, terminal.words()), terminal);
  }
}
