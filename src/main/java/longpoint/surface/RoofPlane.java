package longpoint.surface;

import java.util.List;
import longpoint.geometry.Plane;
import longpoint.geometry.Region;

/**
 * The plane that rises from one eave.
 *
 * @param id the same as the id of its side
 * @param part id of the part
 * @param edge number of the side in its part, from 0
 * @param plane top of framing
 * @param visible the ground it is the topmost roof over, in plan
 * @param covered the ground where it is built whole but lies beneath another part's roof, in plan
 */
public record RoofPlane(
    String id, String part, int edge, Plane plane, List<Region> visible, List<Region> covered) {
  public RoofPlane {
    visible = List.copyOf(visible);
    covered = List.copyOf(covered);
  }

  /** Rise over run. */
  public double slope() {
    return plane.slope();
  }

  /** Area of the visible ground in plan, square plan units. */
  public double planArea() {
    return sum(visible);
  }

  /** True area of what is visible: plan area × √(1 + slope²). */
  public double area() {
    return planArea() * plane.areaFactor();
  }

  /** True area of what lies beneath another part's roof. */
  public double coveredArea() {
    return sum(covered) * plane.areaFactor();
  }

  private static double sum(List<Region> regions) {
    return regions.stream().mapToDouble(Region::area).sum();
  }
}
