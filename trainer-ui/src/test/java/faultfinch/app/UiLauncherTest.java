package faultfinch.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

class UiLauncherTest {

  private Stage stage;

  @BeforeEach
  void start() throws Exception {
    stage = FxToolkit.registerPrimaryStage();
    FxToolkit.setupApplication(UiLauncher::new);
  }

  @AfterEach
  void stop() throws Exception {
    FxToolkit.cleanupStages();
  }

  @Test
  void window_started_showsItsName() {
    assertTrue(stage.isShowing());
    assertEquals("Faultfinch", stage.getTitle());
  }
}
