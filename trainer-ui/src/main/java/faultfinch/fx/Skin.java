package faultfinch.fx;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import javafx.scene.paint.Color;

/** Day or night: the control library's skin, our own sheet over it, and the inks of the drawing. */
public enum Skin {
  DAY(
      new PrimerLight().getUserAgentStylesheet(),
      "day",
      new Inks(
          Color.web("#f4eddc"),
          Color.web("#ebe4cb"),
          Color.web("#fbf7ec"),
          Color.web("#232c42"),
          Color.web("#5d6579"),
          Color.web("#7d93a6"),
          Color.web("#bd9c74"),
          Color.web("#b3400f"),
          Color.web("#1d6a62"))),
  NIGHT(
      new PrimerDark().getUserAgentStylesheet(),
      "night",
      new Inks(
          Color.web("#1b1f29"),
          Color.web("#232936"),
          Color.web("#2b3242"),
          Color.web("#e6dcc4"),
          Color.web("#a49d8d"),
          Color.web("#5a7186"),
          Color.web("#80694d"),
          Color.web("#ff9a5c"),
          Color.web("#6cc5b8")));

  private final String sheet;
  private final String word;
  private final Inks inks;

  Skin(String sheet, String word, Inks inks) {
    this.sheet = sheet;
    this.word = word;
    this.inks = inks;
  }

  /**
   * The inks of the drawing.
   *
   * @param paper under everything
   * @param board its own tone on the paper
   * @param part the bodies of parts
   * @param ink outlines and letters
   * @param faint second-rank outlines and letters
   * @param near tracks on the part side
   * @param far tracks on the solder side
   * @param mark what is pointed at
   * @param noted what was looked at before
   */
  public record Inks(
      Color paper,
      Color board,
      Color part,
      Color ink,
      Color faint,
      Color near,
      Color far,
      Color mark,
      Color noted) {}

  /** The sheet of the control library. */
  public String sheet() {
    return sheet;
  }

  /** The style class that the root of a window wears. */
  public String word() {
    return word;
  }

  public Inks inks() {
    return inks;
  }

  public Skin other() {
    return this == DAY ? NIGHT : DAY;
  }
}
