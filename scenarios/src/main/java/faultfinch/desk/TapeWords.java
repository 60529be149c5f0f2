package faultfinch.desk;

import faultfinch.board.Drill;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What is said of the tape: that it does not load, is not written, does not turn. */
final class TapeWords {
  /** "Never starts by itself" is said of a tape that stands. */
  private static final Pattern BY_ITSELF =
      Pattern.compile("\\b(never|not|n't)((?: \\w+){0,3}) (?:by itself|on its own)\\b");

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;
  private final String prompt;
  private final Map<String, PlayedTape> read = new LinkedHashMap<>();

  TapeWords(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    prompt = isTried() ? Echo.of(picture(Drill.TAPE), picture(Phrases.SCREEN)).prompt() : "";
  }

  private boolean isTried() {
    return lookbook.looks().contains(Drill.TAPE) && lookbook.looks().contains(Phrases.SCREEN);
  }

  private PictureText picture(String look) {
    return PictureText.of(lookbook.outcomes(look).get(0));
  }

  /** What a phrase, as typed, says of the tape; empty if it is nothing of the sort. */
  Optional<Phrases.Finding> find(String text) {
    String small = text.toLowerCase(Locale.ROOT).replaceAll("[\",.:;!]+(?= |$)|\"", "");
    if (!isTried()) {
      return Optional.empty();
    }
    if (!says(small, "tape.subject")) {
      return answered(text, small);
    }
    boolean measured =
        Stream.of("probe", "meter")
            .anyMatch(kind -> Vocabulary.in(small, vocabulary.subjects(kind)).isPresent());
    if (measured || says(small, "tape.untried")) {
      return Optional.empty();
    }
    boolean fails = says(small, "tape.fails");
    if (says(small, "tape.motor")) {
      return motor(text, BY_ITSELF.matcher(small).replaceAll("$1$2"));
    }
    boolean silent = says(small, "tape.silent");
    if (says(small, "tape.save") && (fails || silent)) {
      return ofSaving(text, small);
    }
    if (silent) {
      return finding(text, tape -> tape.answers().stream().anyMatch(this::isSilent));
    }
    if (says(small, "tape.spoilt")) {
      return finding(
              text,
              tape ->
                  !tape.answers().isEmpty() && !isLoaded(tape) && !isSilent(tape.answers().get(0)))
          .or(() -> finding(text, tape -> !isLoaded(tape)));
    }
    boolean load = says(small, "tape.load");
    if (fails) {
      // Who blames the tape has seen that what is typed comes.
      return load
          ? finding(text, tape -> isTyped(tape) && !isLoaded(tape))
          : finding(text, tape -> isTyped(tape) && !tape.equals(healthy()));
    }
    if (says(small, "tape.fine")) {
      return load ? finding(text, this::isLoaded) : finding(text, tape -> tape.equals(healthy()));
    }
    return answered(text, small);
  }

  /**
   * An answer of the board that stands in the words, with its noughts or without: "hummed 8 bytes".
   */
  private Optional<Phrases.Finding> answered(String text, String small) {
    String said = withoutNoughts(small);
    return healthy().answers().stream()
        .filter(answer -> said.contains(withoutNoughts(answer.toLowerCase(Locale.ROOT))))
        .findFirst()
        .flatMap(answer -> finding(text, tape -> tape.answers().contains(answer)));
  }

  private static String withoutNoughts(String text) {
    return text.replaceAll("(?<= |^)0+(?=\\d)", "").replaceAll("[.,\"]+(?= |$)", "");
  }

  /**
   * What was written does not come back; what was written elsewhere does, unless that fails too.
   */
  private Optional<Phrases.Finding> ofSaving(String text, String small) {
    Optional<Phrases.Finding> alone =
        says(small, "tape.as-well")
            ? Optional.empty()
            : finding(text, tape -> isLoaded(tape) && !isWritten(tape));
    return alone.or(() -> finding(text, tape -> isTyped(tape) && !isWritten(tape)));
  }

  private Optional<Phrases.Finding> motor(String text, String small) {
    if (says(small, "tape.always")) {
      return finding(text, tape -> has(tape.motor(), "tape.always.shows"));
    }
    return says(small, "tape.never")
        ? finding(text, tape -> has(tape.motor(), "tape.never.shows"))
        : finding(text, tape -> tape.motor().isEmpty());
  }

  private boolean says(String small, String key) {
    return Vocabulary.in(small, vocabulary.words(key)).isPresent();
  }

  private boolean has(String shown, String key) {
    return vocabulary.words(key).stream().anyMatch(shown::contains);
  }

  private PlayedTape healthy() {
    return outcomes().get(lookbook.outcomes(Drill.TAPE).get(0));
  }

  /** Outcomes that can be read, taken apart when the first phrase asks for them. */
  private Map<String, PlayedTape> outcomes() {
    if (read.isEmpty()) {
      lookbook.outcomes(Drill.TAPE).stream()
          .filter(o -> PictureText.of(o).isShown())
          .forEach(o -> read.put(o, PlayedTape.of(o, prompt)));
    }
    return read;
  }

  private boolean isLoaded(PlayedTape tape) {
    return !tape.answers().isEmpty() && tape.answers().get(0).equals(healthy().answers().get(0));
  }

  /** What was written can be loaded again. */
  private boolean isWritten(PlayedTape tape) {
    return tape.answers().equals(healthy().answers());
  }

  /** What stands first behind the prompt is as on a healthy board. */
  private boolean isTyped(PlayedTape tape) {
    return !tape.typed().isEmpty() && tape.typed().get(0).equals(healthy().typed().get(0));
  }

  private boolean isSilent(String answer) {
    return has(answer, "tape.silent.shows");
  }

  private Optional<Phrases.Finding> finding(String text, Predicate<PlayedTape> holds) {
    List<String> meant = new ArrayList<>();
    outcomes()
        .forEach(
            (outcome, tape) -> {
              if (holds.test(tape)) {
                meant.add(outcome);
              }
            });
    return Phrases.Finding.of(Drill.TAPE, text, meant);
  }
}
