package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.drawing.Anchor;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;
import longpoint.units.Slope;
import longpoint.units.SlopeText;

/**
 * Slope arrows with the letter and slope of each plane, and the names of the parts.
 *
 * <p>The arrow points down the slope, the way water runs (common practice on roof plans; the legend
 * says so). A label tries places inside its own ground, those with most room around them first, and
 * takes the first where it covers nothing and nothing crosses it; failing that it stands outside
 * the drawing with a leader. It never covers other lettering.
 */
final class PlanLabels {
  /** On paper, millimetres. */
  private static final double ARROW = 12;

  private static final double HEAD = 2.5;
  private static final double TEXT_GAP = 1;
  private static final double DOT = 0.5;

  /** Places tried along each way of the ground's box. */
  private static final int GRID = 24;

  /** Steps of the search outside: directions, and millimetres between rings. */
  private static final int DIRECTIONS = 24;

  private static final double RING = 6;

  private final double unitsPerMm;
  private final Plan plan;
  private final Clutter clutter;

  PlanLabels(Plan plan, double unitsPerMm, Clutter clutter) {
    this.unitsPerMm = unitsPerMm;
    this.plan = plan;
    this.clutter = clutter;
  }

  /** Makes the marks of a label around a middle point. */
  private interface Shape {
    Mark[] at(Point middle);
  }

  List<Mark> slopes(RoofSurface surface) {
    Map<String, String> letters = PlaneMarks.of(surface);
    List<Mark> marks = new ArrayList<>();
    for (RoofPlane plane : surface.planes()) {
      Optional<Region> ground =
          plane.visible().stream().max(Comparator.comparingDouble(Region::area));
      if (ground.isPresent()) {
        String text = letters.get(plane.id()) + "  " + SlopeText.of(slope(plane));
        marks.addAll(place(ground.get(), m -> slope(plane, text, m), plane.id()));
      }
    }
    return marks;
  }

  /** As the user gave it, in the user's notation. */
  private Slope slope(RoofPlane plane) {
    return plan.part(plane.part())
        .map(p -> plan.side(p, plane.edge()).slope())
        .orElseGet(() -> Slope.ratio(plane.slope()));
  }

  List<Mark> names(List<Part> parts) {
    List<Mark> marks = new ArrayList<>();
    for (Part part : parts) {
      String name = part.name().isBlank() ? part.id() : part.name();
      String text = part.existing() ? name + " (existing)" : name;
      String shown = Lettering.fitted(text.strip(), Lettering.MEDIUM, 80);
      marks.addAll(place(part.region(), m -> new Mark[] {name(shown, m, part.id())}, part.id()));
    }
    return marks;
  }

  private static Mark name(String text, Point at, String subject) {
    return new Mark.Text(at, text, Lettering.MEDIUM, 0, Anchor.CENTRE, Layers.NAMES, subject);
  }

  /** Text beside an arrow; a level plane has no arrow. */
  private Mark[] slope(RoofPlane plane, String text, Point middle) {
    Point down = new Point(-plane.plane().a(), -plane.plane().b());
    if (down.length() == 0) {
      return new Mark[] {slopeText(plane, text, middle, 0, Anchor.CENTRE)};
    }
    Point along = down.unit();
    double degrees = DimensionLayout.readable(Math.toDegrees(Math.atan2(along.y(), along.x())));
    double radians = Math.toRadians(degrees);
    Point up = new Point(-Math.sin(radians), Math.cos(radians)).times(unitsPerMm);
    Point shaft = middle.minus(up.times(Lettering.SMALL / 2));
    Point tail = shaft.minus(along.times(ARROW / 2 * unitsPerMm));
    Point tip = shaft.plus(along.times(ARROW / 2 * unitsPerMm));
    Point back = along.times(-HEAD * unitsPerMm);
    Point wide = along.left().times(HEAD / 4 * unitsPerMm);
    return new Mark[] {
      Mark.Path.line(tail, tip, Layers.SLOPE, plane.id()),
      new Mark.Path(
          List.of(tip.plus(back).plus(wide), tip, tip.plus(back).minus(wide)),
          false,
          Layers.SLOPE,
          plane.id()),
      slopeText(plane, text, shaft.plus(up.times(TEXT_GAP)), degrees, Anchor.MIDDLE)
    };
  }

  private static Mark slopeText(
      RoofPlane plane, String text, Point at, double degrees, Anchor anchor) {
    return new Mark.Text(at, text, Lettering.SMALL, degrees, anchor, Layers.SLOPE, plane.id());
  }

  private List<Mark> place(Region ground, Shape shape, String subject) {
    List<Point> places = places(ground);
    for (Point place : places) {
      Mark[] marks = shape.at(place);
      if (!clutter.touches(marks)) {
        return taken(marks);
      }
    }
    Point anchor = places.isEmpty() ? ground.shell().bounds().middle() : places.get(0);
    return outside(anchor, shape, subject);
  }

  private List<Mark> taken(Mark... marks) {
    clutter.take(marks);
    return List.of(marks);
  }

  /** Points inside the ground on a grid, those farthest from its edges first. */
  private static List<Point> places(Region ground) {
    record Place(Point at, double room) {}
    Bounds box = ground.shell().bounds();
    List<Place> places = new ArrayList<>();
    for (int i = 1; i < GRID; i++) {
      for (int j = 1; j < GRID; j++) {
        Point p =
            new Point(
                box.minX() + box.width() * i / (GRID), box.minY() + box.height() * j / (GRID));
        if (ground.contains(p)) {
          places.add(new Place(p, ground.edgeDistance(p)));
        }
      }
    }
    places.sort(Comparator.comparingDouble(Place::room).reversed());
    return places.stream().map(Place::at).toList();
  }

  /** From the ground to the near edge of a label, with a dot where it starts. */
  private Mark leader(Point anchor, Mark[] label, Layer layer, String subject) {
    Bounds box = Strokes.of(List.of(label), unitsPerMm).bounds().grown(unitsPerMm);
    Point end =
        new Point(
            Math.max(box.minX(), Math.min(box.maxX(), anchor.x())),
            Math.max(box.minY(), Math.min(box.maxY(), anchor.y())));
    return Mark.Path.line(anchor, end, layer, subject);
  }

  /** The nearest free place around the ground, with a leader to it. */
  private List<Mark> outside(Point anchor, Shape shape, String subject) {
    for (int ring = 1; ; ring++) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double radians = 2 * Math.PI * i / DIRECTIONS;
        Point way = new Point(Math.cos(radians), Math.sin(radians));
        Point place = anchor.plus(way.times(ring * RING * unitsPerMm));
        Mark[] marks = shape.at(place);
        if (!clutter.touches(marks)) {
          List<Mark> all = new ArrayList<>(List.of(marks));
          all.add(leader(anchor, marks, Layers.NAMES, subject));
          all.add(new Mark.Arc(anchor, DOT * unitsPerMm, 0, 360, Layers.NAMES, subject));
          return taken(all.toArray(Mark[]::new));
        }
      }
    }
  }
}
