package longpoint.surface;

import java.util.List;
import longpoint.geometry.Point3;

/**
 * A straight line of the roof, on the frame planes.
 *
 * @param id stable: the same plan gives the same ids
 * @param from lower end, or the end with the smaller x, then y, when level
 * @param to the other end
 * @param planes ids of the planes that meet here, one or two, sorted
 */
public record RoofLine(String id, LineKind kind, Point3 from, Point3 to, List<String> planes) {
  public RoofLine {
    planes = List.copyOf(planes);
  }

  /** Length on the flat plan. */
  public double run() {
    return from.plan().distance(to.plan());
  }

  public double rise() {
    return to.z() - from.z();
  }

  /** True length in space. */
  public double length() {
    return from.distance(to);
  }
}
