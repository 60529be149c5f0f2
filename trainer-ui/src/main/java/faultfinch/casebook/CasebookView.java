package faultfinch.casebook;

import faultfinch.attempt.CaseLine;
import faultfinch.fx.Words;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The list of cases, laid over whatever is open. */
public final class CasebookView extends StackPane {
  private final CasebookViewModel model;
  private final Runnable closed;
  private final VBox lines = new VBox(2);

  public CasebookView(CasebookViewModel model, Runnable closed) {
    this.model = model;
    this.closed = closed;
    Words words = model.words();
    setId("casebook");
    getStyleClass().add("casebook-veil");
    getStylesheets().add(CasebookView.class.getResource("casebook.css").toExternalForm());
    Label title = new Label(words.say("title"));
    title.getStyleClass().add("casebook-title");
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    Button close = new Button(words.say("close"));
    close.setOnAction(e -> closed.run());
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    HBox head = new HBox(8, title, close);
    head.setAlignment(Pos.CENTER_LEFT);
    VBox book = new VBox(8, head, scroll);
    book.getStyleClass().add("casebook");
    book.setMaxSize(560, Region.USE_PREF_SIZE);
    getChildren().add(book);
    setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE || e.getCode() == KeyCode.C) {
            closed.run();
            e.consume();
          } else if (e.getCode() == KeyCode.DOWN || e.getCode() == KeyCode.UP) {
            walk(e.getCode() == KeyCode.DOWN ? 1 : -1);
            e.consume();
          }
        });
    setOnMouseClicked(
        e -> {
          if (e.getTarget() == this) {
            closed.run();
          }
        });
  }

  /** Lists the cases as they stand and takes the keyboard. */
  public void enter() {
    lines.getChildren().setAll(model.cases().stream().map(this::line).toList());
    lines.getChildren().stream()
        .filter(n -> n.getUserData().equals(model.current().get()))
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  private Node line(CaseLine line) {
    Label number = new Label(Integer.toString(line.number()));
    number.getStyleClass().add("case-number");
    number.setMinWidth(32);
    number.setAlignment(Pos.CENTER);
    Label title = new Label(line.title());
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    Label state = new Label(model.state(line));
    state.getStyleClass().add("case-state");
    state.setMinWidth(Region.USE_PREF_SIZE);
    HBox row = new HBox(10, number, title, state);
    row.setAlignment(Pos.CENTER_LEFT);
    Button button = new Button();
    button.setGraphic(row);
    button.setUserData(line.number());
    button.setId("case-" + line.number());
    button.setAccessibleText(line.title());
    button.setMaxWidth(Double.MAX_VALUE);
    button.getStyleClass().add("case-line");
    row.prefWidthProperty().bind(button.widthProperty().subtract(18));
    button.setOnAction(
        e -> {
          closed.run();
          model.open(line.number());
        });
    return button;
  }

  private void walk(int by) {
    for (int i = 0; i < lines.getChildren().size(); i++) {
      if (lines.getChildren().get(i).isFocused()) {
        int to = Math.max(0, Math.min(lines.getChildren().size() - 1, i + by));
        lines.getChildren().get(to).requestFocus();
        return;
      }
    }
  }
}
