package faultfinch.cli;

import org.apache.commons.cli.Options;

/**
 * One command of the program. Its texts stand under its name in the bundle: what it does, each
 * option, an example.
 */
interface Command {

  /** The command did what it was asked. */
  int DONE = 0;

  /** The command ended in a verdict against what it was given. */
  int NEGATIVE = 1;

  /** The options it takes, {@code --help} apart. */
  Options options();

  /**
   * Does it.
   *
   * @return {@link #DONE} or {@link #NEGATIVE}
   * @throws Misuse if the words given do not fit
   */
  int run(Given given, Terminal terminal);
}
