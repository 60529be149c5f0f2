package faultfinch.workbench;

import faultfinch.attempt.JobCard;
import faultfinch.fx.Words;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The line at the top: the one act asked for, or the complaint; and the ways to other places. */
final class TopView extends HBox {

  /** The ways from this line to other places; {@code board} takes the keyboard to the board. */
  record Ways(
      Runnable cases,
      Runnable next,
      Runnable skin,
      Runnable swap,
      Runnable owner,
      Runnable board) {}

  private static final double FIND = 118;
  private static final double FIND_TIGHT = 84;

  private final WorkbenchViewModel model;
  private final Words words;
  private final Label number = new Label();
  private final Label line = new Label();
  private final Label act = new Label();
  private final TextField find = new TextField();
  private final Button swap;
  private final Button next;

  TopView(WorkbenchViewModel model, Ways ways) {
    super(8);
    this.model = model;
    this.words = model.words();
    getStyleClass().add("top");
    setAlignment(Pos.CENTER_LEFT);
    JobCard card = model.card();
    number.getStyleClass().add("case-number");
    number.setMinWidth(Region.USE_PREF_SIZE);
    number.setText(
        card.number() > 0
            ? words.say("top.case", Integer.toString(card.number()))
            : words.say("top.own"));
    line.setId("guide");
    line.setWrapText(true);
    line.setMinWidth(120);
    line.setMaxHeight(40);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    act.setId("act");
    act.getStyleClass().add("act");
    act.setMinWidth(Region.USE_PREF_SIZE);
    find.setId("find");
    find.setPromptText(words.say("top.find"));
    find.setTooltip(new Tooltip(words.say("top.find.hint")));
    find.setOnAction(
        e -> {
          model.say(find.getText());
          find.clear();
          ways.board().run();
        });
    next = key("top.next", "top.next.hint", ways.next());
    swap = key("top.swap.key", "top.swap", ways.swap());
    getChildren()
        .addAll(
            number,
            line,
            act,
            gap,
            find,
            key("top.owner.key", "top.ask", ways.owner()),
            swap,
            key("top.skin.key", "top.skin", ways.skin()),
            key("top.cases", "top.cases.hint", ways.cases()),
            next);
    model.asked().addListener((o, was, now) -> show());
    show();
  }

  private Button key(String key, String hint, Runnable does) {
    Button button = new Button(words.say(key));
    button.setId(key.replace('.', '-'));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.getStyleClass().add("small-key");
    button.setTooltip(new Tooltip(words.say(hint)));
    button.setOnAction(e -> does.run());
    return button;
  }

  /** Little room: shorter words, and board and monitor take turns. */
  void tighten(boolean yes) {
    swap.setVisible(yes);
    swap.setManaged(yes);
    next.setText(words.say(yes ? "top.next.tight" : "top.next"));
    find.setPrefWidth(yes ? FIND_TIGHT : FIND);
    find.setMinWidth(yes ? FIND_TIGHT : FIND);
  }

  /** Puts the keyboard where places and moves are typed. */
  void find() {
    find.requestFocus();
  }

  private void show() {
    String typed = model.asked().get().typed();
    act.setText(typed);
    act.setVisible(!typed.isEmpty());
    act.setManaged(!typed.isEmpty());
    String guide = model.asked().get().says();
    getStyleClass().remove("guiding");
    if (guide.isEmpty()) {
      line.setText(words.say("top.complaint", model.card().complaint()));
    } else {
      getStyleClass().add("guiding");
      line.setText(guide);
    }
    line.setTooltip(new Tooltip(line.getText()));
  }
}
