package faultfinch.workbench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Track;
import faultfinch.fx.Skin;
import faultfinch.fx.Words;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** Both boards as they are drawn, large and small, by day and by night; also for looking at. */
class BoardViewTest {
  private final FxRobot robot = new FxRobot();

  @BeforeEach
  void start() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @AfterEach
  void stop() throws Exception {
    FxToolkit.cleanupStages();
  }

  /** Along the middle of the long runs on the part side most points that no part covers show it. */
  @ParameterizedTest
  @CsvSource({
    "sorrel,DAY,1280,720",
    "tamarisk,DAY,1280,720",
    "tamarisk,NIGHT,1280,720",
    "tamarisk,DAY,1600,900",
    "tamarisk,NIGHT,1600,900"
  })
  void tracks_ofABoard_areDrawnWhereTheyRun(String name, Skin skin, int width, int height)
      throws Exception {
    Board board = BoardReader.shipped(name);
    BoardViewModel model = new BoardViewModel(board, Words.of(BoardViewModel.class));
    WritableImage shot = shot(model, skin, width, height);
    save(shot, name + "-" + skin.name().toLowerCase(Locale.ROOT) + "-" + width);
    Viewport view = BoardView.whole(board, width, height);
    int drawn = 0;
    int looked = 0;
    for (Track.Leg leg : board.tracks().stream().flatMap(t -> t.legs().stream()).toList()) {
      double x = (leg.fromX() + leg.toX()) / 2;
      double y = (leg.fromY() + leg.toY()) / 2;
      boolean bare = model.plan().at(x, y, 0) instanceof Spot.OnTrack;
      if (leg.side() == Track.Side.PARTS && leg.length() > 10 && bare) {
        looked++;
        boolean inked =
            near(shot, view.toX(x), view.toY(y), skin.inks().board(), skin.inks().near());
        drawn += inked ? 1 : 0;
      }
    }
    assertTrue(looked > 20, "looked at " + looked);
    assertTrue(drawn > 0.8 * looked, drawn + " of " + looked);
  }

  /** Whether one of the dots around is nearer to the ink than to the ground it is drawn on. */
  private static boolean near(WritableImage shot, double x, double y, Color ground, Color ink) {
    for (int down = -1; down <= 1; down++) {
      for (int right = -1; right <= 1; right++) {
        Color dot = shot.getPixelReader().getColor((int) x + right, (int) y + down);
        if (far(dot, ink) < far(dot, ground)) {
          return true;
        }
      }
    }
    return false;
  }

  private static double far(Color one, Color other) {
    return Math.abs(one.getRed() - other.getRed())
        + Math.abs(one.getGreen() - other.getGreen())
        + Math.abs(one.getBlue() - other.getBlue());
  }

  private WritableImage shot(BoardViewModel model, Skin skin, int width, int height) {
    List<WritableImage> shots = new ArrayList<>();
    // On no stage: the screen tests run on is smaller than the largest picture.
    robot.interact(
        () -> {
          BoardView view = new BoardView(model, new SimpleObjectProperty<>(skin), (spot, at) -> {});
          shots.add(new Scene(view, width, height).snapshot(null));
        });
    return shots.get(0);
  }

  private static void save(WritableImage shot, String name) throws IOException {
    int width = (int) shot.getWidth();
    int height = (int) shot.getHeight();
    int[] dots = new int[width * height];
    shot.getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), dots, 0, width);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, width, height, dots, 0, width);
    Path folder = Files.createDirectories(Path.of("target", "snapshots"));
    ImageIO.write(image, "png", folder.resolve("board-" + name + ".png").toFile());
  }
}
