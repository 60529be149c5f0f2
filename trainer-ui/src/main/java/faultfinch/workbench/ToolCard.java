package faultfinch.workbench;

import faultfinch.fx.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Separator;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The card that opens at the hand: what can be done there, each with its price. */
final class ToolCard extends VBox {
  private static final double WIDTH = 340;
  private static final double ROOM = 12;
  private static final int ONE_LINE = 36;

  /** Dots; a wrapped label inside a button does not know its own height. */
  private static final double LINE = 18;

  private final VBox lines = new VBox(2);
  private final Runnable closed;

  /**
   * @param says the place in words
   * @param told more about the place; empty for nothing
   */
  ToolCard(
      WorkbenchViewModel model, String says, String told, List<Choice> choices, Runnable closed) {
    this.closed = closed;
    Words words = model.words();
    getStyleClass().add("tool-card");
    setId("tool-card");
    setPrefWidth(WIDTH);
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    Label title = new Label(says);
    title.getStyleClass().add("card-title");
    title.setWrapText(true);
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    Button close = new Button("\u00d7");
    close.setAccessibleText(words.say("card.close"));
    close.getStyleClass().add("link-key");
    close.setOnAction(e -> closed.run());
    close.setMinWidth(Region.USE_PREF_SIZE);
    HBox head = new HBox(4, title, close);
    head.setAlignment(Pos.TOP_LEFT);
    getChildren().add(head);
    if (!told.isEmpty()) {
      Label more = new Label(told);
      more.setWrapText(true);
      more.setMinHeight(Region.USE_PREF_SIZE);
      more.getStyleClass().add("told");
      getChildren().add(more);
    }
    fill(model, choices);
    if (choices.isEmpty()) {
      Label none = new Label(words.say("card.nothing"));
      none.getStyleClass().add("quiet");
      lines.getChildren().add(none);
    }
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setMinHeight(40);
    getChildren().add(told.isEmpty() ? 1 : 2, scroll);
    setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.DOWN || e.getCode() == KeyCode.UP) {
            walk(e.getCode() == KeyCode.DOWN ? 1 : -1);
            e.consume();
          } else if (e.getCode() == KeyCode.ESCAPE) {
            closed.run();
            e.consume();
          }
        });
  }

  /** Looks, then moves; repairs stay folded until they are asked for. */
  private void fill(WorkbenchViewModel model, List<Choice> choices) {
    Choice.Kind last = Choice.Kind.LOOK;
    List<Node> repairs = new ArrayList<>();
    for (Choice choice : choices) {
      if (choice.kind() == Choice.Kind.REPAIR) {
        repairs.add(line(model, choice));
      } else {
        if (choice.kind() != last && !lines.getChildren().isEmpty()) {
          lines.getChildren().add(new Separator());
        }
        lines.getChildren().add(line(model, choice));
        last = choice.kind();
      }
    }
    if (!repairs.isEmpty()) {
      Button more = new Button(model.words().say("card.repairs", Integer.toString(repairs.size())));
      more.setId("card-repairs");
      more.getStyleClass().addAll("card-line", "quiet");
      more.setMaxWidth(Double.MAX_VALUE);
      more.setOnAction(
          e -> {
            lines.getChildren().remove(more);
            lines.getChildren().addAll(repairs);
            repairs.get(0).requestFocus();
            getParent().requestLayout();
          });
      lines.getChildren().add(more);
    }
    if (choices.stream().anyMatch(Choice::warned)) {
      Label legend = new Label("! " + model.words().say("card.warned"));
      legend.getStyleClass().add("warned");
      getChildren().add(legend);
    }
  }

  private Node line(WorkbenchViewModel model, Choice choice) {
    Label says = new Label(choice.says());
    boolean two = choice.says().length() > ONE_LINE;
    says.setWrapText(two);
    says.setPrefHeight(two ? 2 * LINE : LINE);
    says.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(says, Priority.ALWAYS);
    Label price = new Label(choice.price());
    price.getStyleClass().add("price");
    price.setMinWidth(Region.USE_PREF_SIZE);
    HBox row = new HBox(8, says);
    if (choice.warned()) {
      Label warned = new Label("!");
      warned.getStyleClass().add("warned");
      warned.setMinWidth(Region.USE_PREF_SIZE);
      row.getChildren().add(warned);
    }
    row.getChildren().add(price);
    row.setAlignment(Pos.CENTER_LEFT);
    Button button = new Button();
    button.setGraphic(row);
    button.setUserData(choice.move());
    button.setAccessibleText(
        choice.says()
            + " "
            + choice.price()
            + (choice.warned() ? ", " + model.words().say("card.warned") : ""));
    button.getStyleClass().add("card-line");
    button.setMaxWidth(Double.MAX_VALUE);
    row.prefWidthProperty().bind(button.widthProperty().subtract(18));
    button.disableProperty().bind(model.busy());
    button.setOnAction(
        e -> {
          closed.run();
          model.act(choice.move());
        });
    return button;
  }

  /** Puts the keyboard on the first line. */
  void enter() {
    lines.getChildren().stream()
        .filter(Button.class::isInstance)
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  private void walk(int by) {
    List<Node> all = lines.getChildren();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).isFocused()) {
        for (int to = i + by; to >= 0 && to < all.size(); to += by) {
          if (all.get(to) instanceof Button) {
            all.get(to).requestFocus();
            return;
          }
        }
        return;
      }
    }
    enter();
  }

  /** Lays the card beside a point and inside its parent. */
  void settleAt(double x, double y, double width, double height) {
    double high = Math.min(prefHeight(WIDTH), height - 2 * ROOM);
    double wide = Math.min(WIDTH, width - 2 * ROOM);
    double left = x + 24 + wide > width - ROOM ? x - 24 - wide : x + 24;
    resizeRelocate(
        Math.max(ROOM, Math.min(left, width - wide - ROOM)),
        Math.max(ROOM, Math.min(y - 20, height - high - ROOM)),
        wide,
        high);
  }
}
