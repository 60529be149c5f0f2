package faultfinch.workbench;

import faultfinch.board.Board;
import faultfinch.board.PadPlace;
import faultfinch.board.PlacedPart;
import faultfinch.fx.Words;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What is under the hand on the drawn board, said in a sentence, and the net it belongs to. */
final class BoardViewModel {
  private final BoardPlan plan;
  private final Words words;
  private final ReadOnlyObjectWrapper<Spot> hand = new ReadOnlyObjectWrapper<>(new Spot.Nowhere());
  private final ReadOnlyObjectWrapper<Spot> held = new ReadOnlyObjectWrapper<>(new Spot.Nowhere());
  private final ReadOnlyObjectWrapper<Optional<Spot>> asked =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper sentence = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper net = new ReadOnlyStringWrapper("");

  BoardViewModel(Board board, Words words) {
    this.plan = new BoardPlan(board);
    this.words = words;
    tell();
  }

  BoardPlan plan() {
    return plan;
  }

  /** What the pointer or the arrow keys are on. */
  ReadOnlyObjectProperty<Spot> hand() {
    return hand.getReadOnlyProperty();
  }

  /** What was picked and stays picked when the pointer goes on. */
  ReadOnlyObjectProperty<Spot> held() {
    return held.getReadOnlyProperty();
  }

  /** What the guide points at, if it points at anything here. */
  ReadOnlyObjectProperty<Optional<Spot>> asked() {
    return asked.getReadOnlyProperty();
  }

  /** Points at something. */
  void ask(Optional<Spot> spot) {
    asked.set(spot);
  }

  /** What the hand is on, such as {@code pin 12 of U7, net D0}. */
  ReadOnlyStringProperty sentence() {
    return sentence.getReadOnlyProperty();
  }

  /** The net to be shown; empty for none. */
  ReadOnlyStringProperty net() {
    return net.getReadOnlyProperty();
  }

  /** Moves the hand to a point in millimetres; see {@link BoardPlan#at}. */
  void point(double x, double y, double reach) {
    hover(plan.at(x, y, reach));
  }

  void hover(Spot spot) {
    hand.set(spot);
    tell();
  }

  /** The hand has left the board. */
  void leave() {
    hover(new Spot.Nowhere());
  }

  /** Picks what the hand is on. */
  void hold(Spot spot) {
    held.set(spot);
    hover(spot);
  }

  /** Lets go of what was picked. */
  void letGo() {
    held.set(new Spot.Nowhere());
    tell();
  }

  /** Goes to the next pin to the right, left, front or back. */
  void step(int right, int down) {
    double[] from = plan.middle(hand.get() instanceof Spot.Nowhere ? held.get() : hand.get());
    plan.next(from[0], from[1], right, down).ifPresent(p -> hover(new Spot.OnPin(p)));
  }

  /** Picks what a sentence points at, if it points at something. */
  Optional<Spot> find(String said) {
    Optional<Spot> spot = plan.find(said);
    spot.ifPresent(this::hold);
    return spot;
  }

  private void tell() {
    Spot spot = hand.get() instanceof Spot.Nowhere ? held.get() : hand.get();
    sentence.set(sentence(spot));
    net.set(plan.net(spot));
  }

  /** A spot in words. */
  String sentence(Spot spot) {
    if (spot instanceof Spot.OnPin pin) {
      PadPlace place = pin.place();
      String on = plan.net(place.pad());
      return words.say(
          on.isEmpty()
              ? "spot.pin.free"
              : on.equals(place.pad().pin()) ? "spot.pin" : "spot.pin.named",
          Integer.toString(place.number()),
          place.pad().ref(),
          on,
          place.pad().pin());
    }
    if (spot instanceof Spot.OnPart on) {
      PlacedPart part = plan.laid(on.ref()).part();
      String what = part.value().isEmpty() ? part.type().type() : part.value();
      return words.say(
          part.socketed() ? "spot.part.socketed" : "spot.part", part.ref(), part.role(), what);
    }
    if (spot instanceof Spot.OnTrack track) {
      return words.say(
          "spot.track", track.net(), track.segment().from().text(), track.segment().to().text());
    }
    if (spot instanceof Spot.OnBrick) {
      return words.say("spot.brick");
    }
    if (spot instanceof Spot.OnMonitor) {
      return words.say("spot.monitor");
    }
    if (spot instanceof Spot.OnOwner) {
      return words.say("spot.owner");
    }
    return spot instanceof Spot.OnBoard ? words.say("spot.board", plan.board().title()) : "";
  }
}
