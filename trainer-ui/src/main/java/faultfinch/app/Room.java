package faultfinch.app;

import faultfinch.attempt.CaseLine;
import faultfinch.attempt.Debrief;
import faultfinch.casebook.CasebookView;
import faultfinch.casebook.CasebookViewModel;
import faultfinch.debrief.DebriefView;
import faultfinch.debrief.DebriefViewModel;
import faultfinch.fx.Errands;
import faultfinch.fx.Skin;
import faultfinch.fx.Words;
import faultfinch.signal.BadInput;
import faultfinch.workbench.Play;
import faultfinch.workbench.WorkbenchView;
import faultfinch.workbench.WorkbenchViewModel;
import java.util.List;
import java.util.function.IntFunction;
import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;

/** The one window: the bench or the debrief, and the list of cases laid over either. */
final class Room extends StackPane {
  private final IntFunction<Play> begin;
  private final Errands errands;
  private final Words words = Words.of(Room.class);
  private final ObjectProperty<Skin> skin = new SimpleObjectProperty<>(Skin.DAY);
  private final CasebookViewModel cases;
  private final CasebookView casebook;
  private final StackPane place = new StackPane();

  /**
   * @param begin begins the case of a number; may take its time
   */
  Room(List<CaseLine> lines, IntFunction<Play> begin, Errands errands) {
    this.begin = begin;
    this.errands = errands;
    cases = new CasebookViewModel(lines, this::lay);
    casebook = new CasebookView(cases, this::closeCases);
    casebook.setVisible(false);
    getStylesheets().add(Skin.class.getResource("skin.css").toExternalForm());
    getStyleClass().add("root");
    getChildren().addAll(place, casebook);
    setOnKeyPressed(this::key);
    skin.addListener((o, was, now) -> wear());
    wear();
  }

  String title() {
    return words.say("title");
  }

  /** Opens a case on the bench. */
  void begin(int number) {
    cases.open(number);
  }

  private void key(KeyEvent e) {
    boolean typing =
        getScene().getFocusOwner() instanceof TextInputControl input && input.isEditable();
    if (typing || e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    if (e.getCode() == KeyCode.T) {
      skin.set(skin.get().other());
    } else if (e.getCode() == KeyCode.C) {
      openCases();
    }
  }

  private void wear() {
    Application.setUserAgentStylesheet(skin.get().sheet());
    getStyleClass().removeAll(skin.get().other().word());
    if (!getStyleClass().contains(skin.get().word())) {
      getStyleClass().add(skin.get().word());
    }
  }

  private void lay(int number) {
    show(new Label(words.say("opening", Integer.toString(number))));
    errands.send(() -> begin.apply(number), this::bench, this::failed);
  }

  private void bench(Play play) {
    WorkbenchViewModel model = new WorkbenchViewModel(play, errands, this::debrief);
    WorkbenchView view =
        new WorkbenchView(model, skin, new WorkbenchView.Doors(this::openCases, cases::openNext));
    show(view);
    view.enter();
  }

  private void debrief(Debrief debrief) {
    if (debrief.solved()) {
      cases.solvedNow();
    }
    show(
        new DebriefView(
            new DebriefViewModel(debrief),
            new DebriefView.Doors(cases::openNext, cases::openAgain, this::openCases)));
  }

  private void failed(RuntimeException e) {
    if (e instanceof BadInput) {
      show(new Label(e.getMessage()));
    } else {
      throw e;
    }
  }

  private void show(Node node) {
    place.getChildren().setAll(node);
  }

  private void openCases() {
    casebook.setVisible(true);
    casebook.enter();
  }

  private void closeCases() {
    casebook.setVisible(false);
    place.getChildren().get(0).requestFocus();
  }
}
