package faultfinch.casebook;

import faultfinch.attempt.CaseLine;
import faultfinch.fx.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableSet;

/** The cases in their order, which one lies on the bench, and which were solved today. */
public final class CasebookViewModel {
  private final List<CaseLine> cases;
  private final IntConsumer open;
  private final IntegerProperty current = new SimpleIntegerProperty();
  private final ObservableSet<Integer> solved = FXCollections.observableSet();
  private final Words words = Words.of(CasebookViewModel.class);

  /**
   * @param open begins the case of a number
   */
  public CasebookViewModel(List<CaseLine> cases, IntConsumer open) {
    this.cases = List.copyOf(cases);
    this.open = open;
  }

  Words words() {
    return words;
  }

  List<CaseLine> cases() {
    return cases;
  }

  /** Number of the case on the bench. */
  IntegerProperty current() {
    return current;
  }

  ObservableSet<Integer> solved() {
    return solved;
  }

  /** Begins a case. */
  public void open(int number) {
    current.set(number);
    open.accept(number);
  }

  /** Begins the case after the one on the bench; after the last, the first. */
  public void openNext() {
    open(next().map(CaseLine::number).orElse(cases.get(0).number()));
  }

  /** Begins the case on the bench anew. */
  public void openAgain() {
    open(current.get());
  }

  /** The case on the bench was solved. */
  public void solvedNow() {
    solved.add(current.get());
  }

  private Optional<CaseLine> next() {
    return cases.stream().filter(c -> c.number() > current.get()).findFirst();
  }

  /** What stands behind the title. */
  String state(CaseLine line) {
    if (solved.contains(line.number())) {
      return words.say("case.solved");
    }
    return line.number() == current.get() ? words.say("case.here") : "";
  }
}
