package faultfinch.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.OptionalInt;

/**
 * One call of the command line, with all it wrote.
 *
 * @param code its exit code
 */
record Played(int code, String out, String err) {

  /** Where no window can be opened and nobody types. */
  static Played of(String... args) {
    return of(arguments -> OptionalInt.empty(), args);
  }

  static Played of(WindowOpener opener, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    BufferedReader in = new BufferedReader(new StringReader(""));
    int code =
        CommandLine.run(args, opener, in, new PrintWriter(out, true), new PrintWriter(err, true));
    return new Played(code, out.toString(), err.toString());
  }
}
