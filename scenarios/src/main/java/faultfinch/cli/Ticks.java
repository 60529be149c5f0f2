package faultfinch.cli;

import faultfinch.board.BoardReader;
import faultfinch.board.NearNames;
import faultfinch.board.Tick;
import faultfinch.board.Variants;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What somebody says his board is like, tick by tick. */
final class Ticks {
  private static final String LIKE = "like";

  private Ticks() {}

  /** The shipped board that has overlays, with them. */
  static Variants ofBoards() {
    return BoardReader.shippedNames().stream()
        .map(BoardReader::variants)
        .filter(v -> !v.boards().isEmpty())
        .findFirst()
        .orElseThrow();
  }

  /** Answers by the tick's name; what he does not know is left out. */
  static Map<String, String> answers(Given given, Variants variants, Words words) {
    Map<String, String> answers = new LinkedHashMap<>();
    List<String> names = variants.ticks().stream().map(Tick::name).toList();
    Tick first = variants.ticks().get(0);
    for (String said : given.texts(LIKE)) {
      String[] halves = said.split("=", 2);
      if (halves.length < 2) {
        String example = first.name() + "=" + first.answers().get(0);
        throw words.misuse("own.no-form", said, example);
      }
      String name = halves[0].strip();
      String answer = halves[1].strip();
      Tick tick =
          variants.ticks().stream()
              .filter(t -> t.name().equalsIgnoreCase(name))
              .findFirst()
              .orElseThrow(() -> words.misuse("own.no-tick", name, NearNames.alternatives(names)));
      if (answer.equalsIgnoreCase(words.say("own.do-not-know"))) {
        continue;
      }
      String known =
          tick.answers().stream()
              .filter(a -> a.equalsIgnoreCase(answer))
              .findFirst()
              .orElseThrow(
                  () ->
                      words.misuse(
                          "own.no-answer", tick.name(), answer, String.join(", ", tick.answers())));
      String before = answers.putIfAbsent(tick.name(), known);
      if (before != null && !before.equals(known)) {
        throw words.misuse("own.twice", tick.name(), before, known);
      }
    }
    return answers;
  }
}
