package faultfinch.signal;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** The electrical figures that are judgement: they live in electrical.properties, not in code. */
public final class Electrical {
  private static final Properties FIGURES = read();

  private Electrical() {}

  /**
   * One figure by its key, in the unit its comment in the file states (mV, ohm, ns, ms).
   *
   * @throws IllegalArgumentException if the file has no such key
   */
  public static int figure(String key) {
    String text = FIGURES.getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("electrical.properties has no figure '" + key + "'");
    }
    return Integer.parseInt(text.trim());
  }

  private static Properties read() {
    Properties properties = new Properties();
    try (InputStream in = Electrical.class.getResourceAsStream("electrical.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new IllegalStateException("electrical.properties cannot be read", e);
    }
    return properties;
  }
}
