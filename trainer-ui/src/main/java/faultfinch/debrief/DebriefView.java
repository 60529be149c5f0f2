package faultfinch.debrief;

import faultfinch.debrief.DebriefViewModel.Step;
import faultfinch.fx.Words;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One long sheet: what was right, what was wrong, your way beside the best, the job sheet. */
public final class DebriefView extends BorderPane {

  /** The ways that lead away from the debrief. */
  public record Doors(Runnable next, Runnable again, Runnable cases) {}

  private static final double BAR = 90;

  private final DebriefViewModel model;
  private final Words words;

  public DebriefView(DebriefViewModel model, Doors doors) {
    this.model = model;
    this.words = model.words();
    setId("debrief");
    getStyleClass().add("debrief");
    getStylesheets().add(DebriefView.class.getResource("debrief.css").toExternalForm());
    VBox sheet = new VBox(16);
    sheet.getStyleClass().add("sheet");
    sheet.getChildren().addAll(right(), answer(), routes());
    Node field = field();
    if (field != null) {
      sheet.getChildren().add(field);
    }
    add(sheet, "sec.decisions", model.decisions());
    add(sheet, "sec.nothing", model.toldNothing());
    add(sheet, "sec.early", model.tooEarly());
    add(sheet, "sec.breaches", model.breaches());
    add(sheet, "sec.steps", model.notReached());
    if (!model.notes().isEmpty()) {
      sheet.getChildren().add(section("sec.notes", List.of(model.notes())));
    }
    sheet.getChildren().add(jobSheet());
    ScrollPane scroll = new ScrollPane(sheet);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setId("debrief-scroll");
    setTop(head(doors));
    setCenter(scroll);
  }

  private Node head(Doors doors) {
    Label title = new Label(model.headline());
    title.getStyleClass().add("headline");
    Label marks = new Label(model.marks());
    marks.getStyleClass().add("marks");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Button next = button("door.next", doors.next());
    next.getStyleClass().add("accent");
    HBox head =
        new HBox(
            10,
            title,
            marks,
            gap,
            button("door.cases", doors.cases()),
            button("door.again", doors.again()),
            next);
    head.setAlignment(Pos.CENTER_LEFT);
    head.getStyleClass().add("head");
    return head;
  }

  private Button button(String key, Runnable does) {
    Button button = new Button(words.say(key));
    button.setId(key.replace('.', '-'));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> does.run());
    return button;
  }

  private Node right() {
    VBox box = new VBox(4, title("sec.right"));
    box.getStyleClass().add("right");
    for (String line : model.doneRight()) {
      box.getChildren().add(line("\u2713", line));
    }
    return box;
  }

  private Node answer() {
    VBox box = section("sec.faults", model.faults());
    box.getChildren().addAll(model.stillWrong().stream().map(s -> line("!", s)).toList());
    return box;
  }

  private Node routes() {
    GridPane grid = new GridPane();
    grid.setHgap(28);
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      grid.getColumnConstraints().add(half);
    }
    grid.add(route("sec.yours", model.yours(), model.yourTotal(), ""), 0, 0);
    grid.add(route("sec.best", model.best(), model.bestTotal(), model.whyNoBest()), 1, 0);
    return grid;
  }

  private Node route(String key, List<Step> steps, String total, String why) {
    VBox box = new VBox(3, title(key));
    if (!why.isEmpty()) {
      box.getChildren().add(wrapped(why));
      return box;
    }
    int number = 0;
    for (Step step : steps) {
      number++;
      box.getChildren().add(step(number, step));
    }
    Label sum = new Label(total);
    sum.getStyleClass().add("sum");
    box.getChildren().add(sum);
    return box;
  }

  private Node step(int number, Step step) {
    Label flag = new Label(Integer.toString(number));
    flag.getStyleClass().add("flag");
    flag.setMinWidth(Region.USE_PREF_SIZE);
    Label move = wrapped(step.move());
    move.getStyleClass().add("move");
    Label showed = wrapped(step.showed());
    VBox says = new VBox(move);
    if (!step.showed().isEmpty()) {
      says.getChildren().add(showed);
    }
    says.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(says, Priority.ALWAYS);
    Region bar = new Region();
    bar.getStyleClass().add("bar");
    bar.setMinWidth(Math.max(2, step.cost() * BAR));
    bar.setMaxWidth(Math.max(2, step.cost() * BAR));
    Label price = new Label(step.price());
    price.getStyleClass().add("price");
    price.setMinWidth(52);
    price.setAlignment(Pos.CENTER_RIGHT);
    HBox row = new HBox(8, flag, says, bar, price);
    row.setAlignment(Pos.TOP_LEFT);
    row.getStyleClass().add("step");
    return row;
  }

  /** How many causes were left after each move; null if none is known. */
  private Node field() {
    List<Integer> field = model.field();
    if (field.size() < 2) {
      return null;
    }
    return new VBox(4, title("sec.field"), new FieldChart(field));
  }

  private Node jobSheet() {
    TextArea text = new TextArea(model.jobSheet());
    text.setEditable(false);
    text.setWrapText(true);
    text.setId("job-sheet");
    text.getStyleClass().add("job-sheet");
    text.setPrefRowCount(Math.min(24, (int) model.jobSheet().lines().count() + 2));
    return new VBox(4, title("sec.sheet"), text);
  }

  private void add(VBox sheet, String key, List<String> lines) {
    if (!lines.isEmpty()) {
      sheet.getChildren().add(section(key, lines));
    }
  }

  private VBox section(String key, List<String> lines) {
    VBox box = new VBox(4, title(key));
    lines.forEach(l -> box.getChildren().add(line("\u2013", l)));
    return box;
  }

  private Node line(String mark, String text) {
    Label sign = new Label(mark);
    sign.getStyleClass().add("sign");
    sign.setMinWidth(14);
    Label says = wrapped(text);
    HBox.setHgrow(says, Priority.ALWAYS);
    return new HBox(6, sign, says);
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  private Label title(String key) {
    Label title = new Label(words.say(key));
    title.getStyleClass().add("section");
    return title;
  }
}
