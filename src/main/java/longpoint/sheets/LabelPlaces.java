package longpoint.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.Strokes;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.stop.CalledOff;

/**
 * Finds a place for a label on the ground it names.
 *
 * <p>Each form of the label, from the fullest to the shortest, tries a grid of points on the
 * ground: those with room around them first, among these the nearest to the middle. The first place
 * where it lies on its ground and touches nothing is taken. Failing all, the fullest form stands
 * off the ground with a leader, nearest first, where it touches nothing and the leader runs through
 * no lettering, within the limit of the drawing. Failing that too the label is left off.
 */
final class LabelPlaces {
  /** Places tried along each way of the ground's box. */
  private static final int GRID = 18;

  /** Room around a point beyond which more is no better, millimetres on paper. */
  private static final double ENOUGH = 12;

  /** The search off the ground: directions, and millimetres from ring to ring. */
  private static final int DIRECTIONS = 24;

  private static final double RING = 5;

  /** A longer leader is hard to follow: better no label, since the table has the figure. */
  private static final double LONGEST = 60;

  /** No label is lower than this; a point with less room around it holds none. */
  private static final double LEAST_ROOM = Lettering.SMALL / 2;

  private static final double DOT = 0.5;

  private static final Point ORIGIN = new Point(0, 0);

  /** Makes the marks of a label around a middle point. */
  interface Form {
    Mark[] at(Point middle);
  }

  /** Ground with the box around it, which answers most questions by itself. */
  private record Ground(Region region, Bounds box) {
    static Ground of(Region region) {
      return new Ground(region, region.shell().bounds());
    }

    boolean contains(Point p) {
      return box.contains(p) && region.contains(p);
    }
  }

  private record Place(Point at, double room, double fromMiddle) {}

  private final double unitsPerMm;
  private final Clutter clutter;
  private final Bounds limit;
  private final List<Ground> grounds;

  /**
   * @param limit no label stands outside it
   * @param grounds that labels with leaders keep off where they can
   */
  LabelPlaces(double unitsPerMm, Clutter clutter, Bounds limit, List<Region> grounds) {
    this.grounds = grounds.stream().map(Ground::of).toList();
    this.unitsPerMm = unitsPerMm;
    this.clutter = clutter;
    this.limit = limit;
  }

  /**
   * Places a label and takes its room; no marks if there is no place.
   *
   * @param forms from the one best liked, at least one
   * @param layer of the leader, if it needs one
   */
  List<Mark> place(Region ground, List<Form> forms, Layer layer, String subject) {
    CalledOff.check();
    List<Place> places = places(ground);
    List<Mark> on = placeOn(ground, places, forms);
    return on.isEmpty() ? outside(anchor(ground, places), forms.get(0), layer, subject) : on;
  }

  /** Places a label on its ground and takes its room; no marks if there is no place on it. */
  List<Mark> placeOn(Region ground, List<Form> forms) {
    return placeOn(ground, places(ground), forms);
  }

  private List<Mark> placeOn(Region ground, List<Place> places, List<Form> forms) {
    Ground own = Ground.of(ground);
    for (Form form : forms) {
      Clutter.Shape origin = clutter.shape(form.at(ORIGIN));
      for (Place place : places) {
        Clutter.Shape shape = origin.moved(place.at());
        if (shape.allCorners(own::contains) && !clutter.touches(shape)) {
          clutter.take(shape);
          return List.of(form.at(place.at()));
        }
      }
    }
    return List.of();
  }

  private List<Place> places(Region ground) {
    Bounds box = ground.shell().bounds();
    double enough = ENOUGH * unitsPerMm;
    List<Place> places = new ArrayList<>();
    for (int i = 1; i < GRID; i++) {
      for (int j = 1; j < GRID; j++) {
        Point p =
            new Point(box.minX() + box.width() * i / GRID, box.minY() + box.height() * j / GRID);
        double room = Math.min(enough, ground.edgeDistance(p));
        if (room >= LEAST_ROOM * unitsPerMm && ground.contains(p)) {
          places.add(new Place(p, room, p.distance(box.middle())));
        }
      }
    }
    places.sort(
        Comparator.comparingDouble(Place::room).reversed().thenComparingDouble(Place::fromMiddle));
    return places;
  }

  /** Where a leader ends: a point of the ground with a free spot for its dot, if there is one. */
  private Point anchor(Region ground, List<Place> places) {
    for (Place place : places) {
      if (!clutter.touches(clutter.shape(dot(place.at(), Layers.NAMES, "")))) {
        return place.at();
      }
    }
    return places.isEmpty() ? ground.shell().corner(0) : places.get(0).at();
  }

  /** Off all ground if there is room, so that no label seems to name the ground it stands on. */
  private List<Mark> outside(Point anchor, Form form, Layer layer, String subject) {
    List<Mark> off = outside(anchor, form, layer, subject, this::offAllGround);
    return off.isEmpty() ? outside(anchor, form, layer, subject, limit::contains) : off;
  }

  private boolean offAllGround(Point corner) {
    if (!limit.contains(corner)) {
      return false;
    }
    for (Ground ground : grounds) {
      if (ground.contains(corner)) {
        return false;
      }
    }
    return true;
  }

  private List<Mark> outside(
      Point anchor, Form form, Layer layer, String subject, Predicate<Point> allowed) {
    Clutter.Shape origin = clutter.shape(form.at(ORIGIN));
    for (double mm = RING; mm <= LONGEST; mm += RING) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double radians = 2 * Math.PI * i / DIRECTIONS;
        Point way = new Point(Math.cos(radians), Math.sin(radians));
        Point place = anchor.plus(way.times(mm * unitsPerMm));
        Clutter.Shape shape = origin.moved(place);
        if (shape.allCorners(allowed) && !clutter.touches(shape)) {
          Mark[] label = form.at(place);
          Mark leader = leader(anchor, label, layer, subject);
          if (!clutter.tangles(clutter.shape(leader))) {
            return take(label, leader, dot(anchor, layer, subject));
          }
        }
      }
    }
    return List.of();
  }

  private List<Mark> take(Mark[] label, Mark leader, Mark dot) {
    List<Mark> all = new ArrayList<>(List.of(label));
    clutter.take(clutter.shape(label));
    clutter.takeLeader(clutter.shape(leader));
    clutter.take(clutter.shape(dot));
    all.add(leader);
    all.add(dot);
    return all;
  }

  private Mark dot(Point at, Layer layer, String subject) {
    return new Mark.Arc(at, DOT * unitsPerMm, 0, 360, layer, subject);
  }

  /** From the ground to the near edge of the label. */
  private Mark leader(Point anchor, Mark[] label, Layer layer, String subject) {
    Bounds box = Strokes.of(List.of(label), unitsPerMm).bounds().grown(unitsPerMm);
    Point end =
        new Point(
            Math.max(box.minX(), Math.min(box.maxX(), anchor.x())),
            Math.max(box.minY(), Math.min(box.maxY(), anchor.y())));
    Point start = end.equals(anchor) ? anchor.plus(new Point(unitsPerMm, 0)) : anchor;
    return Mark.Path.line(start, end, layer, subject);
  }
}
