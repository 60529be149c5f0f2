package faultfinch.board;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;

/** Tamarisk's ROM images and their labels, as they are in the tree. */
final class TamariskImages {
  private static final Path FIRMWARE =
      Path.of("src/main/resources/faultfinch/boards/tamarisk/firmware");

  private TamariskImages() {}

  static byte[] bytes(String file) {
    try {
      return Files.readAllBytes(FIRMWARE.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Addresses by label. */
  static Map<String, Integer> labels(String file) {
    return new String(bytes(file), StandardCharsets.US_ASCII)
        .lines()
        .collect(
            Collectors.toMap(l -> l.substring(5), l -> Integer.parseInt(l.substring(0, 4), 16)));
  }
}
