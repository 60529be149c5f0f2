package faultfinch.workbench;

import faultfinch.attempt.Note;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.collections.MapChangeListener;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The last three notes, the newest on top; they never leave the sight. */
final class NotesView extends VBox {
  private final WorkbenchViewModel model;

  NotesView(WorkbenchViewModel model) {
    this.model = model;
    setId("notes");
    getStyleClass().add("notes");
    setMinHeight(Region.USE_PREF_SIZE);
    model.notes().addListener((ListChangeListener<Note>) c -> show());
    model.twins().addListener((MapChangeListener<Integer, Object>) c -> show());
    show();
  }

  private void show() {
    List<Note> last = model.lastNotes();
    if (last.isEmpty()) {
      Label none = new Label(model.words().say("notes.none"));
      none.getStyleClass().add("quiet");
      none.setWrapText(true);
      getChildren().setAll(none);
      return;
    }
    getChildren().setAll(last.stream().map(n -> new SlipView(model, n, false)).toList());
    getChildren().get(0).getStyleClass().add("newest");
  }
}
