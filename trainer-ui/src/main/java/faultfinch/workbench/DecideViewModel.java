package faultfinch.workbench;

import faultfinch.board.Board;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Where the fault is, what is wrong there, at which pin or track if there are several, and sure: a
 * decision in small steps.
 */
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
  private final Runnable givenUp;
  private final Map<String, List<String>> decisions = new LinkedHashMap<>();
  private final ObjectProperty<Place> place = new SimpleObjectProperty<>();
  private final ObjectProperty<String> kind = new SimpleObjectProperty<>();
  private final ReadOnlyObjectWrapper<String> wrong = new ReadOnlyObjectWrapper<>();
  private final BooleanProperty asking = new SimpleBooleanProperty();
  private final ObservableList<String> kinds = FXCollections.observableArrayList();
  private final ObservableList<String> wheres = FXCollections.observableArrayList();
  private final ObjectProperty<String> where = new SimpleObjectProperty<>();

  /**
   * @param ask sends for what can be wrong at a reference
   * @param decided takes the decision
   * @param givenUp takes that the board is left as it is
   */
  DecideViewModel(
      Board board,
      BiConsumer<String, Consumer<List<String>>> ask,
      Consumer<String> decided,
      Runnable givenUp) {
    this.ask = ask;
    this.decided = decided;
    this.givenUp = givenUp;
    List<Place> all = new ArrayList<>();
    all.add(new Place("", ""));
    board.parts().forEach(p -> all.add(new Place(p.ref(), p.role())));
    places = List.copyOf(all);
    place.addListener((o, was, now) -> placed(now));
    kind.addListener((o, was, now) -> narrowed(now));
    where.addListener((o, was, now) -> settled());
  }

  List<Place> places() {
    return places;
  }

  ObjectProperty<Place> place() {
    return place;
  }

  /** What can be wrong at the place: one word for each kind of answer. */
  ObservableList<String> kinds() {
    return kinds;
  }

  ObjectProperty<String> kind() {
    return kind;
  }

  /** Pins or tracks to pick from; empty if the kind of answer leaves no choice. */
  ObservableList<String> wheres() {
    return wheres;
  }

  ObjectProperty<String> where() {
    return where;
  }

  /** The decision as it is taken; null until it is complete. */
  ReadOnlyObjectProperty<String> wrong() {
    return wrong.getReadOnlyProperty();
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
    kind.set(null);
    kinds.clear();
    decisions.clear();
    if (now != null) {
      ask.accept(
          now.ref(),
          list -> {
            if (now.equals(place.get())) {
              list.forEach(d -> decisions.computeIfAbsent(kind(d), k -> new ArrayList<>()).add(d));
              kinds.setAll(decisions.keySet());
            }
          });
    }
  }

  private void narrowed(String now) {
    where.set(null);
    wheres.clear();
    if (now != null && decisions.get(now).size() > 1) {
      decisions.get(now).forEach(d -> wheres.add(at(d)));
    }
    settled();
  }

  private void settled() {
    asking.set(false);
    if (kind.get() == null || (!wheres.isEmpty() && where.get() == null)) {
      wrong.set(null);
    } else {
      int index = wheres.isEmpty() ? 0 : wheres.indexOf(where.get());
      wrong.set(decisions.get(kind.get()).get(index));
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
      place.set(null);
      decided.accept(text);
    }
  }

  /** You are not. */
  void no() {
    asking.set(false);
  }

  /** Leaves the board as it is. */
  void giveUp() {
    givenUp.run();
  }

  /** What a decision says is wrong: {@code contact} of {@code U9: contact}. */
  private static String kind(String decision) {
    return decision.substring(decision.lastIndexOf(": ") < 0 ? 0 : decision.lastIndexOf(": ") + 2);
  }

  /** Where a decision says it is: {@code U9.D0} of {@code U9.D0: leg}. */
  private static String at(String decision) {
    return decision.contains(": ") ? decision.substring(0, decision.lastIndexOf(": ")) : decision;
  }
}
