package longpoint.desktop.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.MarkVisitor;
import longpoint.drawing.Page;
import longpoint.drawing.Pen;
import longpoint.drawing.Placed;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/**
 * Paints a sheet in millimetres: the sibling of the SVG and PDF writers for screens, printers and
 * pictures. Nothing is left out, moved or coloured otherwise than there.
 */
public final class PagePainter implements MarkVisitor {
  private final Graphics2D g;
  private final PaperType type = PaperType.get();
  private final Map<Pen, BasicStroke> strokes = new HashMap<>();

  private PagePainter(Graphics2D g) {
    this.g = g;
  }

  /**
   * Paints the marks; the paper itself is left as it is.
   *
   * @param page whose upper left corner lands on the origin of the graphics
   * @param scale units of the graphics to a millimetre, &gt; 0
   */
  public static void paint(Page page, Graphics2D graphics, double scale) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.transform(onto(page, scale));
    PagePainter painter = new PagePainter(g);
    page.marks().forEach(m -> m.accept(painter));
    g.dispose();
  }

  /** Millimetres of the page, y up from the lower left corner, to units of a graphics. */
  static AffineTransform onto(Page page, double scale) {
    return new AffineTransform(scale, 0, 0, -scale, 0, scale * page.heightMm());
  }

  @Override
  public void group(Mark.Group group) {
    Placed.marksOf(group, this);
  }

  @Override
  public void path(Mark.Path path) {
    Path2D shape = new Path2D.Double();
    trace(shape, path.points());
    if (path.closed()) {
      shape.closePath();
    }
    draw(path.layer(), shape);
  }

  @Override
  public void arc(Mark.Arc arc) {
    double r = arc.radius();
    Point c = arc.centre();
    // An arc of Java's turns the other way, as y runs down there.
    draw(
        arc.layer(),
        new Arc2D.Double(
            c.x() - r,
            c.y() - r,
            2 * r,
            2 * r,
            -arc.startDegrees(),
            -arc.sweepDegrees(),
            Arc2D.OPEN));
  }

  @Override
  public void text(Mark.Text text) {
    letter(text);
  }

  @Override
  public void dimension(Mark.Dimension dimension) {
    DimensionLayout layout = DimensionLayout.of(dimension, 1);
    for (Segment s : layout.strokes()) {
      draw(
          dimension.layer(), new Line2D.Double(s.from().x(), s.from().y(), s.to().x(), s.to().y()));
    }
    letter(layout.text());
  }

  @Override
  public void fill(Mark.Fill fill) {
    Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    trace(shape, fill.region().shell().points());
    shape.closePath();
    for (Ring hole : fill.region().holes()) {
      trace(shape, hole.points());
      shape.closePath();
    }
    g.setColor(colour(fill.layer().ink()));
    g.fill(shape);
    // Outlined in its own colour, or the paper shows through between neighbours.
    draw(fill.layer(), shape);
  }

  private void draw(Layer layer, Shape shape) {
    g.setColor(colour(layer.ink()));
    g.setStroke(strokes.computeIfAbsent(layer.pen(), PagePainter::stroke));
    g.draw(shape);
  }

  private static BasicStroke stroke(Pen pen) {
    List<Double> pattern = pen.type().patternMm();
    float width = (float) pen.widthMm();
    if (pattern.isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    float[] dashes = new float[pattern.size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = pattern.get(i).floatValue();
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
  }

  private void letter(Mark.Text text) {
    double width = type.width(text.text(), text.heightMm());
    double back =
        switch (text.anchor()) {
          case START -> 0;
          case MIDDLE, CENTRE -> width / 2;
          case END -> width;
        };
    double drop = text.anchor() == Anchor.CENTRE ? text.heightMm() / 2 : 0;
    AffineTransform before = g.getTransform();
    g.translate(text.at().x(), text.at().y());
    g.rotate(Math.toRadians(text.degrees()));
    g.translate(-back, -drop);
    g.scale(1, -1);
    g.setColor(colour(text.layer().ink()));
    g.fill(type.letters(text.text(), text.heightMm()));
    g.setTransform(before);
  }

  private static Color colour(Ink ink) {
    return new Color(ink.rgb());
  }

  private static void trace(Path2D shape, List<Point> points) {
    for (int i = 0; i < points.size(); i++) {
      Point p = points.get(i);
      if (i == 0) {
        shape.moveTo(p.x(), p.y());
      } else {
        shape.lineTo(p.x(), p.y());
      }
    }
  }
}
