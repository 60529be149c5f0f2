package faultfinch.cli;

/** The words after a command do not fit it; the message is one line that says what would. */
final class Misuse extends RuntimeException {
  Misuse(String message) {
    super(message);
  }
}
