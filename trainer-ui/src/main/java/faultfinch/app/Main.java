package faultfinch.app;

import faultfinch.cli.CommandLine;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import java.util.ResourceBundle;

/**
 * The program's entry: the only place that prints to the console and ends the process. It names no
 * type of the window library, so that a command on a machine without a screen loads none of it.
 */
public final class Main {

  private static final int FAILED = 2;

  private Main() {}

  /** Runs the command line and ends the process with its exit code. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    int exitCode;
    try {
      // A lambda, not a method reference: linking a reference would load the window library.
      exitCode = CommandLine.run(args, arguments -> openWindow(arguments, err), in, out, err);
    } catch (LinkageError | OutOfMemoryError | StackOverflowError e) {
      err.println("faultfinch: " + e.toString().replaceAll("\\s+", " "));
      exitCode = FAILED;
    }
    out.flush();
    err.flush();
    System.exit(exitCode);
  }

  private static OptionalInt openWindow(List<String> arguments, PrintWriter err) {
    if (!hasScreen()) {
      err.println(ResourceBundle.getBundle("faultfinch.app.entry").getString("no-screen"));
      return OptionalInt.empty();
    }
    UiLauncher.open(arguments);
    return OptionalInt.of(0);
  }

  /** Asked first: without one the window library fails deep inside, in many lines. */
  private static boolean hasScreen() {
    String display = System.getenv("DISPLAY");
    return !System.getProperty("os.name").equals("Linux")
        || System.getProperty("glass.platform") != null
        || (display != null && !display.isEmpty());
  }
}
