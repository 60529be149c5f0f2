package faultfinch.workbench;

import faultfinch.board.Board;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Where the fault is, what is wrong there, and sure: a decision in three steps. */
final class DecideViewModel {

  /**
   * A place to pick.
   *
   * @param ref empty for the board as a whole
   * @param role what the part does here
   */
  record Place(String ref, String role) {}

  private final List<Place> places;
  private final BiConsumer<String, Consumer<List<String>>> ask;
  private final Consumer<String> decided;
  private final ObjectProperty<Place> place = new SimpleObjectProperty<>();
  private final ObjectProperty<String> wrong = new SimpleObjectProperty<>();
  private final BooleanProperty asking = new SimpleBooleanProperty();
  private final ObservableList<String> wrongs = FXCollections.observableArrayList();

  /**
   * @param ask sends for what can be wrong at a reference
   * @param decided takes the decision
   */
  DecideViewModel(
      Board board, BiConsumer<String, Consumer<List<String>>> ask, Consumer<String> decided) {
    this.ask = ask;
    this.decided = decided;
    List<Place> all = new ArrayList<>();
    all.add(new Place("", ""));
    board.parts().forEach(p -> all.add(new Place(p.ref(), p.role())));
    places = List.copyOf(all);
    place.addListener((o, was, now) -> placed(now));
    wrong.addListener((o, was, now) -> asking.set(false));
  }

  List<Place> places() {
    return places;
  }

  ObjectProperty<Place> place() {
    return place;
  }

  /** What can be wrong at the place, as a decision is written. */
  ObservableList<String> wrongs() {
    return wrongs;
  }

  ObjectProperty<String> wrong() {
    return wrong;
  }

  /** Whether it now asks if you are sure. */
  BooleanProperty asking() {
    return asking;
  }

  /** Picks the part under the hand. */
  void suggest(Spot spot) {
    String ref =
        spot instanceof Spot.OnPart part
            ? part.ref()
            : spot instanceof Spot.OnPin pin ? pin.place().pad().ref() : "";
    places.stream().filter(p -> !ref.isEmpty() && p.ref().equals(ref)).forEach(place::set);
  }

  private void placed(Place now) {
    wrong.set(null);
    wrongs.clear();
    if (now != null) {
      ask.accept(
          now.ref(),
          list -> {
            if (now.equals(place.get())) {
              wrongs.setAll(list);
            }
          });
    }
  }

  /** First asks whether you are sure. */
  void go() {
    asking.set(wrong.get() != null);
  }

  /** You are sure. */
  void yes() {
    if (asking.get()) {
      String text = wrong.get();
      asking.set(false);
      place.set(null);
      decided.accept(text);
    }
  }

  /** You are not. */
  void no() {
    asking.set(false);
  }

  /** A decision without its place, such as {@code contact} of {@code U9: contact}. */
  static String brief(String decision) {
    int colon = decision.indexOf(": ");
    return colon < 0 ? decision : decision.substring(colon + 2);
  }
}
