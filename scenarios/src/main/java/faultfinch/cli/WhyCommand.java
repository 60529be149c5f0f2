package faultfinch.cli;

import faultfinch.diagnosis.Inquest;
import faultfinch.diagnosis.Why;
import faultfinch.machine.Setup;
import org.apache.commons.cli.Options;

/** Tells how a fault leads to what shows: pin, bus cycle, routine, what never happened after. */
final class WhyCommand implements Command {
  private static final String KEYS = "keys";
  private static final String JSON = "json";

  @Override
  public Options options() {
    Options options = new Options();
    SetupChoice.addTo(options);
    return options.addOption(Given.flag(KEYS)).addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    Words words = terminal.words();
    given.nothingElse();
    Setup setup = new SetupChoice(words).setup(given);
    if (setup.faults().isEmpty() && setup.out().isEmpty()) {
      throw words.misuse("why.no-fault");
    }
    Why why = given.has(KEYS) ? Inquest.ofKeys(setup) : Inquest.of(setup);
    if (given.has(JSON)) {
      JsonPage.print(new WhyJson(why).page(), terminal.out());
    } else {
      new WhyPage(why, words).lines().forEach(terminal.out()::println);
    }
    return DONE;
  }
}
