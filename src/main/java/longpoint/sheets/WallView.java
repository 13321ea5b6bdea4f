package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Drawing;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.RoofSurface;

/**
 * The walls from above, in real size, with dimensions, numbered corners, the diagonals to check and
 * each part's plate height.
 *
 * @param crossed figures that stand where a stroke runs through them
 * @param figures how many dimensions there are
 */
record WallView(Drawing drawing, double unitsPerMm, int leftOff, int crossed, int figures)
    implements FittedView.View {
  /** Where along a diagonal its figure may stand, best first; the middle is where they cross. */
  private static final double[] SHARES = {0.3, 0.7, 0.25, 0.75, 0.35, 0.65, 0.2, 0.8, 0.4, 0.6};

  private static final double ABOVE_MM = 1.2;

  /** From a corner to the middle of its number. */
  private static final double[] OFF_MM = {3.5, 5, 7};

  private static final int DIRECTIONS = 8;

  /** The box around the walls. */
  static Bounds solid(Plan plan) {
    return Strokes.of(RoofMarks.walls(plan), 1).bounds();
  }

  static WallView within(Plan plan, double unitsPerMm, Bounds limit) {
    return new Painter(plan, unitsPerMm, limit).view();
  }

  /** The steps, with what they share. */
  private static final class Painter {
    private final Plan plan;
    private final Words words;
    private final double unitsPerMm;
    private final Bounds limit;
    private final Clutter clutter;
    private final List<Region> grounds = new ArrayList<>();
    private final List<Mark> labels = new ArrayList<>();
    private int leftOff;

    Painter(Plan plan, double unitsPerMm, Bounds limit) {
      this.plan = plan;
      this.words = Words.of(plan);
      this.unitsPerMm = unitsPerMm;
      this.limit = limit;
      Bounds solid = solid(plan);
      this.clutter = new Clutter(unitsPerMm, Math.max(solid.width(), solid.height()));
      plan.parts().forEach(p -> grounds.add(p.region()));
    }

    WallView view() {
      List<Mark> walls = RoofMarks.walls(plan);
      clutter.take(clutter.shape(walls.toArray(Mark[]::new)));
      List<WallCorners> corners = WallCorners.of(plan);
      List<Mark> diagonals = new ArrayList<>();
      for (WallCorners part : corners) {
        for (WallCorners.Tape tape : part.diagonals()) {
          Mark line =
              Mark.Path.line(
                  tape.line().from(), tape.line().to(), Layers.DIAGONAL, part.part().id());
          clutter.take(clutter.shape(line));
          diagonals.add(line);
        }
      }
      corners.forEach(this::numbers);
      corners.forEach(c -> c.diagonals().forEach(t -> diagonal(c.part(), t.line())));
      DimensionRows rows = new DimensionRows(plan, unitsPerMm, clutter, limit, grounds);
      List<WallSpans.Span> spans = new WallSpans(plan, NO_ROOF).all();
      List<Mark> dimensions = rows.place(spans);
      leftOff += spans.size() - dimensions.size();
      LabelPlaces places = new LabelPlaces(unitsPerMm, clutter, limit, grounds);
      plan.parts().forEach(p -> plate(places, p));
      List<Mark> all = new ArrayList<>(dimensions);
      all.addAll(diagonals);
      all.addAll(walls);
      all.addAll(labels);
      return new WallView(
          new Drawing(plan.title(), all), unitsPerMm, leftOff, rows.crossed(), dimensions.size());
    }

    private static final RoofSurface NO_ROOF = new RoofSurface(List.of(), List.of(), List.of());

    private void numbers(WallCorners part) {
      for (int i = 0; i < part.corners().size(); i++) {
        if (!number(part, i)) {
          leftOff++;
        }
      }
    }

    /** Inside the corner where there is room, so that two parts' numbers stay with their part. */
    private boolean number(WallCorners part, int place) {
      Point corner = part.corners().get(place);
      String words = String.valueOf(part.number(place));
      for (boolean inside : new boolean[] {true, false}) {
        for (double off : OFF_MM) {
          for (int i = 0; i < DIRECTIONS; i++) {
            double radians = Math.PI / DIRECTIONS + 2 * Math.PI * i / DIRECTIONS;
            Point way = new Point(StrictMath.cos(radians), StrictMath.sin(radians));
            Point at = corner.plus(way.times(off * unitsPerMm));
            Mark text =
                new Mark.Text(
                    at, words, Lettering.SMALL, 0, Anchor.CENTRE, Layers.CORNER, part.part().id());
            boolean allowed = !inside || part.part().region().contains(at);
            if (allowed && free(text)) {
              return true;
            }
          }
        }
      }
      return false;
    }

    private void diagonal(Part part, Segment line) {
      String shown = words.length(line.length());
      Point along = line.direction();
      double degrees = DimensionLayout.readable(Math.toDegrees(Math.atan2(along.y(), along.x())));
      double radians = Math.toRadians(degrees);
      Point up = new Point(-Math.sin(radians), Math.cos(radians)).times(unitsPerMm);
      for (double share : SHARES) {
        for (double off : new double[] {ABOVE_MM, -ABOVE_MM - Lettering.SMALL}) {
          Point at = line.from().toward(line.to(), share).plus(up.times(off));
          if (free(
              new Mark.Text(
                  at,
                  shown,
                  Lettering.SMALL,
                  degrees,
                  Anchor.MIDDLE,
                  Layers.DIAGONAL,
                  part.id()))) {
            return;
          }
        }
      }
      leftOff++;
    }

    private boolean free(Mark text) {
      Clutter.Shape shape = clutter.shape(text);
      if (!shape.allCorners(limit::contains) || clutter.touches(shape)) {
        return false;
      }
      clutter.take(shape);
      labels.add(text);
      return true;
    }

    private void plate(LabelPlaces places, Part part) {
      String name = words.part(part);
      String plate = words.text("plate", words.length(part.plateHeight()));
      List<Mark> marks =
          places.place(
              part.region(),
              List.of(
                  m -> two(name, Lettering.MEDIUM, plate, m, part.id()),
                  m -> two(name, Lettering.SMALL, plate, m, part.id())),
              Layers.NAMES,
              part.id());
      labels.addAll(marks);
      leftOff += marks.isEmpty() ? 1 : 0;
    }

    /** A longer name is cut short on the drawing; the tables have it whole. */
    private static final double LONGEST_NAME = 80;

    private Mark[] two(String name, double height, String plate, Point middle, String subject) {
      Point up = new Point(0, 0.5 * unitsPerMm);
      Point down = new Point(0, -(Lettering.SMALL + 1.2) * unitsPerMm);
      String shown = Lettering.fitted(name, height, LONGEST_NAME);
      return new Mark[] {
        new Mark.Text(middle.plus(up), shown, height, 0, Anchor.MIDDLE, Layers.NAMES, subject),
        new Mark.Text(
            middle.plus(down), plate, Lettering.SMALL, 0, Anchor.MIDDLE, Layers.NAMES, subject)
      };
    }
  }
}
