package faultfinch.workbench;

import faultfinch.attempt.Hunch;
import faultfinch.bench.Breach;
import faultfinch.fx.Words;
import faultfinch.workbench.WorkbenchViewModel.Pending;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What must be answered before a move: a warning, or what you suspect and expect. */
final class AskView extends VBox {
  private static final double WIDTH = 380;

  private final WorkbenchViewModel model;
  private final Words words;

  AskView(WorkbenchViewModel model) {
    super(8);
    this.model = model;
    this.words = model.words();
    setId("ask");
    getStyleClass().add("ask");
    setMaxSize(WIDTH, Region.USE_PREF_SIZE);
    model.warning().addListener((o, was, now) -> show());
    model.hunch().addListener((o, was, now) -> show());
    model.passed().addListener((o, was, now) -> show());
    show();
  }

  private void show() {
    getChildren().clear();
    if (model.passed().get()) {
      passed();
    }
    model.warning().get().ifPresent(this::warn);
    model.hunch().get().ifPresent(p -> think());
    setVisible(!getChildren().isEmpty());
  }

  private void passed() {
    Button go = button("over.go", model::finish);
    go.getStyleClass().add("accent");
    go.disableProperty().bind(model.busy());
    getChildren().addAll(title("over.title"), wrapped(words.say("over.says")), go);
  }

  private void warn(Pending pending) {
    getChildren().add(title("warning.title"));
    for (Breach breach : pending.breaches()) {
      getChildren()
          .add(
              wrapped(
                  words.say(breach.toPerson() ? "warning.person" : "warning.board")
                      + " "
                      + breach.reason()));
    }
    Button leave = button("warning.leave", model::leave);
    leave.getStyleClass().add("accent");
    getChildren().add(new HBox(8, leave, button("warning.anyway", model::actAnyway)));
  }

  private void think() {
    getChildren().add(title("hunch.title"));
    ComboBox<String> suspect = new ComboBox<>();
    suspect.setId("hunch-suspect");
    model.card().board().parts().forEach(p -> suspect.getItems().add(p.ref()));
    ToggleGroup group = new ToggleGroup();
    FlowPane expects = new FlowPane(12, 6);
    for (Hunch.Expectation e : Hunch.Expectation.values()) {
      RadioButton button = new RadioButton(e.words());
      button.setUserData(e);
      button.setToggleGroup(group);
      expects.getChildren().add(button);
    }
    Button go =
        button(
            "hunch.go",
            () ->
                model.think(
                    new Hunch(
                        suspect.getValue(),
                        (Hunch.Expectation) group.getSelectedToggle().getUserData())));
    go.getStyleClass().add("accent");
    go.disableProperty()
        .bind(suspect.valueProperty().isNull().or(group.selectedToggleProperty().isNull()));
    getChildren()
        .addAll(
            new HBox(8, new Label(words.say("hunch.suspect")), suspect),
            new Label(words.say("hunch.expects")),
            expects,
            new HBox(8, go, button("hunch.skip", model::skipHunch)));
  }

  private Node title(String key) {
    Label title = new Label(words.say(key));
    title.getStyleClass().add("card-title");
    return title;
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  private Button button(String key, Runnable does) {
    Button button = new Button(words.say(key));
    button.setId(key.replace('.', '-'));
    button.setOnAction(e -> does.run());
    return button;
  }
}
