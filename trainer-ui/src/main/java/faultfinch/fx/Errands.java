package faultfinch.fx;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/**
 * Work that takes longer than a blink goes here: it is done elsewhere, one after the other, and its
 * result comes back to the window's own thread.
 */
public final class Errands {
  private final Executor elsewhere;
  private final Executor window;
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
  private int out;

  /**
   * @param elsewhere does one thing after the other
   * @param window runs on the window's own thread
   */
  public Errands(Executor elsewhere, Executor window) {
    this.elsewhere = elsewhere;
    this.window = window;
  }

  /** Whether something is still being worked on. */
  public ReadOnlyBooleanProperty busy() {
    return busy.getReadOnlyProperty();
  }

  /**
   * Sends for something; to be called on the window's own thread.
   *
   * @param failed takes what was thrown instead of a result
   */
  public <T> void send(Supplier<T> work, Consumer<T> done, Consumer<RuntimeException> failed) {
    out++;
    busy.set(true);
    elsewhere.execute(
        () -> {
          Runnable back;
          try {
            T result = work.get();
            back = () -> done.accept(result);
          } catch (RuntimeException e) {
            back = () -> failed.accept(e);
          }
          Runnable last = back;
          window.execute(
              () -> {
                out--;
                busy.set(out > 0);
                last.run();
              });
        });
  }
}
