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
 * @param sheltered what of that lies in the open air, beneath an overhang with room between
 */
public record RoofPlane(
    String id,
    String part,
    int edge,
    Plane plane,
    List<Region> visible,
    List<Region> covered,
    List<Region> sheltered) {
  /** The same ground summed in two ways differs by less than this share. */
  private static final double ROUNDING = 1e-9;

  public RoofPlane {
    visible = List.copyOf(visible);
    covered = List.copyOf(covered);
    sheltered = List.copyOf(sheltered);
  }

  /** Rise over run. */
  public double slope() {
    return plane.slope();
  }

  /** Area in plan of the ground it keeps the weather off, square plan units. */
  public double planArea() {
    return sum(visible) + sum(sheltered);
  }

  /** True area of what is roofed: plan area × √(1 + slope²). */
  public double area() {
    return planArea() * plane.areaFactor();
  }

  /** True area of what is closed in beneath another part's roof. */
  public double coveredArea() {
    double closedIn = sum(covered) - sum(sheltered);
    return closedIn > ROUNDING * sum(covered) ? closedIn * plane.areaFactor() : 0;
  }

  private static double sum(List<Region> regions) {
    return regions.stream().mapToDouble(Region::area).sum();
  }
}
