package faultfinch.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.RadioButton;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The window with the real first case, from the first line to the debrief. */
class UiLauncherTest {
  private static final int PATIENCE_SECONDS = 60;

  private final FxRobot robot = new FxRobot();
  private Stage stage;

  @BeforeEach
  void start() throws Exception {
    stage = FxToolkit.registerPrimaryStage();
    FxToolkit.setupApplication(UiLauncher::new);
    until(() -> !text("#guide").isEmpty() && !busy());
  }

  @AfterEach
  void stop() throws Exception {
    FxToolkit.cleanupStages();
  }

  @Test
  void window_started_opensTheFirstCaseOnTheBench() throws Exception {
    assertEquals("Faultfinch", stage.getTitle());
    assertEquals("Case 1", text(".case-number"));
    assertEquals("bench supply", text("#act"));
    snapshot("start");
  }

  @Test
  void place_typed_takesTheKeyboardThereSoThatEnterOpensItsCard() throws Exception {
    act("pin 4 of U1");
    assertEquals("pin 4 of U1, net IRQ/", text("#hand"));
    robot.press(KeyCode.ENTER).release(KeyCode.ENTER);
    until(() -> robot.lookup("#tool-card").tryQuery().isPresent());
    assertEquals("pin 4 of U1, net IRQ/", text("#tool-card .card-title"));
  }

  @Test
  void firstCase_playedByItsGuide_endsInTheDebrief() throws Exception {
    act("bench supply");
    fire("#power");
    fire("#look");
    fire("#bits");
    until(() -> robot.lookup("#strip").tryQuery().isPresent());
    snapshot("strip");
    robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
    act("look: probe U1.D0 at the pin");
    act("look: probe U9.D0 at the pin");
    assertEquals("no light", text(".newest .slip-showed"));
    snapshot("probed");
    fire("#power");
    act("wrist strap");
    act("reseat: U9");
    fire("#power");
    fire("#look");
    assertEquals("reads 'SORREL'", text(".newest .slip-showed"));
    act("U9");
    fire("#drawer-D");
    pick("contact");
    fire("#decide-go");
    fire("#decide-yes");
    fire("#over-go");
    until(() -> robot.lookup("#debrief").tryQuery().isPresent());
    assertEquals("The board works", text(".headline"));
    snapshot("debrief");
  }

  private void act(String text) throws Exception {
    robot.interact(
        () -> {
          robot.lookup("#find").queryTextInputControl().setText(text);
          robot.lookup("#find").query().fireEvent(new ActionEvent());
        });
    settle();
  }

  private void fire(String id) throws Exception {
    until(() -> robot.lookup(id).tryQuery().map(n -> !n.isDisabled()).orElse(false));
    robot.interact(
        () -> {
          Node node = robot.lookup(id).query();
          if (node instanceof ButtonBase button) {
            button.fire();
          }
        });
    settle();
  }

  private void pick(String kind) throws Exception {
    BooleanSupplier there =
        () -> robot.lookup(".radio-button").queryAll().stream().anyMatch(n -> is(n, kind));
    until(there);
    robot.interact(
        () ->
            robot.lookup(".radio-button").queryAll().stream()
                .filter(n -> is(n, kind))
                .forEach(n -> ((RadioButton) n).fire()));
    settle();
  }

  private static boolean is(Node node, String kind) {
    return kind.equals(node.getUserData());
  }

  private String text(String query) {
    return robot.lookup(query).tryQuery().map(n -> ((Labeled) n).getText()).orElse("");
  }

  private boolean busy() {
    return robot.lookup("#power").tryQuery().map(Node::isDisabled).orElse(false);
  }

  private void settle() throws Exception {
    WaitForAsyncUtils.waitForFxEvents();
    until(() -> !busy());
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static void until(BooleanSupplier condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        PATIENCE_SECONDS,
        TimeUnit.SECONDS,
        () -> WaitForAsyncUtils.asyncFx(condition::getAsBoolean).get());
  }

  /** For looking at, in target/snapshots. */
  private void snapshot(String name) throws Exception {
    settle();
    assertTrue(stage.isShowing());
    robot.interact(
        () -> {
          WritableImage shot = stage.getScene().snapshot(null);
          int width = (int) shot.getWidth();
          int height = (int) shot.getHeight();
          int[] pixels = new int[width * height];
          shot.getPixelReader()
              .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
          BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
          image.setRGB(0, 0, width, height, pixels, 0, width);
          try {
            Path folder = Files.createDirectories(Path.of("target", "snapshots"));
            ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }
}
