package faultfinch.fx;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The words of one screen, kept in a file beside it, so that they can be put into another tongue.
 */
public final class Words {
  private final ResourceBundle bundle;

  private Words(ResourceBundle bundle) {
    this.bundle = bundle;
  }

  /** The words in the file {@code words.properties} of a screen's package. */
  public static Words of(Class<?> screen) {
    return new Words(ResourceBundle.getBundle(screen.getPackageName() + ".words", Locale.ROOT));
  }

  /** The text of a key, with its gaps filled in order. */
  public String say(String key, Object... gaps) {
    return new MessageFormat(bundle.getString(key), Locale.ROOT).format(gaps);
  }

  /** Whether the file has the key. */
  public boolean has(String key) {
    return bundle.containsKey(key);
  }
}
