package faultfinch.machine;

import faultfinch.part.PartCatalog;
import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** The judgement about supply and heat: it lives in power.properties, not in code. */
final class PowerFigures {
  private static final Properties LINES = read();

  private PowerFigures() {}

  /**
   * One figure by its key, in the unit its comment in the file states.
   *
   * @throws IllegalArgumentException if the file has no such key
   */
  static int figure(String key) {
    String text = LINES.getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("power.properties has no figure '" + key + "'");
    }
    return Integer.parseInt(text.trim());
  }

  /** Milliamperes a part of this type draws at 5000 mV. */
  static int current(PartCatalog type) {
    return figure("current." + type.type());
  }

  /** A figure for a type of part, or 0 where the file gives none. */
  static int orNone(String stem, PartCatalog type) {
    String key = stem + "." + type.type();
    return LINES.containsKey(key) ? figure(key) : 0;
  }

  private static Properties read() {
    Properties properties = new Properties();
    try (InputStream in = PowerFigures.class.getResourceAsStream("power.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new IllegalStateException("power.properties cannot be read", e);
    }
    return properties;
  }
}
