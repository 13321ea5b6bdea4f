package longpoint.geometry;

import java.util.List;

/**
 * A piece of ground with holes.
 *
 * @param shell outer ring, counter-clockwise
 * @param holes rings inside it, clockwise
 */
public record Region(Ring shell, List<Ring> holes) {
  public Region {
    holes = List.copyOf(holes);
  }

  public Region(Ring shell) {
    this(shell, List.of());
  }

  public double area() {
    double area = shell.area();
    for (Ring hole : holes) {
      area -= hole.area();
    }
    return area;
  }

  /** Whether a point lies on this ground; a point on an edge may fall either way. */
  public boolean contains(Point p) {
    return shell.contains(p) && holes.stream().noneMatch(h -> h.contains(p));
  }

  /** Distance of a point from the nearest edge, never negative. */
  public double edgeDistance(Point p) {
    double least = shell.distance(p);
    for (Ring hole : holes) {
      least = Math.min(least, hole.distance(p));
    }
    return least;
  }
}
