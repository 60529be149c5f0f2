package faultfinch.workbench;

import faultfinch.attempt.Debrief;
import faultfinch.attempt.Hunch;
import faultfinch.attempt.JobCard;
import faultfinch.attempt.Note;
import faultfinch.attempt.Slip;
import faultfinch.attempt.Status;
import faultfinch.attempt.Strip;
import faultfinch.attempt.Suspect;
import faultfinch.bench.Breach;
import faultfinch.bench.Instruments;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Offer;
import faultfinch.bench.Reading;
import faultfinch.fx.Errands;
import faultfinch.fx.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.ObservableMap;

/**
 * One attempt as the bench on the screen shows it. Moves are made elsewhere; what they bring comes
 * back into these properties.
 */
public final class WorkbenchViewModel {

  /** What the drawer shows. */
  enum Drawer {
    SHUT,
    NOTEBOOK,
    SUSPECTS,
    DECIDE
  }

  /** A move that waits for a word: it breaks rules, or a suspect should be named first. */
  record Pending(Move move, List<Breach> breaches) {
    Pending {
      breaches = List.copyOf(breaches);
    }
  }

  /** All that can have changed after a move. */
  private record Fresh(
      Optional<String> guide,
      List<Note> notes,
      Status status,
      List<Suspect> suspects,
      List<Offer> offers,
      boolean over) {}

  private static final int ALWAYS_IN_SIGHT = 3;

  private final Play play;
  private final Errands errands;
  private final Words words = Words.of(WorkbenchViewModel.class);
  private final JobCard card;
  private final Choices choices;
  private final BoardViewModel board;
  private final DecideViewModel decide;
  private final Consumer<Debrief> finished;

  private final ReadOnlyObjectWrapper<Asked> asked = new ReadOnlyObjectWrapper<>(Asked.NOTHING);
  private final ObservableList<Note> notes = FXCollections.observableArrayList();
  private final ObservableList<Suspect> suspects = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Status> status =
      new ReadOnlyObjectWrapper<>(new Status(false, 0, 0, 0, OptionalInt.empty()));
  private final ReadOnlyObjectWrapper<List<Offer>> offers = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<Note>> seen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Pending>> warning =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Pending>> hunch =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObservableMap<Integer, Reading> twins = FXCollections.observableHashMap();
  private final ReadOnlyObjectWrapper<Optional<Strip>> strip =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper passed = new ReadOnlyBooleanWrapper();
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");
  private final ObjectProperty<Drawer> drawer = new SimpleObjectProperty<>(Drawer.SHUT);

  /**
   * @param finished takes the debrief when the attempt is over; on the window's own thread
   */
  public WorkbenchViewModel(Play play, Errands errands, Consumer<Debrief> finished) {
    this.play = play;
    this.errands = errands;
    this.finished = finished;
    card = play.card();
    choices = new Choices(words, card.shown().prices());
    board = new BoardViewModel(card.board(), words);
    decide = new DecideViewModel(card.board(), this::sendForDecisions, this::decide, this::finish);
    board.held().addListener((o, was, spot) -> decide.suggest(spot));
    refresh(() -> fresh());
  }

  JobCard card() {
    return card;
  }

  Words words() {
    return words;
  }

  BoardViewModel board() {
    return board;
  }

  DecideViewModel decide() {
    return decide;
  }

  /** The one act asked for now; {@link Asked#NOTHING} for none. */
  ReadOnlyObjectProperty<Asked> asked() {
    return asked.getReadOnlyProperty();
  }

  ObservableList<Note> notes() {
    return notes;
  }

  /** The notes that never leave the sight, the newest first. */
  List<Note> lastNotes() {
    int from = Math.max(0, notes.size() - ALWAYS_IN_SIGHT);
    List<Note> last = new ArrayList<>(notes.subList(from, notes.size()));
    Collections.reverse(last);
    return List.copyOf(last);
  }

  ObservableList<Suspect> suspects() {
    return suspects;
  }

  ReadOnlyObjectProperty<Status> status() {
    return status.getReadOnlyProperty();
  }

  /** The newest note that showed the display; none while the board is off. */
  ReadOnlyObjectProperty<Optional<Note>> seen() {
    return seen.getReadOnlyProperty();
  }

  /** A move that would break rules and waits for a word. */
  ReadOnlyObjectProperty<Optional<Pending>> warning() {
    return warning.getReadOnlyProperty();
  }

  /** A move before which a suspect should be named. */
  ReadOnlyObjectProperty<Optional<Pending>> hunch() {
    return hunch.getReadOnlyProperty();
  }

  /** Whether a question waits for its answer before anything else is done. */
  boolean asking() {
    return warning.get().isPresent() || hunch.get().isPresent() || passed.get();
  }

  /** What went amiss last, one line; empty for nothing. */
  ReadOnlyStringProperty message() {
    return message.getReadOnlyProperty();
  }

  /** What the last decision brought, one line; empty for nothing. */
  ReadOnlyStringProperty news() {
    return news.getReadOnlyProperty();
  }

  ObjectProperty<Drawer> drawer() {
    return drawer;
  }

  /** Opens the drawer at a place, or shuts it if it is open there. */
  void toggle(Drawer at) {
    drawer.set(drawer.get() == at ? Drawer.SHUT : at);
  }

  ReadOnlyBooleanProperty busy() {
    return errands.busy();
  }

  /** What can be done at a spot now. */
  List<Choice> choices(Spot spot) {
    return choices.at(spot, offers.get());
  }

  /** Whether the card at a spot would have something to offer. */
  ReadOnlyObjectProperty<List<Offer>> offers() {
    return offers.getReadOnlyProperty();
  }

  String price(Note note) {
    return choices.price(note.price());
  }

  /** What the healthy board showed at the same point, by number of the note. */
  ObservableMap<Integer, Reading> twins() {
    return twins;
  }

  /** Asks the healthy board at the point of a note. */
  void compare(Note note) {
    refresh(() -> play.twin(note.move().asLook()), reading -> twins.put(note.number(), reading));
  }

  /** What is shown beside what is right, once asked for. */
  ReadOnlyObjectProperty<Optional<Strip>> strip() {
    return strip.getReadOnlyProperty();
  }

  /** Asks for what is shown beside what is right. */
  void compareBits() {
    refresh(
        () -> new Bits(play.strip(), fresh()),
        bits -> {
          take(bits.fresh());
          strip.set(Optional.of(bits.strip()));
        });
  }

  private record Bits(Strip strip, Fresh fresh) {}

  /** Whether the board has passed; then only the debrief is left. */
  ReadOnlyBooleanProperty passed() {
    return passed.getReadOnlyProperty();
  }

  /** Switches the board on if it is off, and off if it is on. */
  void togglePower() {
    act(new Move(status.get().powered() ? Moves.POWER_OFF : Moves.POWER_ON, ""));
  }

  /** Looks at the display. */
  void lookAtScreen() {
    act(Move.look(new Look(Instruments.SCREEN, "")));
  }

  /** Presses a key of the board. */
  void press(String ref) {
    act(Move.look(new Look(Instruments.KEY, ref)));
  }

  /** Makes a move, unless it needs a word first. */
  void act(Move move) {
    if (errands.busy().get() || asking()) {
      return;
    }
    List<Breach> breaches = play.warnings(move);
    if (!breaches.isEmpty()) {
      warning.set(Optional.of(new Pending(move, breaches)));
    } else {
      actUnwarned(move);
    }
  }

  /** Makes the move that was warned of. */
  void actAnyway() {
    Optional<Pending> pending = warning.get();
    leave();
    pending.ifPresent(p -> actUnwarned(p.move()));
  }

  /** Drops whatever waits for a word. */
  void leave() {
    warning.set(Optional.empty());
    hunch.set(Optional.empty());
    strip.set(Optional.empty());
  }

  private void actUnwarned(Move move) {
    if (play.asksHunch(move)) {
      hunch.set(Optional.of(new Pending(move, List.of())));
    } else {
      make(move);
    }
  }

  /** Keeps what was thought and makes the move that waited. */
  void think(Hunch thought) {
    play.hunch(thought);
    goOn();
  }

  /** Makes the move that waited without a thought. */
  void skipHunch() {
    play.noHunch();
    goOn();
  }

  private void goOn() {
    Optional<Pending> pending = hunch.get();
    leave();
    pending.ifPresent(p -> make(p.move()));
  }

  private void make(Move move) {
    refresh(
        () -> {
          play.act(move);
          return fresh();
        });
  }

  /** Goes to a place that a sentence names, or makes the move of a text. */
  void say(String text) {
    if (text.isBlank() || board.find(text).isPresent()) {
      return;
    }
    refresh(
        () -> {
          play.act(text.strip());
          return fresh();
        });
  }

  private void decide(String text) {
    refresh(
        () -> {
          String says = play.decide(text).says();
          Fresh fresh = fresh();
          return new Told(fresh, says);
        },
        told -> {
          take(told.fresh());
          news.set(told.says());
        });
  }

  private record Told(Fresh fresh, String says) {}

  /** Ends the attempt where it stands. */
  void finish() {
    refresh(play::close, finished);
  }

  private void sendForDecisions(String ref, Consumer<List<String>> taken) {
    errands.send(() -> play.decisions(ref), taken, this::amiss);
  }

  private Fresh fresh() {
    return new Fresh(
        play.guide(),
        play.notebook(),
        play.status(),
        play.suspects(),
        play.over() ? List.of() : play.possible(),
        play.over());
  }

  private void refresh(Supplier<Fresh> work) {
    refresh(work, this::take);
  }

  private <T> void refresh(Supplier<T> work, Consumer<T> taken) {
    message.set("");
    news.set("");
    errands.send(work, taken, this::amiss);
  }

  private void amiss(RuntimeException e) {
    if (e instanceof Slip slip) {
      message.set(
          slip.nearest().isEmpty()
              ? slip.getMessage()
              : words.say("slip.nearest", slip.getMessage(), String.join(", ", slip.nearest())));
    } else if (e instanceof IllegalArgumentException) {
      message.set(e.getMessage());
    } else {
      throw e;
    }
  }

  private void take(Fresh fresh) {
    status.set(fresh.status());
    offers.set(fresh.offers());
    notes.setAll(fresh.notes());
    suspects.setAll(fresh.suspects());
    seen.set(lastSeen(fresh));
    asked.set(fresh.guide().map(Asked::of).orElse(Asked.NOTHING));
    board.ask(asked.get().spot(board.plan()));
    passed.set(fresh.over());
  }

  private static Optional<Note> lastSeen(Fresh fresh) {
    if (!fresh.status().powered()) {
      return Optional.empty();
    }
    return fresh.notes().stream()
        .filter(n -> n.reading() instanceof Reading.Picture)
        .reduce((first, second) -> second);
  }
}
