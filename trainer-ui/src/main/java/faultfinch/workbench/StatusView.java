package faultfinch.workbench;

import faultfinch.attempt.Status;
import faultfinch.fx.Words;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** One line: power, bench clock, pulls, field, and what the hand is on or what went amiss. */
final class StatusView extends HBox {
  private final WorkbenchViewModel model;
  private final Words words;
  private final Button power = new Button();
  private final Label clock = figure("clock");
  private final Label pulls = figure("pulls");
  private final Label field = figure("field");

  StatusView(WorkbenchViewModel model) {
    super(14);
    this.model = model;
    this.words = model.words();
    getStyleClass().add("status");
    setAlignment(Pos.CENTER_LEFT);
    power.setId("power");
    power.setMinWidth(Region.USE_PREF_SIZE);
    power.getStyleClass().add("power");
    power.setOnAction(e -> model.togglePower());
    power.disableProperty().bind(model.busy());
    Label hand = new Label();
    hand.setId("hand");
    Runnable say = () -> say(hand);
    model.message().addListener((o, was, now) -> say.run());
    model.news().addListener((o, was, now) -> say.run());
    model.board().sentence().addListener((o, was, now) -> say.run());
    hand.setMaxWidth(Double.MAX_VALUE);
    hand.setMinWidth(60);
    HBox.setHgrow(hand, Priority.ALWAYS);
    ProgressBar busy = new ProgressBar(ProgressBar.INDETERMINATE_PROGRESS);
    busy.setPrefWidth(70);
    busy.setMinWidth(70);
    busy.setAccessibleText(words.say("status.busy"));
    busy.visibleProperty().bind(model.busy());
    getChildren().addAll(power, clock, pulls, field, hand, busy);
    model.status().addListener((o, was, now) -> show());
    show();
  }

  /** What went amiss comes first, then what a decision brought, then what the hand is on. */
  private void say(Label hand) {
    hand.getStyleClass().removeAll("amiss", "news");
    if (!model.message().get().isEmpty()) {
      hand.setText(model.message().get());
      hand.getStyleClass().add("amiss");
    } else if (!model.news().get().isEmpty()) {
      hand.setText(model.news().get());
      hand.getStyleClass().add("news");
    } else {
      hand.setText(model.board().sentence().get());
    }
  }

  private static Label figure(String id) {
    Label label = new Label();
    label.setId(id);
    label.getStyleClass().add("figure");
    label.setMinWidth(Region.USE_PREF_SIZE);
    return label;
  }

  private void show() {
    Status status = model.status().get();
    power.setText(words.say(status.powered() ? "status.lit" : "status.dark"));
    power.setAccessibleText(words.say(status.powered() ? "status.power.off" : "status.power.on"));
    power.getStyleClass().remove("lit");
    if (status.powered()) {
      power.getStyleClass().add("lit");
    }
    clock.setText(words.say("status.clock", Integer.toString(status.minutes())));
    pulls.setText(
        switch (status.pulls()) {
          case 0 -> words.say("status.pulls.none");
          case 1 -> words.say("status.pulls.one");
          default -> words.say("status.pulls", Integer.toString(status.pulls()));
        });
    field.setVisible(status.field().isPresent());
    field.setManaged(status.field().isPresent());
    status
        .field()
        .ifPresent(
            f ->
                field.setText(
                    f == 1
                        ? words.say("status.field.one")
                        : words.say("status.field", Integer.toString(f))));
  }

  /** Whether the guide points here. */
  void point(boolean yes) {
    power.getStyleClass().remove("asked");
    if (yes) {
      power.getStyleClass().add("asked");
    }
  }
}
