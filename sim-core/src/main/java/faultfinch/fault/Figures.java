package faultfinch.fault;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** The judgement about faults (grids, shares, modes, sights): it lives in faults.properties. */
final class Figures {
  private static final Properties LINES = read();

  private Figures() {}

  static int number(String key) {
    return Integer.parseInt(text(key));
  }

  static List<Integer> numbers(String key) {
    return Arrays.stream(text(key).split(",")).map(s -> Integer.valueOf(s.trim())).toList();
  }

  /** A line such as {@code open 61, short 16}, in the order of the line. */
  static Map<String, Double> weights(String key) {
    Map<String, Double> weights = new LinkedHashMap<>();
    for (String entry : text(key).split(",")) {
      String[] halves = entry.trim().split(" +");
      weights.put(halves[0], Double.valueOf(halves[1]));
    }
    return Collections.unmodifiableMap(weights);
  }

  static String text(String key) {
    return find(key)
        .orElseThrow(
            () -> new IllegalArgumentException("faults.properties has no figure '" + key + "'"));
  }

  static Optional<String> find(String key) {
    return Optional.ofNullable(LINES.getProperty(key)).map(String::trim);
  }

  private static Properties read() {
    Properties properties = new Properties();
    try (InputStream in = Figures.class.getResourceAsStream("faults.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new IllegalStateException("faults.properties cannot be read", e);
    }
    return properties;
  }
}
