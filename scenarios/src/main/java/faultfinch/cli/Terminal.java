package faultfinch.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;

/**
 * Where a command reads, writes and opens a window: the only way it has to the world outside.
 *
 * @param in what the person types
 * @param out takes results
 * @param err takes complaints and progress, one line each
 * @param opener opens the window
 * @param words all the texts
 */
record Terminal(
    BufferedReader in, PrintWriter out, PrintWriter err, WindowOpener opener, Words words) {

  /** Writes one of the texts as a line of the result. */
  void say(String key, Object... gaps) {
    out.println(words.say(key, gaps));
  }
}
