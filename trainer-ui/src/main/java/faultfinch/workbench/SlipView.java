package faultfinch.workbench;

import faultfinch.attempt.Note;
import faultfinch.bench.Moves;
import faultfinch.bench.Reading;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One note on a slip of paper: its number, what was done, what it showed. */
final class SlipView extends VBox {
  private static final double TWO_LINES = 37;

  /**
   * @param whole whether long readings are shown in full
   */
  SlipView(WorkbenchViewModel model, Note note, boolean whole) {
    getStyleClass().add("slip");
    Label number = new Label(Integer.toString(note.number()));
    number.getStyleClass().add("flag");
    number.setMinWidth(Region.USE_PREF_SIZE);
    Label move = new Label(Choices.brief(note.move()));
    move.getStyleClass().add("slip-move");
    move.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(move, Priority.ALWAYS);
    HBox head = new HBox(6, number, move);
    head.setAlignment(Pos.CENTER_LEFT);
    Label price = new Label(model.price(note));
    price.getStyleClass().add("price");
    price.setMinWidth(Region.USE_PREF_SIZE);
    if (note.move().kind() == Moves.LOOK && model.card().twinFree()) {
      Button compare = new Button(model.words().say("twin.ask"));
      compare.getStyleClass().add("link-key");
      compare.setMinWidth(Region.USE_PREF_SIZE);
      compare.setFocusTraversable(whole);
      compare.setOnAction(e -> model.compare(note));
      head.getChildren().add(compare);
    }
    if (!price.getText().isEmpty()) {
      head.getChildren().add(price);
    }
    Label showed = new Label(note.reading().text());
    showed.getStyleClass().add("slip-showed");
    showed.setWrapText(true);
    showed.setMinHeight(whole ? Region.USE_PREF_SIZE : 0);
    showed.setMaxHeight(whole ? Region.USE_COMPUTED_SIZE : TWO_LINES);
    showed.setTooltip(new Tooltip(note.reading().text()));
    getChildren().addAll(head, showed);
    Reading twin = model.twins().get(note.number());
    if (twin != null) {
      Label beside = new Label(model.words().say("twin.label", twin.text()));
      beside.getStyleClass().add("slip-twin");
      beside.setWrapText(true);
      beside.setMinHeight(whole ? Region.USE_PREF_SIZE : 0);
      getChildren().add(beside);
    }
  }
}
