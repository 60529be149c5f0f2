package faultfinch.workbench;

import faultfinch.attempt.Note;
import faultfinch.bench.Reading;
import faultfinch.fx.Words;
import faultfinch.symptom.Glass;
import faultfinch.symptom.Picture;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The display of the board as its owner sees it, in a drawn frame, and what it was read as. */
final class MonitorView extends VBox {
  private static final int CELLS = 16;
  private static final int DOT = 8;

  private final WorkbenchViewModel model;
  private final ImageView glass = new ImageView();
  private final Button look;
  private final Button bits;
  private final Label caption = new Label();

  MonitorView(WorkbenchViewModel model) {
    this.model = model;
    Words words = model.words();
    getStyleClass().add("monitor");
    setId("monitor");
    glass.setPreserveRatio(true);
    glass.setSmooth(true);
    StackPane frame = new StackPane(glass);
    frame.getStyleClass().add("bezel");
    frame.setMinWidth(0);
    glass.fitWidthProperty().bind(frame.widthProperty().subtract(28));
    look = new Button(words.say("monitor.look"));
    look.setId("look");
    look.getStyleClass().add("small-key");
    look.setOnAction(e -> model.lookAtScreen());
    look.disableProperty().bind(model.busy());
    bits = new Button(words.say("monitor.strip"));
    bits.setId("bits");
    bits.getStyleClass().add("small-key");
    bits.setMinWidth(Region.USE_PREF_SIZE);
    look.setMinWidth(Region.USE_PREF_SIZE);
    bits.setOnAction(e -> model.compareBits());
    bits.disableProperty().bind(model.busy());
    Label title = new Label(words.say("monitor.title"));
    title.getStyleClass().add("quiet");
    title.setMinWidth(Region.USE_PREF_SIZE);
    caption.setId("monitor-caption");
    caption.setMaxWidth(Double.MAX_VALUE);
    caption.getStyleClass().add("caption");
    HBox.setHgrow(caption, Priority.ALWAYS);
    HBox line = new HBox(8, title, caption, bits, look);
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(frame, line);
    model.seen().addListener((o, was, now) -> show());
    model.status().addListener((o, was, now) -> show());
    show();
  }

  private void show() {
    Optional<Note> note = model.seen().get();
    Words words = model.words();
    if (!model.status().get().powered()) {
      caption.setText(words.say("monitor.off"));
    } else if (note.isEmpty()) {
      caption.setText(words.say("monitor.unseen"));
    } else {
      caption.setText(words.say("monitor.seen", Integer.toString(note.get().number())));
    }
    List<Integer> cells =
        note.map(Note::reading)
            .map(r -> r instanceof Reading.Picture p ? p.cells() : List.<Integer>of())
            .orElse(List.of());
    glass.setImage(image(cells));
    glass.setAccessibleText(note.map(n -> n.reading().text()).orElse(caption.getText()));
  }

  private static WritableImage image(List<Integer> cells) {
    boolean lit = cells.size() == CELLS;
    Picture picture =
        Picture.of(new Glass(lit, lit ? cells : Collections.nCopies(CELLS, (int) ' ')), DOT);
    WritableImage image = new WritableImage(picture.width(), picture.height());
    image
        .getPixelWriter()
        .setPixels(
            0,
            0,
            picture.width(),
            picture.height(),
            PixelFormat.getIntArgbInstance(),
            picture.argb(),
            0,
            picture.width());
    return image;
  }

  /** Puts a mark on what the guide points at, if that is here. */
  void point(Asked.Beside beside) {
    mark(look, beside == Asked.Beside.LOOK);
    mark(bits, beside == Asked.Beside.BITS);
  }

  private static void mark(Button button, boolean yes) {
    button.getStyleClass().remove("asked");
    if (yes) {
      button.getStyleClass().add("asked");
    }
  }
}
