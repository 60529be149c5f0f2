package faultfinch.workbench;

import faultfinch.board.Board;
import faultfinch.board.Footprint;
import faultfinch.board.PadPlace;
import faultfinch.board.PlacedPart;
import faultfinch.board.Track;
import faultfinch.fx.Skin;
import faultfinch.fx.Skin.Inks;
import faultfinch.part.Element;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import javafx.util.Duration;

/**
 * The board as an ink drawing on paper, to scale. Wheel or plus and minus zoom, dragging moves,
 * arrows walk from pin to pin; a click or Enter picks what is under the hand.
 */
final class BoardView extends Region {
  /** Millimetres across. */
  private static final double HOLE = 0.8;

  private static final double MARGIN = 3;
  private static final double STEP = 1.25;
  private static final double DRAG = 4;
  private static final double PIN_DOTS = 7;
  private static final double NAMES_FROM = 9;
  private static final int TICK_MS = 70;

  private final BoardViewModel model;
  private final ReadOnlyObjectProperty<Skin> skin;
  private final BiConsumer<Spot, Point2D> picked;
  private final Canvas drawing = new Canvas();
  private final Canvas over = new Canvas();
  private final Timeline march;
  private Viewport view = new Viewport(3, 0, 0);
  private boolean fitted = true;
  private double march0;
  private double dragX;
  private double dragY;
  private boolean dragging;
  private Set<String> out = Set.of();
  private Map<PadPlace, Integer> flags = Map.of();

  /**
   * @param picked takes what was picked and where, in dots of this view
   */
  BoardView(
      BoardViewModel model, ReadOnlyObjectProperty<Skin> skin, BiConsumer<Spot, Point2D> picked) {
    this.model = model;
    this.skin = skin;
    this.picked = picked;
    getChildren().addAll(drawing, over);
    over.setMouseTransparent(true);
    setId("board");
    getStyleClass().add("board");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    accessibleTextProperty().bind(model.sentence());
    march =
        new Timeline(
            new KeyFrame(
                Duration.millis(TICK_MS),
                e -> {
                  march0 += 1;
                  drawOver();
                }));
    march.setCycleCount(Animation.INDEFINITE);
    skin.addListener((o, was, now) -> draw());
    model.hand().addListener((o, was, now) -> drawOver());
    model.held().addListener((o, was, now) -> drawOver());
    model.net().addListener((o, was, now) -> marchWhileLit());
    model.asked().addListener((o, was, now) -> marchWhileLit());
    focusedProperty().addListener((o, was, now) -> drawOver());
    listen();
  }

  private void listen() {
    setOnMouseMoved(e -> model.point(view.fromX(e.getX()), view.fromY(e.getY()), reach()));
    setOnMouseExited(e -> model.leave());
    setOnMousePressed(
        e -> {
          requestFocus();
          dragX = e.getX();
          dragY = e.getY();
          dragging = false;
          e.consume();
        });
    setOnMouseDragged(this::drag);
    setOnMouseReleased(
        e -> {
          if (!dragging && e.getButton() == MouseButton.PRIMARY) {
            model.point(view.fromX(e.getX()), view.fromY(e.getY()), reach());
            pick(model.hand().get(), new Point2D(e.getX(), e.getY()));
          }
        });
    setOnScroll(
        e -> {
          if (e.getDeltaY() != 0) {
            zoom(e.getDeltaY() > 0 ? STEP : 1 / STEP, e.getX(), e.getY());
          }
          e.consume();
        });
    setOnKeyPressed(this::key);
  }

  private double reach() {
    return PIN_DOTS / view.scale();
  }

  private void drag(MouseEvent e) {
    if (dragging || Math.hypot(e.getX() - dragX, e.getY() - dragY) > DRAG) {
      dragging = true;
      view = view.moved(e.getX() - dragX, e.getY() - dragY);
      fitted = false;
      dragX = e.getX();
      dragY = e.getY();
      draw();
    }
  }

  private void key(KeyEvent e) {
    switch (e.getCode()) {
      case PLUS, EQUALS, ADD -> zoom(STEP);
      case MINUS, SUBTRACT -> zoom(1 / STEP);
      case DIGIT0, NUMPAD0, HOME -> fit();
      case LEFT -> model.step(-1, 0);
      case RIGHT -> model.step(1, 0);
      case UP -> model.step(0, -1);
      case DOWN -> model.step(0, 1);
      case ENTER, SPACE -> pick(model.hand().get(), dots(model.hand().get()));
      default -> {
        return;
      }
    }
    show(model.hand().get());
    e.consume();
  }

  /** Nearer or farther about the hand, or the middle if it is off the board. */
  void zoom(double factor) {
    Spot hand = model.hand().get();
    Point2D about =
        hand instanceof Spot.OnPin || hand instanceof Spot.OnPart
            ? dots(hand)
            : new Point2D(getWidth() / 2, getHeight() / 2);
    zoom(factor, about.getX(), about.getY());
  }

  private void zoom(double factor, double x, double y) {
    view = view.zoomed(factor, x, y);
    fitted = false;
    draw();
  }

  /** All of the board, as large as it will go. */
  void fit() {
    fitted = true;
    view = whole(model.plan().board(), getWidth(), getHeight());
    draw();
  }

  /** Brick and board as large as they go. */
  static Viewport whole(Board board, double width, double height) {
    return Viewport.showing(
        BoardPlan.BRICK.left() - MARGIN,
        -MARGIN,
        board.width() + MARGIN,
        board.height() + MARGIN,
        Math.max(1, width),
        Math.max(1, height));
  }

  private void pick(Spot spot, Point2D at) {
    model.hold(spot);
    picked.accept(spot, at);
  }

  /** Where the middle of a spot lies, in dots of this view. */
  Point2D dots(Spot spot) {
    double[] middle = model.plan().middle(spot);
    return new Point2D(view.toX(middle[0]), view.toY(middle[1]));
  }

  /** Moves the drawing if a spot lies outside of what is in sight. */
  void show(Spot spot) {
    if (spot instanceof Spot.Nowhere) {
      return;
    }
    Point2D at = dots(spot);
    if (at.getX() < 0 || at.getY() < 0 || at.getX() > getWidth() || at.getY() > getHeight()) {
      view = view.moved(getWidth() / 2 - at.getX(), getHeight() / 2 - at.getY());
      fitted = false;
      draw();
    }
  }

  /**
   * What was done to the board so far.
   *
   * @param out references of the parts that are out
   * @param flags the number of the note last taken at a pad
   */
  void mark(Set<String> out, Map<PadPlace, Integer> flags) {
    this.out = Set.copyOf(out);
    this.flags = Map.copyOf(flags);
    draw();
  }

  @Override
  protected void layoutChildren() {
    for (Canvas canvas : List.of(drawing, over)) {
      canvas.setWidth(getWidth());
      canvas.setHeight(getHeight());
    }
    if (fitted) {
      fit();
    } else {
      draw();
    }
  }

  private void marchWhileLit() {
    if (model.net().get().isEmpty() && model.asked().get().isEmpty()) {
      march.stop();
    } else {
      march.play();
    }
    drawOver();
  }

  private void toMillimetres(GraphicsContext gc) {
    gc.setTransform(view.scale(), 0, 0, view.scale(), view.left(), view.top());
    gc.setLineCap(StrokeLineCap.ROUND);
    gc.setLineJoin(StrokeLineJoin.ROUND);
  }

  private void draw() {
    GraphicsContext gc = drawing.getGraphicsContext2D();
    Inks inks = skin.get().inks();
    gc.setTransform(1, 0, 0, 1, 0, 0);
    gc.setFill(inks.paper());
    gc.fillRect(0, 0, getWidth(), getHeight());
    toMillimetres(gc);
    ground(gc, inks);
    tracks(gc, inks);
    for (BoardPlan.Laid l : model.plan().parts()) {
      l.footprint().pads().forEach(p -> PartInk.pad(gc, inks, p, inks.faint()));
    }
    PartInk ink = new PartInk(gc, inks);
    for (BoardPlan.Laid l : model.plan().parts()) {
      gc.save();
      gc.translate(l.part().x(), l.part().y());
      gc.rotate(l.part().turn());
      ink.draw(l.part(), l.footprint(), out.contains(l.part().ref()));
      gc.restore();
      if (!chip(l)) {
        l.footprint().pads().forEach(p -> PartInk.pad(gc, inks, p, inks.faint()));
      }
    }
    gc.setTransform(1, 0, 0, 1, 0, 0);
    model.plan().parts().forEach(l -> label(gc, inks, l));
    if (view.scale() > NAMES_FROM) {
      pinNames(gc, inks);
    }
    flags(gc, inks);
    drawOver();
  }

  private static boolean chip(BoardPlan.Laid l) {
    return l.footprint().pads().size() > 3 && !l.part().type().type().startsWith("RPACK");
  }

  private void ground(GraphicsContext gc, Inks inks) {
    Board board = model.plan().board();
    gc.setFill(inks.board());
    gc.fillRoundRect(0, 0, board.width(), board.height(), 5, 5);
    gc.setStroke(inks.ink());
    gc.setLineDashes();
    gc.setLineWidth(0.5);
    gc.strokeRoundRect(0, 0, board.width(), board.height(), 5, 5);
    gc.setLineWidth(0.3);
    for (double x : new double[] {4, board.width() - 4}) {
      double y = board.height() - 4;
      gc.setFill(inks.paper());
      gc.fillOval(x - 1.6, y - 1.6, 3.2, 3.2);
      gc.strokeOval(x - 1.6, y - 1.6, 3.2, 3.2);
    }
    brick(gc, inks);
  }

  private void brick(GraphicsContext gc, Inks inks) {
    Footprint.Body b = BoardPlan.BRICK;
    BoardPlan.Laid jack = model.plan().laid(model.plan().board().supply().jack());
    double[] to = model.plan().middle(new Spot.OnPart(jack.part().ref()));
    gc.setLineWidth(1.4);
    gc.setStroke(inks.faint());
    gc.beginPath();
    gc.moveTo(b.right(), b.bottom() - 8);
    gc.bezierCurveTo(b.right() + 9, b.bottom() - 8, b.right() + 2, to[1], to[0] - 5, to[1]);
    gc.stroke();
    gc.setFill(inks.part());
    gc.setStroke(inks.ink());
    gc.setLineWidth(0.5);
    gc.fillRoundRect(b.left(), b.top(), b.right() - b.left(), b.bottom() - b.top(), 4, 4);
    gc.strokeRoundRect(b.left(), b.top(), b.right() - b.left(), b.bottom() - b.top(), 4, 4);
    gc.setLineWidth(0.25);
    gc.strokeRoundRect(
        b.left() + 2, b.top() + 9, b.right() - b.left() - 4, b.bottom() - b.top() - 18, 2, 2);
    gc.strokeLine(b.left() + 8, b.top(), b.left() + 8, b.top() - 3);
    gc.strokeLine(b.right() - 8, b.top(), b.right() - 8, b.top() - 3);
  }

  private void tracks(GraphicsContext gc, Inks inks) {
    for (Track.Side side : List.of(Track.Side.SOLDER, Track.Side.PARTS)) {
      gc.setStroke(side == Track.Side.SOLDER ? inks.far() : inks.near());
      for (Track track : model.plan().tracks()) {
        gc.setLineWidth(track.width());
        stroke(gc, track, side);
      }
    }
    gc.setFill(inks.near());
    model.plan().tracks().forEach(t -> holes(gc, t));
  }

  /** Where a track goes through to the other side. */
  private static void holes(GraphicsContext gc, Track track) {
    for (int i = 1; i < track.legs().size(); i++) {
      Track.Leg leg = track.legs().get(i);
      if (leg.side() != track.legs().get(i - 1).side()) {
        gc.fillOval(leg.fromX() - HOLE / 2, leg.fromY() - HOLE / 2, HOLE, HOLE);
      }
    }
  }

  private static void stroke(GraphicsContext gc, Track track, Track.Side side) {
    gc.beginPath();
    boolean any = false;
    double x = Double.NaN;
    double y = Double.NaN;
    for (Track.Leg leg : track.legs()) {
      if (leg.side() == side) {
        if (leg.fromX() != x || leg.fromY() != y) {
          gc.moveTo(leg.fromX(), leg.fromY());
        }
        gc.lineTo(leg.toX(), leg.toY());
        x = leg.toX();
        y = leg.toY();
        any = true;
      }
    }
    if (any) {
      gc.stroke();
    }
  }

  private static Font font(double size, boolean bold) {
    return Font.font("System", bold ? FontWeight.BOLD : FontWeight.NORMAL, size);
  }

  private void label(GraphicsContext gc, Inks inks, BoardPlan.Laid l) {
    PlacedPart part = l.part();
    Footprint.Body b = l.footprint().body();
    double x = view.toX((b.left() + b.right()) / 2);
    double y = view.toY((b.top() + b.bottom()) / 2);
    double size = Math.max(9, Math.min(26, view.scale() * 2.9));
    gc.setTextAlign(TextAlignment.CENTER);
    gc.setTextBaseline(VPos.CENTER);
    gc.setFill(inks.ink());
    gc.setFont(font(size, true));
    double high = (b.bottom() - b.top()) * view.scale();
    double wide = (b.right() - b.left()) * view.scale();
    String type = part.type().type();
    if (Set.of("CPOL", "BEEPER").contains(type)) {
      gc.fillText(part.ref(), x, y - high * 0.24);
      typeName(gc, inks, part, b, size);
    } else if (type.equals("DISPLAY")) {
      gc.fillText(part.ref(), x, y + high * 0.16);
    } else if (chip(l) || Set.of("KEY", "FUSE").contains(type)) {
      gc.fillText(part.ref(), x, high > wide * 1.5 ? y - size * 0.2 : y);
      typeName(gc, inks, part, b, size);
    } else if (high > wide && !type.equals("JACK")) {
      gc.save();
      gc.translate(view.toX(b.left()) - size * 0.55, y);
      gc.rotate(-90);
      gc.fillText(part.ref(), 0, 0);
      gc.restore();
    } else {
      gc.fillText(part.ref(), x, view.toY(b.top()) - size * 0.5);
    }
  }

  /** Along the body, below the reference, where there is room. */
  private void typeName(
      GraphicsContext gc, Inks inks, PlacedPart part, Footprint.Body b, double size) {
    double high = (b.bottom() - b.top()) * view.scale();
    double wide = (b.right() - b.left()) * view.scale();
    if (part.value().isEmpty() && part.type().part() instanceof Element) {
      return;
    }
    String name = part.value().isEmpty() ? part.type().type() : part.value();
    double small = Math.max(8, size * 0.62);
    gc.setFont(font(small, false));
    gc.setFill(inks.faint());
    double x = view.toX((b.left() + b.right()) / 2);
    double y = view.toY((b.top() + b.bottom()) / 2);
    double length = name.length() * small * 0.6;
    if (high > wide * 1.5 && high / 2 - size > length) {
      gc.save();
      gc.translate(x, y + size * 0.6 + length / 2);
      gc.rotate(90);
      gc.fillText(name, 0, 0);
      gc.restore();
    } else if (wide > length + 10 && high > size + small * 3) {
      gc.fillText(name, x, y + size * 0.5 + small * 0.5);
    }
  }

  private void pinNames(GraphicsContext gc, Inks inks) {
    double size = Math.min(13, view.scale() * 0.95);
    gc.setFont(font(size, false));
    gc.setFill(inks.ink());
    gc.setTextBaseline(VPos.CENTER);
    for (BoardPlan.Laid l : model.plan().parts()) {
      if (chip(l) && l.part().turn() == 0) {
        double middle = (l.footprint().body().left() + l.footprint().body().right()) / 2;
        for (PadPlace p : l.footprint().pads()) {
          boolean left = p.x() < middle;
          gc.setTextAlign(left ? TextAlignment.LEFT : TextAlignment.RIGHT);
          gc.fillText(p.pad().pin(), view.toX(p.x() + (left ? 1.1 : -1.1)), view.toY(p.y()));
        }
      }
    }
  }

  private void flags(GraphicsContext gc, Inks inks) {
    gc.setFont(font(10, true));
    gc.setTextAlign(TextAlignment.CENTER);
    gc.setTextBaseline(VPos.CENTER);
    flags.forEach(
        (pad, number) -> {
          double x = view.toX(pad.x());
          double y = view.toY(pad.y());
          gc.setStroke(inks.noted());
          gc.setLineWidth(1.5);
          gc.strokeLine(x, y, x + 8, y - 10);
          gc.setFill(inks.noted());
          gc.fillRoundRect(x + 5, y - 22, 16, 14, 4, 4);
          gc.setFill(inks.paper());
          gc.fillText(Integer.toString(number), x + 13, y - 15);
        });
  }

  private void drawOver() {
    GraphicsContext gc = over.getGraphicsContext2D();
    Inks inks = skin.get().inks();
    gc.setTransform(1, 0, 0, 1, 0, 0);
    gc.clearRect(0, 0, getWidth(), getHeight());
    toMillimetres(gc);
    net(gc, inks);
    model.asked().get().ifPresent(spot -> point(gc, inks, spot));
    outline(gc, inks, model.held().get(), true);
    outline(gc, inks, model.hand().get(), false);
  }

  /** A net as a thick hatched line whose dashes move. */
  private void net(GraphicsContext gc, Inks inks) {
    String net = model.net().get();
    if (net.isEmpty()) {
      return;
    }
    double dot = 1 / view.scale();
    for (Track track : model.plan().tracks()) {
      if (track.net().equals(net)) {
        gc.setLineDashes();
        gc.setStroke(inks.board());
        gc.setLineWidth(7 * dot);
        strokeAll(gc, track);
        gc.setStroke(inks.mark());
        gc.setLineWidth(1.6 * dot);
        strokeAll(gc, track);
        gc.setLineCap(StrokeLineCap.BUTT);
        gc.setLineDashes(2 * dot, 4 * dot);
        gc.setLineDashOffset(-march0 * dot);
        gc.setLineWidth(6.5 * dot);
        strokeAll(gc, track);
        gc.setLineCap(StrokeLineCap.ROUND);
      }
    }
    gc.setLineDashes();
    for (BoardPlan.Laid l : model.plan().parts()) {
      for (PadPlace p : l.footprint().pads()) {
        if (model.plan().net(p.pad()).equals(net)) {
          PartInk.pad(gc, inks, p, inks.mark());
        }
      }
    }
  }

  /** Points at what the guide asks for: a ring of moving dashes and an arrow. */
  private void point(GraphicsContext gc, Inks inks, Spot spot) {
    double dot = 1 / view.scale();
    gc.setStroke(inks.mark());
    gc.setFill(inks.mark());
    gc.setLineWidth(2.5 * dot);
    gc.setLineCap(StrokeLineCap.BUTT);
    gc.setLineDashes(7 * dot, 5 * dot);
    gc.setLineDashOffset(-march0 * dot);
    Footprint.Body b = around(spot, dot);
    double round = spot instanceof Spot.OnPin ? b.right() - b.left() : 4;
    gc.strokeRoundRect(b.left(), b.top(), b.right() - b.left(), b.bottom() - b.top(), round, round);
    gc.setLineDashes();
    double x = spot instanceof Spot.OnBoard ? b.left() + 24 : (b.left() + b.right()) / 2;
    double tip = spot instanceof Spot.OnBoard ? b.bottom() - 16 : b.bottom() + 2 * dot;
    double nod = Math.abs(march0 % 16 - 8) * 0.6 * dot;
    double y = tip + nod;
    gc.fillPolygon(
        new double[] {
          x, x + 9 * dot, x + 4 * dot, x + 4 * dot, x - 4 * dot, x - 4 * dot, x - 9 * dot
        },
        new double[] {
          y, y + 12 * dot, y + 12 * dot, y + 26 * dot, y + 26 * dot, y + 12 * dot, y + 12 * dot
        },
        7);
  }

  private Footprint.Body around(Spot spot, double dot) {
    double by = 8 * dot;
    Footprint.Body b;
    if (spot instanceof Spot.OnPin pin) {
      by = Math.max(1.6, 10 * dot);
      b = new Footprint.Body(pin.place().x(), pin.place().y(), pin.place().x(), pin.place().y());
    } else if (spot instanceof Spot.OnPart part) {
      b = model.plan().laid(part.ref()).footprint().body();
    } else if (spot instanceof Spot.OnBrick) {
      b = BoardPlan.BRICK;
    } else {
      by = -3 * dot;
      Board board = model.plan().board();
      b = new Footprint.Body(0, 0, board.width(), board.height());
    }
    return new Footprint.Body(b.left() - by, b.top() - by, b.right() + by, b.bottom() + by);
  }

  private static void strokeAll(GraphicsContext gc, Track track) {
    gc.beginPath();
    for (int i = 0; i < track.legs().size(); i++) {
      Track.Leg leg = track.legs().get(i);
      if (i == 0) {
        gc.moveTo(leg.fromX(), leg.fromY());
      }
      gc.lineTo(leg.toX(), leg.toY());
    }
    gc.stroke();
  }

  private void outline(GraphicsContext gc, Inks inks, Spot spot, boolean held) {
    double dot = 1 / view.scale();
    Color colour = inks.mark();
    gc.setStroke(colour);
    gc.setLineWidth((held ? 2.5 : 1.8) * dot);
    gc.setLineDashes();
    if (spot instanceof Spot.OnPin pin) {
      double r = Math.max(1.3, 7 * dot);
      gc.strokeOval(pin.place().x() - r, pin.place().y() - r, 2 * r, 2 * r);
      if (held) {
        double s = r + 3 * dot;
        gc.strokeOval(pin.place().x() - s, pin.place().y() - s, 2 * s, 2 * s);
      }
    } else if (spot instanceof Spot.OnPart || spot instanceof Spot.OnBrick) {
      Footprint.Body b =
          spot instanceof Spot.OnPart part
              ? model.plan().laid(part.ref()).footprint().body()
              : BoardPlan.BRICK;
      double by = 3 * dot;
      gc.strokeRoundRect(
          b.left() - by,
          b.top() - by,
          b.right() - b.left() + 2 * by,
          b.bottom() - b.top() + 2 * by,
          2,
          2);
    }
  }
}
