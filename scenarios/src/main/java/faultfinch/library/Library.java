package faultfinch.library;

import faultfinch.board.NearNames;
import faultfinch.format.Case;
import faultfinch.format.CaseReader;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The cases that come with the program. Their files are numbered without a gap, so the first number
 * that is missing ends the list and no index has to be kept.
 */
public final class Library {
  private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,2}");

  private Library() {}

  /** Labels of all shipped cases, in their order. */
  public static List<Case.Label> labels() {
    List<Case.Label> labels = new ArrayList<>();
    for (int number = 1; ; number++) {
      Optional<byte[]> json = bytes(number);
      if (json.isEmpty()) {
        return List.copyOf(labels);
      }
      labels.add(CaseReader.label(file(number), json.get()));
    }
  }

  /** The shipped case of a number, if there is one. */
  public static Optional<Case> numbered(int number) {
    return bytes(number).map(json -> CaseReader.read(file(number), json));
  }

  /**
   * The case a person means: number or name of a shipped one, or a file.
   *
   * @throws BadInput if it is neither, or the file is not right
   */
  public static Case find(String word) {
    if (NUMBER.matcher(word).matches()) {
      Optional<Case> numbered = numbered(Integer.parseInt(word));
      if (numbered.isPresent()) {
        return numbered.get();
      }
    }
    Optional<Case.Label> label = labels().stream().filter(l -> l.name().equals(word)).findFirst();
    return label.map(l -> numbered(l.number()).orElseThrow()).orElseGet(() -> onDisk(word));
  }

  private static Case onDisk(String word) {
    try {
      Path file = Path.of(word);
      return CaseReader.read(word, Files.readAllBytes(file));
    } catch (NoSuchFileException | InvalidPathException e) {
      List<String> names = labels().stream().map(Case.Label::name).toList();
      throw new BadInput(
          word,
          1,
          1,
          "no such case or file",
          "a case such as " + NearNames.of(word, names) + ", its number, or a case file");
    } catch (IOException e) {
      throw new BadInput(word, 1, 1, "a file that cannot be read", "a case file");
    }
  }

  /** Name of a shipped case's file. */
  static String file(int number) {
    return String.format(Locale.ROOT, "case-%02d.json", number);
  }

  private static Optional<byte[]> bytes(int number) {
    try (InputStream in = Library.class.getResourceAsStream(file(number))) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own " + file(number) + " cannot be read", e);
    }
  }
}
