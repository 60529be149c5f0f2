package faultfinch.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file to be written: whole or not at all, since it gets its name only when it is complete. */
final class OutFile {
  private static final String UNFINISHED = ".part";

  private final Path path;
  private final String given;
  private final Words words;

  private OutFile(Path path, String given, Words words) {
    this.path = path;
    this.given = given;
    this.words = words;
  }

  /**
   * Looks whether a file could stand there, so that no long run is made for nothing.
   *
   * @throws Misuse if not
   */
  static OutFile at(String given, Words words) {
    Path path;
    try {
      path = Path.of(given).toAbsolutePath();
      if (Files.exists(path)) {
        path = path.toRealPath();
      }
    } catch (InvalidPathException | IOException e) {
      throw words.misuse("file.no-path", given);
    }
    if (Files.isDirectory(path)) {
      throw words.misuse("file.directory", given);
    }
    if (Files.exists(path) && !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
      throw words.misuse("file.special", given);
    }
    Path folder = path.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw words.misuse("file.no-folder", given, folder);
    }
    if (!Files.isWritable(folder)) {
      throw words.misuse("file.not-writable", given, folder);
    }
    return new OutFile(path, given, words);
  }

  /** Where it will stand, links followed. */
  Path path() {
    return path;
  }

  /** Its name as given. */
  String given() {
    return given;
  }

  /**
   * Writes it.
   *
   * @throws Misuse if it cannot be written; what stood there before still does
   */
  void write(byte[] content) {
    Path unfinished = path.resolveSibling(path.getFileName() + UNFINISHED);
    try {
      Files.createFile(unfinished);
      try {
        Files.write(unfinished, content);
        Files.move(unfinished, path, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (FileAlreadyExistsException e) {
      throw words.misuse("file.in-the-way", given, unfinished);
    } catch (IOException e) {
      throw words.misuse("file.cannot-write", given, e.getClass().getSimpleName());
    }
  }
}
