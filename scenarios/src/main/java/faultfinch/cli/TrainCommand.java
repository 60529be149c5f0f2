package faultfinch.cli;

import faultfinch.library.Library;
import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.cli.Options;

/** Plays a case, in the window or, without one, in the terminal. */
final class TrainCommand implements Command {
  private static final String TEXT = "text";
  private static final String FIRST_CASE = "1";

  @Override
  public Options options() {
    return new Options().addOption(Given.flag(TEXT));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    List<String> rest = given.rest();
    if (rest.size() > 1) {
      throw terminal.words().misuse("given.too-much", rest.get(1));
    }
    if (!given.has(TEXT)) {
      OptionalInt shown = terminal.opener().open(rest);
      if (shown.isPresent()) {
        return shown.getAsInt();
      }
    }
    String word = rest.isEmpty() ? FIRST_CASE : rest.get(0);
    new TextTrainer(terminal).play(Library.find(word));
    return DONE;
  }
}
