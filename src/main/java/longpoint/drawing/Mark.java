package longpoint.drawing;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Region;

/** One thing on a drawing. Coordinates in plan units, y up. */
public sealed interface Mark {
  /** Hands itself to the method of the visitor made for it. */
  void accept(MarkVisitor visitor);

  /** Id of the plan or roof element it shows, or empty. */
  String subject();

  /**
   * A chain of straight lines.
   *
   * @param points at least two
   * @param closed whether the last joins the first
   * @param subject id of the plan or roof element shown, or empty
   */
  record Path(List<Point> points, boolean closed, Layer layer, String subject) implements Mark {
    public Path {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a path needs two points");
      }
    }

    public static Path line(Point from, Point to, Layer layer, String subject) {
      return new Path(List.of(from, to), false, layer, subject);
    }

    @Override
    public void accept(MarkVisitor visitor) {
      visitor.path(this);
    }
  }

  /**
   * Part of a circle.
   *
   * @param radius &gt; 0
   * @param startDegrees from the x axis, counter-clockwise
   * @param sweepDegrees counter-clockwise if positive; 360 is a whole circle
   */
  record Arc(
      Point centre,
      double radius,
      double startDegrees,
      double sweepDegrees,
      Layer layer,
      String subject)
      implements Mark {
    public Arc {
      if (!(radius > 0)) {
        throw new IllegalArgumentException("an arc needs a radius");
      }
    }

    /** The point a given share of the way along: 0 is the start, 1 the end. */
    public Point at(double share) {
      double radians = Math.toRadians(startDegrees + share * sweepDegrees);
      return centre.plus(new Point(Math.cos(radians), Math.sin(radians)).times(radius));
    }

    @Override
    public void accept(MarkVisitor visitor) {
      visitor.arc(this);
    }
  }

  /**
   * One line of lettering.
   *
   * @param at the point the anchor sits on
   * @param heightMm height of a capital on paper
   * @param degrees direction of reading from the x axis, counter-clockwise
   */
  record Text(
      Point at,
      String text,
      double heightMm,
      double degrees,
      Anchor anchor,
      Layer layer,
      String subject)
      implements Mark {
    @Override
    public void accept(MarkVisitor visitor) {
      visitor.text(this);
    }
  }

  /**
   * A dimension line between two points. {@link DimensionLayout} says where its strokes and its
   * figure go.
   *
   * @param from measured from here
   * @param to to here; not the same point
   * @param offsetMm how far on paper the dimension line stands off to the left of from→to; negative
   *     to the right
   * @param slideMm how far on paper the figure is moved along from→to, away from the middle of the
   *     dimension line, where the line is too short for it
   * @param text what it says
   */
  record Dimension(
      Point from,
      Point to,
      double offsetMm,
      double slideMm,
      String text,
      Layer layer,
      String subject)
      implements Mark {
    public Dimension {
      if (from.equals(to)) {
        throw new IllegalArgumentException("a dimension needs two points apart");
      }
    }

    /** With its figure in the middle. */
    public Dimension(
        Point from, Point to, double offsetMm, String text, Layer layer, String subject) {
      this(from, to, offsetMm, 0, text, layer, subject);
    }

    @Override
    public void accept(MarkVisitor visitor) {
      visitor.dimension(this);
    }
  }

  /**
   * A tinted piece of ground.
   *
   * @param region what is tinted
   */
  record Fill(Region region, Layer layer, String subject) implements Mark {
    @Override
    public void accept(MarkVisitor visitor) {
      visitor.fill(this);
    }
  }

  /**
   * Marks that belong together.
   *
   * @param name of the group, for those who open the file in a drawing program
   * @param placement where the group's own coordinates land in its parent's
   */
  record Group(String name, Placement placement, List<Mark> marks) implements Mark {
    public Group {
      marks = List.copyOf(marks);
    }

    /** What its marks show they say themselves. */
    @Override
    public String subject() {
      return "";
    }

    @Override
    public void accept(MarkVisitor visitor) {
      visitor.group(this);
    }
  }
}
