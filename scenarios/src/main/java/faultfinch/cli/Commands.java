package faultfinch.cli;

import faultfinch.board.Board;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Every command: to play first, then to try, to look up, to ask. */
enum Commands {
  TRAIN("train"),
  RUN("run"),
  LIST("list"),
  RANK("rank"),
  WEIGH("weigh"),
  NEXT("next"),
  WHY("why"),
  JOB("job"),
  SURVEY("survey");

  private final String word;

  Commands(String word) {
    this.word = word;
  }

  /** As it is typed, and as its texts begin. */
  String word() {
    return word;
  }

  /** The command itself. A switch and no table: only the one that is asked for is loaded. */
  Command command() {
    return switch (this) {
      case TRAIN -> new TrainCommand();
      case RUN -> new RunCommand();
      case LIST -> new ListCommand();
      case RANK -> new RankCommand(Commands::known, Commands::ready);
      case JOB -> new JobCommand(Commands::known);
      case WEIGH -> new WeighCommand(Commands::known);
      case NEXT -> new NextCommand(Commands::known);
      case WHY -> new WhyCommand();
      case SURVEY -> new SurveyCommand(Commands::known, Commands::whole);
    };
  }

  private static Known known(Board board, Terminal terminal) {
    return new Dictionaries(terminal, Dictionaries.usersCache()).of(board);
  }

  private static Optional<Known> ready(Board board, Terminal terminal) {
    return new Dictionaries(terminal, Dictionaries.usersCache()).ready(board);
  }

  private static Known whole(Board board, Terminal terminal) {
    return new Dictionaries(terminal, Dictionaries.usersCache()).whole(board);
  }

  static Optional<Commands> named(String word) {
    return Arrays.stream(values()).filter(c -> c.word.equals(word)).findFirst();
  }

  static List<String> all() {
    return Arrays.stream(values()).map(Commands::word).toList();
  }
}
