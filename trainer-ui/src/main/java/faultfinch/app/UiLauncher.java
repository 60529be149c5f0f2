package faultfinch.app;

import faultfinch.attempt.Attempt;
import faultfinch.fx.Errands;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/**
 * Starts the window library and shows the main window. Kept apart from {@link Main}, which must not
 * touch that library.
 */
public final class UiLauncher extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 720;
  private static final double LEAST_WIDTH = 853;
  private static final double LEAST_HEIGHT = 480;

  private final ExecutorService elsewhere =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "bench");
            thread.setDaemon(true);
            return thread;
          });

  /** Shows the window and returns when it is closed. May be called once in a process. */
  static void open(List<String> arguments) {
    launch(UiLauncher.class, arguments.toArray(String[]::new));
  }

  @Override
  public void start(Stage stage) {
    Errands errands = new Errands(elsewhere, Platform::runLater);
    Room room =
        new Room(Attempt.cases(), number -> new AttemptPlay(Attempt.begin(number)), errands);
    stage.setTitle(room.title());
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    stage.setScene(new Scene(room, WIDTH, HEIGHT));
    stage.show();
    room.begin(number(getParameters() == null ? List.of() : getParameters().getRaw()));
  }

  /** The case that the arguments name, else the first. */
  private static int number(List<String> arguments) {
    return arguments.stream()
        .filter(a -> a.matches("\\d{1,3}"))
        .mapToInt(Integer::parseInt)
        .findFirst()
        .orElse(1);
  }

  @Override
  public void stop() {
    elsewhere.shutdownNow();
  }
}
