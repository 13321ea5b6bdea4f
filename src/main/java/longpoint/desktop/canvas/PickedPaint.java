package longpoint.desktop.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;

/** Lays a broad see-through stroke over what is picked, whatever drawing it stands on. */
public final class PickedPaint {
  private static final float WIDTH = 9;
  private static final int STROKE_ALPHA = 120;
  private static final int FILL_ALPHA = 70;

  private PickedPaint() {}

  /**
   * Marks that show something picked.
   *
   * @param unitsPerMm units of the drawing to a millimetre of its lettering
   */
  public static void paint(
      List<Mark> marks,
      Set<String> picked,
      Graphics2D g,
      View view,
      Color colour,
      double unitsPerMm) {
    if (picked.isEmpty()) {
      return;
    }
    Strokes all = Strokes.of(marks, unitsPerMm);
    g.setColor(clear(colour, FILL_ALPHA));
    for (Mark.Fill fill : all.fills()) {
      if (picked.contains(fill.subject())) {
        Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        trace(shape, fill.region().shell().points(), view);
        for (Ring hole : fill.region().holes()) {
          trace(shape, hole.points(), view);
        }
        g.fill(shape);
      }
    }
    g.setColor(clear(colour, STROKE_ALPHA));
    g.setStroke(new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    Set<String> stroked = new HashSet<>();
    for (Strokes.Stroke s : all.strokes()) {
      // Dimensions of a thing tell of it, and are not it.
      if (!(s.mark() instanceof Mark.Dimension) && picked.contains(s.mark().subject())) {
        stroked.add(s.mark().subject());
        Point a = s.segment().from();
        Point b = s.segment().to();
        g.draw(new Line2D.Double(view.x(a), view.y(a), view.x(b), view.y(b)));
      }
    }
    for (Strokes.Label label : all.labels()) {
      String subject = label.mark().subject();
      if (picked.contains(subject) && !stroked.contains(subject)) {
        Path2D shape = new Path2D.Double();
        trace(shape, label.box().corners(), view);
        g.fill(shape);
      }
    }
    g.setStroke(new BasicStroke());
  }

  /** Chains of points in the plan. */
  public static void chains(List<List<Point>> chains, Graphics2D g, View view, Color colour) {
    g.setColor(clear(colour, STROKE_ALPHA + 40));
    g.setStroke(new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    for (List<Point> chain : chains) {
      Path2D shape = new Path2D.Double();
      for (Point p : chain) {
        if (shape.getCurrentPoint() == null) {
          shape.moveTo(view.x(p), view.y(p));
        } else {
          shape.lineTo(view.x(p), view.y(p));
        }
      }
      g.draw(shape);
    }
  }

  private static void trace(Path2D shape, List<Point> points, View view) {
    boolean first = true;
    for (Point p : points) {
      if (first) {
        shape.moveTo(view.x(p), view.y(p));
      } else {
        shape.lineTo(view.x(p), view.y(p));
      }
      first = false;
    }
    shape.closePath();
  }

  private static Color clear(Color c, int alpha) {
    return new Color(c.getRed(), c.getGreen(), c.getBlue(), alpha);
  }
}
