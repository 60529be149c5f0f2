package faultfinch.cli;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * All that the commands say, kept apart from them so that it can be translated. A text holds its
 * gaps as {0}, {1} and so on; everything else in it stands for itself.
 */
final class Words {
  private final ResourceBundle texts =
      ResourceBundle.getBundle("faultfinch.cli.words", new Written());

  /** English stands where there is no translation, so that for English none is looked for. */
  private static final class Written extends ResourceBundle.Control {
    @Override
    public List<String> getFormats(String name) {
      return FORMAT_PROPERTIES;
    }

    @Override
    public List<Locale> getCandidateLocales(String name, Locale locale) {
      boolean english = locale.getLanguage().equals(Locale.ENGLISH.getLanguage());
      return english ? List.of(Locale.ROOT) : super.getCandidateLocales(name, locale);
    }
  }

  /** The text of a key with its gaps filled. */
  String say(String key, Object... gaps) {
    String text = texts.getString(key);
    for (int i = 0; i < gaps.length; i++) {
      text = text.replace("{" + i + "}", String.valueOf(gaps[i]));
    }
    return text;
  }

  /** Whether there is a text of this key. */
  boolean knows(String key) {
    return texts.containsKey(key);
  }

  /** That a command was given something it cannot use. */
  Misuse misuse(String key, Object... gaps) {
    return new Misuse(say(key, gaps));
  }
}
