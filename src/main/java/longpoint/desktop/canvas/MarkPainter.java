package longpoint.desktop.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.MarkVisitor;
import longpoint.drawing.Pen;
import longpoint.drawing.Placed;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/**
 * Paints marks on the screen: the sibling of the SVG, DXF and PDF writers. Geometry follows the
 * view; pens and lettering keep their paper sizes. Lines come first in the order of the drawing;
 * lettering is kept back and painted last, on a halo of the ground, and a word that would land on
 * an earlier one is left out: zooming in brings it back.
 */
final class MarkPainter implements MarkVisitor {
  /** A dimension is left out when its figure is longer than this many times its line. */
  private static final double LONGEST_FIGURE = 1.6;

  /** Largest change of a tint by light and shadow. */
  private static final double LIGHT = 0.055;

  private static final int HALO_ALPHA = 225;

  private final Graphics2D g;
  private final View view;
  private final Bounds seen;
  private final CanvasColours colours;
  private final ScreenType type;
  private final ToDoubleFunction<String> shade;
  private final Predicate<Layer> shown;
  private final Sparing sparing;
  private final double unitsPerMm;
  private final WordSpace space;
  private final Map<Pen, BasicStroke> strokes = new HashMap<>();
  private final List<Mark.Text> words = new ArrayList<>();

  /**
   * @param seen piece of plan that can be seen; marks outside it cost nothing
   * @param shade subject of a tint to −1 (in shadow) … 1 (in the light)
   * @param shown which layers are switched on
   * @param sparing what lettering is worth showing at this size
   */
  MarkPainter(
      Graphics2D g,
      View view,
      Bounds seen,
      CanvasColours colours,
      ScreenType type,
      ToDoubleFunction<String> shade,
      Predicate<Layer> shown,
      Sparing sparing) {
    this.g = g;
    this.sparing = sparing;
    this.view = view;
    this.colours = colours;
    this.type = type;
    this.shade = shade;
    this.shown = shown.and(sparing::shows);
    this.unitsPerMm = type.unitsPerMm(view);
    this.space = new WordSpace(20 * unitsPerMm);
    this.seen = seen.grown(10 * unitsPerMm);
  }

  /** Paints the lettering met so far; call it once, after the marks. */
  void finish() {
    words.forEach(this::letter);
    words.clear();
  }

  @Override
  public void path(Mark.Path path) {
    if (shown.test(path.layer()) && inSight(path.points())) {
      Path2D shape = new Path2D.Double();
      trace(shape, path.points(), path.closed());
      pen(path.layer());
      g.draw(shape);
    }
  }

  @Override
  public void arc(Mark.Arc arc) {
    if (shown.test(arc.layer())) {
      double r = arc.radius() * view.scale();
      double x = view.x(arc.centre()) - r;
      double y = view.y(arc.centre()) - r;
      pen(arc.layer());
      g.draw(
          new Arc2D.Double(x, y, 2 * r, 2 * r, arc.startDegrees(), arc.sweepDegrees(), Arc2D.OPEN));
    }
  }

  @Override
  public void text(Mark.Text text) {
    if (shown.test(text.layer()) && inSight(List.of(text.at()))) {
      words.add(text);
    }
  }

  @Override
  public void dimension(Mark.Dimension dimension) {
    if (!shown.test(dimension.layer())
        || !inSight(List.of(dimension.from(), dimension.to()))
        || tooShort(dimension)) {
      return;
    }
    DimensionLayout layout = DimensionLayout.of(dimension, unitsPerMm);
    pen(dimension.layer());
    layout.extensions().forEach(this::draw);
    draw(layout.line());
    g.setStroke(new BasicStroke((float) type.pixels(0.4)));
    layout.ticks().forEach(this::draw);
    words.add(layout.text());
  }

  private boolean tooShort(Mark.Dimension dimension) {
    double figure = Lettering.width(dimension.text(), DimensionLayout.TEXT_HEIGHT) * unitsPerMm;
    double wall = dimension.from().distance(dimension.to());
    boolean spared =
        !sparing.shows(
            dimension,
            wall * view.scale(),
            figure * view.scale(),
            type.pixels(Math.abs(dimension.offsetMm())));
    return spared || dimension.slideMm() == 0 && figure > LONGEST_FIGURE * wall;
  }

  @Override
  public void fill(Mark.Fill fill) {
    if (shown.test(fill.layer()) && inSight(fill.region().shell().points())) {
      Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      trace(shape, fill.region().shell().points(), true);
      for (Ring hole : fill.region().holes()) {
        trace(shape, hole.points(), true);
      }
      g.setColor(lit(colours.of(fill.layer().ink()), shade.applyAsDouble(fill.subject())));
      // Lines are painted over the edges of tints: smoothing them too would only cost time.
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
      g.fill(shape);
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    }
  }

  @Override
  public void group(Mark.Group group) {
    Placed.marksOf(group, this);
  }

  /** A little more or less of a tint's own colour; never so much that lettering suffers. */
  private static Color lit(Color tint, double light) {
    double factor = 1 + LIGHT * Math.max(-1, Math.min(1, light));
    return new Color(
        (int) Math.min(255, tint.getRed() * factor),
        (int) Math.min(255, tint.getGreen() * factor),
        (int) Math.min(255, tint.getBlue() * factor));
  }

  private boolean inSight(List<Point> points) {
    Bounds box = Bounds.of(points);
    return box.maxX() >= seen.minX()
        && box.minX() <= seen.maxX()
        && box.maxY() >= seen.minY()
        && box.minY() <= seen.maxY();
  }

  private void trace(Path2D shape, List<Point> points, boolean closed) {
    shape.moveTo(view.x(points.get(0)), view.y(points.get(0)));
    for (Point p : points.subList(1, points.size())) {
      shape.lineTo(view.x(p), view.y(p));
    }
    if (closed) {
      shape.closePath();
    }
  }

  private void draw(Segment s) {
    g.draw(new Line2D.Double(view.x(s.from()), view.y(s.from()), view.x(s.to()), view.y(s.to())));
  }

  private void pen(Layer layer) {
    g.setColor(colours.of(layer.ink()));
    g.setStroke(strokes.computeIfAbsent(layer.pen(), this::stroke));
  }

  private BasicStroke stroke(Pen pen) {
    float mm = (float) type.pixels(1);
    float[] dash =
        switch (pen.type()) {
          case CONTINUOUS -> null;
          case DASHED -> new float[] {2.2f * mm, 1.3f * mm};
          case LONG_DASHED -> new float[] {6 * mm, 1.6f * mm};
          case CHAIN -> new float[] {4 * mm, 1.2f * mm, 0.6f * mm, 1.2f * mm};
          case DOTTED -> new float[] {0.4f * mm, 1.2f * mm};
        };
    return new BasicStroke(
        (float) type.pixels(pen.widthMm()),
        BasicStroke.CAP_ROUND,
        BasicStroke.JOIN_ROUND,
        10,
        dash,
        0);
  }

  private void letter(Mark.Text text) {
    if (!space.take(Lettering.box(text, unitsPerMm))) {
      return;
    }
    ScreenType.Word word = type.word(g, text.text(), text.heightMm());
    double left =
        switch (text.anchor()) {
          case START -> 0;
          case MIDDLE, CENTRE -> -word.width() / 2;
          case END -> -word.width();
        };
    double down = text.anchor() == Anchor.CENTRE ? type.pixels(text.heightMm()) / 2 : 0;
    AffineTransform place =
        AffineTransform.getTranslateInstance(view.x(text.at()), view.y(text.at()));
    place.rotate(-Math.toRadians(text.degrees()));
    place.translate(left, down);
    Color ground = colours.ground();
    g.setColor(new Color(ground.getRed(), ground.getGreen(), ground.getBlue(), HALO_ALPHA));
    g.fill(place.createTransformedShape(word.halo()));
    g.setColor(colours.of(text.layer().ink()));
    g.fill(place.createTransformedShape(word.letters()));
  }
}
