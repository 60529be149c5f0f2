package faultfinch.workbench;

import faultfinch.attempt.Note;
import faultfinch.board.PadPlace;
import faultfinch.fx.Skin;
import faultfinch.workbench.WorkbenchViewModel.Drawer;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.collections.ListChangeListener;
import javafx.geometry.Point2D;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The bench: the board, the monitor, the notes, the drawer and two thin lines. */
public final class WorkbenchView extends BorderPane {

  /** The ways that lead away from the bench. */
  public record Doors(Runnable cases, Runnable next) {}

  private static final double ROOMY_WIDTH = 1060;
  private static final double ROOMY_HEIGHT = 600;

  private final WorkbenchViewModel model;
  private final ObjectProperty<Skin> skin;
  private final BoardView board;
  private final MonitorView monitor;
  private final TopView top;
  private final DrawerView drawer;
  private final StackPane main = new StackPane();
  private final VBox column = new VBox(8);
  private final Pane above = new CardPane();
  private ToolCard card;
  private Point2D cardAt = Point2D.ZERO;
  private boolean roomy = true;
  private boolean swapped;

  public WorkbenchView(WorkbenchViewModel model, ObjectProperty<Skin> skin, Doors doors) {
    this.model = model;
    this.skin = skin;
    getStyleClass().add("workbench");
    getStylesheets().add(WorkbenchView.class.getResource("workbench.css").toExternalForm());
    board = new BoardView(model.board(), skin, this::picked);
    monitor = new MonitorView(model);
    top =
        new TopView(
            model,
            new TopView.Ways(
                doors.cases(),
                doors.next(),
                this::toggleSkin,
                this::swap,
                this::owner,
                this::enter));
    drawer = new DrawerView(model);
    VBox.setVgrow(drawer, Priority.ALWAYS);
    drawer.setMinHeight(0);
    column.getChildren().addAll(monitor, new NotesView(model), drawer);
    column.getStyleClass().add("column");
    above.setPickOnBounds(false);
    AskView ask = new AskView(model);
    main.getChildren().addAll(board, above, ask);
    main.getStyleClass().add("main");
    main.setMinSize(0, 0);
    board.setMinSize(0, 0);
    setTop(top);
    setCenter(main);
    setRight(column);
    StatusView status = new StatusView(model);
    setBottom(status);
    model
        .asked()
        .addListener(
            (o, was, now) -> {
              status.point(now.beside() == Asked.Beside.POWER);
              monitor.point(now.beside());
              drawer.point(now.beside() == Asked.Beside.DECIDE);
            });
    model.notes().addListener((ListChangeListener<Note>) c -> marks());
    model.offers().addListener((o, was, now) -> closeCard());
    model.warning().addListener((o, was, now) -> closeCard());
    model.hunch().addListener((o, was, now) -> closeCard());
    model.strip().addListener((o, was, now) -> showStrip());
    setOnKeyPressed(this::key);
    arrange();
  }

  /** Puts the keyboard on the board. */
  public void enter() {
    board.requestFocus();
  }

  @Override
  protected void layoutChildren() {
    boolean now = getWidth() >= ROOMY_WIDTH && getHeight() >= ROOMY_HEIGHT;
    if (now != roomy) {
      roomy = now;
      arrange();
    }
    super.layoutChildren();
  }

  private void arrange() {
    double wide = roomy ? 400 : 272;
    column.setPrefWidth(wide);
    column.setMinWidth(wide);
    column.setMaxWidth(wide);
    getStyleClass().remove("tight");
    if (!roomy) {
      getStyleClass().add("tight");
    }
    top.tighten(!roomy);
    drawer.tighten(!roomy);
    boolean monitorInMain = !roomy && swapped;
    column.getChildren().remove(monitor);
    main.getChildren().remove(monitor);
    if (roomy) {
      column.getChildren().add(0, monitor);
    } else if (monitorInMain) {
      main.getChildren().add(0, monitor);
    }
    board.setVisible(!monitorInMain);
    above.setVisible(true);
  }

  private void showStrip() {
    main.getChildren().removeIf(StripView.class::isInstance);
    model
        .strip()
        .get()
        .ifPresent(s -> main.getChildren().add(new StripView(s, model.words(), model::leave)));
  }

  private void swap() {
    swapped = !roomy && !swapped;
    closeCard();
    arrange();
    if (!swapped) {
      enter();
    }
  }

  private void toggleSkin() {
    skin.set(skin.get().other());
  }

  private void owner() {
    open(new Spot.OnOwner(), new Point2D(main.getWidth(), 0), model.card().complaint());
  }

  private void picked(Spot spot, Point2D at) {
    if (spot instanceof Spot.OnPart part
        && model.board().plan().laid(part.ref()).part().type().type().equals("KEY")) {
      model.press(part.ref());
      return;
    }
    if (spot instanceof Spot.Nowhere) {
      model.board().letGo();
      closeCard();
    } else {
      open(spot, at, "");
    }
  }

  private void open(Spot spot, Point2D at, String told) {
    closeCard();
    if (model.asking()) {
      return;
    }
    card =
        new ToolCard(
            model,
            model.board().sentence(spot),
            told,
            model.choices(spot),
            () -> {
              closeCard();
              enter();
            });
    cardAt = at;
    above.getChildren().add(card);
    card.enter();
  }

  private void closeCard() {
    above.getChildren().clear();
    card = null;
  }

  private void marks() {
    Map<PadPlace, Integer> flags = new LinkedHashMap<>();
    Set<String> out = new LinkedHashSet<>();
    for (Note note : model.notes()) {
      String place = Choices.place(note.move());
      model
          .board()
          .plan()
          .find(place.split(" ", 2)[0])
          .ifPresent(
              spot -> {
                if (spot instanceof Spot.OnPin pin) {
                  flags.put(pin.place(), note.number());
                }
              });
      switch (note.move().kind()) {
        case TAKE_OUT -> out.add(place);
        case PUT_BACK, FIT_NEW, EXCHANGE -> out.remove(place);
        default -> {}
      }
    }
    board.mark(out, flags);
  }

  private void key(KeyEvent e) {
    boolean typing = getScene().getFocusOwner() instanceof TextInputControl;
    switch (e.getCode()) {
      case ESCAPE -> {
        model.leave();
        closeCard();
        model.board().letGo();
        enter();
        e.consume();
        return;
      }
      default -> {
        if (typing || e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
          return;
        }
      }
    }
    switch (e.getCode()) {
      case N -> model.toggle(Drawer.NOTEBOOK);
      case S -> model.toggle(Drawer.SUSPECTS);
      case D -> model.toggle(Drawer.DECIDE);
      case P -> model.togglePower();
      case L -> model.lookAtScreen();
      case B -> model.compareBits();
      case M -> swap();
      case SLASH -> top.find();
      case DIGIT1 -> press(0);
      case DIGIT2 -> press(1);
      case DIGIT3 -> press(2);
      case DIGIT4 -> press(3);
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void press(int number) {
    model.card().board().parts().stream()
        .filter(p -> p.type().type().equals("KEY"))
        .skip(number)
        .findFirst()
        .ifPresent(p -> model.press(p.ref()));
  }

  /** Lays the open card where the hand is. */
  private final class CardPane extends Pane {
    @Override
    protected void layoutChildren() {
      if (card != null) {
        card.settleAt(cardAt.getX(), cardAt.getY(), getWidth(), getHeight());
      }
    }
  }
}
