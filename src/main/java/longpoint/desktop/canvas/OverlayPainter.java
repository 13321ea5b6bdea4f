package longpoint.desktop.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import longpoint.drawing.Ink;
import longpoint.editor.MarkupPicker;
import longpoint.editor.Overlay;
import longpoint.editor.Ref;
import longpoint.editor.Snap;
import longpoint.editor.ToolRunner;
import longpoint.geometry.Bounds;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * Paints what the tool in hand is about: what is selected and what a press would take hold of, the
 * walls of a gesture under way, rubber lines and guides, live lengths, where the pointer is held
 * and why, and the figures being typed.
 */
public final class OverlayPainter implements OverPaint {
  private static final float HALO = 9;
  private static final double HANDLE = 5;

  private final ToolRunner runner;
  private final Supplier<Font> font;
  private final Supplier<Point> pointer;
  private final String emptyHint;

  /**
   * @param font of the bubbles, asked at every painting since it follows the look
   * @param pointer on the screen, null when outside the sheet
   * @param emptyHint what to do with an empty sheet, in a few lines
   */
  public OverlayPainter(
      ToolRunner runner, Supplier<Font> font, Supplier<Point> pointer, String emptyHint) {
    this.emptyHint = emptyHint;
    this.runner = runner;
    this.font = font;
    this.pointer = pointer;
  }

  @Override
  public void paint(Graphics2D g, View view, CanvasColours colours) {
    new Pass(g, view, colours, font.get()).paint(runner.overlay());
  }

  /** From a held place to the reason it is held for, pixels. */
  private static final int BESIDE = 13;

  /** Height of the ground behind a reason, pixels. */
  private static final int REASON = 22;

  /** One painting. */
  private final class Pass {
    private final Graphics2D g;
    private final View view;
    private final CanvasColours colours;
    private final Font font;
    private final Plan plan = runner.shown();

    Pass(Graphics2D g, View view, CanvasColours colours, Font font) {
      this.g = g;
      this.view = view;
      this.colours = colours;
      this.font = font;
    }

    void paint(Overlay overlay) {
      if (plan.parts().isEmpty() && overlay.equals(Overlay.NONE)) {
        hint();
        return;
      }
      runner.document().selection().refs().forEach(r -> halo(r, alpha(colours.selection(), 120)));
      overlay.hover().ifPresent(r -> halo(r, alpha(colours.hover(), 150)));
      if (runner.previewing()) {
        walls();
      }
      overlay.lines().forEach(this::line);
      overlay.box().ifPresent(this::box);
      overlay.handles().forEach(h -> handle(h.at()));
      List<Rectangle2D> bubbles = new ArrayList<>();
      overlay.dimensions().forEach(d -> dimension(d.along(), d.text()).ifPresent(bubbles::add));
      overlay.snap().filter(s -> !s.isFree()).ifPresent(s -> snap(s, bubbles));
      entry(overlay.snap());
    }

    /** What to do with an empty sheet. */
    private void hint() {
      String[] lines = emptyHint.split("\n");
      Rectangle clip = g.getClipBounds();
      double y = clip.getCenterY() - 20;
      for (int i = 0; i < lines.length; i++) {
        g.setFont(
            font.deriveFont(i == 0 ? Font.BOLD : Font.PLAIN, font.getSize2D() + (i == 0 ? 7 : 2)));
        FontMetrics metrics = g.getFontMetrics();
        g.setColor(i == 0 ? colours.of(Ink.MAIN) : colours.of(Ink.QUIET));
        g.drawString(
            lines[i], (float) (clip.getCenterX() - metrics.stringWidth(lines[i]) / 2.0), (float) y);
        y += metrics.getHeight() + 8;
      }
    }

    private void halo(Ref ref, Color colour) {
      if (!ref.in(plan)) {
        return;
      }
      if (ref.part().isEmpty()) {
        besides(ref, colour);
        return;
      }
      Part part = plan.part(ref.part()).orElseThrow();
      g.setColor(colour);
      g.setStroke(new BasicStroke(HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      if (ref instanceof Ref.OfSide side) {
        g.draw(shape(part.side(side.side())));
      } else if (ref instanceof Ref.OfCorner corner) {
        longpoint.geometry.Point at = part.side(corner.corner()).from();
        g.fill(new Ellipse2D.Double(view.x(at) - HALO, view.y(at) - HALO, 2 * HALO, 2 * HALO));
      } else {
        Path2D rings = rings(part);
        g.draw(rings);
        g.setColor(alpha(colour, 28));
        g.fill(rings);
      }
    }

    /** A note, a dimension, or the picture beneath. */
    private void besides(Ref ref, Color colour) {
      Markup markup = plan.markup();
      g.setColor(colour);
      g.setStroke(new BasicStroke(HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      if (ref instanceof Ref.OfNote n) {
        Note note = markup.note(n.note()).orElseThrow();
        g.setColor(alpha(colour, 70));
        g.fill(shape(MarkupPicker.words(note, EditGestures.REACH / view.scale())));
        note.pointsAt().ifPresent(p -> g.draw(shape(new Segment(note.at(), p))));
      } else if (ref instanceof Ref.OfDimension d) {
        markup
            .dimension(d.dimension())
            .flatMap(m -> m.line(plan))
            .map(this::shape)
            .ifPresent(g::draw);
      } else {
        g.setStroke(new BasicStroke(3));
        g.draw(closed(markup.backdrop().orElseThrow().corners()));
      }
    }

    private Rectangle2D shape(Bounds box) {
      double x = view.originX() + view.scale() * box.minX();
      double y = view.originY() - view.scale() * box.maxY();
      return new Rectangle2D.Double(x, y, view.scale() * box.width(), view.scale() * box.height());
    }

    private Path2D closed(List<longpoint.geometry.Point> corners) {
      Path2D shape = new Path2D.Double();
      shape.moveTo(view.x(corners.get(0)), view.y(corners.get(0)));
      corners.forEach(p -> shape.lineTo(view.x(p), view.y(p)));
      shape.closePath();
      return shape;
    }

    /**
     * Walls follow the pointer at once; the roof follows as fast as it is worked out. Where they
     * came from stays as a thin dashed line.
     */
    private void walls() {
      pen(alpha(colours.of(Ink.MAIN), 110), 1.2f, new float[] {3, 4});
      for (Part part : runner.document().plan().parts()) {
        if (!plan.parts().contains(part)) {
          g.draw(rings(part));
        }
      }
      g.setColor(colours.selection());
      g.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      for (Part part : plan.parts()) {
        if (!runner.document().plan().parts().contains(part)) {
          g.draw(rings(part));
        }
      }
    }

    private Path2D rings(Part part) {
      Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      for (Ring ring : part.rings()) {
        for (int i = 0; i < ring.size(); i++) {
          longpoint.geometry.Point p = ring.corner(i);
          if (i == 0) {
            shape.moveTo(view.x(p), view.y(p));
          } else {
            shape.lineTo(view.x(p), view.y(p));
          }
        }
        shape.closePath();
      }
      return shape;
    }

    private void line(Overlay.Line line) {
      switch (line.style()) {
        case RUBBER -> pen(colours.selection(), 2.4f, null);
        case GUIDE -> pen(alpha(colours.snap(), 170), 1.2f, new float[] {5, 5});
        case TAPE -> pen(colours.snap(), 2.2f, null);
      }
      g.draw(shape(line.at()));
    }

    private void pen(Color colour, float width, float[] dash) {
      g.setColor(colour);
      g.setStroke(
          new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, dash, 0));
    }

    private void box(Bounds box) {
      Rectangle2D shape = shape(box);
      g.setColor(alpha(colours.selection(), 30));
      g.fill(shape);
      pen(colours.selection(), 1.2f, new float[] {4, 4});
      g.draw(shape);
    }

    private void handle(longpoint.geometry.Point at) {
      Rectangle2D square =
          new Rectangle2D.Double(view.x(at) - HANDLE, view.y(at) - HANDLE, 2 * HANDLE, 2 * HANDLE);
      g.setColor(colours.ground());
      g.fill(square);
      pen(colours.selection(), 2, null);
      g.draw(square);
    }

    /** A length on the stretch of its line that shows. */
    private Optional<Rectangle2D> dimension(Segment along, String text) {
      Bubble bubble =
          new Bubble(g, colours, text, font.deriveFont(Font.BOLD, font.getSize2D() + 3));
      return InSight.middle(shape(along), g.getClipBounds())
          .map(at -> bubble.draw(at.getX() - bubble.width() / 2, at.getY() - bubble.height() / 2));
    }

    private void snap(Snap snap, List<Rectangle2D> bubbles) {
      double x = view.x(snap.at());
      double y = view.y(snap.at());
      pen(colours.snap(), 2.2f, null);
      double r = 7;
      switch (snap.kind()) {
        case CORNER -> g.draw(new Rectangle2D.Double(x - r, y - r, 2 * r, 2 * r));
        case MIDDLE -> g.draw(triangle(x, y, r));
        case CROSSING -> {
          g.draw(new Line2D.Double(x - r, y - r, x + r, y + r));
          g.draw(new Line2D.Double(x - r, y + r, x + r, y - r));
        }
        case ON_SIDE -> g.draw(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        case IN_LINE, SQUARE, GRID, FREE -> {
          g.draw(new Line2D.Double(x - r, y, x + r, y));
          g.draw(new Line2D.Double(x, y - r, x, y + r));
        }
      }
      if (!snap.reason().isEmpty() && snap.kind() != Snap.Kind.GRID) {
        reason(snap.reason(), x, y, bubbles);
      }
    }

    /** Beside the place, clear of the lengths where there is room, and within the sheet. */
    private void reason(String reason, double x, double y, List<Rectangle2D> bubbles) {
      g.setFont(font);
      FontMetrics metrics = g.getFontMetrics();
      int wide = metrics.stringWidth(reason) + 8;
      boolean fits = x + BESIDE + wide <= g.getClipBounds().getMaxX();
      double right = fits ? x + BESIDE : Math.max(0, x - BESIDE - wide);
      double other = fits ? Math.max(0, x - BESIDE - wide) : right;
      double above = y - 12 - metrics.getAscent();
      double below = y + BESIDE;
      Rectangle2D place = new Rectangle2D.Double(right, above, wide, REASON);
      for (double[] at : new double[][] {{right, below}, {other, above}, {other, below}}) {
        if (bubbles.stream().noneMatch(place::intersects)) {
          break;
        }
        place = new Rectangle2D.Double(at[0], at[1], wide, REASON);
      }
      g.setColor(colours.ground());
      g.fill(new RoundRectangle2D.Double(place.getX(), place.getY(), wide, REASON, 8, 8));
      g.setColor(colours.snap());
      float base = (float) (place.getY() + metrics.getAscent() - 2);
      g.drawString(reason, (float) place.getX() + 4, base);
    }

    private Path2D triangle(double x, double y, double r) {
      Path2D shape = new Path2D.Double();
      shape.moveTo(x, y - r);
      shape.lineTo(x + r, y + r);
      shape.lineTo(x - r, y + r);
      shape.closePath();
      return shape;
    }

    /** Beside the pointer, or beside the place that keys have come to. */
    private void entry(Optional<Snap> held) {
      if (runner.entry().isEmpty()) {
        return;
      }
      Point at = pointer.get();
      double x = at == null ? held.map(h -> view.x(h.at())).orElse(42.0) + 18 : at.x + 18;
      double y = at == null ? held.map(h -> view.y(h.at())).orElse(40.0) + 20 : at.y + 20;
      Bubble typed =
          new Bubble(
              g,
              colours,
              runner.entry().replace("\n", " ⏎ "),
              font.deriveFont(Font.BOLD, font.getSize2D() + 5));
      Rectangle2D place = typed.draw(x, y);
      g.setColor(colours.selection());
      g.fill(
          new Rectangle2D.Double(
              place.getMaxX() - Bubble.PAD + 1, place.getY() + 5, 2, place.getHeight() - 10));
      runner
          .entryProblem()
          .ifPresent(why -> new Bubble(g, colours, why, font).draw(x, place.getMaxY() + 4));
    }

    private Line2D shape(Segment s) {
      return new Line2D.Double(view.x(s.from()), view.y(s.from()), view.x(s.to()), view.y(s.to()));
    }
  }

  private static Color alpha(Color colour, int alpha) {
    return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha);
  }
}
