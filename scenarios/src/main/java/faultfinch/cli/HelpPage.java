package faultfinch.cli;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/** What {@code --help} prints, for the whole program and for one command. */
final class HelpPage {
  private static final int WIDTH = 96;

  private final Terminal terminal;

  HelpPage(Terminal terminal) {
    this.terminal = terminal;
  }

  /** The program and its commands. */
  void program() {
    terminal.say("help.program");
    terminal.out().println();
    Columns columns = new Columns();
    for (Commands command : Commands.values()) {
      columns.row("  " + command.word(), say(command.word() + ".does"));
    }
    columns.print(terminal.out(), WIDTH);
    terminal.out().println();
    terminal.say("help.more");
  }

  /** One command, its options and an example. */
  void command(String word, Options options) {
    terminal.say("help.usage", say(word + ".usage"));
    terminal.out().println();
    terminal.out().println(say(word + ".about"));
    terminal.out().println();
    Columns columns = new Columns();
    List<Option> all = new ArrayList<>(options.getOptions());
    for (Option option : all) {
      String form = option.hasArg() ? " " + option.getArgName() : "";
      String again = Given.again(option) ? " ..." : "";
      columns.row("  --" + option.getLongOpt() + form + again, say(key(word, option)));
    }
    columns.print(terminal.out(), WIDTH);
    terminal.out().println();
    terminal.say("help.example", say(word + ".example"));
  }

  /** A command's own text about an option, or the one that all commands share. */
  private String key(String word, Option option) {
    String own = word + "." + option.getLongOpt();
    return terminal.words().knows(own) ? own : "option." + option.getLongOpt();
  }

  private String say(String key) {
    return terminal.words().say(key);
  }
}
