package longpoint.deck;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Side;
import longpoint.surface.RoofPlane;

/**
 * A roof plane laid flat: plan to (u, v) and back.
 *
 * <p>u runs along the eave to the right as seen from the ground facing the plane, 0 at the left end
 * of the eave; a plane that spreads above its eave, as beside a valley, has points with u below 0.
 * v runs up the slope, 0 at the fascia arris. The map keeps true lengths and angles of the plane
 * and turns rings the same way as the plan does.
 *
 * @param origin plan place of u = v = 0
 * @param along one unit of u in plan
 * @param height of the fascia arris above the plan's datum
 * @param slope rise over run, ≥ 0
 */
public record Unfold(Point origin, Point along, double height, double slope) {

  /**
   * How close to the fascia arris, as a share of the plane's own size, a corner counts as standing
   * on it. Corners on the arris come out of sums of a handful of coordinates, each good to 1e-16 of
   * the largest; 1e-9 leaves room for plans far from the origin and is a hair's breadth on a roof.
   */
  private static final double ON_THE_ARRIS = 1e-9;

  /** Lays a plane flat over the wall of its own side. */
  public static Unfold of(Side side, RoofPlane plane) {
    Point along = side.wall().direction();
    Point start = side.wall().from().minus(along.left().times(side.reach()));
    Unfold raw = new Unfold(start, along, plane.plane().heightAt(start), plane.slope());
    double left = leftEndOfEave(raw, plane);
    return raw.startingAt(left);
  }

  private static double leftEndOfEave(Unfold raw, RoofPlane plane) {
    double least = Double.POSITIVE_INFINITY;
    double leastOnArris = Double.POSITIVE_INFINITY;
    double size = plane.visible().stream().mapToDouble(r -> r.shell().perimeter()).sum();
    for (List<Region> regions : List.of(plane.visible(), plane.covered())) {
      for (Region region : regions) {
        for (Point corner : region.shell().points()) {
          Point uv = raw.flat(corner);
          least = Math.min(least, uv.x());
          if (Math.abs(uv.y()) <= ON_THE_ARRIS * (size + Math.abs(corner.x() + corner.y()))) {
            leastOnArris = Math.min(leastOnArris, uv.x());
          }
        }
      }
    }
    return Double.isFinite(leastOnArris) ? leastOnArris : Double.isFinite(least) ? least : 0;
  }

  private Unfold startingAt(double u) {
    return new Unfold(origin.plus(along.times(u)), along, height, slope);
  }

  /** Length up the slope for one unit of level run. */
  public double stretch() {
    return Math.sqrt(1 + slope * slope);
  }

  /** The plan point's place on top of the framing, as (u, v). */
  public Point flat(Point plan) {
    Point step = plan.minus(origin);
    return new Point(along.dot(step), along.left().dot(step) * stretch());
  }

  /**
   * The (u, v) of the deck's top where it is plumb over a plan point.
   *
   * @param thickness of the deck
   */
  public Point flatOnDeck(Point plan, double thickness) {
    Point uv = flat(plan);
    return new Point(uv.x(), uv.y() + thickness * slope);
  }

  /** The plan point beneath a place on top of the framing; undoes {@link #flat}. */
  public Point plan(Point uv) {
    return origin.plus(along.times(uv.x())).plus(along.left().times(uv.y() / stretch()));
  }

  /**
   * The point in space square above a place on the framing.
   *
   * @param above distance square to the plane: 0 is top of framing, the deck's thickness is its top
   */
  public Point3 space(Point uv, double above) {
    Point foot = plan(uv);
    Point lean = along.left().times(-above * slope / stretch());
    double z = height + uv.y() * slope / stretch() + above / stretch();
    return foot.plus(lean).at(z);
  }

  /** One unit square up from the plane. */
  public Point3 normal() {
    Point lean = along.left().times(-slope / stretch());
    return lean.at(1 / stretch());
  }

  public Segment flat(Segment plan) {
    return new Segment(flat(plan.from()), flat(plan.to()));
  }

  public Region flat(Region plan) {
    return new Region(flat(plan.shell()), plan.holes().stream().map(this::flat).toList());
  }

  public Region plan(Region uv) {
    return new Region(plan(uv.shell()), uv.holes().stream().map(this::plan).toList());
  }

  private Ring flat(Ring plan) {
    return new Ring(plan.points().stream().map(this::flat).toList());
  }

  private Ring plan(Ring uv) {
    return new Ring(uv.points().stream().map(this::plan).toList());
  }
}
