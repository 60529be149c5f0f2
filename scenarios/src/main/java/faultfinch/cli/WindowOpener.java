package faultfinch.cli;

import java.util.List;
import java.util.OptionalInt;

/**
 * What a command calls to bring up the window. The program's entry hands it in, so that commands
 * never know what a window is made of.
 */
@FunctionalInterface
public interface WindowOpener {

  /**
   * Opens the window and returns when it is closed.
   *
   * @param arguments what the window should start with, in order; may be empty
   * @return the exit code of the program, or empty if there is no screen to open a window on, which
   *     has been said
   */
  OptionalInt open(List<String> arguments);
}
