package faultfinch.workbench;

import faultfinch.fx.Words;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
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

  /** Dots; two side by side where there is room. */
  private static final double KIND = 176;

  private final DecideViewModel model;
  private final Words words;
  private final ToggleGroup group = new ToggleGroup();
  private final FlowPane kinds = new FlowPane(6, 4);
  private final BooleanProperty several = new SimpleBooleanProperty();

  DecideView(DecideViewModel model, Words words) {
    super(8);
    this.model = model;
    this.words = words;
    getStyleClass().add("decide");
    ComboBox<DecideViewModel.Place> place = new ComboBox<>();
    place.setId("decide-place");
    place.getItems().setAll(model.places());
    place.setMaxWidth(Double.MAX_VALUE);
    place.setVisibleRowCount(10);
    place.setCellFactory(list -> cell());
    place.setButtonCell(cell());
    place.valueProperty().bindBidirectional(model.place());
    Label what = new Label(words.say("decide.what"));
    Button go = new Button(words.say("decide.go"));
    go.setId("decide-go");
    go.disableProperty().bind(model.wrong().isNull());
    go.visibleProperty().bind(model.asking().not());
    go.managedProperty().bind(model.asking().not());
    go.setOnAction(e -> model.go());
    go.getStyleClass().add("accent");
    Button giveUp = new Button(words.say("decide.give.up"));
    giveUp.setId("give-up");
    giveUp.getStyleClass().add("link-key");
    giveUp.setOnAction(e -> model.giveUp());
    getChildren()
        .addAll(
            new Label(words.say("decide.where")), place, what, kinds, where(), go, sure(), giveUp);
    model.kinds().addListener((ListChangeListener<String>) c -> fill());
    model.wheres().addListener((ListChangeListener<String>) c -> hasSeveral());
    group
        .selectedToggleProperty()
        .addListener(
            (o, was, now) -> model.kind().set(now == null ? null : (String) now.getUserData()));
    fill();
  }

  private void hasSeveral() {
    several.set(!model.wheres().isEmpty());
  }

  private Node where() {
    ComboBox<String> where = new ComboBox<>(model.wheres());
    where.setId("decide-where");
    where.setPromptText(words.say("decide.which"));
    where.setMaxWidth(Double.MAX_VALUE);
    where.setVisibleRowCount(10);
    where.valueProperty().bindBidirectional(model.where());
    where.visibleProperty().bind(several);
    where.managedProperty().bind(several);
    return where;
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
    box.managedProperty().bind(model.asking());
    return box;
  }

  private void fill() {
    group.selectToggle(null);
    group.getToggles().clear();
    kinds.getChildren().clear();
    for (String kind : model.kinds()) {
      String key = "wrong." + kind.replace(' ', '.');
      RadioButton button = new RadioButton(words.has(key) ? words.say(key) : kind);
      button.setUserData(kind);
      button.setToggleGroup(group);
      button.setPrefWidth(KIND);
      kinds.getChildren().add(button);
    }
    if (model.kinds().isEmpty()) {
      Label none = new Label(words.say("decide.none"));
      none.getStyleClass().add("quiet");
      kinds.getChildren().add(none);
    }
  }

  private ListCell<DecideViewModel.Place> cell() {
    return new ListCell<>() {
      @Override
      protected void updateItem(DecideViewModel.Place place, boolean empty) {
        super.updateItem(place, empty);
        if (empty || place == null) {
          setText(words.say("decide.none"));
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
