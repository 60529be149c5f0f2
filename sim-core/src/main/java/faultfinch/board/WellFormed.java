package faultfinch.board;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads JSON that is well formed, and gives up at the first thing that is not: what is wrong then,
 * and where, is for {@link LocatedParser} to say. Most files are right, and a library that can tell
 * all that may be wrong takes longer to load than they take to read.
 *
 * <p>Gives up too where it would be right but odd: a key twice, forty values inside each other, a
 * number of a hundred digits.
 */
final class WellFormed {
  private static final int DEEPEST = 40;
  private static final int LONGEST_NUMBER = 100;
  private static final int HEX_DIGITS = 4;
  private static final int HEX = 16;

  private final Located.Source source;
  private final String text;
  private int at;
  private int line = 1;
  private int lineStart;

  private WellFormed(Located.Source source) {
    this.source = source;
    this.text = source.text();
  }

  /** The document, unless there is something about it. */
  static Optional<Located> document(Located.Source source) {
    WellFormed reader = new WellFormed(source);
    reader.blanks();
    Optional<Located> document = reader.value("", 0);
    reader.blanks();
    return reader.at == reader.text.length() ? document : Optional.empty();
  }

  private Optional<Located> value(String path, int depth) {
    Located.Place place = place();
    return switch (next()) {
      case '{' -> depth == DEEPEST ? Optional.empty() : object(path, place, depth + 1);
      case '[' -> depth == DEEPEST ? Optional.empty() : list(path, place, depth + 1);
      case '"' -> string(path, place);
      case 't' -> word("true", path, place, Located.Kind.TRUTH);
      case 'f' -> word("false", path, place, Located.Kind.TRUTH);
      case 'n' -> word("null", path, place, Located.Kind.NOTHING);
      default -> number(path, place);
    };
  }

  private Optional<Located> object(String path, Located.Place place, int depth) {
    List<Located.Entry> entries = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    at++;
    blanks();
    if (passed('}')) {
      return Optional.of(Located.object(source, path, place, entries));
    }
    do {
      blanks();
      Optional<Located> key = next() == '"' ? string(path, place()) : Optional.empty();
      blanks();
      if (key.isEmpty() || !seen.add(key.get().text()) || !passed(':')) {
        return Optional.empty();
      }
      blanks();
      String name = key.get().text();
      Optional<Located> value = value(path.isEmpty() ? name : path + "." + name, depth);
      if (value.isEmpty()) {
        return value;
      }
      entries.add(new Located.Entry(key.get(), value.get()));
      blanks();
    } while (passed(','));
    return passed('}')
        ? Optional.of(Located.object(source, path, place, entries))
        : Optional.empty();
  }

  private Optional<Located> list(String path, Located.Place place, int depth) {
    List<Located> items = new ArrayList<>();
    at++;
    blanks();
    if (passed(']')) {
      return Optional.of(Located.array(source, path, place, items));
    }
    do {
      blanks();
      Optional<Located> item = value(path + "[" + items.size() + "]", depth);
      if (item.isEmpty()) {
        return item;
      }
      items.add(item.get());
      blanks();
    } while (passed(','));
    return passed(']') ? Optional.of(Located.array(source, path, place, items)) : Optional.empty();
  }

  private Optional<Located> string(String path, Located.Place place) {
    int from = ++at;
    while (next() >= ' ' && next() != '"' && next() != '\\') {
      at++;
    }
    if (passed('"')) {
      return Optional.of(scalar(path, place, Located.Kind.TEXT, text.substring(from, at - 1)));
    }
    StringBuilder read = new StringBuilder(text.substring(from, at));
    while (next() >= ' ' && next() != '"') {
      int letter = next() == '\\' ? escaped() : text.charAt(at++);
      if (letter < 0) {
        return Optional.empty();
      }
      read.append((char) letter);
    }
    return passed('"')
        ? Optional.of(scalar(path, place, Located.Kind.TEXT, read.toString()))
        : Optional.empty();
  }

  /** The letter that an escape stands for, or below 0 for none. */
  private int escaped() {
    at += 2;
    return switch (at <= text.length() ? text.charAt(at - 1) : 0) {
      case '"' -> '"';
      case '\\' -> '\\';
      case '/' -> '/';
      case 'b' -> '\b';
      case 'f' -> '\f';
      case 'n' -> '\n';
      case 'r' -> '\r';
      case 't' -> '\t';
      case 'u' -> hex();
      default -> -1;
    };
  }

  private int hex() {
    int code = 0;
    for (int i = 0; i < HEX_DIGITS; i++) {
      char letter = next();
      int digit = letter < 0x80 ? Character.digit(letter, HEX) : -1;
      if (digit < 0) {
        return -1;
      }
      code = code << HEX_DIGITS | digit;
      at++;
    }
    return code;
  }

  private Optional<Located> number(String path, Located.Place place) {
    int from = at;
    passed('-');
    boolean right = next() == '0' ? passed('0') : digits();
    right &= !passed('.') || digits();
    if (right && (passed('e') || passed('E'))) {
      at += next() == '+' || next() == '-' ? 1 : 0;
      right = digits();
    }
    return right && ends() && at - from <= LONGEST_NUMBER
        ? Optional.of(scalar(path, place, Located.Kind.NUMBER, text.substring(from, at)))
        : Optional.empty();
  }

  /** Passes over digits; there must be one. */
  private boolean digits() {
    int from = at;
    while (next() >= '0' && next() <= '9') {
      at++;
    }
    return at > from;
  }

  private Optional<Located> word(String word, String path, Located.Place place, Located.Kind kind) {
    if (!text.startsWith(word, at)) {
      return Optional.empty();
    }
    at += word.length();
    return ends() ? Optional.of(scalar(path, place, kind, word)) : Optional.empty();
  }

  /** Whether a number or a word can end here. */
  private boolean ends() {
    return at == text.length() || " \t\r\n,]}".indexOf(text.charAt(at)) >= 0;
  }

  private Located scalar(String path, Located.Place place, Located.Kind kind, String value) {
    return Located.scalar(source, path, place, kind, value);
  }

  private Located.Place place() {
    return new Located.Place(line, at - lineStart + 1, at);
  }

  /** The letter to be read next; a zero at the end, which no document has. */
  private char next() {
    return at < text.length() ? text.charAt(at) : 0;
  }

  private boolean passed(char letter) {
    boolean here = at < text.length() && text.charAt(at) == letter;
    at += here ? 1 : 0;
    return here;
  }

  /** A line ends with either letter, or with both. */
  private void blanks() {
    while (at < text.length()) {
      char letter = text.charAt(at);
      if (letter == '\n' || letter == '\r') {
        boolean both = letter == '\r' && text.startsWith("\n", at + 1);
        at += both ? 2 : 1;
        line++;
        lineStart = at;
      } else if (letter == ' ' || letter == '\t') {
        at++;
      } else {
        return;
      }
    }
  }
}
