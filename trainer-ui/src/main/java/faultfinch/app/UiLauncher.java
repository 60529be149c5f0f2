package faultfinch.app;

import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;

/**
 * Starts the window library and shows the main window. Kept apart from {@link Main}, which must not
 * touch that library.
 */
public final class UiLauncher extends Application {

  /** Shows the window and returns when it is closed. May be called once in a process. */
  static void open(List<String> arguments) {
    launch(UiLauncher.class, arguments.toArray(String[]::new));
  }

  @Override
  public void start(Stage stage) {
    stage.setTitle("Faultfinch");
    stage.setScene(new Scene(new BorderPane(), 1280, 720));
    stage.show();
  }
}
