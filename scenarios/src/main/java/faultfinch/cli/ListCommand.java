package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.NearNames;
import faultfinch.board.Pad;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.cli.Options;

/** Looks up what the program knows: boards, and what is on them, wrong with them, seen of them. */
final class ListCommand implements Command {
  private static final String PART = "part";
  private static final String JSON = "json";

  @Override
  public Options options() {
    return new Options()
        .addOption(BoardChoice.option())
        .addOption(Given.value(PART, "PART"))
        .addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    Subject subject = subject(given, terminal.words());
    Listing listing = listing(subject, given, terminal.words());
    if (given.has(JSON)) {
      listing.json(terminal);
    } else {
      listing.table(terminal);
    }
    return DONE;
  }

  private static Subject subject(Given given, Words words) {
    String all = NearNames.alternatives(Subject.all());
    if (given.rest().isEmpty()) {
      throw words.misuse("list.what", all);
    }
    if (given.rest().size() > 1) {
      throw words.misuse("given.too-much", given.rest().get(1));
    }
    String word = given.rest().get(0);
    return Subject.named(word)
        .orElseThrow(
            () -> words.misuse("list.unknown", word, NearNames.of(word, Subject.all()), all));
  }

  private static Listing listing(Subject subject, Given given, Words words) {
    Optional<String> ref = given.text(PART);
    if (!subject.ofParts()) {
      if (ref.isPresent()) {
        throw words.misuse("list.no-parts", given.rest().get(0));
      }
      if (subject == Subject.CASES) {
        return Listings.cases(given.text(BoardChoice.OPTION));
      }
      if (subject == Subject.TICKS) {
        return Listings.ticks(Ticks.ofBoards());
      }
      List<Board> boards =
          given.has(BoardChoice.OPTION)
              ? List.of(new BoardChoice(words).board(given))
              : BoardReader.shippedVariants().stream().map(BoardReader::shipped).toList();
      return Listings.boards(boards);
    }
    BoardChoice choice = new BoardChoice(words);
    Board board = choice.board(given);
    ref.ifPresent(r -> choice.part(board, r));
    Predicate<String> wanted = r -> ref.isEmpty() || ref.get().equals(r);
    return switch (subject) {
      case BOARDS, CASES, TICKS -> throw new IllegalStateException(subject + " is not of parts");
      case PARTS -> Listings.parts(board, wanted);
      case PINS -> Listings.pins(board, wanted, words);
      case NETS -> Listings.nets(board, pads -> pads.stream().map(Pad::ref).anyMatch(wanted));
      case FAULTS -> Listings.faults(board, wanted);
      case OBSERVATIONS -> Listings.observations(board, wanted);
    };
  }
}
