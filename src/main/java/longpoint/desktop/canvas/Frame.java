package longpoint.desktop.canvas;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import longpoint.drawing.Drawing;
import longpoint.drawing.Layer;
import longpoint.units.LengthUnit;

/**
 * The sheet as an image, kept for as long as nothing it shows has changed: moving the pointer then
 * costs one copy, however large the plan. What lies under the marks, a picture and the grid, is an
 * image of its own, so that a wall that is dragged does not paint it anew either.
 */
final class Frame {
  /**
   * What an image shows. Drawings are told apart by identity: they never change, and comparing
   * thousands of marks would cost more than painting them.
   */
  record Content(
      Drawing drawing,
      View view,
      int width,
      int height,
      LengthUnit unit,
      CanvasColours colours,
      ScreenType type,
      ToDoubleFunction<String> shade,
      Set<String> hiddenLayers,
      Grid grid,
      Optional<BackdropPainter> backdrop,
      Sparing sparing) {
    Content {
      hiddenLayers = Set.copyOf(hiddenLayers);
    }

    boolean sameAs(Content other) {
      return sameGround(other)
          && drawing == other.drawing
          && type == other.type
          && sparing.equals(other.sparing)
          && shade == other.shade
          && hiddenLayers.equals(other.hiddenLayers);
    }

    /** Whether there is nothing but the ground and its grid: painted sooner than kept. */
    boolean isBare() {
      return drawing.marks().isEmpty() && backdrop.isEmpty();
    }

    /** Whether all that lies under the marks is the same. */
    boolean sameGround(Content other) {
      return other != null
          && colours == other.colours
          && width == other.width
          && height == other.height
          && unit == other.unit
          && grid == other.grid
          && backdrop.equals(other.backdrop)
          && Objects.equals(view, other.view);
    }
  }

  /** Whether squares are drawn under the plan. */
  enum Grid {
    SHOWN,
    HIDDEN
  }

  private Content content;
  private BufferedImage image;
  private BufferedImage ground;
  private double deviceScale;

  /** Puts the content on the screen, painting it anew only when it is not the one kept. */
  void paint(Graphics2D screen, Content wanted) {
    if (wanted.isBare()) {
      forget();
      ground(screen, wanted);
      return;
    }
    AffineTransform device = screen.getTransform();
    if (image == null || !wanted.sameAs(content) || device.getScaleX() != deviceScale) {
      repaint(screen, wanted, device.getScaleX());
    }
    // In device pixels, so that a scaled screen gets every pixel of the image unblurred.
    screen.setTransform(
        new AffineTransform(1, 0, 0, 1, device.getTranslateX(), device.getTranslateY()));
    screen.drawImage(image, 0, 0, null);
    screen.setTransform(device);
  }

  private void forget() {
    content = null;
    image = null;
    ground = null;
  }

  private void repaint(Graphics2D screen, Content wanted, double scale) {
    int w = Math.max(1, (int) Math.ceil(wanted.width() * scale));
    int h = Math.max(1, (int) Math.ceil(wanted.height() * scale));
    boolean resized = image == null || image.getWidth() != w || image.getHeight() != h;
    if (resized) {
      image = screen.getDeviceConfiguration().createCompatibleImage(w, h, Transparency.OPAQUE);
      ground = screen.getDeviceConfiguration().createCompatibleImage(w, h, Transparency.OPAQUE);
    }
    if (resized || scale != deviceScale || !wanted.sameGround(content)) {
      Graphics2D g = ground.createGraphics();
      g.scale(scale, scale);
      ground(g, wanted);
      g.dispose();
    }
    Graphics2D g = image.createGraphics();
    g.drawImage(ground, 0, 0, null);
    g.scale(scale, scale);
    marks(g, wanted);
    g.dispose();
    content = wanted;
    deviceScale = scale;
  }

  /** Paints everything afresh. */
  static void draw(Graphics2D g, Content c) {
    ground(g, c);
    marks(g, c);
  }

  private static void ground(Graphics2D g, Content c) {
    smooth(g);
    g.setColor(c.colours().ground());
    g.fillRect(0, 0, c.width(), c.height());
    c.backdrop().ifPresent(b -> b.paint(g, c.view(), c.colours()));
    if (c.grid() == Grid.SHOWN) {
      new GridPainter(c.view(), c.width(), c.height(), c.unit(), c.colours()).grid(g);
    }
  }

  private static void marks(Graphics2D g, Content c) {
    smooth(g);
    MarkPainter marks =
        new MarkPainter(
            g,
            c.view(),
            c.view().seen(c.width(), c.height()),
            c.colours(),
            c.type(),
            c.shade(),
            layer -> shown(layer, c.hiddenLayers()),
            c.sparing());
    c.drawing().accept(marks);
    marks.finish();
  }

  private static boolean shown(Layer layer, Set<String> hidden) {
    return !hidden.contains(layer.name());
  }

  static void smooth(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
  }
}
