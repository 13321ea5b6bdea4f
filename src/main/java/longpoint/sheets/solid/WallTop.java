package longpoint.sheets.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.surface.RoofPlane;

/**
 * Where a wall ends under its own part's roof: broken wherever the roof over it changes plane, so
 * that a gable comes to its point exactly. Where no roof of its own stands over it, the wall ends
 * at the plate.
 */
final class WallTop {
  /**
   * The roof is read this far inside the wall face, as a share of the wall's length: on the face
   * itself a roof without overhang ends. A wall of 20 m is read 20 micrometres inside, far above
   * the roof's own rounding and far below anything that is built.
   */
  private static final double INSIDE = 1e-6;

  /**
   * Stretches shorter than this share of the wall come of reading the roof a little inside, where a
   * hip or valley leaves the corner; they belong to their neighbours.
   */
  private static final double NO_STRETCH = 16 * INSIDE;

  private final Segment wall;
  private final double plate;
  private final Segment read;
  private final List<RoofPlane> over;

  private WallTop(Segment wall, double plate, List<RoofPlane> over) {
    this.wall = wall;
    this.plate = plate;
    this.over = over;
    Point in = wall.to().minus(wall.from()).left().times(INSIDE);
    read = new Segment(wall.from().plus(in), wall.to().plus(in));
  }

  /**
   * The top edge of a wall from its first corner to its last, two points or more.
   *
   * @param wall its face, with its part on the left
   * @param plate its height where there is no roof
   * @param over the planes of its part
   */
  static List<Point3> of(Segment wall, double plate, List<RoofPlane> over) {
    return new WallTop(wall, plate, over).line();
  }

  private List<Point3> line() {
    List<Point3> line = new ArrayList<>();
    List<Double> breaks = breaks();
    for (int i = 0; i + 1 < breaks.size(); i++) {
      double from = breaks.get(i);
      double to = breaks.get(i + 1);
      Optional<Plane> roof = roofOver(read.from().toward(read.to(), (from + to) / 2));
      add(line, height(roof, from));
      add(line, height(roof, to));
    }
    return line;
  }

  private Point3 height(Optional<Plane> roof, double share) {
    Point at = share == 1 ? wall.to() : wall.from().toward(wall.to(), share);
    return roof.map(p -> p.lift(at)).orElse(at.at(plate));
  }

  private void add(List<Point3> line, Point3 next) {
    Point3 last = line.isEmpty() ? null : line.get(line.size() - 1);
    if (last == null || last.distance(next) > NO_STRETCH * wall.length()) {
      line.add(next);
    }
  }

  /** Shares of the wall's length where the roof over it may change, with both ends. */
  private List<Double> breaks() {
    List<Double> found = new ArrayList<>();
    for (RoofPlane plane : over) {
      grounds(plane).flatMap(WallTop::rings).forEach(ring -> crossings(ring, found));
    }
    List<Double> breaks = new ArrayList<>(List.of(0.0));
    found.stream()
        .sorted()
        .forEach(
            t -> {
              if (t - breaks.get(breaks.size() - 1) > NO_STRETCH && t < 1 - NO_STRETCH) {
                breaks.add(t);
              }
            });
    breaks.add(1.0);
    return breaks;
  }

  private void crossings(Ring ring, List<Double> found) {
    Point along = read.to().minus(read.from());
    for (int i = 0; i < ring.size(); i++) {
      double a = along.cross(ring.corner(i).minus(read.from()));
      double b = along.cross(ring.corner(i + 1).minus(read.from()));
      if (a > 0 != b > 0) {
        Point at = ring.corner(i).toward(ring.corner(i + 1), a / (a - b));
        double share = at.minus(read.from()).dot(along) / along.dot(along);
        if (share > 0 && share < 1) {
          found.add(share);
        }
      }
    }
  }

  private Optional<Plane> roofOver(Point at) {
    return over.stream()
        .filter(p -> grounds(p).anyMatch(r -> r.contains(at)))
        .map(RoofPlane::plane)
        .findFirst();
  }

  private static Stream<Region> grounds(RoofPlane plane) {
    return Stream.concat(plane.visible().stream(), plane.covered().stream());
  }

  private static Stream<Ring> rings(Region region) {
    return Stream.concat(Stream.of(region.shell()), region.holes().stream());
  }
}
