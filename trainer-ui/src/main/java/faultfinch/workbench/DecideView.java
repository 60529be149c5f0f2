package faultfinch.workbench;

import faultfinch.fx.Words;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Picks a place and what is wrong there, and asks once whether you are sure. */
final class DecideView extends VBox {
  private final DecideViewModel model;
  private final Words words;
  private final ToggleGroup group = new ToggleGroup();
  private final FlowPane wrongs = new FlowPane(12, 6);

  DecideView(DecideViewModel model, Words words) {
    this.model = model;
    this.words = words;
    setSpacing(8);
    getStyleClass().add("decide");
    ComboBox<DecideViewModel.Place> place = new ComboBox<>();
    place.setId("decide-place");
    place.getItems().setAll(model.places());
    place.setMaxWidth(Double.MAX_VALUE);
    place.setVisibleRowCount(12);
    place.setCellFactory(list -> cell());
    place.setButtonCell(cell());
    place.setPromptText(words.say("decide.none"));
    place.valueProperty().bindBidirectional(model.place());
    Button go = new Button(words.say("decide.go"));
    go.setId("decide-go");
    go.disableProperty().bind(model.wrong().isNull().or(model.asking()));
    go.setOnAction(e -> model.go());
    go.setDefaultButton(false);
    go.getStyleClass().add("accent");
    getChildren()
        .addAll(
            new Label(words.say("decide.where")),
            place,
            new Label(words.say("decide.what")),
            wrongs,
            go,
            sure());
    model.wrongs().addListener((ListChangeListener<String>) c -> fill());
    group
        .selectedToggleProperty()
        .addListener(
            (o, was, now) -> model.wrong().set(now == null ? null : (String) now.getUserData()));
    fill();
  }

  private Node sure() {
    Label ask = new Label(words.say("decide.sure"));
    ask.setWrapText(true);
    ask.setMinHeight(Region.USE_PREF_SIZE);
    Button yes = new Button(words.say("decide.yes"));
    yes.setId("decide-yes");
    yes.getStyleClass().add("accent");
    yes.setOnAction(e -> model.yes());
    Button no = new Button(words.say("decide.no"));
    no.setOnAction(e -> model.no());
    VBox box = new VBox(6, ask, new HBox(8, yes, no));
    box.getStyleClass().add("sure");
    box.visibleProperty().bind(model.asking());
    box.managedProperty().bind(Bindings.createBooleanBinding(box::isVisible, box.visibleProperty()));
    return box;
  }

  private void fill() {
    group.getToggles().clear();
    wrongs.getChildren().clear();
    for (String wrong : model.wrongs()) {
      RadioButton button = new RadioButton(DecideViewModel.brief(wrong));
      button.setUserData(wrong);
      button.setToggleGroup(group);
      button.getStyleClass().add("wrong");
      wrongs.getChildren().add(button);
    }
  }

  private ListCell<DecideViewModel.Place> cell() {
    return new ListCell<>() {
      @Override
      protected void updateItem(DecideViewModel.Place place, boolean empty) {
        super.updateItem(place, empty);
        if (empty || place == null) {
          setText(empty ? "" : words.say("decide.none"));
        } else {
          setText(
              place.ref().isEmpty()
                  ? words.say("decide.board")
                  : words.say("decide.place", place.ref(), place.role()));
        }
      }
    };
  }
}
