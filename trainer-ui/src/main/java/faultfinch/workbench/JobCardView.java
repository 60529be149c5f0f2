package faultfinch.workbench;

import faultfinch.attempt.JobCard;
import faultfinch.fx.Words;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The job card that lies on the shut drawer: whose board it is and what is said of it. */
final class JobCardView extends VBox {

  JobCardView(JobCard card, Words words) {
    super(6);
    getStyleClass().add("job-card");
    add(card.title(), "card-title");
    add(words.say("job.board", card.board().title(), card.board().maker()), "quiet");
    add(words.say("top.complaint", card.complaint()), "told");
    if (!card.shown().guided()) {
      add(words.say("job.goal", card.goal()), "goal");
    }
    add(words.say("job.keys"), "quiet");
  }

  private void add(String text, String style) {
    Label label = new Label(text);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    getChildren().add(label);
  }
}
