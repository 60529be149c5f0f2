package faultfinch.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What {@code list} can list, the widest first. */
enum Subject {
  BOARDS("boards"),
  PARTS("parts"),
  PINS("pins"),
  NETS("nets"),
  FAULTS("faults"),
  OBSERVATIONS("observations"),
  CASES("cases"),
  TICKS("ticks");

  private final String word;

  Subject(String word) {
    this.word = word;
  }

  /** Whether it is about the parts of a board, so that one part can be picked. */
  boolean ofParts() {
    return switch (this) {
      case PARTS, PINS, NETS, FAULTS, OBSERVATIONS -> true;
      case BOARDS, CASES, TICKS -> false;
    };
  }

  /** As it is typed. */
  String word() {
    return word;
  }

  static Optional<Subject> named(String word) {
    return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
  }

  static List<String> all() {
    return Arrays.stream(values()).map(s -> s.word).toList();
  }
}
