package faultfinch.workbench;

import faultfinch.attempt.Strip;
import faultfinch.fx.Words;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What the display shows beside what it should, in bits; a column that differs is boxed in. */
final class StripView extends VBox {

  StripView(Strip strip, Words words, Runnable closed) {
    super(8);
    setId("strip");
    getStyleClass().add("strip");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    GridPane grid = new GridPane();
    grid.add(label(words.say("strip.shown"), "strip-head"), 0, 0);
    grid.add(label(words.say("strip.right"), "strip-head"), Strip.BITS + 2, 0);
    int differing = 0;
    for (int i = 0; i < Strip.BITS; i++) {
      boolean differs = strip.differs().get(i);
      differing += differs ? 1 : 0;
      String head = (differs ? "\u25bc" : "") + "D" + (Strip.BITS - 1 - i);
      grid.add(cell(head, differs, "strip-head"), i + 1, 0);
      grid.add(cell(head, differs, "strip-head"), Strip.BITS + 3 + i, 0);
    }
    for (int row = 0; row < strip.cells().size(); row++) {
      Strip.Cell cell = strip.cells().get(row);
      letter(grid, cell.shown(), 0, row + 1);
      letter(grid, cell.right(), Strip.BITS + 2, row + 1);
      for (int i = 0; i < Strip.BITS; i++) {
        int bit = Strip.BITS - 1 - i;
        boolean differs = strip.differs().get(i);
        grid.add(bit(cell.shown(), bit, differs), i + 1, row + 1);
        grid.add(bit(cell.right(), bit, differs), Strip.BITS + 3 + i, row + 1);
      }
    }
    Region gap = new Region();
    gap.setMinWidth(26);
    grid.add(gap, Strip.BITS + 1, 0);
    Button close = new Button(words.say("strip.close"));
    close.setOnAction(e -> closed.run());
    Label says =
        new Label(
            switch (differing) {
              case 0 -> words.say("strip.none");
              case 1 -> words.say("strip.one");
              default -> words.say("strip.more", Integer.toString(differing));
            });
    says.setWrapText(true);
    Label title = label(words.say("strip.title"), "card-title");
    getChildren().addAll(title, grid, says, close);
  }

  private static void letter(GridPane grid, int code, int column, int row) {
    Label letter = label(code < ' ' ? "\u00b7" : Character.toString(code), "strip-letter");
    GridPane.setHalignment(letter, HPos.RIGHT);
    grid.add(letter, column, row);
  }

  private static Label bit(int code, int bit, boolean differs) {
    return cell(Strip.Cell.bit(code, bit) ? "1" : "0", differs, "strip-bit");
  }

  private static Label cell(String text, boolean differs, String style) {
    Label label = label(text, style);
    label.setMinWidth(34);
    if (differs) {
      label.getStyleClass().add("strip-differs");
    }
    return label;
  }

  private static Label label(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    return label;
  }
}
