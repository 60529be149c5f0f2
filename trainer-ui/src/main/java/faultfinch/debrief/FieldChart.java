package faultfinch.debrief;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A row of columns, one for each move: how many causes were still possible after it. */
final class FieldChart extends HBox {
  private static final double HIGH = 70;

  /**
   * @param field causes left after each move, in order
   */
  FieldChart(List<Integer> field) {
    super(6);
    setAlignment(Pos.BOTTOM_LEFT);
    getStyleClass().add("field-chart");
    double most = Math.log(1 + field.stream().mapToInt(Integer::intValue).max().orElse(1));
    for (int i = 0; i < field.size(); i++) {
      Region column = new Region();
      column.getStyleClass().add("field-column");
      column.setPrefSize(22, Math.max(3, HIGH * Math.log(1 + field.get(i)) / most));
      column.setMinHeight(Region.USE_PREF_SIZE);
      Label left = new Label(Integer.toString(field.get(i)));
      Label number = new Label(Integer.toString(i + 1));
      number.getStyleClass().add("price");
      VBox one = new VBox(2, left, column, number);
      one.setAlignment(Pos.BOTTOM_CENTER);
      getChildren().add(one);
    }
  }
}
