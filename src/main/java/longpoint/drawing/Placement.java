package longpoint.drawing;

import longpoint.geometry.Point;

/**
 * Turns, scales and moves a group: parent = origin + scale · turned(own).
 *
 * @param origin where the group's own origin lands in its parent
 * @param scale parent lengths per own length, &gt; 0; on a sheet, paper millimetres per plan unit
 * @param degrees counter-clockwise
 */
public record Placement(Point origin, double scale, double degrees) {
  public static final Placement SAME = new Placement(new Point(0, 0), 1, 0);

  public Placement {
    if (!(scale > 0)) {
      throw new IllegalArgumentException("a placement needs a scale above 0, not " + scale);
    }
  }

  public Point apply(Point own) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    return new Point(
        origin.x() + scale * (own.x() * c - own.y() * s),
        origin.y() + scale * (own.x() * s + own.y() * c));
  }

  /** This placement inside another. */
  public Placement within(Placement outer) {
    return new Placement(outer.apply(origin), scale * outer.scale, degrees + outer.degrees);
  }
}
