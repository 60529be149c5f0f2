package faultfinch.board;

import faultfinch.signal.BadInput;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A JSON value that knows where it stands, so that whatever is wrong with it can be said with line
 * and column. Every question asked of it that it cannot answer is a {@link BadInput}.
 */
public final class Located {

  /** The kinds of JSON value, as a message calls them. */
  public enum Kind {
    OBJECT("an object"),
    ARRAY("a list"),
    TEXT("a text"),
    NUMBER("a number"),
    TRUTH("true or false"),
    NOTHING("null");

    private final String called;

    Kind(String called) {
      this.called = called;
    }

    /** As a message calls it, with its article. */
    public String called() {
      return called;
    }
  }

  /** One key of an object with its value; the key is a text that knows its place. */
  public record Entry(Located key, Located value) {}

  /** The text all values of one file are part of. */
  record Source(String file, String text) {}

  private static final int SHOWN = 60;
  private static final int SHORT = 9;

  private final Source source;
  private final String path;
  private final Kind kind;
  private final int line;
  private final int column;
  private final int offset;
  private final String text;
  private final List<Located> items;
  private final List<Entry> entries;

  private Located(
      Source source,
      String path,
      Place place,
      Kind kind,
      String text,
      List<Located> items,
      List<Entry> entries) {
    this.source = source;
    this.path = path;
    this.kind = kind;
    this.line = place.line();
    this.column = place.column();
    this.offset = place.offset();
    this.text = text;
    this.items = List.copyOf(items);
    this.entries = List.copyOf(entries);
  }

  /** Where a value begins; line and column from 1, offset from 0. */
  record Place(int line, int column, int offset) {}

  static Located scalar(Source source, String path, Place place, Kind kind, String text) {
    return new Located(source, path, place, kind, text, List.of(), List.of());
  }

  static Located array(Source source, String path, Place place, List<Located> items) {
    return new Located(source, path, place, Kind.ARRAY, "", items, List.of());
  }

  static Located object(Source source, String path, Place place, List<Entry> entries) {
    return new Located(source, path, place, Kind.OBJECT, "", List.of(), entries);
  }

  /**
   * Reads one JSON document.
   *
   * @param file its name for messages
   * @throws BadInput if it is empty, not UTF-8, not JSON, or has a key twice in one object
   */
  public static Located read(String file, byte[] utf8) {
    return new LocatedParser(file, utf8).document();
  }

  /** An object in the same place with other keys and values. */
  Located with(List<Entry> others) {
    require(Kind.OBJECT);
    return object(source, path, new Place(line, column, offset), others);
  }

  /** A list in the same place with other values. */
  Located of(List<Located> others) {
    require(Kind.ARRAY);
    return array(source, path, new Place(line, column, offset), others);
  }

  public Kind kind() {
    return kind;
  }

  /** Name of the file, for messages. */
  public String file() {
    return source.file();
  }

  /** From 1. */
  public int line() {
    return line;
  }

  /** From 1, in characters. */
  public int column() {
    return column;
  }

  /** Where it stands in the document, such as {@code parts[3].type}; empty for the whole. */
  public String path() {
    return path;
  }

  /** The keys and values of an object, in the order written. */
  public List<Entry> entries() {
    require(Kind.OBJECT);
    return entries;
  }

  /** The value of a key that an object must have. */
  public Located get(String key) {
    return find(key)
        .orElseThrow(
            () ->
                wrong(
                    (path.isEmpty() ? "" : path + " ") + "without '" + key + "'",
                    "an object with '" + key + "'"));
  }

  /** The value of a key that an object may have. */
  public Optional<Located> find(String key) {
    for (Entry entry : entries()) {
      if (entry.key.text.equals(key)) {
        return Optional.of(entry.value);
      }
    }
    return Optional.empty();
  }

  /** Checks that an object has all of the first keys and none that is in neither list. */
  public Located keys(List<String> required, List<String> optional) {
    Set<String> known = new LinkedHashSet<>(required);
    known.addAll(optional);
    for (Entry e : entries()) {
      if (!known.contains(e.key().text)) {
        throw e.key()
            .wrong("unknown key '" + e.key().text + "'", NearNames.of(e.key().text, known));
      }
    }
    required.forEach(this::get);
    return this;
  }

  /** The values of a list. */
  public List<Located> items() {
    require(Kind.ARRAY);
    return items;
  }

  /** The values of a list of just so many. */
  public List<Located> items(int count) {
    if (items().size() != count) {
      throw wrong("a list of " + count);
    }
    return items;
  }

  /** The text of a text. */
  public String text() {
    require(Kind.TEXT);
    return text;
  }

  /** A text with something in it. */
  public String words() {
    if (text().isBlank()) {
      throw wrong("a text that is not empty");
    }
    return text;
  }

  /**
   * A text of a certain shape.
   *
   * @param right what has this shape, with an example
   */
  public String text(Pattern shape, String right) {
    if (!shape.matcher(text()).matches()) {
      throw wrong(right);
    }
    return text;
  }

  /** One of a few texts. */
  public String oneOf(List<String> texts) {
    if (!texts.contains(text())) {
      throw wrong(NearNames.alternatives(texts));
    }
    return text;
  }

  /** A whole number; both limits are allowed. */
  public int whole(int least, int most) {
    if (kind == Kind.NUMBER && isShort(text)) {
      int plain = Integer.parseInt(text);
      if (plain >= least && plain <= most) {
        return plain;
      }
    }
    String right = "a whole number from " + least + " to " + most;
    BigDecimal number = number(right);
    boolean within =
        number.compareTo(BigDecimal.valueOf(least)) >= 0
            && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    if (!within || number.stripTrailingZeros().scale() > 0) {
      throw wrong(right);
    }
    return number.intValueExact();
  }

  /** Whether a number is a few digits and nothing else, as nearly all are. */
  private static boolean isShort(String number) {
    boolean digits = number.length() < SHORT;
    for (int i = 0; i < number.length() && digits; i++) {
      digits = number.charAt(i) >= '0' && number.charAt(i) <= '9';
    }
    return digits;
  }

  /** A number, whole or not; both limits are allowed. */
  public BigDecimal number(String least, String most) {
    String right = "a number from " + least + " to " + most;
    BigDecimal number = number(right);
    if (number.compareTo(new BigDecimal(least)) < 0 || number.compareTo(new BigDecimal(most)) > 0) {
      throw wrong(right);
    }
    return number;
  }

  /** True or false. */
  public boolean truth() {
    require(Kind.TRUTH);
    return Boolean.parseBoolean(text);
  }

  /** That this value is not right, found as it stands. */
  public BadInput wrong(String right) {
    return wrong(shown(), right);
  }

  /** That this value is not right. */
  public BadInput wrong(String found, String right) {
    return new BadInput(source.file(), line, column, found, right);
  }

  /**
   * That a text is not right from one of its characters on.
   *
   * @param index of the character in {@link #text()}, from 0; its length for the end
   */
  public BadInput wrongAt(int index, String found, String right) {
    return new BadInput(source.file(), line, column + written(index), found, right);
  }

  /** Characters from the opening quote to one of the text, as written: an escape is longer. */
  private int written(int index) {
    int at = 1;
    for (int i = 0; i < index; i++) {
      char c = source.text().charAt(offset + at);
      boolean unicode = c == '\\' && source.text().charAt(offset + at + 1) == 'u';
      at += c != '\\' ? 1 : unicode ? 6 : 2;
    }
    return at;
  }

  private BigDecimal number(String right) {
    if (kind != Kind.NUMBER) {
      throw wrong(right);
    }
    try {
      return new BigDecimal(text);
    } catch (NumberFormatException e) {
      throw wrong(right); // an exponent beyond all bounds
    }
  }

  private void require(Kind wanted) {
    if (kind != wanted) {
      throw wrong(wanted.called());
    }
  }

  private String shown() {
    return switch (kind) {
      case TEXT -> "'" + clipped() + "'";
      case NUMBER, TRUTH, NOTHING -> clipped();
      case ARRAY -> "a list of " + items.size();
      case OBJECT -> "an object";
    };
  }

  private String clipped() {
    return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "...";
  }
}
