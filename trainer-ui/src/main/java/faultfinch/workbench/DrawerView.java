package faultfinch.workbench;

import faultfinch.attempt.Note;
import faultfinch.attempt.Suspect;
import faultfinch.fx.Words;
import faultfinch.workbench.WorkbenchViewModel.Drawer;
import java.util.EnumMap;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.ListChangeListener;
import javafx.collections.MapChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One drawer for notebook, suspects and decision; a front with three keys opens it. */
final class DrawerView extends VBox {
  private final WorkbenchViewModel model;
  private final Words words;
  private final VBox notebook = new VBox(6);
  private final VBox suspects = new VBox(4);
  private final ScrollPane deciding;
  private final StackPane inside = new StackPane();
  private final BooleanProperty tight = new SimpleBooleanProperty();
  private final Map<Drawer, ToggleButton> keys = new EnumMap<>(Drawer.class);

  DrawerView(WorkbenchViewModel model) {
    this.model = model;
    this.words = model.words();
    getStyleClass().add("drawer");
    setId("drawer");
    deciding = scrolling(new DecideView(model.decide(), words));
    deciding
        .getContent()
        .layoutBoundsProperty()
        .addListener((o, was, now) -> deciding.setVvalue(model.decide().asking().get() ? 1 : 0));
    HBox front = new HBox(6);
    front.getStyleClass().add("drawer-front");
    key(front, Drawer.NOTEBOOK, "drawer.notebook", "N");
    key(front, Drawer.SUSPECTS, "drawer.suspects", "S");
    key(front, Drawer.DECIDE, "drawer.decide", "D");
    inside.getStyleClass().add("drawer-inside");
    VBox.setVgrow(inside, Priority.ALWAYS);
    inside.setMinHeight(0);
    getChildren().addAll(front, inside);
    model.drawer().addListener((o, was, now) -> open(now));
    model.notes().addListener((ListChangeListener<Note>) c -> showNotebook());
    model.twins().addListener((MapChangeListener<Integer, Object>) c -> showNotebook());
    model.suspects().addListener((ListChangeListener<Suspect>) c -> showSuspects());
    showNotebook();
    showSuspects();
    open(model.drawer().get());
  }

  /** Shorter words where there is little room. */
  void tighten(boolean yes) {
    tight.set(yes);
  }

  private void key(HBox front, Drawer drawer, String word, String letter) {
    ToggleButton key = new ToggleButton();
    key.textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    tight.get()
                        ? words.say("drawer.key.tight", words.say(word + ".tight"), letter)
                        : words.say("drawer.key", words.say(word), letter),
                tight));
    key.setId("drawer-" + letter);
    key.setMaxWidth(Double.MAX_VALUE);
    key.setMinWidth(0);
    HBox.setHgrow(key, Priority.ALWAYS);
    key.setOnAction(e -> model.toggle(drawer));
    keys.put(drawer, key);
    front.getChildren().add(key);
  }

  private void open(Drawer drawer) {
    keys.forEach((d, k) -> k.setSelected(d == drawer));
    switch (drawer) {
      case SHUT -> inside.getChildren().setAll(scrolling(new JobCardView(model.card(), words)));
      case NOTEBOOK -> inside.getChildren().setAll(scrolling(notebook));
      case SUSPECTS -> inside.getChildren().setAll(scrolling(suspects));
      case DECIDE -> inside.getChildren().setAll(deciding);
    }
  }

  private static ScrollPane scrolling(Node content) {
    ScrollPane pane = new ScrollPane(content);
    pane.setFitToWidth(true);
    pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return pane;
  }

  private void showNotebook() {
    notebook.getChildren().clear();
    model.notes().forEach(n -> notebook.getChildren().add(0, new SlipView(model, n, true)));
    if (model.notes().isEmpty()) {
      notebook.getChildren().add(quiet("drawer.notebook.empty"));
    }
  }

  private void showSuspects() {
    suspects.getChildren().clear();
    model.suspects().forEach(s -> suspects.getChildren().add(suspect(s)));
    if (model.suspects().isEmpty()) {
      suspects.getChildren().add(quiet("drawer.suspects.empty"));
    }
  }

  private Label quiet(String key) {
    Label label = new Label(words.say(key));
    label.getStyleClass().add("quiet");
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  private Node suspect(Suspect suspect) {
    Label place = new Label(suspect.place());
    place.setMinWidth(Region.USE_PREF_SIZE);
    Region bar = new Region();
    bar.getStyleClass().add("share");
    Region rest = new Region();
    HBox.setHgrow(rest, Priority.ALWAYS);
    long percent = Math.round(suspect.share() * 100);
    bar.setMinWidth(Math.max(2, suspect.share() * 150));
    Label share =
        new Label(
            percent == 0
                ? words.say("drawer.suspects.under")
                : words.say("drawer.suspects.share", Long.toString(percent)));
    share.getStyleClass().add("quiet");
    share.setMinWidth(Region.USE_PREF_SIZE);
    HBox row = new HBox(8, place, rest, bar, share);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("suspect");
    row.setOnMouseEntered(
        e -> model.board().plan().find(suspect.place()).ifPresent(model.board()::hover));
    row.setOnMouseExited(e -> model.board().leave());
    return row;
  }

  /** Whether the guide points here. */
  void point(boolean yes) {
    keys.get(Drawer.DECIDE).getStyleClass().remove("asked");
    if (yes) {
      keys.get(Drawer.DECIDE).getStyleClass().add("asked");
    }
  }
}
